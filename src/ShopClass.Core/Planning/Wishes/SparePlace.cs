using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning.Wishes;

/// <summary>Finds room for one more blank of a part in a leftover.</summary>
internal static class SparePlace
{
    /// <summary>
    /// Where a blank of the part would lie in this leftover, nearest its start and near edge, clear of what the part must be
    /// clear of; null where there is no room.
    /// </summary>
    public static BoardRect? In(BoardRect left, Board board, Part part, CourseRules rules)
    {
        if (BlankNeeds.ThicknessProblem(part, rules, board) is not null)
            return null;
        var need = BlankNeeds.OnePiece(part, rules, board.Surfacing);
        var across = need.Width;
        var keepsBothEdges =
            board.HasStraightEdges
            && left.Across == board.SmallestWidth
            && left.Across >= BlankNeeds.WidthBetweenStraightEdges(part);
        if (left.Across < across && keepsBothEdges)
            across = left.Across;
        var within = left with
        {
            From = Length.Max(left.From, board.TrimStart),
            To = Length.Min(left.To, board.Length - board.TrimEnd),
        };
        Defect[] bad = [.. board.Defects.Where(d => d.Place.Overlaps(within))];
        return Corners(within, bad)
            .Select(at => new BoardRect(at.From, at.From + need.Length, at.Near, at.Near + across))
            .Where(place => within.Contains(place) && MayCover(part, place, bad))
            .Select(place => (BoardRect?)place)
            .FirstOrDefault();
    }

    /// <summary>Whether the part may cover what bad places lie in the rectangle: none, or all hidden on one face.</summary>
    public static bool MayCover(Part part, BoardRect place, IEnumerable<Defect> bad)
    {
        DefectReach? hidden = null;
        foreach (var defect in bad.Where(d => d.Place.Overlaps(place)))
        {
            if (!part.AcceptsHiddenDefect || defect.Reach is DefectReach.Through)
                return false;
            if (hidden is { } reach && reach != defect.Reach)
                return false;
            hidden = defect.Reach;
        }

        return true;
    }

    private static IEnumerable<(Length From, Length Near)> Corners(
        BoardRect within,
        IReadOnlyList<Defect> bad
    ) =>
        from at in bad.Select(d => d.Place.To).Prepend(within.From).Distinct().Order()
        from near in bad.Select(d => d.Place.Far).Prepend(within.Near).Distinct().Order()
        select (at, near);
}
