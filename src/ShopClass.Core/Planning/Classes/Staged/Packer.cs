namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>Runs the searches one after the other, wider every time, until the bound is met or the steps are used up.</summary>
internal sealed class Packer(Cutting cutting, Effort effort, IProgress<StagedProgress>? progress)
{
    private static readonly BeamGuide[] Guides =
    [
        new(0.1, 1),
        new(0, 1),
        new(0.1, 2),
        new(0, 0),
        new(0.3, 1),
    ];

    private IReadOnlyList<CutBoard> best = [];
    private long cost = long.MaxValue;

    /// <summary>The cheapest packing found.</summary>
    public StagedResult Run()
    {
        if (!cutting.EachHasABoard)
            return new([], 0, 0, cutting.Pieces.All(p => p.Count == 0), 0);
        var bound = SimpleBounds.Cost(cutting);
        var beam = new BeamSearch(cutting, effort);
        for (var width = 1; width <= 4096 && cost > bound && !effort.IsUp; width *= 2)
        {
            foreach (var guide in Guides)
            {
                if (cost > bound && beam.Run(width, guide, cost) is { } found)
                    Take(found, bound);
            }
        }

        return new(
            [.. best.Select(b => Written.Board(cutting, b))],
            cost == long.MaxValue ? 0 : cost,
            bound,
            cost < long.MaxValue,
            effort.Taken
        );
    }

    private void Take(IReadOnlyList<CutBoard> found, long bound)
    {
        best = found;
        cost = found.Sum(b => cutting.Planks[b.Plank].Cost);
        progress?.Report(new(effort.Taken, cost, bound));
    }
}
