using ShopClass.Core.Courses;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Sawing.Ordering;

/// <summary>Why a line was taken before the others that were left in its piece.</summary>
internal enum Turn
{
    /// <summary>It is the next one from the marked end.</summary>
    FromTheMarkedEnd,

    /// <summary>It takes a bad end off.</summary>
    EndTrim,

    /// <summary>It takes the longest leftover off.</summary>
    LongLeftover,

    /// <summary>Any other order would leave less to hold.</summary>
    ToKeepLength,
}

/// <summary>A crosscut line in its turn, with the stretch of wood that is still in one piece then.</summary>
internal readonly record struct TurnOf(SawLine Line, Stretch Piece, Turn Why);

/// <summary>
/// The order of the crosscuts through one piece. Works over every way of taking the piece apart (a table over pairs of
/// lines, so the work grows with the cube of their number) and takes the one that is easiest to hold.
/// </summary>
internal sealed class HoldingOrder
{
    private readonly CourseRules rules;
    private readonly IReadOnlyList<SawLine> lines;
    private readonly IReadOnlyList<Stretch> pieces;
    private readonly IReadOnlyList<bool> isWaste;
    private readonly Func<SawLine, bool> isEndTrim;
    private readonly (int ToVise, int OffBench)[,] cost;

    private HoldingOrder(
        CourseRules rules,
        Stretch piece,
        IReadOnlyList<SawLine> lines,
        IReadOnlyList<Stretch> kept,
        Func<SawLine, bool> isEndTrim
    )
    {
        this.rules = rules;
        this.lines = lines;
        this.isEndTrim = isEndTrim;
        pieces = SawLines.Between(piece, lines);
        isWaste = [.. pieces.Select(p => !kept.Any(p.Holds))];
        cost = new (int, int)[lines.Count + 1, lines.Count + 1];
        for (var count = 1; count <= lines.Count; count++)
        for (var first = 0; first + count <= lines.Count; first++)
            cost[first, first + count] = Possible(first, first + count)
                .Min(cut => CostOf(cut, first, first + count));
    }

    /// <summary>The lines in the order they are sawn.</summary>
    public static IReadOnlyList<TurnOf> Of(
        CourseRules rules,
        Stretch piece,
        IReadOnlyList<SawLine> lines,
        IReadOnlyList<Stretch> kept,
        Func<SawLine, bool> isEndTrim
    )
    {
        var turns = new List<TurnOf>();
        new HoldingOrder(rules, piece, lines, kept, isEndTrim).TakeApart(0, lines.Count, turns);
        return turns;
    }

    /// <summary>Takes the piece that holds the lines from <paramref name="first"/> up to <paramref name="end"/> apart.</summary>
    private void TakeApart(int first, int end, List<TurnOf> turns)
    {
        if (first == end)
            return;
        var (cut, why) = Choose(first, end);
        turns.Add(new(lines[cut], Whole(first, end), why));
        TakeApart(first, cut, turns);
        TakeApart(cut + 1, end, turns);
    }

    private (int Cut, Turn Why) Choose(int first, int end)
    {
        var best = Possible(first, end)
            .Where(cut => CostOf(cut, first, end) == cost[first, end])
            .ToList();
        foreach (var cut in best.Where(cut => isEndTrim(lines[cut])))
            return (cut, Turn.EndTrim);
        var leftover = best.Select(cut => (Cut: cut, Long: LeftoverFreed(cut, first, end)))
            .Where(x => x.Long >= rules.ShortestOffcut)
            .OrderByDescending(x => x.Long)
            .ThenBy(x => x.Cut)
            .Take(1)
            .ToList();
        if (leftover.Count > 0 && end - first > 1)
            return (leftover[0].Cut, Turn.LongLeftover);
        return (best[0], best[0] == first ? Turn.FromTheMarkedEnd : Turn.ToKeepLength);
    }

    /// <summary>
    /// The cuts that can be the next. One that takes off less than a kerf beside another kerf can only follow that other:
    /// before it, the saw would take its whole width.
    /// </summary>
    private IEnumerable<int> Possible(int first, int end) =>
        Enumerable
            .Range(first, end - first)
            .Where(cut => cut == first || pieces[cut].Long > Length.Zero);

    /// <summary>The leftover that this cut sets free at an end of the piece.</summary>
    private Length LeftoverFreed(int cut, int first, int end)
    {
        var near = cut == first && isWaste[first] ? pieces[first].Long : Length.Zero;
        var far = cut == end - 1 && isWaste[end] ? pieces[end].Long : Length.Zero;
        return Length.Max(near, far);
    }

    private (int ToVise, int OffBench) CostOf(int cut, int first, int end)
    {
        var whole = Whole(first, end);
        var held = Length.Max(lines[cut].Kerf.From - whole.From, whole.To - lines[cut].Kerf.To);
        var support = Holding.ForCrosscut(rules, whole.Long, held);
        var near = cost[first, cut];
        var far = cost[cut + 1, end];
        return (
            near.ToVise + far.ToVise + (support is Support.Vise ? 1 : 0),
            near.OffBench + far.OffBench + (support is Support.SawBench ? 0 : 1)
        );
    }

    private Stretch Whole(int first, int end) => new(pieces[first].From, pieces[end].To);
}
