using ShopClass.Bench.Instances.Knapsack;
using ShopClass.Core.Planning.Patterns;

namespace ShopClass.Bench.Instances;

/// <summary>Hands an instance to the solver for its variant and writes the answer as rectangles.</summary>
internal static class Solvers
{
    /// <summary>Steps of beams for a board cut in three stages.</summary>
    private const int UsualBeamSteps = 200_000;

    /// <summary>Null when there is no solver for the variant.</summary>
    public static Solution? Solve(
        Instance instance,
        Variant variant,
        int? steps,
        CancellationToken cancel
    ) =>
        instance.IsOneDimensional ? Lengths(instance, steps, cancel)
        : variant is { Aim: not Aim.MostProfit, LongestSection: null }
            ? StagedBoards.Solve(instance, variant, steps, cancel)
        : variant is { Aim: Aim.MostProfit, Stages: 2 }
            ? Shelves(instance, variant.FirstCutDividesW, steps, cancel)
        : variant is { Aim: Aim.MostProfit, Stages: 3 }
            ? Sections(instance, variant.FirstCutDividesW, steps, cancel)
        : null;

    private static Solution Lengths(Instance instance, int? steps, CancellationToken cancel)
    {
        var request = new LengthsRequest(
            instance.Stock[0].W,
            0,
            [.. instance.Items.Select(i => new LengthWanted(i.W, i.Count))]
        );
        var plan = LengthsFromBoards.Fewest(
            steps is { } limit ? request with { StepLimit = limit } : request,
            cancel
        );
        var parts = new List<Placed>();
        for (var b = 0; b < plan.Boards.Count; b++)
        {
            var at = 0;
            foreach (var item in plan.Boards[b])
            {
                parts.Add(new(item, b, at, 0));
                at += instance.Items[item].W;
            }
        }

        return new([.. plan.Boards.Select(_ => 0)], parts, plan.Bound, plan.IsFewest);
    }

    private static Solution Shelves(
        Instance instance,
        bool turned,
        int? steps,
        CancellationToken cancel
    )
    {
        var problem = OneBoard(instance, turned);
        var items = problem.Items;
        var knapsack = new TwoStageKnapsack(problem, steps ?? 100_000, cancel);
        knapsack.Solve();
        var parts = new List<Placed>();
        var low = 0;
        foreach (var shelf in knapsack.Best)
        {
            var at = 0;
            foreach (var i in shelf.Kinds)
            {
                for (var n = 0; n < shelf.Counts[i]; n++, at += items[i].W)
                    parts.Add(turned ? new(i, 0, low, at) : new(i, 0, at, low));
            }

            low += problem.Heights[shelf.Height];
        }

        return new([0], parts, knapsack.Bound, knapsack.Bound == knapsack.Value);
    }

    private static Solution Sections(
        Instance instance,
        bool turned,
        int? steps,
        CancellationToken cancel
    )
    {
        var problem = OneBoard(instance, turned);
        var knapsack = new ThreeStageKnapsack(problem, steps ?? UsualBeamSteps, cancel);
        knapsack.Solve();
        var parts = new List<Placed>();
        var low = 0;
        foreach (var section in knapsack.Best)
        {
            var near = 0;
            foreach (var strip in section.Strips)
            {
                var at = low;
                foreach (var i in strip)
                {
                    parts.Add(turned ? new(i, 0, at, near) : new(i, 0, near, at));
                    at += problem.Items[i].H;
                }

                near += strip.Max(i => problem.Items[i].W);
            }

            low += section.Height;
        }

        return new([0], parts, knapsack.Bound, knapsack.Bound == knapsack.Value);
    }

    /// <summary>The board so that first cuts divide its length.</summary>
    private static ShelfProblem OneBoard(Instance instance, bool turned)
    {
        var board = instance.Stock[0];
        return turned
            ? new(board.H, board.W, [.. instance.Items.Select(i => i with { W = i.H, H = i.W })])
            : new(board.W, board.H, instance.Items);
    }
}
