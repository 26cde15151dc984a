using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Sawing.Ordering;

namespace ShopClass.Core.Planning.Wishes;

/// <summary>The wood a layout leaves over, piece by piece, as the cuts will leave it.</summary>
internal static class LeftWood
{
    /// <summary>Every leftover between the board's trims that has any area.</summary>
    public static IReadOnlyList<BoardRect> On(LaidBoard laid)
    {
        var (board, kerf) = (laid.Board, laid.Rules.CrosscutKerf);
        var found = new List<BoardRect>();
        var whole = new Stretch(Length.Zero, board.SmallestWidth);
        var from = board.TrimStart;
        foreach (var length in laid.Lengths)
        {
            Add(found, new(from, length.Along.From - kerf), whole);
            AddWithin(found, laid, length);
            from = length.Along.To + kerf;
        }

        Add(found, new(from, board.Length - board.TrimEnd), whole);
        return found;
    }

    /// <summary>Whether a leftover is worth keeping: as big as the course asks, and no bad place right through it.</summary>
    public static bool IsWorthKeeping(LaidBoard laid, BoardRect rect) =>
        rect.Along >= laid.Rules.ShortestOffcut
        && rect.Across >= laid.Rules.NarrowestOffcut
        && !laid.Board.Defects.Any(d => d.Reach is DefectReach.Through && d.Place.Overlaps(rect));

    private static void AddWithin(List<BoardRect> found, LaidBoard laid, BoardLength length)
    {
        var kerf = laid.Rules.CrosscutKerf;
        var across = new Stretch(Length.Zero, laid.Board.SmallestWidth);
        foreach (var strip in SawLines.Between(across, length.RipLines))
        {
            var from = length.Along.From;
            foreach (
                var blank in laid
                    .Blanks.Select(b => b.Rect)
                    .Where(r =>
                        strip.From <= r.Near
                        && r.Far <= strip.To
                        && length.Along.From <= r.From
                        && r.To <= length.Along.To
                    )
                    .OrderBy(r => r.From)
            )
            {
                Add(found, new(from, blank.From - kerf), strip);
                from = blank.To + kerf;
            }

            Add(found, new(from, length.Along.To), strip);
        }
    }

    private static void Add(List<BoardRect> found, Stretch along, Stretch across)
    {
        if (along.Long > Length.Zero && across.Long > Length.Zero)
            found.Add(new(along.From, along.To, across.From, across.To));
    }
}
