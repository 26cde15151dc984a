namespace ShopClass.Core.Planning.Search;

/// <summary>
/// Every section worth crosscutting from a kind of clear board: for each choice of blanks the divisions into strips that
/// are not beaten in both length and cost.
/// </summary>
internal sealed class SectionList
{
    private readonly Bench bench;
    private readonly Lattice lattice;
    private readonly Stock stock;
    private readonly Taste taste;
    private readonly Steps steps;
    private readonly IReadOnlyList<StripOption> strips;
    private readonly List<StripOption> chosen = [];
    private readonly SortedDictionary<int, List<SectionOption>> byCode = [];

    private SectionList(Bench bench, Lattice lattice, Stock stock, long longest, Steps steps)
    {
        (this.bench, this.lattice, this.stock, this.steps) = (bench, lattice, stock, steps);
        taste = new(bench.Request);
        strips = StripList.Of(bench, lattice, stock, longest, steps);
    }

    /// <summary>The sections by the first kind they hold.</summary>
    public static IReadOnlyList<IReadOnlyList<SectionOption>> Of(
        Bench bench,
        Lattice lattice,
        Stock stock,
        long longest,
        Steps steps
    )
    {
        var list = new SectionList(bench, lattice, stock, longest, steps);
        list.Grow(0, 0, -stock.RipKerf);
        var byFirst = bench.Kinds.Select(_ => new List<SectionOption>()).ToList();
        foreach (var option in list.byCode.Values.SelectMany(o => o))
            byFirst[lattice.First(option.Code)].Add(option);
        return byFirst;
    }

    private void Grow(int from, int code, long width)
    {
        for (var i = from; i < strips.Count; i++)
        {
            var strip = strips[i];
            var wider = width + stock.RipKerf + strip.Width;
            if (wider > stock.Width)
                continue;
            if (!steps.Take())
                return;
            if (
                !lattice.Holds(
                    lattice.Packed(lattice.All) - lattice.Packed(code),
                    lattice.Packed(strip.Code)
                )
            )
                continue;
            chosen.Add(strip);
            Add(code + strip.Code, wider);
            Grow(i, code + strip.Code, wider);
            chosen.RemoveAt(chosen.Count - 1);
        }
    }

    private void Add(int code, long width)
    {
        var length = chosen.Max(s => s.Length);
        var cost = CostOf(length, width);
        if (!byCode.TryGetValue(code, out var options))
            byCode.Add(code, options = []);
        if (options.Any(o => o.Length <= length && taste.Compare(o.Cost, cost) <= 0))
            return;
        options.RemoveAll(o => o.Length >= length && taste.Compare(o.Cost, cost) >= 0);
        options.Add(new(code, lattice.Packed(code), length, cost, [.. chosen]));
    }

    /// <summary>
    /// The cost as <see cref="Score"/> will count it, with as few crosscut lines as the strip with the most cuts has: lines
    /// of the other strips may fall on the same places.
    /// </summary>
    private Cost CostOf(long length, long width)
    {
        var rules = bench.Request.Rules;
        var beside = stock.Width - width;
        var offcut = beside > 0 && beside >= stock.RipKerf + rules.NarrowestOffcut.Ticks;
        var rips = chosen.Count - 1 + (offcut ? 1 : 0);
        Int128 crosscut = stock.Width;
        var most = 0;
        foreach (var strip in chosen)
        {
            var over = length - strip.Length > rules.LengthAllowance.Ticks;
            var cuts = strip.Blanks.Count - 1 + (over ? 1 : 0);
            crosscut += (Int128)cuts * strip.NeededWidth;
            most = Math.Max(most, cuts);
        }

        var ripped = (Int128)rips * length;
        return new(
            (Score.RipWeight * ripped + Score.CrosscutWeight * crosscut)
                * stock.Board.Thickness.Ticks,
            1 + rips + most
        );
    }
}
