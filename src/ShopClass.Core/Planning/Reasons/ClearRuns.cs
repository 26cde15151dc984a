using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Reasons;

/// <summary>A stretch of board, between its trims, that is clear over some width from an edge outwards.</summary>
/// <param name="From">Where it begins along the board.</param>
/// <param name="To">Where it ends.</param>
internal readonly record struct ClearRun(Length From, Length To)
{
    /// <summary>How long it is.</summary>
    public Length Along => To - From;
}

/// <summary>Finds the clear stretches of a board.</summary>
internal static class ClearRuns
{
    /// <summary>
    /// Every stretch along the board over which a strip this wide lies clear, wherever it lies across the board; none that
    /// lies within another. Along the board in order.
    /// </summary>
    /// <param name="board">The board.</param>
    /// <param name="width">How wide the strip is.</param>
    /// <param name="onlyThrough">Whether bad places that show on one face only do not matter.</param>
    /// <remarks>
    /// A strip that lies clear can be moved towards the near edge until it meets that edge or a bad place, so only those
    /// places across the board are looked at.
    /// </remarks>
    public static IReadOnlyList<ClearRun> Of(Board board, Length width, bool onlyThrough = false)
    {
        BoardRect[] bad =
        [
            .. board
                .Defects.Where(d => !onlyThrough || d.Reach is DefectReach.Through)
                .Select(d => d.Place),
        ];
        ClearRun[] all =
        [
            .. bad.Select(b => b.Far)
                .Prepend(Length.Zero)
                .Where(near => near + width <= board.SmallestWidth)
                .Distinct()
                .SelectMany(near => Beside(board, bad, near, near + width))
                .Distinct(),
        ];
        return [.. all.Where(run => !all.Any(other => Holds(other, run))).OrderBy(r => r.From)];
    }

    /// <summary>How many pieces this long fit one after another, a kerf between them.</summary>
    public static int Count(IReadOnlyList<ClearRun> runs, Length each, Length kerf)
    {
        var count = 0;
        Length? ready = null;
        while (
            runs.Select(r => ready is { } at ? Length.Max(at, r.From) : r.From)
                .Zip(runs, (from, run) => (From: from, Fits: from + each <= run.To))
                .Where(place => place.Fits)
                .Select(place => (Length?)place.From)
                .Min()
                is { } next
        )
        {
            count++;
            ready = next + each + kerf;
        }

        return count;
    }

    private static bool Holds(ClearRun outer, ClearRun inner) =>
        outer != inner && outer.From <= inner.From && inner.To <= outer.To;

    private static IEnumerable<ClearRun> Beside(
        Board board,
        IReadOnlyList<BoardRect> bad,
        Length near,
        Length far
    )
    {
        var end = board.Length - board.TrimEnd;
        var from = board.TrimStart;
        foreach (var place in bad.Where(b => b.Near < far && near < b.Far).OrderBy(b => b.From))
        {
            var to = Length.Min(place.From, end);
            if (to > from)
                yield return new(from, to);
            from = Length.Max(from, place.To);
        }

        if (end > from)
            yield return new(from, end);
    }
}
