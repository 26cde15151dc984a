namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>What is known about one board with bad places.</summary>
/// <param name="IsWhole">Whether the search came to its end.</param>
/// <param name="Least">Cost and length no plan on this board goes below; null where there is no plan at all, or none was known to be.</param>
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
    private readonly List<Node>?[] nodes;
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
        nodes = new List<Node>?[target + 1];
        open = new(Comparer<Rank>.Create(Compare));
    }

    /// <summary>Sections placed from the start, the newest last.</summary>
    /// <param name="Code">Blanks placed.</param>
    /// <param name="End">The soonest end of the newest section.</param>
    /// <param name="Slack">How far that end may move on without a gap after it.</param>
    /// <param name="Slope">What each tick it moves on costs of sawing.</param>
    /// <param name="Cost">The least cost so far.</param>
    /// <param name="Option">The newest section.</param>
    /// <param name="At">Its place.</param>
    /// <param name="Before">The sections before it.</param>
    internal sealed record Node(
        int Code,
        long End,
        long Slack,
        Int128 Slope,
        Cost Cost,
        SectionOption? Option,
        Outcome At,
        Node? Before
    )
    {
        public bool IsBeaten { get; set; }

        /// <summary>Whether a gap before the newest section is paid for.</summary>
        public bool IsAfterGap { get; init; }
    }

    /// <summary>A beginning to go on from, or a section to look at after it, at the place with this number among its own.</summary>
    private readonly record struct Waiting(Node Node, SectionOption Option, long From, int Start);

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
        Array.Clear(nodes);
        open.Clear();
        (Cost Cost, long Length)? least = null;
        var laid = 0;
        Add(new(0, stock.Start - stock.CrosscutKerf, 0, 0, default, null, default, null));
        while (open.TryDequeue(out var waiting, out var rank))
        {
            var bound = (rank.Cost, rank.Length);
            if (IsReached(bound))
                return new(true, least ?? have);
            var node = waiting.Node;
            if (node.IsBeaten)
                continue;
            if (!steps.Take() || steps.Taken >= limit)
                return new(false, least ?? bound);
            if (waiting.Option is not null)
                TakeUp(waiting);
            else if (node.Code != target)
                Expand(node);
            else
            {
                least ??= bound;
                if (layouts.Lay(node) is { } sections)
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
    private void Expand(Node node)
    {
        var rest = lattice.Packed(target - node.Code);
        steps.Take(1 + options.Count / 16);
        foreach (var option in options)
        {
            if (lattice.Holds(rest, option.Packed))
                PutBy(new(node, option, node.End + stock.CrosscutKerf, -1));
        }
    }

    private void PutBy(Waiting waiting)
    {
        var (node, option) = (waiting.Node, waiting.Option);
        var moved = waiting.From - node.End - stock.CrosscutKerf;
        var cost = new Cost(node.Slope * moved, 0);
        if (moved > node.Slack || taste.Compare(gap, cost) < 0)
            cost = gap;
        var code = node.Code + option.Code;
        var end = waiting.From + option.Length;
        if (end > stock.End || Rate(code, end, node.Cost + cost + option.Cost) is not { } rate)
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
        var (node, option) = (waiting.Node, waiting.Option);
        var ready = node.End + stock.CrosscutKerf;
        var moved = waiting.From - ready;
        foreach (var at in fit.At(option, waiting.From))
        {
            var isMovable = at.To == at.From + option.Length && (moved > 0 || node.Slack > 0);
            var movable = isMovable ? fit.Movable(option, at) : 0;
            if (moved > 0)
                Place(node, option, at, new(movable, 0, gap, true));
            if (moved > node.Slack)
                continue;
            var cost = new Cost(node.Slope * moved, 0);
            if (moved > 0 && taste.Compare(gap, cost) <= 0)
                continue;
            var slack = node.Slack == long.MaxValue ? node.Slack : node.Slack - moved;
            Place(node, option, at, new(Math.Min(movable, slack), node.Slope, cost, false));
        }

        if (waiting.Start == AtLimit)
            return;
        // As far on as the sections before may be moved: farther than this only by growing.
        if (waiting.Start < 0 && node.Slack is > 0 and < long.MaxValue)
            PutBy(new(node, option, ready + node.Slack, AtLimit));
        var starts = fit.StartsOf(option);
        var next = waiting.Start + 1;
        while (next < starts.Length && starts[next] <= ready)
            next++;
        if (next < starts.Length)
            PutBy(new(node, option, starts[next], next));
    }

    /// <param name="Slack">How far the section may be moved on as it is.</param>
    /// <param name="Slope">What a tick of that costs.</param>
    /// <param name="Before">What is paid before the section.</param>
    /// <param name="IsGap">Whether that is a gap.</param>
    private readonly record struct Ground(long Slack, Int128 Slope, Cost Before, bool IsGap);

    private void Place(Node node, SectionOption option, Outcome at, Ground on)
    {
        var cost = node.Cost + on.Before + at.Cost;
        var code = node.Code + option.Code;
        var own = (Int128)Score.RipWeight * at.Rips * stock.Board.Thickness.Ticks;
        void Make(long slack, Int128 slope, Cost sum) =>
            Add(new(code, at.To, slack, slope, sum, option, at, node) { IsAfterGap = on.IsGap });
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

    private void Add(Node node)
    {
        if (Rate(node.Code, node.End, node.Cost) is not { } rate)
            return;
        if (IsReached(rate))
            return;
        var list = nodes[node.Code] ??= [];
        steps.Take(1 + list.Count / 8);
        foreach (var other in list)
        {
            if (Beats(other, node))
                return;
        }

        for (var i = list.Count - 1; i >= 0; i--)
        {
            if (!Beats(node, list[i]))
                continue;
            list[i].IsBeaten = true;
            list.RemoveAt(i);
        }

        list.Add(node);
        open.Enqueue(new(node, null!, 0, 0), new(rate.Cost, rate.Length, Left(node.Code), made++));
    }

    /// <summary>Whether all that can come after the second can come after the first, for no more.</summary>
    private bool Beats(Node a, Node b)
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
