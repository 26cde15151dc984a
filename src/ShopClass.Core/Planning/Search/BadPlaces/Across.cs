namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>A strip's place across its section.</summary>
internal readonly record struct Band(long Near, long Far);

/// <summary>One way to lay a section's strips across the board.</summary>
/// <param name="Rips">Rips it takes.</param>
/// <param name="IsByRule">Whether the strips keep less surplus than an offcut worth keeping.</param>
/// <param name="Bands">The strips' places, in the order the section lists its strips.</param>
internal sealed record Arrangement(int Rips, bool IsByRule, Band[] Bands);

/// <summary>
/// All ways to lay a section's strips across the board that can be better than another, as far as bad places go. Strips may
/// keep surplus width, all together less than an offcut worth keeping; a gap or an edge ripped off costs a rip.
/// </summary>
/// <remarks>
/// Enough ways: any other can be turned into one of these by moving edges, with no rip more. Between the near edge and the
/// last gap every strip is moved toward the near edge until it lies next to the one before or touches the far edge of
/// a bad place (the one before then grows, or there was a gap already). What lies past the last gap and reaches the board's
/// far edge is moved the other way, and grows nothing it need not.
/// </remarks>
internal sealed class Across(Stock stock, long keepable)
{
    private readonly List<Arrangement> found = [];
    private IReadOnlyList<StripOption> strips = [];
    private Band[] bands = [];
    private long[] fars = [];
    private long[] nears = [];

    /// <summary>The ways for these strips, where only some bad places (bits) can be met.</summary>
    public IReadOnlyList<Arrangement> Of(IReadOnlyList<StripOption> some, int bad)
    {
        found.Clear();
        strips = some;
        bands = new Band[some.Count];
        var places = stock.Bad.Where((_, i) => (bad >> i & 1) == 1).ToList();
        fars = [.. places.Select(b => b.Far).Where(f => f < stock.Width).Distinct().Order()];
        nears = [.. places.Select(b => b.Near).Where(n => n > 0).Distinct().OrderDescending()];
        FromNear(new(0, -1, 0, 0, 0, 0, false, 0));
        return [.. found];
    }

    private void FromNear(State at)
    {
        if (at.Placed == (1 << strips.Count) - 1)
        {
            Finish(at);
            return;
        }

        for (var s = 0; s < strips.Count; s++)
        {
            if ((at.Placed >> s & 1) == 1 || HasTwinBefore(s, at.Placed))
                continue;
            PlaceFromNear(s, at);
            PlaceAtFarEdge(s, at);
        }
    }

    private void PlaceFromNear(int s, State at)
    {
        var width = strips[s].Width;
        foreach (var near in fars.Where(f => f > at.Ready).Prepend(at.Ready))
        {
            if (near + width > stock.Width)
                break;
            Band[] before = [.. bands];
            bands[s] = new(near, near + width);
            var next = at.With(s, near + width + stock.RipKerf);
            if (near == at.Ready)
            {
                FromNear(at.Last < 0 ? next with { Block = 1 << s } : next);
                continue;
            }

            FromNear(next with { Gaps = at.Gaps + 1, Floats = true, Block = 1 << s });
            if (at.Last < 0)
                continue;
            var step = near - at.Ready;
            if (at.Floats)
            {
                for (var i = 0; i < bands.Length; i++)
                {
                    if ((at.Block >> i & 1) == 1)
                        bands[i] = new(bands[i].Near + step, bands[i].Far + step);
                }

                FromNear(next);
                Array.Copy(before, bands, bands.Length);
                bands[s] = new(near, near + width);
            }

            // What the strips between two gaps keep is not held against them here: a little less than what may be.
            next = next with
            {
                Surplus = at.Surplus + (at.Floats ? 0 : step),
                Kept = at.Kept + step,
            };
            if (next.Surplus < keepable)
            {
                bands[at.Last] = bands[at.Last] with { Far = near - stock.RipKerf };
                FromNear(next);
            }

            Array.Copy(before, bands, bands.Length);
        }
    }

    /// <summary>The strip at the board's far edge, with a gap before what will lie next to it.</summary>
    private void PlaceAtFarEdge(int s, State at)
    {
        var near = stock.Width - strips[s].Width;
        if (near <= at.Ready)
            return;
        bands[s] = new(near, stock.Width);
        GrowFromFar(at with { Placed = at.Placed | 1 << s, Last = s, Gaps = at.Gaps + 1 });
    }

    private void GrowFromFar(State at)
    {
        if (at.Placed == (1 << strips.Count) - 1)
        {
            Note(strips.Count - 1 + at.Gaps, at.Kept);
            return;
        }

        var until = bands[at.Last].Near - stock.RipKerf;
        for (var s = 0; s < strips.Count; s++)
        {
            if ((at.Placed >> s & 1) == 1 || HasTwinBefore(s, at.Placed))
                continue;
            foreach (var far in nears.Where(n => n < until).Prepend(until))
            {
                var near = far - strips[s].Width;
                var more = until - far;
                if (near <= at.Ready || at.Surplus + more >= keepable)
                    break;
                var before = bands[at.Last];
                bands[at.Last] = before with { Near = far + stock.RipKerf };
                bands[s] = new(near, far);
                GrowFromFar(
                    at with
                    {
                        Placed = at.Placed | 1 << s,
                        Last = s,
                        Surplus = at.Surplus + more,
                        Kept = at.Kept + more,
                    }
                );
                bands[at.Last] = before;
            }
        }
    }

    private void Finish(State at)
    {
        var rips = strips.Count - 1 + at.Gaps;
        var before = bands[at.Last];
        var beside = stock.Width - before.Far;
        Note(rips + (beside > 0 ? 1 : 0), at.Kept);
        if (beside == 0 || at.Surplus + beside >= keepable)
            return;
        bands[at.Last] = before with { Far = stock.Width };
        Note(rips, at.Kept + beside);
        bands[at.Last] = before;
    }

    private void Note(int rips, long kept) => found.Add(new(rips, kept < keepable, [.. bands]));

    /// <param name="Placed">Strips placed, as bits.</param>
    /// <param name="Last">The strip placed last, whose free edge may still move; -1 for none.</param>
    /// <param name="Ready">Nearest place for the next strip from the near edge.</param>
    /// <param name="Gaps">Gaps so far.</param>
    /// <param name="Surplus">Surplus width held against the strips so far.</param>
    /// <param name="Kept">Surplus width they really keep.</param>
    /// <param name="Floats">Whether a gap lies before the strips that touch the last one.</param>
    /// <param name="Block">These strips, as bits.</param>
    private readonly record struct State(
        int Placed,
        int Last,
        long Ready,
        int Gaps,
        long Surplus,
        long Kept,
        bool Floats,
        int Block
    )
    {
        public State With(int strip, long ready) =>
            this with
            {
                Placed = Placed | 1 << strip,
                Last = strip,
                Ready = ready,
                Block = Block | 1 << strip,
            };
    }

    private bool HasTwinBefore(int s, int placed)
    {
        for (var i = 0; i < s; i++)
        {
            if ((placed >> i & 1) == 0 && ReferenceEquals(strips[i], strips[s]))
                return true;
        }

        return false;
    }
}
