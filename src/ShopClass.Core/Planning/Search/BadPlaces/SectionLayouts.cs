namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>Lays sections out between two places on a board with bad places, for as little as that takes.</summary>
internal sealed class SectionLayouts
{
    private const int MostTogether = 2000;
    private readonly Stock stock;
    private readonly SectionFit fit;
    private readonly PlanWriter writer;
    private readonly Taste taste;
    private readonly long leeway;
    private readonly HashSet<long> places = [];
    private readonly Dictionary<
        (SectionOption, (long, long)),
        (DraftSection Section, Cost Cost)?
    > known = new(new ByReference<SectionOption, (long, long)>());

    public SectionLayouts(Bench bench, Stock stock, SectionFit fit)
    {
        (this.stock, this.fit) = (stock, fit);
        leeway = bench.Request.Rules.LengthAllowance.Ticks;
        writer = new(bench);
        taste = new(bench);
    }

    /// <summary>The section with its cost, one crosscut at its end included; null where it does not go.</summary>
    public (DraftSection Section, Cost Cost)? Lay(SectionOption option, long from, long to)
    {
        if (!known.TryGetValue((option, (from, to)), out var laid))
            known.Add(
                (option, (from, to)),
                laid = to > stock.End ? null : LayAnew(option, from, to)
            );
        return laid;
    }

    private (DraftSection Section, Cost Cost)? LayAnew(SectionOption option, long from, long to)
    {
        (DraftSection Section, Cost Cost)? best = null;
        var bad = fit.Ways.Between(from, to);
        if (bad == 0 && to == from + option.Length)
        {
            var shared = SharedLines.Fewest(option.Strips, option.Length, leeway);
            var cost = option.Cost with { Lines = 1 + fit.Ways.Rips(option) + shared };
            best = (ClearDraft.Place(option, stock, from, leeway), cost);
        }

        foreach (var way in fit.Ways.All(option, bad))
        {
            if (!way.IsByRule || Together(option, way, from, to, bad) is not { } lays)
                continue;
            var cost = CostOf(option, way.Rips, to - from, lays);
            if (best is { } b && taste.Compare(b.Cost, cost) <= 0)
                continue;
            var strips = lays.Select(
                    (l, i) => new DraftStrip(way.Bands[i].Near, way.Bands[i].Far, l.Blanks)
                )
                .OrderBy(s => s.Near)
                .ToList();
            best = (new(from, to, strips), cost);
        }

        return best is { } found ? (Evened(option, found.Section), found.Cost) : null;
    }

    /// <summary>Sections one after the other for what the search thinks they cost, as near as they can be had.</summary>
    public IReadOnlyList<DraftSection>? Lay(Beginning last)
    {
        var sections = new List<DraftSection>();
        var to = last.At.To;
        for (var beginning = last; beginning.Option is not null; beginning = beginning.Before!)
        {
            var (option, at) = (beginning.Option, beginning.At);
            var section = Lay(option, at.From, to);
            if (to > at.To)
            {
                var begin = at.From + to - at.To;
                if (Lay(option, begin, to) is { } moved)
                {
                    var slack = beginning.Before!.Slack;
                    var isFree =
                        beginning.IsAfterGap
                        || slack >= begin - stock.CrosscutKerf - beginning.Before.End;
                    var cost = isFree ? moved.Cost : moved.Cost + fit.Gap;
                    if (Costs((moved.Section, cost), section) < 0)
                        section = (moved.Section, cost);
                }

                // Where this one does not come so far for less than a gap, the gap it is.
                if (Lay(option, at.From, at.To) is { } plain)
                {
                    var withGap = (plain.Section, plain.Cost + fit.Gap);
                    if (Costs(withGap, section) < 0)
                        section = withGap;
                }
            }

            if (section is not { } laid)
                return null;
            sections.Add(laid.Section);
            var before = beginning.Before!;
            to =
                before.Option is null ? 0
                : beginning.IsAfterGap ? before.At.To
                : laid.Section.From - stock.CrosscutKerf;
        }

        sections.Reverse();
        return sections;
    }

    private int Costs((DraftSection, Cost Cost)? a, (DraftSection, Cost Cost)? b) =>
        a is null ? (b is null ? 0 : 1)
        : b is null ? -1
        : taste.Compare(a.Value.Cost, b.Value.Cost);

    /// <summary>Layouts of all strips whose crosscuts fall on as few lines as can be found.</summary>
    private StripLayout[]? Together(
        SectionOption option,
        Arrangement way,
        long from,
        long to,
        int bad
    )
    {
        var choices = new List<StripLayout[]>();
        for (var i = 0; i < option.Strips.Count; i++)
        {
            var (strip, meets) = (option.Strips[i], fit.Ways.Meets(way.Bands[i], bad));
            if (fit.Layouts.One(strip, from, to, meets) is not { } one)
                return null;
            choices.Add(fit.Layouts.All(strip, from, to, meets) ?? [one]);
        }

        var most = choices.Max(c => c[0].Cuts);
        var product = choices.Aggregate(1L, (p, c) => p * c.Length);
        StripLayout[]? best = null;
        var fewest = int.MaxValue;
        for (var n = 0L; n < Math.Min(product, MostTogether) && fewest > most; n++)
        {
            var rest = n;
            var these = new StripLayout[choices.Count];
            for (var i = 0; i < these.Length; i++)
            {
                these[i] = choices[i][(int)(rest % choices[i].Length)];
                rest /= choices[i].Length;
            }

            var lines = Lines(these);
            if (lines < fewest)
                (best, fewest) = (these, lines);
        }

        return best;
    }

    private int Lines(StripLayout[] layouts)
    {
        places.Clear();
        foreach (var layout in layouts)
        {
            foreach (var mark in layout.Marks)
                places.Add(mark.At);
        }

        return places.Count;
    }

    private Cost CostOf(SectionOption option, int rips, long length, StripLayout[] lays)
    {
        Int128 crosscut = stock.Width;
        for (var i = 0; i < lays.Length; i++)
            crosscut += (Int128)lays[i].Cuts * option.Strips[i].NeededWidth;
        var sawn = Score.RipWeight * ((Int128)rips * length) + Score.CrosscutWeight * crosscut;
        return new(sawn * stock.Board.Thickness.Ticks, 1 + rips + Lines(lays));
    }

    /// <summary>Surplus width shared evenly where all of it stays in the strips and the bad places let it.</summary>
    private DraftSection Evened(SectionOption option, DraftSection section)
    {
        var isWhole =
            section.Strips[0].Near == 0
            && section.Strips[^1].Far == stock.Width
            && section
                .Strips.Zip(section.Strips.Skip(1))
                .All(p => p.Second.Near == p.First.Far + stock.RipKerf);
        if (!isWhole)
            return section;
        var packed = new List<DraftStrip>();
        var near = 0L;
        foreach (var strip in section.Strips)
        {
            var width = option.Strips.First(s => IsOf(s, strip)).Width;
            packed.Add(strip with { Near = near, Far = near + width });
            near += width + stock.RipKerf;
        }

        var shared = writer.ShareSurplusWidth(stock, section with { Strips = packed });
        return shared.Strips[^1].Far == stock.Width ? shared : section;
    }

    private static bool IsOf(StripOption option, DraftStrip strip) =>
        option.Blanks.Count == strip.Blanks.Count
        && option
            .Blanks.Select(b => (b.Kind, b.Turned))
            .Order()
            .SequenceEqual(strip.Blanks.Select(b => (b.Kind, b.Turned)).Order());
}
