using System.Runtime.InteropServices;

namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>A strip that could be ripped: one blank more than an earlier strip.</summary>
/// <param name="Packed">Its blanks.</param>
/// <param name="Length">Length with a kerf between each two blanks.</param>
/// <param name="Before">Index of the strip without its last blank, or -1.</param>
/// <param name="Count">How many blanks.</param>
/// <param name="Breadth">Index of its breadth.</param>
/// <param name="Last">Index of its last blank among <see cref="StripPool.Lies"/>; strips that go on from it add none before.</param>
internal readonly record struct PoolStrip(
    ulong Packed,
    long Length,
    int Before,
    int Count,
    ushort Breadth,
    ushort Last
);

/// <summary>What a strip takes from a section's width, and what its blanks need; less only where it is a whole board's width.</summary>
internal readonly record struct Breadth(long Width, long Needed);

/// <summary>Every strip that could be ripped from boards sawn alike.</summary>
internal sealed class StripPool
{
    private const int StripsCounted = 8;
    private const int Unknown = -2;
    private readonly Bench bench;
    private readonly Packing packing;
    private readonly long longest;
    private readonly int most;
    private readonly Steps steps;
    private readonly List<PoolStrip> strips = [];
    private readonly List<int> ends = [];
    private readonly List<Breadth> breadths = [];

    /// <summary>For each breadth, none being the first, and each way a blank may lie the breadth with it.</summary>
    private readonly List<int> broader = [];
    private readonly Dictionary<int, StripOption> options = [];
    private readonly Lie[] lies;
    private WidthSums? sums;
    private StripShelf? shelf;
    private StripPrices? prices;

    private StripPool(
        Bench bench,
        Packing packing,
        Stock stock,
        long longest,
        int most,
        Steps steps
    )
    {
        (this.bench, this.packing, Stock) = (bench, packing, stock);
        (this.longest, this.most, this.steps) = (longest, most, steps);
        lies = [.. bench.Kinds.Where(k => k.Suits[stock.Index]).SelectMany(LiesOf)];
        Leeway = bench.Request.Rules.LengthAllowance.Ticks;
        Keepable = Math.Max(1, stock.RipKerf + bench.Request.Rules.NarrowestOffcut.Ticks);
    }

    /// <summary>A board like those it is for.</summary>
    public Stock Stock { get; }

    /// <summary>Every strip; those that go on from one follow it at once.</summary>
    public ReadOnlySpan<PoolStrip> Strips => CollectionsMarshal.AsSpan(strips);

    /// <summary>For each strip the index after the last that goes on from it.</summary>
    public ReadOnlySpan<int> Ends => CollectionsMarshal.AsSpan(ends);

    /// <summary>Every way a blank may lie.</summary>
    public IReadOnlyList<Lie> Lies => lies;
    public IReadOnlyList<Breadth> Breadths => breadths;

    /// <summary>What a strip may be shorter than its section without another crosscut.</summary>
    public long Leeway { get; }

    /// <summary>Width beside the last strip from which it is ripped off to keep.</summary>
    public long Keepable { get; }

    /// <summary>Sums that widths of strips side by side come to.</summary>
    public WidthSums Sums => sums ??= new(Stock, breadths);

    /// <summary>The strips by breadth and length.</summary>
    public StripShelf Shelf => shelf ??= new(Strips, breadths.Count);

    /// <summary>What strips are worth at the prices last counted.</summary>
    public StripPrices Prices => prices ??= new(this, packing);

    /// <summary>Size across the board of a blank that lies so.</summary>
    public long AcrossOf(Lie lie) => bench.Kinds[lie.Kind].Across(lie.Turned);

    /// <summary>The strips, or null where there are too many.</summary>
    public static StripPool? Of(
        Bench bench,
        Packing packing,
        Stock stock,
        long longest,
        int most,
        Steps steps
    )
    {
        var pool = new StripPool(bench, packing, stock, longest, most, steps);
        pool.Grow(-1, 0, 0, -stock.CrosscutKerf, -1);
        return steps.AreUp || pool.strips.Count > most ? null : pool;
    }

    /// <summary>The first strip of just one blank of a kind and no longer than a limit, or -1.</summary>
    public int Single(Kind kind, long longest)
    {
        // What goes on from a strip of one blank lies between it and the next of these.
        for (var i = 0; i < strips.Count; i = ends[i])
        {
            if (lies[strips[i].Last].Kind == kind.Index && strips[i].Length <= longest)
                return i;
        }

        return -1;
    }

    /// <summary>The strip as the layout needs it.</summary>
    public StripOption Option(int index)
    {
        if (options.TryGetValue(index, out var option))
            return option;
        option = OptionOf(index);
        options.Add(index, option);
        return option;
    }

    private StripOption OptionOf(int index)
    {
        var strip = strips[index];
        var breadth = breadths[strip.Breadth];
        var blanks = new List<Lie>(strip.Count);
        for (var at = index; at >= 0; at = strips[at].Before)
            blanks.Add(lies[strips[at].Last]);
        return new(
            index,
            breadth.Width,
            breadth.Needed,
            strip.Length,
            Stock.CrosscutKerf,
            [.. blanks.OrderByDescending(l => l.Along).ThenBy(l => l.Kind)]
        );
    }

    private static IEnumerable<Lie> LiesOf(Kind kind) =>
        kind.MayTurn
            ? [new(kind.Index, false, kind.Length), new(kind.Index, true, kind.Width)]
            : [new(kind.Index, false, kind.Length)];

    private void Grow(int before, int from, ulong packed, long length, int breadth)
    {
        for (var i = from; i < lies.Length && strips.Count <= most; i++)
        {
            var lie = lies[i];
            var grown = length + Stock.CrosscutKerf + lie.Along;
            var one = packing.One(lie.Kind);
            if (grown > longest || !packing.Holds(packing.All - packed, one))
                continue;
            if (Broader(breadth, i) is not (>= 0 and var broader))
                continue;
            if (strips.Count % StripsCounted == 0 && !steps.Take())
                return;
            var count = before < 0 ? 1 : strips[before].Count + 1;
            var index = strips.Count;
            strips.Add(new(packed + one, grown, before, count, (ushort)broader, (ushort)i));
            ends.Add(index + 1);
            Grow(index, i, packed + one, grown, broader);
            ends[index] = strips.Count;
        }
    }

    /// <summary>The breadth with one blank more, or -1 where the board is too narrow.</summary>
    private int Broader(int breadth, int lie)
    {
        var at = (breadth + 1) * lies.Length + lie;
        while (broader.Count <= at)
            broader.Add(Unknown);
        if (broader[at] != Unknown)
            return broader[at];
        var before = breadth < 0 ? new(0, 0) : breadths[breadth];
        var kind = bench.Kinds[lies[lie].Kind];
        return broader[at] = Broader(before, kind, lies[lie].Turned) is { } its ? IndexOf(its) : -1;
    }

    private Breadth? Broader(Breadth breadth, Kind kind, bool turned)
    {
        var across = kind.Across(turned);
        if (across <= Stock.Width)
            return new(Math.Max(breadth.Width, across), Math.Max(breadth.Needed, across));
        var edges = kind.WidthBetweenStraightEdges;
        return !turned && Stock.Board.HasStraightEdges && edges <= Stock.Width
            ? new(Stock.Width, Math.Max(breadth.Needed, edges))
            : null;
    }

    private int IndexOf(Breadth breadth)
    {
        var index = breadths.IndexOf(breadth);
        if (index >= 0)
            return index;
        breadths.Add(breadth);
        return breadths.Count - 1;
    }
}

/// <summary>Boards among those chosen that are alike: what goes on one goes on each.</summary>
/// <param name="Index">Its number.</param>
/// <param name="Stocks">The boards.</param>
/// <param name="Pool">Strips for boards sawn like these.</param>
internal sealed record BoardGroup(int Index, IReadOnlyList<Stock> Stocks, StripPool Pool)
{
    public Stock First => Stocks[0];

    /// <summary>Usable length with a kerf for the last section.</summary>
    public long Room => First.Usable + First.CrosscutKerf;

    /// <summary>Its first strip of just one blank of a kind, or -1.</summary>
    public int Single(Kind kind) => Pool.Single(kind, First.Usable);

    public bool Holds(Kind kind) => Single(kind) >= 0;
}
