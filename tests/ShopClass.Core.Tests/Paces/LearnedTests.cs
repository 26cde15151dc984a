using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Paces;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing.Steps;
using Xunit;

namespace ShopClass.Core.Tests.Paces;

/// <summary>Waste, spoilage and what one course hands on to the next.</summary>
public sealed class LearnedTests
{
    [Fact]
    public void Waste_is_what_of_the_boards_is_in_no_finished_part()
    {
        // Two parts 14 x 5 in from a board 31 x 6 in with nothing left worth keeping: 1 - 140 / 186, a quarter.
        var plan = Sawn(31);
        Assert.DoesNotContain(
            plan.Rehearsal.Steps[^1].Pieces,
            p => p.Fate is Core.Sawing.PieceFate.Offcut
        );

        Assert.Equal(new WasteShare(25, 1), WoodUsed.Waste([(plan, [])]));
        // The same wood once more for what was made again: 1 - 140 / 372.
        Assert.Equal(new WasteShare(62, 1), WoodUsed.Waste([(plan, [plan])]));
    }

    [Fact]
    public void An_offcut_worth_keeping_is_not_used_up()
    {
        var (shorter, longer) = (
            WoodUsed.Waste([(Sawn(31), [])]),
            WoodUsed.Waste([(Sawn(90), [])])
        );

        // The long board leaves about four feet; a kerf more and a trim are all that it adds.
        Assert.InRange(longer!.Percent, shorter!.Percent - 3, shorter.Percent + 3);
    }

    [Theory]
    [InlineData(24, 3, 24, 3)]
    [InlineData(10, 3, 24, 2)]
    [InlineData(1, 1, 100, 1)]
    [InlineData(12, 0, 24, 0)]
    [InlineData(0, 3, 24, 0)]
    public void Spares_are_the_share_of_what_is_to_be_made_rounded_up(
        int pieces,
        int spoiled,
        int made,
        int spares
    ) => Assert.Equal(spares, new SpoiledShare("A", spoiled, made).SparesFor(pieces));

    [Fact]
    public void What_was_learned_before_and_since_is_handed_on_together()
    {
        var before = new Learned(
            new([new(StepKind.Rip, new(150, 40))], []),
            [
                new("Shelf", new(40, 10), [new("A", 2, 20), new("B", 1, 10)]),
                new("Stool", new(30, 5), []),
            ]
        );
        var pace = PaceEstimate.Of([], before.Pace).Course;

        var after = before.Since(pace, [new("shelf ", new(20, 30), [new("A", 3, 60)])]);

        Assert.Equal(before.Pace.Kinds, after.Pace.Kinds);
        Assert.Equal(["shelf ", "Stool"], after.Projects.Select(p => p.Name));
        // (40 x 10 + 20 x 30) / 40
        Assert.Equal(new WasteShare(25, 40), after.Projects[0].Waste);
        Assert.Equal([new("A", 5, 80), new("B", 1, 10)], after.Projects[0].Spoiled);
        Assert.Equal(before.Projects[1], after.Projects[1]);
    }

    [Theory]
    [InlineData("A1", "A")]
    [InlineData("A12.3", "A")]
    [InlineData("A", "")]
    [InlineData("B1", "")]
    [InlineData("section 2", "")]
    public void A_piece_is_a_copy_of_a_part_or_of_none(string piece, string letter) =>
        Assert.Equal(letter, WoodUsed.PartOf(piece, Sawn(31).Request.Project.Parts));

    private static CheckedPlan Sawn(int inches)
    {
        var plan = CheckedPlan.Make(
            new()
            {
                Rules = CourseRules.DefaultsFor(UnitSystem.Inch),
                Project = new()
                {
                    Name = "Rail",
                    Parts =
                    [
                        new()
                        {
                            Letter = "A",
                            Name = "rail",
                            Quantity = 2,
                            Finished = new(
                                Length.FromInches(0, 3, 4),
                                Length.FromInches(5),
                                Length.FromInches(14)
                            ),
                        },
                    ],
                },
                Boards =
                [
                    new()
                    {
                        Id = "1",
                        Name = "Pine",
                        SpeciesId = "eastern-white-pine",
                        Surfacing = Surfacing.S4S,
                        Thickness = Length.FromInches(0, 3, 4),
                        WidthAtStart = Length.FromInches(6),
                        WidthAtMiddle = Length.FromInches(6),
                        WidthAtEnd = Length.FromInches(6),
                        Length = Length.FromInches(inches),
                    },
                ],
            }
        );
        Assert.True(plan.Plan.IsComplete);
        return plan;
    }
}
