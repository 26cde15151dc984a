namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>What is known about boards of which some have bad places.</summary>
/// <param name="IsWhole">Whether the search came to its end.</param>
/// <param name="Least">Cost and length no plan on them goes below; null where there is no plan at all, or none was known to be.</param>
internal sealed record BadBoardAnswer(bool IsWhole, (Cost Cost, long Length)? Least);

/// <summary>
/// Looks for everything out of one board with bad places, section by section from its start, always going on where the least
/// can come of it (A*): what is left costs at least what it would on clear wood of the length that is left. What is kept of
/// sections is the soonest end and how far it may move on at no cost; so nothing real is missed, and what comes out first is a
/// bound. Whether it can be laid out for just that is seen by laying it out.
/// </summary>
internal sealed class BadBoardSearch
{
    /// <summary>The most plans laid out that could be the best.</summary>
    public const int MostLaidOut = 40;

    private const int AtLimit = -2;
    private readonly Lattice lattice;
    private readonly BoardTable clear;
    private readonly Stock stock;
    private readonly IReadOnlyList<SectionOption> options;
    private readonly Steps steps;
    private readonly Taste taste;
    private readonly SectionFit fit;
    private readonly SectionLayouts layouts;
    private readonly Cost gap;
    private readonly List<Beginning>?[] beginnings;
    private readonly PriorityQueue<Waiting, Rank> open;
    private readonly int target;
    private readonly int limit;
    private int made;
    private (Cost Cost, long Length)? have;

    /// <param name="board">The board, and what is known of it.</param>
    /// <param name="target">The blanks wanted out of it.</param>
    /// <param name="steps">Counts the looks.</param>
    /// <param name="limit">How many steps may be taken by its end.</param>
    public BadBoardSearch(BadBoard board, int target, Steps steps, int limit)
    {
        (lattice, clear, stock, taste) = (board.Lattice, board.Clear, board.Stock, board.Taste);
        (fit, layouts, gap) = (board.Fit, board.Layouts, board.Fit.Gap);
        (this.target, this.steps, this.limit) = (target, steps, limit);
        options = board.OptionsFor(target);
        beginnings = new List<Beginning>?[target + 1];
        open = new(Comparer<Rank>.Create(Compare));
    }

    /// <summary>A beginning to go on from, or a section to look at after it, at the place with this number among its own.</summary>
    private readonly record struct Waiting(
        Beginning Beginning,
        SectionOption Option,
        long From,
        int Start
    );

    private readonly record struct Rank(Cost Cost, long Length, int Left, int Made);

    /// <param name="known">What the best plan known on this board costs, and the length it uses; trims left out of the cost.</param>
    /// <param name="tryOut">Lays sections out as they are and says what is the best plan known then.</param>
    public BadBoardAnswer Run(
        (Cost Cost, long Length)? known,
        Func<IReadOnlyList<DraftSection>, (Cost Cost, long Length)?> tryOut
    )
    {
        have = known;
        fit.CanImprove = CanImprove;
        if (taste.LinesFirst)
            return FromStart(tryOut, MostLaidOut);
        // Lines take long to count: only once it has come to them, with a plan known that is as good up to there.
        var rough = FromStart(tryOut, 1);
        if (!rough.IsWhole || rough.Least is not { } bound || IsReached(bound))
            return rough;
        fit.CountLines();
        var whole = FromStart(tryOut, MostLaidOut);
        var isHigher =
            whole.Least is { } l && taste.Compare(l.Cost, l.Length, bound.Cost, bound.Length) > 0;
        return whole.IsWhole || isHigher ? whole : whole with { Least = bound };
    }

    /// <summary>Searches once from the board's start; lines are counted as the board says.</summary>
    /// <param name="tryOut">Lays sections out as they are and says what is the best plan known then.</param>
    /// <param name="mostLaidOut">How many plans that could be the best are laid out.</param>
    public BadBoardAnswer FromStart(
        Func<IReadOnlyList<DraftSection>, (Cost Cost, long Length)?> tryOut,
        int mostLaidOut
    )
    {
        Array.Clear(beginnings);
        open.Clear();
        (Cost Cost, long Length)? least = null;
        var laid = 0;
        Add(new(0, stock.Start - stock.CrosscutKerf, 0, 0, default, null, default, null));
        while (open.TryDequeue(out var waiting, out var rank))
        {
            var bound = (rank.Cost, rank.Length);
            if (IsReached(bound))
                return new(true, least ?? have);
            var beginning = waiting.Beginning;
            if (beginning.IsBeaten)
                continue;
            if (!steps.Take() || steps.Taken >= limit)
                return new(false, least ?? bound);
            if (waiting.Option is not null)
                TakeUp(waiting);
            else if (beginning.Code != target)
                Expand(beginning);
            else
            {
                least ??= bound;
                if (layouts.Lay(beginning) is { } sections)
                    have = tryOut(sections);
                if (IsReached(bound) || ++laid == mostLaidOut)
                    return new(true, least);
            }
        }

        return new(true, least ?? have);
    }

    /// <summary>Whether the best plan known is as good as a bound.</summary>
    private bool IsReached((Cost Cost, long Length) bound) =>
        have is { } h && taste.Compare(h.Cost, h.Length, bound.Cost, bound.Length) <= 0;

    private int Compare(Rank a, Rank b)
    {
        var by = taste.Compare(a.Cost, a.Length, b.Cost, b.Length);
        if (by != 0)
            return by;
        by = a.Left.CompareTo(b.Left);
        return by != 0 ? by : b.Made.CompareTo(a.Made);
    }

    /// <summary>Every section that could come next is put by, to be looked at when its turn comes.</summary>
    private void Expand(Beginning beginning)
    {
        var rest = lattice.Packed(target - beginning.Code);
        steps.Take(1 + options.Count / 16);
        foreach (var option in options)
        {
            if (lattice.Holds(rest, option.Packed))
                PutBy(new(beginning, option, beginning.End + stock.CrosscutKerf, -1));
        }
    }

    private void PutBy(Waiting waiting)
    {
        var (beginning, option) = (waiting.Beginning, waiting.Option);
        var moved = waiting.From - beginning.End - stock.CrosscutKerf;
        var cost = new Cost(beginning.Slope * moved, 0);
        if (moved > beginning.Slack || taste.Compare(gap, cost) < 0)
            cost = gap;
        var code = beginning.Code + option.Code;
        var end = waiting.From + option.Length;
        if (end > stock.End || Rate(code, end, beginning.Cost + cost + option.Cost) is not { } rate)
            return;
        if (IsReached(rate))
            return;
        open.Enqueue(waiting, new(rate.Cost, rate.Length, Left(code) + 1, made++));
    }

    private static int Bits(int code) => System.Numerics.BitOperations.PopCount((uint)code);

    private int Left(int code) => Bits(target - code);

    /// <summary>A section where it was put by for, and the same section at its next place put by again.</summary>
    private void TakeUp(Waiting waiting)
    {
        var (beginning, option) = (waiting.Beginning, waiting.Option);
        var ready = beginning.End + stock.CrosscutKerf;
        var moved = waiting.From - ready;
        foreach (var at in fit.At(option, waiting.From))
        {
            var isMovable = at.To == at.From + option.Length && (moved > 0 || beginning.Slack > 0);
            var movable = isMovable ? fit.Movable(option, at) : 0;
            if (moved > 0)
                Place(beginning, option, at, new(movable, 0, gap, true));
            if (moved > beginning.Slack)
                continue;
            var cost = new Cost(beginning.Slope * moved, 0);
            if (moved > 0 && taste.Compare(gap, cost) <= 0)
                continue;
            var slack =
                beginning.Slack == long.MaxValue ? beginning.Slack : beginning.Slack - moved;
            Place(
                beginning,
                option,
                at,
                new(Math.Min(movable, slack), beginning.Slope, cost, false)
            );
        }

        if (waiting.Start == AtLimit)
            return;
        // As far on as the sections before may be moved: farther than this only by growing.
        if (waiting.Start < 0 && beginning.Slack is > 0 and < long.MaxValue)
            PutBy(new(beginning, option, ready + beginning.Slack, AtLimit));
        var starts = fit.StartsOf(option);
        var next = waiting.Start + 1;
        while (next < starts.Length && starts[next] <= ready)
            next++;
        if (next < starts.Length)
            PutBy(new(beginning, option, starts[next], next));
    }

    /// <param name="Slack">How far the section may be moved on as it is.</param>
    /// <param name="Slope">What a tick of that costs.</param>
    /// <param name="Before">What is paid before the section.</param>
    /// <param name="IsGap">Whether that is a gap.</param>
    private readonly record struct Ground(long Slack, Int128 Slope, Cost Before, bool IsGap);

    private void Place(Beginning beginning, SectionOption option, Outcome at, Ground on)
    {
        var cost = beginning.Cost + on.Before + at.Cost;
        var code = beginning.Code + option.Code;
        var own = (Int128)Score.RipWeight * at.Rips * stock.Board.Thickness.Ticks;
        void Make(long slack, Int128 slope, Cost sum) =>
            Add(
                new(code, at.To, slack, slope, sum, option, at, beginning) { IsAfterGap = on.IsGap }
            );
        Make(at.Room, own, cost);
        if (on.Slack > 0 && (at.Room < on.Slack || on.Slope < own))
            Make(on.Slack, on.Slope, cost);
    }

    /// <summary>The least that can come of a beginning, or null where the rest has no room even if it is clear.</summary>
    private (Cost Cost, long Length)? Rate(int code, long end, Cost cost)
    {
        if (code == target)
            return (cost, end);
        var begin = end + stock.CrosscutKerf;
        return clear.Least(target - code, stock.End - begin) is { } rest
            ? (cost + rest.Cost, begin + rest.Length)
            : null;
    }

    /// <summary>Whether a section of that cost that ends there can be of a plan better than the best known, the rest on clear wood.</summary>
    private bool CanImprove(SectionOption option, Cost cost, long end)
    {
        if (have is not { } h)
            return true;
        var others = target - option.Code;
        if (others == 0)
            return taste.Compare(cost, end, h.Cost, h.Length) < 0;
        return clear.Least(others, stock.Usable) is { } rest
            && taste.Compare(cost + rest.Cost, end, h.Cost, h.Length) < 0;
    }

    private void Add(Beginning beginning)
    {
        if (Rate(beginning.Code, beginning.End, beginning.Cost) is not { } rate)
            return;
        if (IsReached(rate))
            return;
        var list = beginnings[beginning.Code] ??= [];
        steps.Take(1 + list.Count / 8);
        foreach (var other in list)
        {
            if (Beats(other, beginning))
                return;
        }

        for (var i = list.Count - 1; i >= 0; i--)
        {
            if (!Beats(beginning, list[i]))
                continue;
            list[i].IsBeaten = true;
            list.RemoveAt(i);
        }

        list.Add(beginning);
        open.Enqueue(
            new(beginning, null!, 0, 0),
            new(rate.Cost, rate.Length, Left(beginning.Code), made++)
        );
    }

    /// <summary>Whether all that can come after the second can come after the first, for no more.</summary>
    private bool Beats(Beginning a, Beginning b)
    {
        if (a.End > b.End)
            return false;
        var reaches =
            (
                a.Slack == long.MaxValue
                || (b.Slack != long.MaxValue && a.End + a.Slack >= b.End + b.Slack)
            )
            && (a.Slope <= b.Slope || b.Slack == 0)
            && a.Slope * (b.End - a.End) < gap.Effort;
        var cost = reaches ? a.Cost + new Cost(a.Slope * (b.End - a.End), 0) : a.Cost + gap;
        return taste.Compare(cost, b.Cost) <= 0;
    }
}
