using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning.Guide;
using ShopClass.Core.Projects;
using ShopClass.Print.Sheets;
using Xunit;

namespace ShopClass.Print.Tests;

public class StockNoteTests
{
    private static readonly DateOnly Today = new(2026, 11, 25);

    [Theory]
    [InlineData(Paper.A4, UnitSystem.Inch)]
    [InlineData(Paper.Letter, UnitSystem.Inch)]
    [InlineData(Paper.A4, UnitSystem.Metric)]
    [InlineData(Paper.Letter, UnitSystem.Metric)]
    public void A_project_of_two_thicknesses_takes_one_page(Paper paper, UnitSystem unit)
    {
        var note = Printed(GuideFor(CourseRules.DefaultsFor(unit)), paper);

        Assert.Single(note.Pages);
    }

    // Edge gluing and planing untaught, a part to glue up and three thicknesses: the longest note there is.
    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void Untaught_skills_and_three_thicknesses_still_take_one_page(Paper paper)
    {
        var rules = CourseRules.DefaultsFor(UnitSystem.Inch) with
        {
            PlaningTaught = false,
            EdgeGluingTaught = false,
        };

        var note = Printed(GuideFor(rules, withLeg: true), paper);

        Assert.Single(note.Pages);
    }

    [Fact]
    public void It_names_the_sizes_as_the_seller_does_and_says_what_the_tape_must_show()
    {
        var guide = GuideFor(CourseRules.DefaultsFor(UnitSystem.Inch));
        var note = Printed(guide, Paper.A4);

        foreach (var group in guide.Groups)
        {
            Assert.Contains(
                GuideWords.Name(group, guide.Rules),
                note.Text,
                StringComparison.Ordinal
            );
            var first = group.Options[0];
            Assert.Contains(
                GuideWords.Ask(first, UnitSystem.Inch),
                note.Text,
                StringComparison.Ordinal
            );
            Assert.Contains(
                GuideWords.AtLeast(first, Precision.Sixteenth),
                note.Text,
                StringComparison.Ordinal
            );
        }
    }

    [Fact]
    public void It_says_what_to_measure_which_species_suit_and_what_their_figures_rest_on()
    {
        var text = Printed(GuideFor(CourseRules.DefaultsFor(UnitSystem.Inch)), Paper.A4).Text;

        Assert.Contains("Width at three places", text, StringComparison.Ordinal);
        // Wood Handbook FPL-GTR-190, Table 5-3a: eastern white pine 0.35, western redcedar 0.32 at 12 %.
        Assert.Matches("0\\.35 [^;0]*eastern white pine", text);
        Assert.Matches("0\\.32 [^;0]*western redcedar \\[S\\]", text);
        Assert.Contains("loblolly pine [R]", text, StringComparison.Ordinal);
        Assert.DoesNotContain("white oak", text, StringComparison.Ordinal);
        Assert.Contains("FPL-GTR-190, Table 5-3a", text, StringComparison.Ordinal);
        Assert.Contains("from memory", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Untaught_planing_is_said_on_paper_too()
    {
        var rules = CourseRules.DefaultsFor(UnitSystem.Inch) with { PlaningTaught = false };
        var text = Printed(GuideFor(rules), Paper.Letter).Text;

        Assert.Contains("Rough boards are refused", text, StringComparison.Ordinal);
        Assert.Contains(
            "Only as prepared by the instructor: planing to thickness.",
            text,
            StringComparison.Ordinal
        );
    }

    private static PrintedSheet Printed(StockGuide guide, Paper paper) =>
        new(StockNote.Make(new("Tuesday evenings", guide, Today), paper));

    private static StockGuide GuideFor(CourseRules rules, bool withLeg = false)
    {
        var inch = rules.Unit is UnitSystem.Inch;
        Length Size(double inches) =>
            inch
                ? Length.FromInches(0, (long)(inches * 8), 8)
                : Length.FromMillimetres((long)(inches * 24));
        Part Of(string letter, int quantity, double thickness, double width, double length) =>
            new()
            {
                Letter = letter,
                Name = "part",
                Quantity = quantity,
                Finished = new(Size(thickness), Size(width), Size(length)),
            };
        var tote = new Project
        {
            Name = "Tool tote",
            Parts =
            [
                Of("A", 2, .75, 7, 9) with
                {
                    GlueUpAllowed = true,
                },
                Of("B", 2, .5, 4, 18),
                Of("C", 1, .5, 6, 17),
                .. withLeg ? new[] { Of("D", 4, 1.5, 1.5, 16) } : [],
            ],
        };
        return StockGuide.Make(tote, rules, cancel: TestContext.Current.CancellationToken);
    }
}
