using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Drawings;

/// <summary>The names of a board's defects, written beside its far edge.</summary>
internal static class DefectNotes
{
    /// <summary>A note for each defect, its number on the board and what it is, and for each end to be trimmed.</summary>
    public static IReadOnlyList<SideNote> Of(Board board, BoardScale scale)
    {
        var notes = board.Defects.Select(
            (d, i) => NoteAt(scale, d.Place, $"{i + 1} {Words(d.Kind)}{Words(d.Reach)}")
        );
        var trims = new[]
        {
            (Length.Zero, board.TrimStart),
            (board.Length - board.TrimEnd, board.Length),
        }
            .Where(t => t.Item2 > t.Item1)
            .Select(t => new BoardRect(
                t.Item1,
                t.Item2,
                Length.Zero,
                BoardScale.WidthAt(board, t.Item1)
            ))
            .Select(rect => NoteAt(scale, rect, "end trim"));
        return [.. notes, .. trims];
    }

    /// <summary>How much room the names take beyond the far edge of a board that lies.</summary>
    public static double RoomFor(Board board, BoardScale scale, DrawingFrame frame) =>
        scale.IsUpright
            ? 0
            : Margins.RoomForRows(Margins.InRows(frame, scale, Of(board, scale)), frame.TextSize);

    /// <summary>A defect's name in the shop.</summary>
    public static string Words(DefectKind kind) =>
        kind switch
        {
            DefectKind.Knot => "knot",
            DefectKind.Split => "split",
            DefectKind.Check => "check",
            DefectKind.Wane => "wane",
            DefectKind.Hole => "hole",
            DefectKind.Pith => "pith",
            DefectKind.PitchPocket => "pitch pocket",
            DefectKind.Stain => "stain",
            DefectKind.Other => "bad place",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of defect."),
        };

    private static SideNote NoteAt(BoardScale scale, BoardRect rect, string text) =>
        new(
            (rect.From.Ticks + rect.To.Ticks) / 2.0 * scale.PointsPerTick,
            rect.Far.Ticks * scale.PointsPerTick,
            text,
            Ink.Quiet
        );

    private static string Words(DefectReach reach) =>
        reach switch
        {
            DefectReach.Through => "",
            DefectReach.MarkedFace => ", this face",
            DefectReach.BackFace => ", back face",
            _ => throw new ArgumentOutOfRangeException(nameof(reach), reach, "Not a reach."),
        };
}
