using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Wishes;
using ShopClass.Core.Projects;
using static ShopClass.Core.Tests.Planning.Wishes.ByHand;

namespace ShopClass.Core.Tests.Planning.Wishes;

/// <summary>
/// What each wish counts and says on layouts laid by hand: met, not met, and not arising at all. The numbers are worked out
/// by hand; kerf 2 mm, precision 1 mm, offcuts from 300 by 50 mm on.
/// </summary>
public class WishTermTests
{
    private static PlanningRequest Ask(int width, int length, params Part[] parts) =>
        Wood.Ask(
            Wood.Bare(Wood.Mm(2)),
            [Wood.Board("1", Wood.Mm(20), Wood.Mm(width), Wood.Mm(length))],
            parts
        );

    private static Part Part(string letter, int quantity, int width, int length) =>
        Wood.Part(letter, quantity, Wood.Mm(20), Wood.Mm(width), Wood.Mm(length));

    private static WishMet? Says(WishKind kind, PlanningRequest request, CutPlan plan) =>
        CraftWishes.InOrder.Single(w => w.Kind == kind).Met(LaidOut.Of(request, plan.Boards)!);

    private static Section Halves(int from, int to, string one, string other, int line = 100) =>
        Section(
            from,
            to,
            Strip(0, line, Blank(one, from, to)),
            Strip(line + 2, 202, Blank(other, from, to))
        );

    [Fact]
    public void Uneven_surplus_counts_by_how_far_the_strips_are_apart_and_is_owned_up_to()
    {
        var request = Ask(202, 700, Part("A", 2, 80, 300), Part("B", 1, 202, 300));
        var plan = Plan(
            request,
            [
                Halves(0, 300, "A1", "A2", line: 90),
                // A section of one strip has nothing to share with.
                Section(302, 602, Strip(0, 202, Blank("B1", 302, 602))),
            ]
        );
        // A1 keeps 10 mm, A2 30.
        Assert.Equal(Wood.Mm(20).Ticks, FallsShort(WishKind.EvenSurplus, request, plan));
        Assert.Equal(
            (
                false,
                "Surplus width is not shared evenly everywhere: bad places, or one rip line for neighbouring sections, come first."
            ),
            Outcome(WishKind.EvenSurplus, request, plan)
        );
    }

    [Theory]
    // Lines fall on whole millimetres, so 20 and 21 mm are even; 20 and 22 are not.
    [InlineData(203, 0)]
    [InlineData(204, 2)]
    public void Shares_a_step_of_the_precision_apart_are_even(int width, int apart)
    {
        var request = Ask(width, 400, Part("A", 2, 80, 300));
        var plan = Plan(
            request,
            [
                Section(
                    0,
                    300,
                    Strip(0, 100, Blank("A1", 0, 300)),
                    Strip(102, width, Blank("A2", 0, 300))
                ),
            ]
        );
        Assert.Equal(Wood.Mm(apart).Ticks, FallsShort(WishKind.EvenSurplus, request, plan));
        var (isMet, sentence) = Outcome(WishKind.EvenSurplus, request, plan);
        Assert.Equal(apart == 0, isMet);
        Assert.Equal(
            isMet,
            sentence.EndsWith("A1 and A2 keep 20 mm each.", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Without_surplus_or_a_second_strip_there_is_nothing_to_share()
    {
        var tight = Ask(202, 400, Part("A", 2, 100, 300));
        Assert.Null(Says(WishKind.EvenSurplus, tight, Plan(tight, [Halves(0, 300, "A1", "A2")])));
        var single = Ask(202, 400, Part("A", 1, 100, 300));
        var alone = Plan(single, [Section(0, 300, Strip(0, 202, Blank("A1", 0, 300)))]);
        Assert.Null(Says(WishKind.EvenSurplus, single, alone));
        Assert.Equal(0, FallsShort(WishKind.EvenSurplus, single, alone));
    }

    [Fact]
    public void Pieces_of_one_length_apart_from_each_other_are_counted_and_said()
    {
        var request = Ask(202, 1000, Part("A", 1, 100, 300), Part("B", 1, 90, 300));
        var plan = Plan(
            request,
            [
                Section(0, 300, Strip(0, 202, Blank("A1", 0, 300))),
                Section(302, 602, Strip(0, 202, Blank("B1", 302, 602))),
            ]
        );
        Assert.Equal(1, FallsShort(WishKind.GangNeighbours, request, plan));
        Assert.Equal(
            (false, "No pieces of one length lie side by side from one line."),
            Outcome(WishKind.GangNeighbours, request, plan)
        );
        // Left a little long each by another amount, they cannot be marked together: the wish does not arise.
        var open = request with
        {
            Project = request.Project with
            {
                Parts =
                [
                    request.Project.Parts[0] with
                    {
                        Open = [new(PartDimension.Length, Wood.Mm(10), "")],
                    },
                    request.Project.Parts[1],
                ],
            },
        };
        Assert.Null(Says(WishKind.GangNeighbours, open, plan));
    }

    [Fact]
    public void Bundles_to_be_marked_together_are_met_and_named_in_order()
    {
        var request = Ask(202, 400, Part("A", 2, 100, 300));
        var plan = Plan(request, [Halves(0, 300, "A2", "A1")]);
        Assert.Equal(0, FallsShort(WishKind.GangNeighbours, request, plan));
        Assert.Equal(
            (true, "Side by side from one line, to be marked together: A1 and A2."),
            Outcome(WishKind.GangNeighbours, request, plan)
        );
    }

    [Fact]
    public void Rips_of_sections_that_part_company_are_each_made()
    {
        var request = Ask(202, 1000, Part("A", 2, 100, 300), Part("B", 2, 90, 300));
        var plan = Plan(
            request,
            [Halves(0, 300, "A1", "A2"), Halves(302, 602, "B1", "B2", line: 110)]
        );
        Assert.Equal(2, FallsShort(WishKind.JoinedRips, request, plan));
        Assert.Equal(
            (
                false,
                "No neighbouring sections have the same rip lines, so each is ripped by itself."
            ),
            Outcome(WishKind.JoinedRips, request, plan)
        );
        var one = Plan(request, [Halves(0, 300, "A1", "A2")]);
        Assert.Null(Says(WishKind.JoinedRips, request, one));
    }

    [Fact]
    public void Two_rip_lines_through_joined_sections_save_two_rips()
    {
        var request = Ask(304, 600, Part("A", 6, 100, 250));
        Section Thirds(int from, int first) =>
            Section(
                from,
                from + 250,
                Strip(0, 100, Blank($"A{first}", from, from + 250)),
                Strip(102, 202, Blank($"A{first + 1}", from, from + 250)),
                Strip(204, 304, Blank($"A{first + 2}", from, from + 250))
            );
        var plan = Plan(request, [Thirds(0, 1), Thirds(252, 4)]);
        Assert.Equal(
            (
                true,
                "Neighbouring sections with the same rip lines are ripped while joined: 2 rips to set and mark instead of 4."
            ),
            Outcome(WishKind.JoinedRips, request, plan)
        );
    }

    [Fact]
    public void The_two_of_a_pair_may_lie_side_by_side_a_kerf_apart_but_no_further()
    {
        var request = Ask(202, 400, Part("A", 2, 100, 300));
        var beside = Plan(request, [Halves(0, 300, "A1", "A2")]);
        Assert.Equal(0, FallsShort(WishKind.MatchedPairs, request, beside));
        Assert.True(Says(WishKind.MatchedPairs, request, beside)!.IsMet);

        var wider = Ask(302, 400, Part("A", 2, 100, 300));
        var apart = Plan(
            wider,
            [
                Section(
                    0,
                    300,
                    Strip(0, 100, Blank("A1", 0, 300)),
                    Strip(103, 203, Blank("A2", 0, 300))
                ),
            ]
        );
        Assert.Equal(
            (false, "Not from neighbouring places: A1 and A2."),
            Outcome(WishKind.MatchedPairs, wider, apart)
        );
    }

    [Fact]
    public void The_two_of_a_pair_that_only_touch_corners_or_lie_on_two_boards_are_no_neighbours()
    {
        var request = Ask(202, 700, Part("A", 2, 100, 300));
        var corners = Plan(
            request,
            [
                Section(0, 300, Strip(0, 100, Blank("A1", 0, 300))),
                Section(302, 602, Strip(100, 202, Blank("A2", 302, 602))),
            ]
        );
        Assert.Equal(1, FallsShort(WishKind.MatchedPairs, request, corners));

        var two = request with
        {
            Boards = [request.Boards[0], request.Boards[0] with { Id = "2", Name = "Board 2" }],
        };
        var boards = Plan(
            two,
            [Section(0, 300, Strip(0, 202, Blank("A1", 0, 300)))],
            [Section(0, 300, Strip(0, 202, Blank("A2", 0, 300)))]
        );
        Assert.Equal(1, FallsShort(WishKind.MatchedPairs, two, boards));
    }

    [Fact]
    public void A_part_there_is_once_has_no_pair()
    {
        var request = Ask(202, 400, Part("A", 1, 100, 300), Part("B", 1, 100, 300));
        Assert.Null(
            Says(WishKind.MatchedPairs, request, Plan(request, [Halves(0, 300, "A1", "B1")]))
        );
    }

    [Fact]
    public void An_offcut_up_to_the_end_trim_is_said_to_be_without_it()
    {
        var request = Ask(100, 1000, Part("A", 1, 100, 300));
        request = request with { Boards = [request.Boards[0] with { TrimEnd = Wood.Mm(20) }] };
        var plan = Plan(request, [Section(0, 300, Strip(0, 100, Blank("A1", 0, 300)))]);
        Assert.Equal(
            (true, "All that is worth keeping is one offcut, 100 × 678 mm without the end trim."),
            Outcome(WishKind.OneBigOffcut, request, plan)
        );
    }

    [Fact]
    public void Several_offcuts_are_counted_and_the_biggest_named()
    {
        var request = Ask(100, 1000, Part("A", 2, 100, 300));
        request = request with
        {
            Boards =
            [
                request.Boards[0],
                request.Boards[0] with
                {
                    Id = "2",
                    Length = Wood.Mm(700),
                },
            ],
        };
        var plan = Plan(
            request,
            [Section(0, 300, Strip(0, 100, Blank("A1", 0, 300)))],
            [Section(0, 300, Strip(0, 100, Blank("A2", 0, 300)))]
        );
        Assert.Equal(
            (false, "2 offcuts are worth keeping, the biggest 100 × 698 mm."),
            Outcome(WishKind.OneBigOffcut, request, plan)
        );
        // Two boards of the kerf's length more than the piece leave nothing worth keeping.
        var spent = request with
        {
            Boards = [.. request.Boards.Select(b => b with { Length = Wood.Mm(310) })],
        };
        Assert.Null(Says(WishKind.OneBigOffcut, spent, plan));
    }

    private static (bool, string) Outcome(WishKind kind, PlanningRequest request, CutPlan plan)
    {
        var met = Assert.IsType<WishMet>(Says(kind, request, plan));
        Assert.Equal(kind, met.Kind);
        return (met.IsMet, met.Sentence);
    }
}
