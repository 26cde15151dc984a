using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Wishes;
using ShopClass.Core.Projects;
using ShopClass.Print.Sheets;
using Xunit;

namespace ShopClass.Print.Tests;

public class KitSheetTests
{
    private const double Margin = 40;

    [Theory]
    [InlineData(Paper.A4, 595.28, 841.89)]
    [InlineData(Paper.Letter, 612, 792)]
    public void The_paper_is_the_size_its_standard_says(Paper paper, double width, double height)
    {
        // ISO 216: A4 is 210 x 297 mm. ANSI/ASME Y14.1: A (letter) is 8.5 x 11 in. A point is 1/72 in.
        Assert.All(
            Printed(paper).Pages,
            page =>
            {
                Assert.Equal(width, page.Width, 0.01);
                Assert.Equal(height, page.Height, 0.01);
            }
        );
    }

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void Nothing_is_printed_in_the_margins(Paper paper)
    {
        var sheet = Printed(paper, Content(Long()));
        for (var i = 0; i < sheet.Pages.Count; i++)
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

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void Every_page_knows_its_number_and_how_many_there_are(Paper paper)
    {
        var sheet = Printed(paper, Content(Long()));
        Assert.True(sheet.Pages.Count > 2);
        for (var i = 0; i < sheet.Pages.Count; i++)
            Assert.Contains(
                $"Page {i + 1} of {sheet.Pages.Count}",
                sheet.TextOf(i),
                StringComparison.Ordinal
            );
    }

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void Every_cut_has_its_number_once_and_the_head_stands_over_it(Paper paper)
    {
        var plan = Long();
        var sheet = Printed(paper, Content(plan));
        var numbers = new List<string>();
        for (var i = 0; i < sheet.Pages.Count; i++)
        {
            var head = sheet.Words[i].FirstOrDefault(w => w.Text == "No.");
            if (head is null)
                continue;
            var below = sheet
                .Words[i]
                .Where(w =>
                    Math.Abs(w.BoundingBox.Left - head.BoundingBox.Left) < 2
                    && w.BoundingBox.Bottom < head.BoundingBox.Bottom
                    && int.TryParse(w.Text, out _)
                );
            numbers.AddRange(below.Select(w => w.Text));
        }

        Assert.Equal(plan.Sequence.Cuts.Select(c => $"{c.Number}"), numbers);
    }

    [Fact]
    public void Names_sizes_and_signs_come_out_as_they_were_written()
    {
        var text = Printed(Paper.A4).Text;
        Assert.Contains("Zoé Brandt", text, StringComparison.Ordinal);
        Assert.Contains("Bänke – spring", text, StringComparison.Ordinal);
        Assert.Contains("3/4 × 6 × 20 1/2 in", text, StringComparison.Ordinal);
        Assert.Contains("31 1/16 in", text, StringComparison.Ordinal);
        Assert.Contains("dado in each side, 1/4 in deep", text, StringComparison.Ordinal);
        Assert.Contains("width 1/32 in over until planed flush", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_tape_position_of_the_drawing_is_in_the_table_too()
    {
        var plan = SamplePlans.Shelf();
        var text = Printed(Paper.A4, Content(plan)).Text;
        foreach (var mark in Core.Drawings.PlanDrawing.TapeMarks(plan, "shelf-board"))
            Assert.Contains(mark.Meaning, text, StringComparison.Ordinal);
    }

    [Fact]
    public void Blanks_on_paper_are_named_where_the_drawing_puts_them()
    {
        var plan = SamplePlans.Shelf();
        var sheet = Printed(Paper.A4, Content(plan));
        var drawing = Core.Drawings.PlanDrawing.Of(
            plan,
            "shelf-board",
            new(sheet.Pages[0].Width - 2 * Margin, 9)
        );
        var labels = drawing
            .Shapes.OfType<Core.Drawings.Label>()
            .ToLookup(l => l.Text, StringComparer.Ordinal);
        var first = WordAt("A1");
        var last = WordAt("B2");
        Assert.Equal(labels["B2"].Single().X - labels["A1"].Single().X, last - first, 1.0);
        Assert.Equal(labels["A1"].Single().X + Margin, first, 1.0);

        double WordAt(string name)
        {
            var box = sheet.Words[0].First(w => w.Text == name).BoundingBox;
            return (box.Left + box.Right) / 2;
        }
    }

    [Fact]
    public void A_letter_no_face_has_is_marked_and_named()
    {
        var text = Printed(
            Paper.A4,
            Content(SamplePlans.Shelf()) with
            {
                StudentShown = "王 Li",
            }
        ).Text;
        Assert.Contains("? Li", text, StringComparison.Ordinal);
        Assert.Contains("U+738B", text, StringComparison.Ordinal);
        Assert.DoesNotContain("U+", Printed(Paper.A4).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_that_is_out_of_date_says_so_and_a_fresh_one_does_not()
    {
        Assert.DoesNotContain("Out of date", Printed(Paper.A4).Text, StringComparison.Ordinal);
        var old = Content(SamplePlans.Shelf()) with { IsOutOfDate = true };
        Assert.Contains("Out of date", Printed(Paper.A4, old).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Left_handed_holds_are_mirrored_in_words()
    {
        Assert.DoesNotContain("Left-handed", Printed(Paper.A4).Text, StringComparison.Ordinal);
        var left = Content(SamplePlans.Shelf()) with { IsLeftHanded = true };
        Assert.Contains("as in a mirror", Printed(Paper.A4, left).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Best_possible_is_said_only_when_it_is_proven()
    {
        var plan = SamplePlans.Shelf();
        Assert.Contains(
            "Not proven",
            Printed(Paper.A4, Content(plan)).Text,
            StringComparison.Ordinal
        );
        var proven = plan with { Plan = plan.Plan with { Goals = [new(PlanGoal.Boards, 1, 1)] } };
        var text = Printed(Paper.A4, Content(proven)).Text;
        Assert.Contains("Best possible, proven", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Not proven", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Tools_are_those_the_cuts_ask_for()
    {
        var text = Printed(Paper.A4).Text;
        Assert.Contains("hand rip saw", text, StringComparison.Ordinal);
        Assert.Contains("saw bench", text, StringComparison.Ordinal);
        Assert.DoesNotContain("marking knife", text, StringComparison.Ordinal);
        Assert.DoesNotContain("bench hook", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Cautions_defer_to_the_school_and_name_a_wood_that_sensitises()
    {
        var plan = SamplePlans.Shelf();
        var request = plan.Request;
        var cedar = plan with
        {
            Request = request with
            {
                Boards = [request.Boards[0] with { SpeciesId = "western-redcedar" }],
            },
        };
        Assert.Contains("your school's policy", Printed(Paper.A4).Text, StringComparison.Ordinal);
        Assert.DoesNotContain("sensitise", Printed(Paper.A4).Text, StringComparison.Ordinal);
        Assert.Contains(
            "sensitise",
            Printed(Paper.A4, Content(cedar)).Text,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_sheet_says_which_wood_is_kept_for_a_spare()
    {
        var plan = SamplePlans.Shelf();
        var spare = Spares.Of(plan);
        Assert.NotNull(spare);
        var text = Printed(Paper.A4, Content(plan)).Text;
        Assert.Contains(
            PrintedSheet.Plain(Spares.Sentence(spare, plan.Request)),
            text,
            StringComparison.Ordinal
        );
        // Also on the drawing.
        Assert.Contains($"spare {spare.Letter}", text, StringComparison.Ordinal);
    }

    internal static PrintedSheet Printed(Paper paper, KitSheetContent? content = null) =>
        new(KitSheet.Make(content ?? Content(SamplePlans.Shelf()), paper));

    internal static KitSheetContent Content(CheckedPlan plan) =>
        new(
            "Bänke – spring",
            "Zoé Brandt",
            IsLeftHanded: false,
            plan,
            3,
            new DateTime(2026, 11, 20, 10, 0, 0, DateTimeKind.Utc),
            new DateOnly(2026, 11, 25),
            IsOutOfDate: false
        );

    /// <summary>The shelf with enough cuts, and long enough words, for several pages.</summary>
    internal static CheckedPlan Long()
    {
        var plan = SamplePlans.Shelf();
        var cuts = plan.Sequence.Cuts;
        var many = Enumerable
            .Range(0, 60)
            .Select(i =>
                cuts[i % cuts.Count] with
                {
                    Number = i + 1,
                    Leaves = "the blank and the rest of the board",
                }
            );
        var project = plan.Request.Project;
        Part first = project.Parts[0] with
        {
            JointNotes = string.Concat(Enumerable.Repeat("unbroken", 30)),
        };
        return plan with
        {
            Sequence = new([.. many]),
            Request = plan.Request with
            {
                Project = project with { Parts = [first, .. project.Parts.Skip(1)] },
            },
        };
    }
}
