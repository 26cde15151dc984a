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
        : variant is { Aim: not Aim.MostProfit, Stages: 3, LongestSection: null }
            ? StagedBoards.Solve(instance, variant, steps, cancel)
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
}
