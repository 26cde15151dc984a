using CsCheck;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;

namespace ShopClass.Core.Tests.Planning;

/// <summary>Plans on boards with bad places against every layout there is, on boards so small that these can be gone through.</summary>
public class BadPlaceOracleTests
{
    private static readonly Length Unit = Wood.Mm(10);

    /// <summary>Two to four blanks and a small board with one to three bad places.</summary>
    internal static readonly Gen<PlanningRequest> Cases = Gen.Select(
        Gen.Select(Gen.Int[1, 6], Gen.Int[1, 3], Gen.Bool).Array[2, 4],
        Gen.Select(
            Gen.Int[0, 11],
            Gen.Int[0, 4],
            Gen.Int[1, 2],
            Gen.Int[1, 2],
            Gen.Enum<DefectReach>()
        ).Array[1, 3],
        Gen.Select(Gen.Int[7, 12], Gen.Int[3, 5], Gen.Int[0, 1], Gen.Int[0, 1]),
        Gen.Select(Gen.Int[0, 1], Gen.Int[0, 2], Gen.Int[1, 3]),
        Ask
    );

    /// <summary>The same on two boards of one size, each with bad places of its own.</summary>
    private static readonly Gen<PlanningRequest> TwoBoardCases = Gen.Select(
        Cases,
        Gen.Select(
            Gen.Int[0, 11],
            Gen.Int[0, 4],
            Gen.Int[1, 2],
            Gen.Int[1, 2],
            Gen.Enum<DefectReach>()
        ).Array[0, 3],
        Gen.Int[5, 8],
        (request, bad, length) =>
        {
            var width = (int)(request.Boards[0].SmallestWidth.Ticks / Unit.Ticks);
            var board = request.Boards[0] with
            {
                Length = Unit * length,
                Defects = [.. request.Boards[0].Defects.Where(d => d.Place.To <= Unit * length)],
            };
            return request with
            {
                Boards =
                [
                    board,
                    board with
                    {
                        Id = "2",
                        Name = "2",
                        Defects = [.. bad.Select(b => Bad(b, length, width))],
                    },
                ],
            };
        }
    );

    private static PlanningRequest Ask(
        (int Along, int Across, bool MayHide)[] sizes,
        (int From, int Near, int Along, int Across, DefectReach Reach)[] bad,
        (int Length, int Width, int TrimStart, int TrimEnd) wood,
        (int Kerf, int Allowance, int NarrowestOffcut) rules
    ) =>
        Wood.Ask(
            Wood.Bare(Unit * rules.Kerf) with
            {
                LengthAllowance = Unit * rules.Allowance,
                NarrowestOffcut = Unit * rules.NarrowestOffcut,
            },
            [
                Wood.Board("1", Wood.Mm(20), Unit * wood.Width, Unit * wood.Length) with
                {
                    TrimStart = Unit * wood.TrimStart,
                    TrimEnd = Unit * wood.TrimEnd,
                    Defects = [.. bad.Select(b => Bad(b, wood.Length, wood.Width))],
                },
            ],
            [
                .. sizes.Select(
                    (s, i) =>
                        Wood.Part(
                            $"{(char)('A' + i)}",
                            1,
                            Wood.Mm(20),
                            Unit * s.Across,
                            Unit * s.Along
                        ) with
                        {
                            AcceptsHiddenDefect = s.MayHide,
                        }
                ),
            ]
        );

    private static Defect Bad(
        (int From, int Near, int Along, int Across, DefectReach Reach) bad,
        int length,
        int width
    )
    {
        var from = Math.Min(bad.From, length - 1);
        var near = Math.Min(bad.Near, width - 1);
        return new(
            DefectKind.Knot,
            new(
                Unit * from,
                Unit * Math.Min(length, from + bad.Along),
                Unit * near,
                Unit * Math.Min(width, near + bad.Across)
            ),
            bad.Reach
        );
    }

    private static EveryLayout LayoutsOn(PlanningRequest request, Board board)
    {
        int Units(Length length) => (int)(length.Ticks / Unit.Ticks);
        var rules = request.Rules;
        return new(
            [
                .. request.Project.Parts.Select(p =>
                    (
                        Units(p.Finished.Length + rules.LengthAllowance),
                        Units(p.Finished.Width),
                        p.AcceptsHiddenDefect
                    )
                ),
            ],
            [
                .. board.Defects.Select(d =>
                    (
                        Units(d.Place.From),
                        Units(d.Place.To),
                        Units(d.Place.Near),
                        Units(d.Place.Far),
                        d.Reach
                    )
                ),
            ],
            Units(board.TrimStart),
            Units(board.Length - board.TrimEnd),
            Units(board.SmallestWidth),
            Units(rules.CrosscutKerf),
            Units(rules.LengthAllowance),
            Units(rules.RipKerf + rules.NarrowestOffcut),
            [.. request.Goals.Concat(PlanGoals.Usual).Distinct()]
        );
    }

    /// <summary>
    /// What the best layout of all is worth, on one board where that does and else on both, which are of one size; null where not
    /// everything fits.
    /// </summary>
    internal static EveryLayout.Worth? BestOf(PlanningRequest request)
    {
        var on = request.Boards.Select(b => LayoutsOn(request, b)).ToList();
        var all = (1 << request.Project.Parts.Count) - 1;
        var ways = on.Select(b => b.Best(all)).OfType<EveryLayout.Worth>().ToList();
        if (ways.Count == 0 && on.Count == 2)
        {
            for (var some = 1; some < all; some++)
            {
                if (on[0].Best(some) is { } first && on[1].Best(all & ~some) is { } second)
                    ways.Add(first + second);
            }
        }

        ways.Sort(on[0].Compare);
        return ways.Count == 0 ? null : ways[0];
    }

    private static Int128 InTicks(EveryLayout.Worth worth, PlanGoal goal) =>
        goal switch
        {
            PlanGoal.SawingEffort => (Int128)worth.Sawing * Unit.Ticks * Wood.Mm(20).Ticks,
            PlanGoal.Lines => worth.Lines,
            _ => (Int128)worth.Length * Unit.Ticks,
        };

    private static string Told(PlanningRequest request, CutPlan plan)
    {
        long Units(Length length) => length.Ticks * 10 / Unit.Ticks;
        var board = request.Boards[0];
        var rules = request.Rules;
        return $"Tenths of units: board {Units(board.Length)} x {Units(board.SmallestWidth)}, trims {Units(board.TrimStart)} "
            + $"{Units(board.TrimEnd)}, kerf {Units(rules.RipKerf)}, allowance {Units(rules.LengthAllowance)}, "
            + $"narrowest {Units(rules.NarrowestOffcut)}; parts "
            + string.Join(
                ", ",
                request.Project.Parts.Select(p =>
                    $"{Units(p.Finished.Length)} x {Units(p.Finished.Width)}{(p.AcceptsHiddenDefect ? " may hide" : "")}"
                )
            )
            + "; bad "
            + string.Join(
                ", ",
                request.Boards.SelectMany(b =>
                    b.Defects.Select(d =>
                        $"{b.Id}: {Units(d.Place.From)}-{Units(d.Place.To)} x {Units(d.Place.Near)}-{Units(d.Place.Far)} {d.Reach}"
                    )
                )
            )
            + "; plan "
            + string.Join(
                "; ",
                plan.Boards.SelectMany(b => b.Sections, (b, s) => (b.BoardId, s))
                    .Select(x =>
                        $"{x.BoardId}: {Units(x.s.From)}-{Units(x.s.To)}: "
                        + string.Join(
                            " | ",
                            x.s.Strips.Select(t =>
                                $"{Units(t.Near)}-{Units(t.Far)}: "
                                + string.Join(
                                    ", ",
                                    t.Blanks.Select(b => $"{b.Key} {Units(b.From)}-{Units(b.To)}")
                                )
                            )
                        )
                    )
            );
    }

    private static void Agree(
        PlanningRequest request,
        System.Collections.Concurrent.ConcurrentBag<bool> proven
    )
    {
        var best = BestOf(request);
        var plan = Wood.Plan(request);
        if (best is not { } worth)
        {
            Assert.False(plan.IsComplete);
            return;
        }

        Assert.False(plan.IsProvenImpossible);
        if (!plan.IsComplete)
            return;
        proven.Add(plan.IsBestPossible);
        foreach (
            var goal in plan.Goals.Where(g => g.Goal is not (PlanGoal.Boards or PlanGoal.GlueUps))
        )
        {
            var least = InTicks(worth, goal.Goal);
            Assert.True(
                goal.Bound <= least,
                $"{goal.Goal}: bound {goal.Bound}, best {least}. {Told(request, plan)}"
            );
            if (goal.Value != least)
            {
                Assert.True(
                    goal.Value > least,
                    $"{goal.Goal}: {goal.Value} is below {least}. {Told(request, plan)}"
                );
                Assert.False(goal.IsProven);
                break;
            }
        }
    }

    [Theory]
    [InlineData(PlanGoal.SawingEffort, PlanGoal.LengthUsed)]
    [InlineData(PlanGoal.SawingEffort, PlanGoal.Lines, PlanGoal.LengthUsed)]
    [InlineData(PlanGoal.LengthUsed, PlanGoal.SawingEffort)]
    [InlineData(PlanGoal.Lines, PlanGoal.SawingEffort)]
    public void No_layout_there_is_beats_what_is_called_best_possible(params PlanGoal[] goals) =>
        NoneBeats(Cases, goals);

    [Theory]
    [InlineData(PlanGoal.Boards, PlanGoal.GlueUps, PlanGoal.SawingEffort, PlanGoal.Lines)]
    [InlineData(PlanGoal.Boards, PlanGoal.GlueUps, PlanGoal.LengthUsed, PlanGoal.SawingEffort)]
    [InlineData(PlanGoal.Boards, PlanGoal.GlueUps, PlanGoal.Lines, PlanGoal.SawingEffort)]
    public void Nor_any_layout_on_two_boards(params PlanGoal[] goals) =>
        NoneBeats(TwoBoardCases, goals);

    private static void NoneBeats(Gen<PlanningRequest> cases, PlanGoal[] goals)
    {
        var proven = new System.Collections.Concurrent.ConcurrentBag<bool>();
        cases.Sample(
            request => Agree(request with { Goals = goals }, proven),
            iter: 150,
            threads: 1
        );
        // Nothing would be tested if nothing were called so.
        Assert.True(
            proven.Count(p => p) > proven.Count / 2,
            $"{proven.Count(p => p)} of {proven.Count}"
        );
    }

    /// <summary>
    /// Two blanks begin past the same knot, so that one line sets out both, though one of them would have clear wood beside it from
    /// the section's beginning.
    /// </summary>
    [Fact]
    public void A_blank_begins_farther_on_where_that_saves_a_line()
    {
        var request = Ask(
            [(4, 2, false), (3, 1, true), (4, 2, true)],
            [
                (7, 3, 1, 1, DefectReach.MarkedFace),
                (0, 2, 2, 2, DefectReach.Through),
                (6, 1, 2, 1, DefectReach.Through),
            ],
            (11, 5, 0, 0),
            (0, 2, 1)
        ) with
        {
            Goals = [PlanGoal.SawingEffort, PlanGoal.Lines, PlanGoal.LengthUsed],
        };

        var plan = Wood.Plan(request);

        Assert.True(plan.IsBestPossible);
        Assert.Equal(5, plan.Goals.Single(g => g.Goal == PlanGoal.Lines).Value);
        var blanks = plan.Boards[0].Sections.Single().Strips.SelectMany(s => s.Blanks);
        Assert.Equal(2, blanks.Count(b => b.From == Unit * 2));
    }
}
