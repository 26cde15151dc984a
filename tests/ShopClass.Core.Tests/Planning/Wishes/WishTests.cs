using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Wishes;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;
using static ShopClass.Core.Tests.Planning.Wishes.ByHand;

namespace ShopClass.Core.Tests.Planning.Wishes;

/// <summary>For each wish of the craft a case that turns on it: without the wish the layout stays as it was laid.</summary>
public class WishTests
{
    // Kerf 2 mm, offcuts from 300 by 50 mm on, lengths over 600 mm on the saw bench.
    private static PlanningRequest Ask(int width, int length, params Part[] parts) =>
        Wood.Ask(
            Wood.Bare(Wood.Mm(2)),
            [Wood.Board("1", Wood.Mm(20), Wood.Mm(width), Wood.Mm(length))],
            parts
        );

    private static Part Part(string letter, int quantity, int width, int length) =>
        Wood.Part(letter, quantity, Wood.Mm(20), Wood.Mm(width), Wood.Mm(length));

    [Fact]
    public void Surplus_width_is_split_evenly()
    {
        var request = Ask(232, 400, Part("A", 1, 100, 300), Part("B", 1, 100, 300));
        var laid = Plan(
            request,
            [
                Section(
                    0,
                    300,
                    Strip(0, 100, Blank("A1", 0, 300)),
                    Strip(102, 232, Blank("B1", 0, 300))
                ),
            ]
        );

        var (without, with) = TurnsOn(WishKind.EvenSurplus, request, laid);

        Assert.Equal(laid.Boards, without.Boards);
        Assert.Equal(
            [Wood.Mm(115), Wood.Mm(115)],
            with.Boards[0].Sections[0].Strips.Select(s => s.Far - s.Near)
        );
        Assert.Equal(
            "Surplus width is shared evenly instead of ripped off as a sliver: A1 and B1 keep 15 mm each.",
            Met(WishKind.EvenSurplus, request, with).Sentence
        );
    }

    [Fact]
    public void Neighbouring_sections_are_given_one_rip_line()
    {
        // Either section has 30 mm to share: by themselves at 115 and at 105, together at 115.
        var request = Ask(
            232,
            700,
            Part("A", 2, 100, 275),
            Part("B", 1, 90, 300),
            Part("C", 1, 110, 300)
        );
        var laid = Plan(
            request,
            [
                Section(
                    0,
                    275,
                    Strip(0, 115, Blank("A1", 0, 275)),
                    Strip(117, 232, Blank("A2", 0, 275))
                ),
                Section(
                    277,
                    577,
                    Strip(0, 105, Blank("B1", 277, 577)),
                    Strip(107, 232, Blank("C1", 277, 577))
                ),
            ]
        );

        var (without, with) = TurnsOn(WishKind.JoinedRips, request, laid);

        Assert.Equal(2, Rips(request, without));
        Assert.Equal(1, Rips(request, with));
        Assert.Equal(
            "Neighbouring sections with the same rip lines are ripped while joined: 1 rip to set and mark instead of 2.",
            Met(WishKind.JoinedRips, request, with).Sentence
        );
        Assert.False(Met(WishKind.JoinedRips, request, without).IsMet);
    }

    [Fact]
    public void A_section_is_brought_beside_one_with_the_same_rip_line()
    {
        // B takes the whole width and lies between two sections that are ripped in the middle.
        var request = Ask(202, 1000, Part("A", 4, 100, 275), Part("B", 1, 202, 150));
        Section Halves(int from, string one, string other) =>
            Section(
                from,
                from + 275,
                Strip(0, 100, Blank(one, from, from + 275)),
                Strip(102, 202, Blank(other, from, from + 275))
            );
        var laid = Plan(
            request,
            [
                Halves(0, "A1", "A2"),
                Section(277, 427, Strip(0, 202, Blank("B1", 277, 427))),
                Halves(429, "A3", "A4"),
            ]
        );

        var (without, with) = TurnsOn(WishKind.JoinedRips, request, laid);

        Assert.Equal((2, 1), (Rips(request, without), Rips(request, with)));
    }

    [Fact]
    public void A_slightly_shorter_part_keeps_the_difference_in_a_longer_section()
    {
        var request = Ask(100, 400, Part("A", 1, 49, 275), Part("B", 1, 49, 260));
        request = request with { Rules = request.Rules with { LengthAllowance = Wood.Mm(25) } };
        var own = Plan(
            request,
            [
                Section(
                    0,
                    300,
                    Strip(0, 49, Blank("A1", 0, 300)),
                    Strip(51, 100, Blank("B1", 0, 285))
                ),
            ]
        );

        var planned = Wood.Plan(request);

        Assert.Equal(1, FallsShort(WishKind.ShorterInLonger, request, own));
        Assert.Equal(0, FallsShort(WishKind.ShorterInLonger, request, planned));
        // B at its own length is as legal; it takes a crosscut more.
        var (cuts, fewer) = (Sequencer.Order(request, own), Sequencer.Order(request, planned));
        Assert.True(Rehearsal.Replay(request, own, cuts).Passed);
        Assert.True(Rehearsal.Replay(request, planned, fewer).Passed);
        Assert.Equal(cuts.Cuts.Count - 1, fewer.Cuts.Count);
        Assert.Equal(
            "B1 keeps 15 mm up to the end of a longer section, which saves one rough crosscut.",
            Met(WishKind.ShorterInLonger, request, planned).Sentence
        );
    }

    [Fact]
    public void Two_small_offcuts_become_one_big_one()
    {
        var request = Ask(
            100,
            1000,
            Part("A", 1, 100, 600),
            Part("B", 1, 100, 350),
            Part("C", 1, 100, 200)
        );
        // A joint makes C the riskiest; there is room for a spare of it either way.
        request = request with
        {
            Boards = [.. request.Boards, request.Boards[0] with { Id = "2", Name = "Board 2" }],
            Project = request.Project with
            {
                Joints = [new() { Kind = JointKind.Dado, Part = "C" }],
            },
        };
        Section Whole(string key, int from, int to) =>
            Section(from, to, Strip(0, 100, Blank(key, from, to)));
        // 398 and 446 are left. B beside A leaves 46 and 798.
        var laid = Plan(
            request,
            [Whole("A1", 0, 600)],
            [Whole("B1", 0, 350), Whole("C1", 352, 552)]
        );

        var (without, with) = TurnsOn(WishKind.OneBigOffcut, request, laid);

        Assert.Equal(("A1", "B1 C1"), (Row(without), Row(without, 1)));
        Assert.Equal(("A1 B1", "C1"), (Row(with), Row(with, 1)));
        Assert.Equal(
            "All that is worth keeping is one offcut, 100 × 798 mm.",
            Met(WishKind.OneBigOffcut, request, with).Sentence
        );
        Assert.False(Met(WishKind.OneBigOffcut, request, without).IsMet);
    }

    [Fact]
    public void Pieces_of_one_length_lie_side_by_side_to_be_gang_marked()
    {
        var request = Ask(
            304,
            400,
            Part("A", 1, 100, 300),
            Part("B", 1, 90, 280),
            Part("C", 1, 110, 300)
        );
        var laid = Plan(
            request,
            [
                Section(
                    0,
                    300,
                    Strip(0, 100, Blank("A1", 0, 300)),
                    Strip(102, 192, Blank("B1", 0, 280)),
                    Strip(194, 304, Blank("C1", 0, 300))
                ),
            ]
        );

        var (without, with) = TurnsOn(WishKind.GangNeighbours, request, laid);

        Assert.Equal("A1|B1|C1", Row(without));
        Assert.Equal("B1|A1|C1", Row(with));
        Assert.Equal(
            "Side by side from one line, to be marked together: A1 and C1.",
            Met(WishKind.GangNeighbours, request, with).Sentence
        );
    }

    [Fact]
    public void The_two_of_a_pair_come_from_neighbouring_places()
    {
        var request = Ask(100, 900, Part("A", 2, 100, 250), Part("B", 1, 100, 200));
        var laid = Plan(
            request,
            [
                Section(0, 250, Strip(0, 100, Blank("A1", 0, 250))),
                Section(252, 452, Strip(0, 100, Blank("B1", 252, 452))),
                Section(454, 704, Strip(0, 100, Blank("A2", 454, 704))),
            ]
        );

        var (without, with) = TurnsOn(WishKind.MatchedPairs, request, laid);

        Assert.Equal("A1 B1 A2", Row(without));
        Assert.Equal("B1 A1 A2", Row(with));
        Assert.Equal(
            "From neighbouring places, so that grain and colour match: A1 and A2.",
            Met(WishKind.MatchedPairs, request, with).Sentence
        );
    }

    [Fact]
    public void What_shows_comes_from_the_clearest_wood()
    {
        // The knot lies 8 mm past the second place.
        var request = Ask(
            100,
            900,
            Part("A", 1, 100, 200),
            Part("B", 1, 100, 200) with
            {
                ShowFace = true,
            }
        );
        request = request with
        {
            Boards =
            [
                request.Boards[0] with
                {
                    Defects =
                    [
                        new(
                            DefectKind.Knot,
                            new(Wood.Mm(410), Wood.Mm(430), Wood.Mm(30), Wood.Mm(50))
                        ),
                    ],
                },
            ],
        };
        var laid = Plan(
            request,
            [
                Section(0, 200, Strip(0, 100, Blank("A1", 0, 200))),
                Section(202, 402, Strip(0, 100, Blank("B1", 202, 402))),
            ]
        );

        var (without, with) = TurnsOn(WishKind.ClearWoodToShow, request, laid);

        Assert.Equal("A1 B1", Row(without));
        Assert.Equal("B1 A1", Row(with));
        Assert.Equal(
            "B1 will show and lies beside or over a bad place: choose the better face.",
            Met(WishKind.ClearWoodToShow, request, without).Sentence
        );
        Assert.Equal(
            "B1 will show and comes from wood at least 25 mm away from every bad place.",
            Met(WishKind.ClearWoodToShow, request, with).Sentence
        );
    }

    [Fact]
    public void The_riskiest_part_s_spare_is_reserved_before_the_offcut()
    {
        // Three joints are sawn in B. 448 mm are left on one board and 396 on the other; one A moved over, 698 and 146.
        var request = Ask(100, 1000, Part("A", 2, 100, 300), Part("B", 1, 100, 550));
        request = request with
        {
            Boards = [.. request.Boards, request.Boards[0] with { Id = "2", Name = "Board 2" }],
            Rules = request.Rules with { ShortestOffcut = Wood.Mm(2000) },
            Project = request.Project with
            {
                Joints =
                [
                    new()
                    {
                        Kind = JointKind.Dado,
                        Part = "B",
                        Depth = Wood.Mm(6),
                        Positions = [Wood.Mm(50), Wood.Mm(200), Wood.Mm(400)],
                    },
                ],
            },
        };
        Section Whole(string key, int from, int to) =>
            Section(from, to, Strip(0, 100, Blank(key, from, to)));
        var laid = Plan(
            request,
            [Whole("B1", 0, 550)],
            [Whole("A1", 0, 300), Whole("A2", 302, 602)]
        );

        var (without, with) = TurnsOn(WishKind.SpareOfTheRiskiest, request, laid);

        Assert.Equal(
            "What is left over has no room for one more B, the riskiest part (3 joints are sawn in each piece); there is room for one more A.",
            Met(WishKind.SpareOfTheRiskiest, request, without).Sentence
        );
        Assert.Equal(("B1 A1", "A2"), (Row(with), Row(with, 1)));
        Assert.True(Met(WishKind.SpareOfTheRiskiest, request, with).IsMet);
    }

    private static int Rips(PlanningRequest request, CutPlan plan) =>
        Sequencer.Order(request, plan).Cuts.Count(c => c.Kind is CutKind.Rip);
}
