using ShopClass.Core.Measure;

namespace ShopClass.Core.Drawings;

/// <summary>What stands around a board: notes with leaders, dimension lines.</summary>
internal static class Margins
{
    /// <summary>Room that notes in rows take on their side of the board.</summary>
    public static double RoomForRows(IReadOnlyList<PlacedNote> notes, double textSize) =>
        notes.Count == 0 ? 0 : (0.9 + (notes.Max(n => n.Row) + 1) * 1.3) * textSize;

    /// <summary>
    /// Notes beyond <paramref name="edge"/> on the far side, in rows above a board that lies or in a column beside one on
    /// end.
    /// </summary>
    public static void AddFarNotes(Sketch sketch, IReadOnlyList<SideNote> notes, double edge)
    {
        var t = sketch.Frame.TextSize;
        if (sketch.Scale.IsUpright)
            AddColumn(sketch, notes, edge);
        else
            foreach (var note in InRows(sketch.Frame, sketch.Scale, notes))
            {
                AddDot(sketch, note.Note);
                AddFlag(sketch, note, edge + (0.9 + 0.65 + note.Row * 1.3) * t);
            }
    }

    /// <summary>Notes in rows beside a board that lies.</summary>
    public static IReadOnlyList<PlacedNote> InRows(
        DrawingFrame frame,
        BoardScale scale,
        IEnumerable<SideNote> notes
    ) => SideNotes.InRows(notes, -scale.Start.X, frame.Width - scale.Start.X, frame.TextSize);

    /// <summary>The marks along the tape on the near edge, each a line across the tape with its figure.</summary>
    /// <returns>Room taken beyond the first row of figures.</returns>
    public static double AddTapeMarks(
        Sketch sketch,
        IReadOnlyList<TapeMark> marks,
        Precision precision
    )
    {
        var t = sketch.Frame.TextSize;
        var notes = marks.Select(m => new SideNote(
            m.At.Ticks * sketch.Scale.PointsPerTick,
            0,
            LengthWriter.Write(m.At, precision),
            Ink.Lettering
        ));
        if (sketch.Scale.IsUpright)
        {
            foreach (var placed in SideNotes.InColumn(notes, t, sketch.Scale.LengthDrawn))
                AddTapeLine(sketch, placed);
            return 0;
        }

        var rows = InRows(sketch.Frame, sketch.Scale, notes);
        foreach (var placed in rows)
            AddFlag(sketch, placed, -(1.6 + placed.Row * 1.3) * t);
        return rows.Count == 0 ? 0 : rows.Max(r => r.Row) * 1.3 * t;
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

    private static void AddDot(Sketch sketch, SideNote note)
    {
        var radius = 0.14 * sketch.Frame.TextSize;
        sketch.Ring(note.Along, note.Across, radius, radius, Ink.Dimension);
    }

    private static void AddFlag(Sketch sketch, PlacedNote placed, double across)
    {
        var t = sketch.Frame.TextSize;
        var note = placed.Note;
        var beyond = across < 0 ? -0.4 * t : 0.4 * t;
        sketch.Line(note.Along, note.Across, note.Along, across + beyond, Ink.Dimension);
        sketch.Words(
            note.Along + (placed.RunsBack ? -0.35 : 0.35) * t,
            across,
            note.Text,
            t,
            placed.RunsBack ? Anchor.End : Anchor.Start,
            note.Ink
        );
    }

    private static void AddTapeLine(Sketch sketch, PlacedNote placed)
    {
        var t = sketch.Frame.TextSize;
        var along = placed.Note.Along;
        sketch.Line(along, 0, along, -0.9 * t, Ink.Dimension);
        sketch.Line(along, -0.9 * t, placed.Place, -1.4 * t, Ink.Dimension);
        sketch.Words(placed.Place, -1.55 * t, placed.Note.Text, t, Anchor.End, placed.Note.Ink);
    }

    private static void AddColumn(Sketch sketch, IReadOnlyList<SideNote> notes, double edge)
    {
        var t = sketch.Frame.TextSize;
        foreach (var placed in SideNotes.InColumn(notes, t, sketch.Scale.LengthDrawn))
        {
            var note = placed.Note;
            AddDot(sketch, note);
            sketch.Line(note.Along, note.Across, note.Along, edge + 0.3 * t, Ink.Dimension);
            sketch.Line(note.Along, edge + 0.3 * t, placed.Place, edge + t, Ink.Dimension);
            sketch.Words(
                placed.Place,
                edge + 1.2 * t,
                Short(sketch, note.Text, edge),
                t,
                Anchor.Start,
                note.Ink
            );
        }
    }

    // Beside a board on end there is little room: what is too long keeps its name, and the words tell the rest.
    private static string Short(Sketch sketch, string text, double edge)
    {
        var t = sketch.Frame.TextSize;
        var room = sketch.Frame.Width - sketch.Scale.Start.X - edge - 1.2 * t;
        return LetterWidths.Of(text, t) <= room ? text : text.Split(',')[0];
    }
}
