namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// Finds the sections of a group of boards that lose no more than a limit at given prices. A section is as long as its
/// longest strip, which leads it; the others are looked for beside it among the strips that hold only blanks still left,
/// as long as the best that could still lie beside them leaves hope.
/// </summary>
internal sealed class SectionFinder
{
    private const int LooksCounted = 160;
    private readonly BoardGroup group;
    private readonly Packing packing;
    private readonly Steps steps;
    private readonly SectionBounds bounds;
    private readonly WidthSums sums;
    private readonly Stock stock;
    private readonly Prices prices;
    private readonly long rip;
    private readonly long cross;
    private readonly PricedStrip[] strips;
    private readonly int every;
    private readonly List<int> chosen = [];
    private readonly List<Column> found = [];
    private readonly Level first;
    private readonly List<Level> levels = [];
    private bool bestOnly;
    private long limit;
    private int most;
    private int lead;
    private long length;
    private long hope;

    public SectionFinder(
        Packing packing,
        BoardGroup group,
        Prices prices,
        Steps steps,
        int every = 1
    )
    {
        this.every = every;
        (this.group, this.packing, this.prices, this.steps) = (group, packing, prices, steps);
        stock = group.First;
        (rip, cross) = (prices.Rip(stock), prices.Cross(stock));
        sums = group.Pool.Sums;
        strips = PricedStrip.All(group.Pool, prices.Worth, cross);
        first = new(sums.Count);
        bounds = new(packing, group, prices, sums);
        steps.Take(strips.Length / 64);
    }

    /// <summary>
    /// All sections that lose no more than the limit, or null where there are too many. Strips are passed over of which it
    /// is known that every section they lead loses more.
    /// </summary>
    public IReadOnlyList<Column>? Within(long limit, int most, long[] known)
    {
        (this.most, bestOnly) = (most, false);
        found.Clear();
        for (var i = 0; i < strips.Length && found.Count <= most && !steps.AreUp; i++)
        {
            if (known[i] <= limit)
                Lead(i, limit);
        }

        return found.Count > most || steps.AreUp ? null : found;
    }

    /// <summary>
    /// For each strip the section led by it that loses least, where it loses no more than the limit, until there are so
    /// many; and what is known of the least loss of each strip's sections. Strips are passed over of which that is above
    /// the need.
    /// </summary>
    public IReadOnlyList<Column> Best(long need, long limit, int most, long[] known)
    {
        (this.most, bestOnly) = (int.MaxValue, true);
        found.Clear();
        for (var i = 0; i < strips.Length && found.Count < most && !steps.AreUp; i++)
        {
            if (known[i] > need)
                continue;
            Lead(i, limit);
            known[i] = steps.AreUp ? known[i] : hope;
        }

        return found;
    }

    /// <summary>
    /// For about so many strips, from one on and round, the section led by it that loses least, where it loses no more than
    /// the limit; then the strip to go on from.
    /// </summary>
    public (IReadOnlyList<Column> Found, int Next) Some(long limit, int most, int from)
    {
        (this.most, bestOnly) = (int.MaxValue, true);
        found.Clear();
        var at = from;
        for (var n = 0; n < strips.Length && found.Count < most && !steps.AreUp; n += every)
        {
            at = at + every >= strips.Length ? 0 : at + every;
            Lead(at, limit);
        }

        return (found, at);
    }

    /// <summary>Finds sections led by a strip; <c>hope</c> is then what each of them loses at least.</summary>
    private void Lead(int index, long limit)
    {
        ref readonly var strip = ref strips[index];
        (lead, length, this.limit) = (index, strip.Length, limit);
        hope = long.MaxValue;
        if (length > stock.Usable)
            return;
        var loss =
            cross * stock.Width
            + prices.PerTick[group.Index] * (length + stock.CrosscutKerf)
            - strips[index].Value;
        var beside = stock.Width - group.Pool.Breadths[strip.Breadth].Width;
        var left = packing.All - strip.Packed;
        hope = loss + bounds.BesideByArea(length, beside, left);
        if (hope > limit)
            return;
        hope = limit + 1;
        chosen.Add(index);
        var before = found.Count;
        Add(loss, beside);
        var taken = sums.Next(0, strip.Breadth);
        if (
            taken <= sums.LastWithRoom
            && Candidates(left, taken, beside, loss) is { Count: > 0 } some
        )
            Beside(0, some, left, taken, beside, loss);
        chosen.Clear();
        if (bestOnly && found.Count > before + 1)
            found.RemoveRange(before, found.Count - before - 1);
    }

    /// <summary>The strips that a good enough section led by such a strip could hold beside it.</summary>
    private List<int>? Candidates(ulong left, int taken, long beside, long loss)
    {
        bounds.Beside(length, taken, left, first.Least);
        if (loss + first.Least[taken] > limit)
        {
            hope = loss + first.Least[taken];
            return null;
        }

        bounds.Offer(left, beside);
        first.Strips.Clear();
        var ripped = loss + rip * length;
        var looks = 0;
        for (var i = 0; i < strips.Length; looks++)
        {
            ref readonly var strip = ref strips[i];
            var next = sums.Next(taken, strip.Breadth);
            if (next < 0 || !MayLieBeside(strip, i, left))
            {
                i = strip.End;
                continue;
            }

            var sure = ripped - strips[i].Value + first.Least[next];
            if (sure - bounds.More(strip.Last, length - strip.Length) > limit)
            {
                i = strip.End;
                continue;
            }

            if (sure + LastCut(strip) <= limit)
                first.Strips.Add(i);
            i++;
        }

        steps.Take(1 + looks / LooksCounted);
        return first.Strips;
    }

    /// <summary>Tries each of some strips beside those chosen.</summary>
    private void Beside(int depth, List<int> some, ulong left, int taken, long beside, long loss)
    {
        if (levels.Count == depth)
            levels.Add(new(sums.Count));
        var level = levels[depth];
        bounds.Clear();
        foreach (var i in some)
            bounds.Note(strips[i].Breadth, strips[i].Value - LastCut(strips[i]));
        bounds.Spread(length, taken, level.Least);
        if (loss + level.Least[taken] > limit)
            return;
        var ripped = loss + rip * length;
        for (var at = 0; at < some.Count; at++)
        {
            var i = some[at];
            ref readonly var strip = ref strips[i];
            var next = sums.Next(taken, strip.Breadth);
            var now = ripped - strips[i].Value + LastCut(strip);
            var rest = beside - stock.RipKerf - group.Pool.Breadths[strip.Breadth].Width;
            if (rest < 0 || now + level.Least[next] > limit)
                continue;
            chosen.Add(i);
            Add(now, rest);
            if (next <= sums.LastWithRoom)
            {
                level.Strips.Clear();
                for (var j = at; j < some.Count; j++)
                {
                    ref readonly var other = ref strips[some[j]];
                    if (
                        sums.Next(next, other.Breadth) >= 0
                        && packing.Holds(left - strip.Packed, other.Packed)
                    )
                        level.Strips.Add(some[j]);
                }

                if (level.Strips.Count > 0)
                    Beside(depth + 1, level.Strips, left - strip.Packed, next, rest, now);
            }

            chosen.RemoveAt(chosen.Count - 1);
        }

        steps.Take(1 + some.Count / LooksCounted);
    }

    private long LastCut(in PricedStrip strip) =>
        length - strip.Length > group.Pool.Leeway
            ? cross * group.Pool.Breadths[strip.Breadth].Needed
            : 0;

    /// <summary>Of strips as long as the section the first leads.</summary>
    private bool MayLieBeside(in PricedStrip strip, int index, ulong left) =>
        (strip.Length < length || (strip.Length == length && index >= lead))
        && packing.Holds(left, strip.Packed);

    private void Add(long loss, long beside)
    {
        if (beside >= group.Pool.Keepable)
            loss += rip * length;
        if (loss > limit || found.Count > most)
            return;
        found.Add(Column.Of(group, chosen, loss));
        if (bestOnly)
            (limit, hope) = (loss - 1, loss);
    }

    /// <summary>What may still be added for each sum of widths, and the strips to add it with.</summary>
    private sealed class Level(int sums)
    {
        public long[] Least { get; } = new long[sums];
        public List<int> Strips { get; } = [];
    }
}
