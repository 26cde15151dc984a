namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>Finds the ways to cut boards that are worth mixing, and the bound that the mixture proves (column generation).</summary>
internal sealed class Columns
{
    private const int MostTurns = 400;
    private readonly Cutting cutting;
    private readonly Cutting limits;
    private readonly Effort effort;
    private readonly Pricing layouts;
    private readonly Pricing bounds;

    public Columns(Cutting cutting, Cutting limits, Effort effort)
    {
        this.cutting = cutting;
        this.limits = limits;
        this.effort = effort;
        layouts = new(cutting, roundUp: true);
        bounds =
            layouts.IsExact && ReferenceEquals(cutting, limits)
                ? layouts
                : new(limits, roundUp: false);
        Master = new(
            cutting,
            [.. cutting.Pieces.Select(p => p.Count)],
            [.. cutting.Planks.Select(p => p.Copies)]
        );
    }

    /// <summary>The linear programme.</summary>
    public Master Master { get; }

    /// <summary>The best bound proven so far.</summary>
    public long Bound { get; private set; }

    /// <summary>
    /// Prices of the pieces behind the bound, in units of cost, at which no board yields more than it costs; null where
    /// finite boards do.
    /// </summary>
    public double[]? Prices { get; private set; }

    /// <summary>Adds what is worth adding until nothing is, or the bound reaches the cost of a packing at hand.</summary>
    public void Generate(IEnumerable<CutBoard> first, long enough)
    {
        foreach (var board in first)
            Master.Add(Column.Of(cutting, board));
        for (var turn = 0; turn < MostTurns && Bound < enough; turn++)
        {
            if (!effort.Take(Master.Solve()) || !Turn())
                return;
            // Nothing can be gained by going on: the mixture's own cost rounds up to no more than what is proven.
            if (ProvenBound.RoundedUp(limits, (long)Math.Ceiling(Master.Value - 1e-6)) <= Bound)
                return;
        }
    }

    private void KeepPrices(long[] values, long unit, long[] most)
    {
        var over = 1.0;
        for (var p = 0; p < most.Length; p++)
        {
            var cost = (double)limits.Planks[p].Cost * unit;
            if (most[p] > cost && (cost == 0 || !limits.Planks[p].IsEndless))
                return;
            over = Math.Max(over, cost == 0 ? 1 : most[p] / cost);
        }

        // A hair lower, so that no rounding lifts a price above what is proven.
        Prices = [.. values.Select(v => v / over / unit * (1 - 1e-9))];
    }

    private bool Turn()
    {
        var (values, unit) = ProvenBound.Whole(cutting, Master.Duals);
        effort.Take(layouts.Run(values));
        if (!ReferenceEquals(layouts, bounds))
            effort.Take(bounds.Run(values));
        long[] most = [.. Enumerable.Range(0, limits.Planks.Count).Select(bounds.ValueOf)];
        var bound = ProvenBound.Of(limits, values, unit, most);
        if (bound >= Bound)
            KeepPrices(values, unit, most);
        Bound = Math.Max(Bound, bound);
        var added = false;
        for (var p = 0; p < cutting.Planks.Count; p++)
        {
            var limit = (cutting.Planks[p].Cost + Master.SavedBy(p)) * unit;
            var value = layouts.ValueOf(p);
            if (value <= 0 || value <= limit * (1 + 1e-9) + unit * 1e-7)
                continue;
            Master.Add(Column.Of(cutting, layouts.BestFor(p)));
            added = true;
        }

        return added;
    }
}
