using CsCheck;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;

namespace ShopClass.Core.Tests.Planning;

/// <summary>Plans on boards with bad places against every layout there is, on boards so small that these can be gone through.</summary>
public class BadPlaceOracleTests
{
    private static Int128 InTicks(EveryLayout.Worth worth, PlanGoal goal) =>
        goal switch
        {
            PlanGoal.SawingEffort => (Int128)worth.Sawing
                * BadPlaceCases.Unit.Ticks
                * Wood.Mm(20).Ticks,
            PlanGoal.Lines => worth.Lines,
            _ => (Int128)worth.Length * BadPlaceCases.Unit.Ticks,
        };

    private static string Told(PlanningRequest request, CutPlan plan)
    {
        long Units(Length length) => length.Ticks * 10 / BadPlaceCases.Unit.Ticks;
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
        var best = BadPlaceCases.BestOf(request);
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
        NoneBeats(BadPlaceCases.OnOneBoard, goals);

    [Theory]
    [InlineData(PlanGoal.Boards, PlanGoal.GlueUps, PlanGoal.SawingEffort, PlanGoal.Lines)]
    [InlineData(PlanGoal.Boards, PlanGoal.GlueUps, PlanGoal.LengthUsed, PlanGoal.SawingEffort)]
    [InlineData(PlanGoal.Boards, PlanGoal.GlueUps, PlanGoal.Lines, PlanGoal.SawingEffort)]
    public void Nor_any_layout_on_two_boards(params PlanGoal[] goals) =>
        NoneBeats(BadPlaceCases.OnTwoBoards, goals);

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
        var request = BadPlaceCases.Ask(
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
        Assert.Equal(2, blanks.Count(b => b.From == BadPlaceCases.Unit * 2));
    }
}
