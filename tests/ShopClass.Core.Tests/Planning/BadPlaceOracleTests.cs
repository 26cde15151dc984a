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

    /// <summary>What the best layout of all is worth; null where not everything fits.</summary>
    internal static EveryLayout.Worth? BestOf(PlanningRequest request)
    {
        int Units(Length length) => (int)(length.Ticks / Unit.Ticks);
        var board = request.Boards[0];
        var rules = request.Rules;
        return new EveryLayout(
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
        ).Best();
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
                board.Defects.Select(d =>
                    $"{Units(d.Place.From)}-{Units(d.Place.To)} x {Units(d.Place.Near)}-{Units(d.Place.Far)} {d.Reach}"
                )
            )
            + "; plan "
            + string.Join(
                "; ",
                plan.Boards.SelectMany(b => b.Sections)
                    .Select(s =>
                        $"{Units(s.From)}-{Units(s.To)}: "
                        + string.Join(
                            " | ",
                            s.Strips.Select(t =>
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
        foreach (var goal in plan.Goals)
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
    public void No_layout_there_is_beats_what_is_called_best_possible(params PlanGoal[] goals)
    {
        var proven = new System.Collections.Concurrent.ConcurrentBag<bool>();
        Cases.Sample(
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
