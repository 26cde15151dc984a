namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>Runs the searches one after the other, wider every time, until the bound is met or the steps are used up.</summary>
internal sealed class Packer(
    Cutting cutting,
    Cutting limits,
    Effort effort,
    IProgress<StagedProgress>? progress
)
{
    private const int Widest = 4096;
    private const int MostRepacked = 256;
    private const int Many = 150;
    private IReadOnlyList<CutBoard> best = [];
    private long cost = long.MaxValue;
    private long bound;
    private double[]? prices;

    /// <summary>The cheapest packing found, and the bound.</summary>
    public (IReadOnlyList<CutBoard> Boards, long Cost, long Bound, bool IsComplete) Run()
    {
        if (!cutting.EachHasABoard)
            return ([], 0, 0, cutting.Pieces.All(p => p.Count == 0));
        bound = SimpleBounds.Cost(limits);
        // Whatever the limit, there is a packing.
        var unlimited = new Effort(int.MaxValue, CancellationToken.None);
        if (new BeamSearch(cutting, unlimited).Run(1, BeamGuide.Usual[0], cost) is { } first)
            Take(first);
        Beams(1);
        if (IsOpen)
            Mix();
        if (HasMany)
            Repack();
        else
            Widen();
        return (best, best.Count == 0 ? 0 : cost, bound, cost < long.MaxValue);
    }

    /// <summary>Few pieces: wider and wider beams over everything.</summary>
    private void Widen()
    {
        for (var width = 4; width <= Widest && IsOpen; width *= 2)
        {
            Beams(width);
            if (IsOpen)
                best = new Repacking(cutting, effort, prices).Improve(
                    best,
                    bound,
                    width,
                    100,
                    Take
                );
        }
    }

    /// <summary>Many pieces: a few boards at a time, until that has not helped for a while.</summary>
    private void Repack()
    {
        var repacking = new Repacking(cutting, effort, prices);
        for (var width = 4; width <= MostRepacked && IsOpen; width *= 2)
            best = repacking.Improve(best, bound, width, 60, Take);
    }

    private bool HasMany => cutting.Pieces.Sum(p => p.Count) > Many;

    private bool IsOpen => cost > bound && !effort.IsUp;

    private void Beams(int width)
    {
        var beam = new BeamSearch(cutting, effort, prices);
        foreach (var guide in BeamGuide.Usual)
        {
            if (cost > bound && beam.Run(width, guide, cost) is { } found)
                Take(found);
        }
    }

    private void Mix()
    {
        var columns = new Columns(cutting, limits, effort);
        columns.Generate(best, cost);
        bound = Math.Max(bound, columns.Bound);
        prices = columns.Prices;
        if (!IsOpen)
            return;
        var mixture = columns.Master.Mixture().ToList();
        for (var width = 4; width <= 16 && IsOpen; width *= 4)
        {
            if (new Rounding(cutting, effort, prices).Round(mixture, width, cost) is { } found)
                Take(found);
        }

        if (IsOpen && HasMany)
            new Diving(cutting, effort, prices).Dive(columns.Master, () => cost, Take);
    }

    private void Take(IReadOnlyList<CutBoard> found)
    {
        best = [.. found];
        cost = cutting.CostOf(found);
        progress?.Report(new(effort.Taken, cost, bound));
    }
}
