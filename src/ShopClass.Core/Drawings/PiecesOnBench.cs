using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Drawings;

/// <summary>The pieces of one board, drawn apart where they have been sawn apart.</summary>
internal sealed class PiecesOnBench
{
    private readonly PlanOnBoard plan;
    private readonly DrawingFrame frame;
    private readonly IReadOnlyList<SpreadPiece> pieces;
    private readonly BoardScale scale;
    private readonly double gap;
    private readonly double edge;
    private readonly List<SideNote> notes = [];

    /// <summary>Sets the pieces out below <paramref name="top"/>.</summary>
    public PiecesOnBench(
        PlanOnBoard plan,
        IReadOnlyList<Piece> pieces,
        DrawingFrame frame,
        double top
    )
    {
        (this.plan, this.frame) = (plan, frame);
        this.pieces = Spread.Apart(pieces);
        var t = frame.TextSize;
        gap = 0.9 * t;
        var gaps = (
            Along: this.pieces.Select(p => p.Along).DefaultIfEmpty(0).Max() * gap,
            Across: this.pieces.Select(p => p.Across).DefaultIfEmpty(0).Max() * gap
        );
        var room = frame.Upright
            ? (Along: frame.Width * 2.6, Across: frame.Width - 7 * t)
            : (Along: frame.Width - 2.4 * t, Across: frame.Width * 0.34);
        var width = BoardScale.GreatestWidth(plan.Board).Ticks;
        var pointsPerTick = Math.Min(
            Math.Max(room.Along - gaps.Along, room.Along / 4)
                / Math.Max(1, plan.Board.Length.Ticks),
            Math.Max(room.Across - gaps.Across, room.Across / 4) / Math.Max(1, width)
        );
        edge = width * pointsPerTick + gaps.Across;
        scale = BoardScale.At(plan.Board, frame.Upright, pointsPerTick, new(1.2 * t, top));
        if (!frame.Upright)
            scale = scale.StartingAt(new(1.2 * t, top + edge + RoomForNotes()));
        Bottom =
            scale.Start.Y
            + (frame.Upright ? plan.Board.Length.Ticks * pointsPerTick + gaps.Along : 0);
    }

    /// <summary>Where the set of pieces ends.</summary>
    public double Bottom { get; }

    /// <summary>Points for a tick.</summary>
    public double PointsPerTick => scale.PointsPerTick;

    /// <summary>Draws every piece.</summary>
    public IReadOnlyList<Shape> Shapes()
    {
        notes.Clear();
        var sheet = new Sketch(frame, scale);
        foreach (var piece in pieces)
            AddPiece(sheet.With(ScaleFor(piece)), piece);
        Margins.AddFarNotes(sheet, notes, edge);
        return sheet.Shapes;
    }

    /// <summary>A sketch in which the piece that holds this place lies where it is drawn.</summary>
    public Sketch Around(BoardRect place)
    {
        var piece = pieces.FirstOrDefault(p => p.Piece.Rect.Contains(place));
        return new(frame, piece is null ? scale : ScaleFor(piece));
    }

    private BoardScale ScaleFor(SpreadPiece piece) =>
        scale.StartingAt(scale.At(piece.Along * gap, piece.Across * gap));

    private double RoomForNotes()
    {
        _ = Shapes();
        return Margins.RoomForRows(Margins.InRows(frame, scale, notes), frame.TextSize);
    }

    private void AddPiece(Sketch sketch, SpreadPiece spread)
    {
        var piece = spread.Piece;
        WoodSketch.AddWoodOf(sketch, plan.Board, piece.Rect);
        AddDefects(sketch, piece.Rect);
        switch (piece.Fate)
        {
            case PieceFate.Stock:
                AddLines(sketch, piece);
                break;
            case PieceFate.Blank:
                AddNamed(sketch, spread, Ink.Blank, piece.Blank?.ToString() ?? "", Ink.Lettering);
                break;
            case PieceFate.Offcut:
                AddNamed(sketch, spread, Ink.Offcut, "offcut", Ink.Quiet);
                break;
            default:
                sketch.Rect(piece.Rect, Ink.Waste);
                break;
        }
    }

    private void AddNamed(Sketch sketch, SpreadPiece spread, Ink ink, string name, Ink nameInk)
    {
        var rect = spread.Piece.Rect;
        sketch.Rect(rect, ink, name);
        if (Fitting.Write(sketch, plan.ClearPartOf(rect), name, plan.SizeOf(rect), nameInk))
            return;
        var s = scale.PointsPerTick;
        notes.Add(
            new(
                (rect.From.Ticks + rect.To.Ticks) / 2.0 * s + spread.Along * gap,
                (rect.Near.Ticks + rect.Far.Ticks) / 2.0 * s + spread.Across * gap,
                name,
                nameInk
            )
        );
    }

    // What is still to be sawn out of a piece is marked on it in pencil.
    private void AddLines(Sketch sketch, Piece piece)
    {
        foreach (var (blank, rect) in plan.Blanks.Where(b => piece.Rect.Contains(b.Rect)))
        {
            sketch.Rect(rect, Ink.PencilLine, blank.Key.ToString());
            Fitting.Write(sketch, rect, blank.Key.ToString(), "", Ink.Quiet);
        }
    }

    private void AddDefects(Sketch sketch, BoardRect piece)
    {
        var within = plan.Board.Defects.Where(d => piece.Contains(d.Place)).ToList();
        DefectMarks.AddTo(sketch, plan.Board with { Defects = within });
        foreach (var defect in plan.Board.Defects.Where(d => piece.Overlaps(d.Place)))
            sketch.Rect(Common(piece, defect.Place), Ink.Defect);
    }

    private static BoardRect Common(BoardRect a, BoardRect b) =>
        new(
            Length.Max(a.From, b.From),
            Length.Min(a.To, b.To),
            Length.Max(a.Near, b.Near),
            Length.Min(a.Far, b.Far)
        );
}
