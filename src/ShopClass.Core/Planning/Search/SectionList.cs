using System.Buffers;

namespace ShopClass.Core.Planning.Search;

/// <summary>
/// Every section worth crosscutting from a kind of clear board: for each choice of blanks the divisions into strips that
/// are not beaten in both length and cost.
/// </summary>
internal sealed class SectionList
{
    /// <summary>The most sections listed for a board with bad places.</summary>
    public const int MostWanted = 40_000;

    private readonly Bench bench;
    private readonly Lattice lattice;
    private readonly Stock stock;
    private readonly Taste taste;
    private readonly Steps steps;
    private readonly long leeway;
    private readonly long keepable;
    private readonly IReadOnlyList<StripOption> strips;
    private readonly long[] widths;
    private readonly ulong[] packed;
    private readonly long narrowest;
    private readonly List<StripOption> chosen = [];
    private readonly SortedDictionary<int, List<SectionOption>> byCode = [];
    private Func<int, long, Cost, bool>? wanted;
    private bool linesMayMeet;
    private int listed;

    private SectionList(Bench bench, Lattice lattice, Stock stock, long longest, Steps steps)
    {
        (this.bench, this.lattice, this.stock, this.steps) = (bench, lattice, stock, steps);
        taste = new(bench);
        leeway = bench.Request.Rules.LengthAllowance.Ticks;
        keepable = stock.RipKerf + bench.Request.Rules.NarrowestOffcut.Ticks;
        strips = StripList.Of(bench, lattice, stock, longest, steps);
        widths = [.. strips.Select(s => s.Width)];
        packed = [.. strips.Select(s => lattice.Packed(s.Code))];
        narrowest = widths.DefaultIfEmpty(0).Min();
    }

    /// <summary>
    /// The sections by the first kind they hold. Where <paramref name="linesMayMeet"/>, only the lines of the strip with the most cuts are
    /// counted, since gaps for bad places may bring any others onto them.
    /// </summary>
    public static IReadOnlyList<IReadOnlyList<SectionOption>> Of(
        Bench bench,
        Lattice lattice,
        Stock stock,
        long longest,
        Steps steps,
        bool linesMayMeet = false
    )
    {
        var list = new SectionList(bench, lattice, stock, longest, steps)
        {
            linesMayMeet = linesMayMeet,
        };
        list.Grow([.. Enumerable.Range(0, list.strips.Count)], 0, -stock.RipKerf);
        var byFirst = bench.Kinds.Select(_ => new List<SectionOption>()).ToList();
        foreach (var option in list.byCode.Values.SelectMany(o => o))
            byFirst[lattice.First(option.Code)].Add(option);
        return byFirst;
    }

    /// <summary>
    /// All sections that are wanted (by choice, length and cost, counted as where lines may meet), beaten or not; null where there are more than
    /// <see cref="MostWanted"/>.
    /// </summary>
    public static IReadOnlyList<SectionOption>? Wanted(
        Bench bench,
        Lattice lattice,
        Stock stock,
        Func<int, long, Cost, bool> wanted,
        Steps steps
    )
    {
        var list = new SectionList(bench, lattice, stock, stock.Usable, steps) { wanted = wanted };
        list.Grow([.. Enumerable.Range(0, list.strips.Count)], 0, -stock.RipKerf);
        return list.listed > MostWanted || steps.AreUp
            ? null
            : [.. list.byCode.Values.SelectMany(o => o)];
    }

    /// <summary>Adds each strip that still fits beside those chosen, then strips no earlier in the list beside it.</summary>
    private void Grow(ReadOnlySpan<int> fitting, int code, long width)
    {
        for (var i = 0; i < fitting.Length; i++)
        {
            if (!steps.Take(1 + fitting.Length / 32))
                return;
            var strip = strips[fitting[i]];
            var wider = width + stock.RipKerf + strip.Width;
            chosen.Add(strip);
            Add(code + strip.Code, wider);
            var rest = ArrayPool<int>.Shared.Rent(fitting.Length - i);
            var count = Fitting(fitting[i..], code + strip.Code, wider, rest);
            if (count > 0)
                Grow(rest.AsSpan(0, count), code + strip.Code, wider);
            ArrayPool<int>.Shared.Return(rest);
            chosen.RemoveAt(chosen.Count - 1);
        }
    }

    private int Fitting(ReadOnlySpan<int> among, int code, long width, int[] into)
    {
        var left = lattice.Packed(lattice.All) - lattice.Packed(code);
        var room = stock.Width - width - stock.RipKerf;
        var count = 0;
        if (room < narrowest)
            return 0;
        foreach (var i in among)
        {
            if (widths[i] <= room && lattice.Holds(left, packed[i]))
                into[count++] = i;
        }

        return count;
    }

    private void Add(int code, long width)
    {
        var length = 0L;
        foreach (var strip in chosen)
            length = Math.Max(length, strip.Length);
        var (least, rips) = LeastCost(length, width);
        if (wanted is not null && !wanted(code, length, least))
            return;
        if (!byCode.TryGetValue(code, out var options))
            byCode.Add(code, options = []);
        if (wanted is null && IsBeaten(options, length, least))
            return;
        if (wanted is not null)
        {
            if (++listed <= MostWanted)
                options.Add(new(code, lattice.Packed(code), length, least, [.. chosen]));
            return;
        }

        var cost = linesMayMeet
            ? least
            : least with
            {
                Lines = 1 + rips + SharedLines.Fewest(chosen, length, leeway),
            };

        if (IsBeaten(options, length, cost))
            return;
        options.RemoveAll(o => o.Length >= length && taste.Compare(o.Cost, cost) >= 0);
        options.Add(new(code, lattice.Packed(code), length, cost, [.. chosen]));
    }

    private bool IsBeaten(List<SectionOption> options, long length, Cost cost)
    {
        foreach (var option in options)
        {
            if (option.Length <= length && taste.Compare(option.Cost, cost) <= 0)
                return true;
        }

        return false;
    }

    /// <summary>
    /// The cost as <see cref="Score"/> will count it, with as few crosscut lines as the strip with the most cuts has:
    /// lines of the others may fall on the same places.
    /// </summary>
    private (Cost Least, int Rips) LeastCost(long length, long width)
    {
        var beside = stock.Width - width;
        var rips = chosen.Count - 1 + (beside > 0 && beside >= keepable ? 1 : 0);
        Int128 crosscut = stock.Width;
        var most = 0;
        foreach (var strip in chosen)
        {
            var cuts = SharedLines.Cuts(strip, length, leeway);
            crosscut += (Int128)cuts * strip.NeededWidth;
            most = Math.Max(most, cuts);
        }

        var sawn = Score.RipWeight * ((Int128)rips * length) + Score.CrosscutWeight * crosscut;
        return (new(sawn * stock.Board.Thickness.Ticks, 1 + rips + most), rips);
    }
}
