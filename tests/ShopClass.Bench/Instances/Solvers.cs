using ShopClass.Bench.Instances.Knapsack;
using ShopClass.Core.Planning.Patterns;

namespace ShopClass.Bench.Instances;

/// <summary>Hands an instance to the solver for its variant and writes the answer as rectangles.</summary>
internal static class Solvers
{
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
        Item[] items = [.. instance.Items.Select(i => turned ? i with { W = i.H, H = i.W } : i)];
        var board = instance.Stock[0];
        var problem = turned
            ? new ShelfProblem(board.H, board.W, items)
            : new ShelfProblem(board.W, board.H, items);
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
}
