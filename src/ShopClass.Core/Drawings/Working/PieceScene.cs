using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Drawings.Working;

/// <summary>
/// Single pieces on the bench, as a right-handed student has them before them: reference edge near, what comes off at the
/// right or at the far edge.
/// </summary>
internal sealed class PieceScene
{
    private const int MostDrawn = 6;
    private readonly CheckedPlan plan;
    private readonly Step step;
    private readonly IReadOnlyList<WorkedPiece> pieces;
    private readonly int more;
    private readonly DrawingFrame frame;
    private readonly double pointsPerTick;
    private readonly double t;
    private readonly List<Shape> shapes = [];

    public PieceScene(
        CheckedPlan plan,
        Step step,
        IReadOnlyList<WorkedPiece> all,
        DrawingFrame frame
    )
    {
        (this.plan, this.step) = (plan, step);
        this.frame = frame with { Upright = false };
        pieces = [.. all.Take(MostDrawn)];
        more = all.Count - pieces.Count;
        t = frame.TextSize;
        var longest = pieces.Max(p => Length.Max(p.Before.Length, p.After.Length).Ticks);
        var wide = pieces.Sum(p => Length.Max(p.Before.Width, p.After.Width).Ticks);
        var room = (
            Along: frame.Width - 11 * t,
            Across: frame.Width
                * (frame.Upright ? 0.9 : 0.3)
                * Math.Min(1, 0.55 + 0.15 * pieces.Count)
        );
        pointsPerTick = Math.Min(
            room.Along / Math.Max(1, longest),
            room.Across / Math.Max(1, wide)
        );
    }

    /// <summary>Whether pieces touch: laid edge to edge to be glued, or side by side to be marked at one stroke.</summary>
    private bool AreTogether =>
        step.Kind is StepKind.JointEdges or StepKind.GlueUp or StepKind.GangMark
        || (step.Kind is StepKind.MarkJoint && pieces.Count > 1);

    private Precision Precision => plan.Request.Rules.Precision;

    public Drawing Drawn()
    {
        var y = 3.4 * t;
        var gap = AreTogether ? 0 : 3.2 * t;
        foreach (var piece in pieces)
        {
            var height = Length.Max(piece.Before.Width, piece.After.Width).Ticks * pointsPerTick;
            Add(piece, y + height);
            y += height + gap;
        }

        y += AreTogether ? 3.2 * t : 0;
        if (more > 0)
        {
            Words(1.5 * t, y, $"and {more} more in the same way", Anchor.Start, Ink.Quiet);
            y += 1.6 * t;
        }

        return new(frame.Width, Math.Round(y + 0.4 * t, 2), step.Title, "", shapes);
    }

    private void Add(WorkedPiece piece, double bottom)
    {
        var board = AsBoard(piece);
        var left = (frame.Width - board.Length.Ticks * pointsPerTick) / 2;
        var scale = BoardScale.At(board, upright: false, pointsPerTick, new(left, bottom));
        var sketch = new Sketch(frame, scale);
        WoodSketch.AddWood(sketch, board);
        JointMarks.AddTo(sketch, piece, Figure, withFigures: piece == pieces[0] || !AreTogether);
        var line = WorkLine.On(piece, step);
        AddWaste(sketch, board, line);
        sketch.Rect(
            new(Length.Zero, board.Length, Length.Zero, board.WidthAtStart),
            Ink.Blank,
            piece.Name
        );
        if (piece.IsReferenced)
            ReferenceMarks.AddTo(sketch, board);
        AddLine(sketch, board, line, isFirst: piece == pieces[0] || !AreTogether);
        HandMarks.AddTo(sketch, board, line, step);
        AddName(sketch, piece, board, line);
        shapes.AddRange(sketch.Shapes);
        AddEnds(piece, scale, line, bottom);
    }

    private static void AddWaste(Sketch sketch, Board board, WorkLine line)
    {
        if (line.TakesLength)
            sketch.Rect(new(line.At, board.Length, Length.Zero, board.WidthAtStart), Ink.Waste);
        if (line.TakesWidth)
            sketch.Rect(new(Length.Zero, board.Length, line.At, board.WidthAtStart), Ink.Waste);
    }

    private void AddLine(Sketch sketch, Board board, WorkLine line, bool isFirst)
    {
        var s = pointsPerTick;
        var ink = step.Line switch
        {
            LineKind.Knife => Ink.KnifeLine,
            LineKind.Gauge => Ink.GaugeLine,
            _ => Ink.PencilLine,
        };
        var (over, at) = (0.7 * t, line.At.Ticks * s);
        if (line.IsAcross)
        {
            var top = board.WidthAtStart.Ticks * s;
            sketch.Line(at, -over, at, top + over, ink);
            if (!isFirst)
                return;
            sketch.Line(at, top + over, at, top + 1.5 * over, Ink.Accent);
            sketch.Words(at, top + 2.6 * over, Figure(line.Figure), t, Anchor.Middle, Ink.Accent);
        }
        else if (line.IsAlong)
        {
            var end = board.Length.Ticks * s;
            sketch.Line(-over, at, end + over, at, ink);
            sketch.Words(end + 1.4 * over, at, Figure(line.Figure), t, Anchor.Start, Ink.Accent);
        }
    }

    /// <summary>As the rule reads it, or exactly where that would mislead.</summary>
    private string Figure(Length length) =>
        length == length.RoundTo(Precision.Step())
            ? LengthWriter.Write(length, Precision)
            : LengthWriter.WriteExact(length, Precision.Unit());

    // In the upper left corner where a hand lies on the piece, in its middle where none does.
    private void AddName(Sketch sketch, WorkedPiece piece, Board board, WorkLine line)
    {
        var s = pointsPerTick;
        var size = Math.Min(1.5 * t, board.WidthAtStart.Ticks * s * 0.7);
        var isHeld = step.Saw is not null && line.IsAcross;
        // In a vise the hand steadies the far end, so the name stands beyond it.
        var start =
            step.Support is Support.Vise ? Math.Max(0.6 * t, 0.38 * line.At.Ticks * s) : 0.6 * t;
        var (along, across) = isHeld
            ? (start, board.WidthAtStart.Ticks * s - 0.75 * size)
            : (board.Length.Ticks * s * 0.46, board.WidthAtStart.Ticks * s / 2);
        sketch.Words(
            along,
            across,
            piece.Name,
            size,
            isHeld ? Anchor.Start : Anchor.Middle,
            Ink.Lettering
        );
    }

    private void AddEnds(WorkedPiece piece, BoardScale scale, WorkLine line, double bottom)
    {
        if (!piece.IsReferenced || (AreTogether && piece != pieces[^1]))
            return;
        var right = scale.Start.X + scale.LengthDrawn;
        // The jaws of a vise stand below the piece, too.
        bottom += step.Support is Support.Vise && line.IsAcross ? 0.8 * t : 0;
        var words = step.Kind is StepKind.SquareEnd ? "becomes the reference end" : "reference end";
        if (step.Kind is StepKind.SquareEnd)
            Words(right, bottom + 1.2 * t, words, Anchor.End, Ink.Quiet);
        else if (!line.TakesWidth && step.Kind is not StepKind.MarkReference)
            Words(scale.Start.X, bottom + 1.2 * t, words, Anchor.Start, Ink.Quiet);
        else
            Words(scale.Start.X, bottom + 1.2 * t, "reference edge", Anchor.Start, Ink.Quiet);
    }

    private void Words(double x, double y, string text, Anchor anchor, Ink ink) =>
        shapes.Add(new Label(Math.Round(x, 2), Math.Round(y, 2), text, t, anchor, ink));

    private static Board AsBoard(WorkedPiece piece)
    {
        var width = Length.Max(piece.Before.Width, piece.After.Width);
        return new()
        {
            Id = piece.Name,
            Name = piece.Name,
            SpeciesId = "",
            Surfacing = Surfacing.S4S,
            Thickness = piece.Before.Thickness,
            WidthAtStart = width,
            WidthAtMiddle = width,
            WidthAtEnd = width,
            Length = Length.Max(piece.Before.Length, piece.After.Length),
        };
    }
}
