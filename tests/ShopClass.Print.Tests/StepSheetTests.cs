using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Print.Sheets;
using Xunit;

namespace ShopClass.Print.Tests;

public class StepSheetTests
{
    private const double Margin = 40;

    public static TheoryData<Paper, PrintSize, StepLayout> All =>
        new MatrixTheoryData<Paper, PrintSize, StepLayout>(
            Enum.GetValues<Paper>(),
            Enum.GetValues<PrintSize>(),
            Enum.GetValues<StepLayout>()
        );

    [Theory]
    [MemberData(nameof(All))]
    public void Every_step_is_there_once_in_order_with_what_it_says(
        Paper paper,
        PrintSize size,
        StepLayout layout
    )
    {
        var content = Content();

        var text = InOrder(Printed(content, paper, size, layout));

        var at = 0;
        foreach (var step in content.Work.Steps)
        {
            var heading = $"{step.Number}. {step.Title}";
            var next = text.IndexOf(heading, at, StringComparison.Ordinal);
            Assert.True(next >= at, $"“{heading}” is missing after letter {at}.");
            at = next + heading.Length;
        }

        Assert.All(
            content.Work.Steps,
            step =>
            {
                Assert.Contains(step.Hold, text, StringComparison.Ordinal);
                Assert.Contains(step.Technique, text, StringComparison.Ordinal);
                Assert.All(step.Tools, t => Assert.Contains(t, text, StringComparison.Ordinal));
                Assert.Contains(step.Caution, text, StringComparison.Ordinal);
            }
        );
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Nothing_is_printed_in_the_margins_and_every_page_knows_its_number(
        Paper paper,
        PrintSize size,
        StepLayout layout
    )
    {
        var sheet = Printed(Content(), paper, size, layout);
        for (var i = 0; i < sheet.Pages.Count; i++)
        {
            Assert.Contains($"Page {i + 1} of {sheet.Pages.Count}", sheet.TextOf(i));
            Assert.All(
                sheet.Words[i],
                word =>
                {
                    var box = word.BoundingBox;
                    Assert.InRange(box.Left, Margin - 1, sheet.Pages[i].Width - Margin + 1);
                    Assert.InRange(box.Right, Margin - 1, sheet.Pages[i].Width - Margin + 1);
                    Assert.InRange(box.Bottom, Margin - 1, sheet.Pages[i].Height - Margin + 1);
                    Assert.InRange(box.Top, Margin - 1, sheet.Pages[i].Height - Margin + 1);
                }
            );
        }
    }

    [Fact]
    public void Every_card_says_whose_it_is_and_of_which_plan()
    {
        var content = Content();
        var text = InOrder(Printed(content));

        Assert.All(
            content.Work.Steps,
            s =>
                Assert.Contains(
                    $"Zoé, Wall shelf, plan 3 of 2 Nov 2026: {s.Number} of {content.Work.Steps.Count}",
                    text,
                    StringComparison.Ordinal
                )
        );
    }

    [Fact]
    public void Every_page_carries_plan_version_and_dates_and_the_first_one_the_cautions()
    {
        var sheet = Printed(Content());

        Assert.All(
            Enumerable.Range(0, sheet.Pages.Count),
            i => Assert.Contains("plan 3 of 2 Nov 2026, printed 9 Nov 2026", sheet.TextOf(i))
        );
        Assert.All(
            UsualCautions.Sentences,
            s => Assert.Contains(s, sheet.TextOf(0), StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Large_print_is_at_least_fourteen_points()
    {
        var content = Content();
        var sheet = Printed(content, Paper.A4, PrintSize.Large, StepLayout.Page);
        var word = sheet.Words.SelectMany(w => w).First(w => w.Text == "Hold:");

        Assert.True(word.Letters[0].PointSize >= 14);
    }

    [Theory]
    [InlineData(Paper.A4, 50)]
    [InlineData(Paper.Letter, 63)]
    public void Large_cards_stand_about_two_on_a_page(Paper paper, int pagesForHundred)
    {
        var content = Content();
        var sheet = Printed(content, paper, PrintSize.Large);
        // The first page is for the cautions; Letter is an inch lower than A4.
        Assert.InRange(
            sheet.Pages.Count,
            1,
            1 + (content.Work.Steps.Count * pagesForHundred + 99) / 100
        );
    }

    [Fact]
    public void A_plan_that_is_out_of_date_says_so_and_a_fresh_one_does_not()
    {
        Assert.Contains("Out of date", Printed(Content() with { IsOutOfDate = true }).Text);
        Assert.DoesNotContain("Out of date", Printed(Content()).Text);
    }

    [Fact]
    public void Cards_for_the_left_hand_have_the_waste_on_the_left()
    {
        var text = InOrder(Printed(Content(Hand.Left)));

        Assert.Contains("for the left hand", text, StringComparison.Ordinal);
        Assert.Contains("waste on the left", text, StringComparison.Ordinal);
        Assert.DoesNotContain("waste on the right", text, StringComparison.Ordinal);
    }

    // As the words stand in the file, which is the order a screen reader reads them in: cards stand side by side.
    private static string InOrder(PrintedSheet sheet) =>
        string.Concat(sheet.Pages.Select(p => PrintedSheet.Plain(p.Text)));

    private static PrintedSheet Printed(
        StepSheetContent content,
        Paper paper = Paper.A4,
        PrintSize size = PrintSize.Usual,
        StepLayout layout = StepLayout.Cards
    ) => new(StepSheet.Make(content, paper, size, layout));

    private static StepSheetContent Content(Hand hand = Hand.Right)
    {
        var plan = WithDados(SamplePlans.Shelf());
        return new(
            "Evenings",
            "Zoé",
            plan,
            WorkWriter.Write(plan, hand),
            3,
            new(2026, 11, 2, 9, 0, 0, DateTimeKind.Utc),
            new(2026, 11, 9),
            IsOutOfDate: false
        );
    }

    private static CheckedPlan WithDados(CheckedPlan plan) =>
        plan with
        {
            Request = plan.Request with
            {
                Project = plan.Request.Project with
                {
                    Joints =
                    [
                        new()
                        {
                            Kind = JointKind.Dado,
                            Part = "A",
                            Mate = "B",
                            Depth = SamplePlans.In(0, 1, 4),
                            Positions = [SamplePlans.In(2), SamplePlans.In(10)],
                        },
                    ],
                },
            },
        };
}
