using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Remakes;
using ShopClass.Core.Tests.Planning;
using static ShopClass.Core.Tests.Planning.Wood;

namespace ShopClass.Core.Tests.Remakes;

public class RemakeTests
{
    /// <summary>A wall shelf of our own design: 20 in clear, dados 1/4 in deep, sides 14 in, shelves 20 1/2 in, rail 20 in.</summary>
    private static Project Shelf { get; } =
        new()
        {
            Name = "wall shelf",
            Parts =
            [
                Part("A", 2, In(0, 3, 4), In(6), In(14)),
                Part("B", 2, In(0, 3, 4), In(6), In(20, 1, 2)),
                Part("C", 1, In(0, 3, 4), In(2, 1, 2), In(20)),
            ],
            Joints =
            [
                new()
                {
                    Kind = JointKind.Dado,
                    Part = "A",
                    Mate = "B",
                    Depth = In(0, 1, 4),
                    Positions = [In(1), In(12)],
                },
            ],
            SizeChecks =
            [
                new(
                    "B",
                    PartDimension.Length,
                    [
                        new(1, null, default, In(20), "clear width"),
                        new(2, null, default, In(0, 1, 4), "depth of a dado"),
                    ]
                ),
                new("C", PartDimension.Length, [new(1, null, default, In(20), "clear width")]),
            ],
        };

    private static CheckedPlan PlanOn(params Board[] boards) =>
        CheckedPlan.Make(
            new()
            {
                Project = Shelf,
                Boards = boards,
                Rules = CourseRules.DefaultsFor(UnitSystem.Inch),
            }
        );

    private static Board Pine(string id, Length width, Length length) =>
        Board(id, In(0, 3, 4), width, length, Surfacing.S4S);

    private static Mishap Short(CheckedPlan plan, BlankKey blank) =>
        new()
        {
            Plan = plan,
            CutsMade = plan.Sequence.Cuts.Count,
            Spoiled = blank,
        };

    [Fact]
    public void A_spoiled_side_comes_from_the_offcut_at_the_end_of_a_long_board()
    {
        var plan = PlanOn(Pine("1", In(9, 1, 4), In(120)));

        var option = Remaker.Options(Short(plan, new("A", 1)), new()).Options[0];

        Assert.Equal(RemakeWay.Offcut, option.Way);
        Assert.StartsWith("Saw A1 again from offcut", option.Sentence, StringComparison.Ordinal);
        Assert.Equal([new(new("A", 1), new("A", 1))], option.Blanks);
    }

    [Fact]
    public void A_shelf_cut_short_makes_the_whole_piece_narrower_when_nothing_else_is_left()
    {
        var plan = PlanOn(Pine("1", In(9, 1, 4), In(76)));
        var spoiled = new BlankKey("B", 1);
        var lying = PiecesAtHand.Placed(plan.Plan).First(b => b.Blank.Key == spoiled).Rect;
        // One inch and a half is gone from its end: half an inch more than it was oversize by.
        var mishap = Short(plan, spoiled) with
        {
            Lost = lying with { From = lying.To - In(1, 1, 2) },
        };

        var answer = Remaker.Options(mishap, new());

        var option = Assert.Single(answer.Options);
        Assert.Equal(RemakeWay.SmallerDesign, option.Way);
        Assert.Equal(
            ["length of B", "length of C", "clear width"],
            option.Changes.Select(c => c.What)
        );
        Assert.Equal(
            [In(1, 1, 2), In(1, 1, 2), In(1, 1, 2)],
            option.Changes.Select(c => c.From - c.To)
        );
        Assert.Contains(
            "clear width 18 1/2 in instead of 20 in",
            option.Sentence,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_knot_found_before_anything_is_sawn_is_planned_around()
    {
        var plan = PlanOn(Pine("1", In(9, 1, 4), In(100)));
        var spoiled = new BlankKey("A", 1);
        var lying = PiecesAtHand.Placed(plan.Plan).First(b => b.Blank.Key == spoiled).Rect;
        var knot = new BoardRect(
            lying.From + In(3),
            lying.From + In(4),
            lying.Near + In(2),
            lying.Near + In(3)
        );
        var mishap = new Mishap
        {
            Plan = plan,
            CutsMade = 0,
            Spoiled = spoiled,
            Lost = knot,
        };

        var option = Remaker
            .Options(mishap, new())
            .Options.First(o => o.Way is RemakeWay.LaidOutAgain);

        Assert.Equal(5, option.Blanks.Count);
        Assert.DoesNotContain(PiecesAtHand.Placed(option.Plan!.Plan), b => b.Rect.Overlaps(knot));
    }

    [Fact]
    public void The_class_spare_and_the_cheapest_board_that_will_do_are_offered()
    {
        var plan = PlanOn(Pine("1", In(9, 1, 4), In(76)));
        Board ForSale(string name, Length length, long price) =>
            Pine(name, In(7, 1, 4), length) with
            {
                Price = new Money(price, "USD"),
            };

        var answer = Remaker.Options(
            Short(plan, new("B", 2)),
            new()
            {
                ClassSpares = ["B"],
                ForSale =
                [
                    ForSale("eight feet", In(96), 1450),
                    ForSale("one foot", In(12), 200),
                    ForSale("four feet", In(48), 700),
                ],
            }
        );

        Assert.Contains(answer.Options, o => o.Way is RemakeWay.ClassSpare && o.Plan is null);
        var bought = answer.Options.First(o => o.Way is RemakeWay.NewBoard);
        Assert.Equal(new Money(700, "USD"), bought.Cost);
    }

    [Fact]
    public void A_piece_ripped_from_a_planed_board_has_no_two_straight_edges_any_more()
    {
        var plan = PlanOn(Pine("1", In(9, 1, 4), In(120)));
        var pieces = new PiecesAtHand(Short(plan, new("A", 1)));

        Assert.All(
            pieces.Free,
            b =>
                Assert.Equal(
                    b.SmallestWidth == In(9, 1, 4) ? Surfacing.S4S : Surfacing.S2S,
                    b.Surfacing
                )
        );
        Assert.Contains(pieces.Free, b => b.Surfacing is Surfacing.S4S);
        Assert.Contains(pieces.Free, b => b.Surfacing is Surfacing.S2S);
    }

    [Fact]
    public void A_blank_the_plan_has_not_got_cannot_be_spoiled()
    {
        var plan = PlanOn(Pine("1", In(9, 1, 4), In(120)));

        Assert.Throws<ArgumentException>(() => Remaker.Options(Short(plan, new("Z", 1)), new()));
    }
}
