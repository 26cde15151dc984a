using ShopClass.Core.Measure;

namespace ShopClass.Core.Drawings;

/// <summary>What stands around a board: notes with leaders, dimension lines.</summary>
internal static class Margins
{
    /// <summary>Room that notes in rows take on their side of the board, with the dimension line beyond them.</summary>
    public static double RoomForRows(IReadOnlyList<PlacedNote> notes, double textSize) =>
        notes.Count == 0 ? 0 : (0.9 + (notes.Max(n => n.Row) + 1) * 1.3 + 1.9) * textSize;

    /// <summary>Notes beside the far edge, in rows above a board that lies or in a column beside one on end.</summary>
    public static void AddFarNotes(Sketch sketch, IReadOnlyList<SideNote> notes)
    {
        var t = sketch.Frame.TextSize;
        if (sketch.Scale.IsUpright)
            AddColumn(sketch, notes);
        else
            foreach (
                var note in SideNotes.InRows(notes, 0, sketch.Frame.Width - sketch.Scale.Start.X, t)
            )
                AddFlag(sketch, note, sketch.Scale.WidthDrawn + (0.9 + 0.65 + note.Row * 1.3) * t);
    }

    /// <summary>A dimension line along the board between two places, beyond the far edge.</summary>
    public static void AddLength(Sketch sketch, Length from, Length to, double across, string text)
    {
        var (a, b) = (
            from.Ticks * sketch.Scale.PointsPerTick,
            to.Ticks * sketch.Scale.PointsPerTick
        );
        var t = sketch.Frame.TextSize;
        var half = Math.Min((b - a) / 2, (LetterWidths.Of(text, t) / 2) + 0.5 * t);
        var middle = (a + b) / 2;
        sketch.Line(a, across, middle - half, across, Ink.Dimension);
        sketch.Line(middle + half, across, b, across, Ink.Dimension);
        AddEnd(sketch, a, across);
        AddEnd(sketch, b, across);
        sketch.Words(middle, across, text, t, Anchor.Middle, Ink.Dimension, turnsWithBoard: true);
    }

    /// <summary>A dimension line across the board, before its start or beyond its end.</summary>
    public static void AddWidth(Sketch sketch, double along, Length width, string text, bool after)
    {
        var t = sketch.Frame.TextSize;
        var far = width.Ticks * sketch.Scale.PointsPerTick;
        sketch.Line(along, 0, along, far, Ink.Dimension);
        AddEnd(sketch, along, 0);
        AddEnd(sketch, along, far);
        var offset = sketch.Scale.IsUpright ? 0.85 * t : 0.45 * t;
        var anchor =
            sketch.Scale.IsUpright ? Anchor.Middle
            : after ? Anchor.Start
            : Anchor.End;
        sketch.Words(along + (after ? offset : -offset), far / 2, text, t, anchor, Ink.Dimension);
    }

    private static void AddEnd(Sketch sketch, double along, double across)
    {
        var d = 0.22 * sketch.Frame.TextSize;
        sketch.Line(along - d, across - d, along + d, across + d, Ink.Dimension);
    }

    private static void AddFlag(Sketch sketch, PlacedNote placed, double across)
    {
        var t = sketch.Frame.TextSize;
        var note = placed.Note;
        sketch.Line(note.Along, note.Across, note.Along, across - 0.1 * t, Ink.Dimension);
        sketch.Words(
            note.Along + (placed.RunsBack ? -0.35 : 0.35) * t,
            across,
            note.Text,
            t,
            placed.RunsBack ? Anchor.End : Anchor.Start,
            note.Ink
        );
    }

    private static void AddColumn(Sketch sketch, IReadOnlyList<SideNote> notes)
    {
        var t = sketch.Frame.TextSize;
        var edge = sketch.Scale.WidthDrawn;
        foreach (var placed in SideNotes.InColumn(notes, t, sketch.Scale.LengthDrawn))
        {
            var note = placed.Note;
            sketch.Line(note.Along, note.Across, note.Along, edge + 0.3 * t, Ink.Dimension);
            sketch.Line(note.Along, edge + 0.3 * t, placed.Place, edge + t, Ink.Dimension);
            sketch.Words(placed.Place, edge + 1.2 * t, note.Text, t, Anchor.Start, note.Ink);
        }
    }
}
