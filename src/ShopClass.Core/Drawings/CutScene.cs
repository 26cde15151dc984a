using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Drawings;

/// <summary>The wood between two cuts.</summary>
internal static class CutScene
{
    /// <summary>The board just before a cut, the cut in the accent.</summary>
    public static Drawing Before(CheckedPlan checkedPlan, Cut cut, DrawingFrame frame)
    {
        var plan = PlanOnBoard.Of(checkedPlan, cut.BoardId);
        var pieces = PiecesAfter(checkedPlan, cut.Number - 1, cut.BoardId);
        var t = frame.TextSize;
        var bench = new PiecesOnBench(plan, pieces, frame, 2.6 * t);
        List<Shape> shapes =
        [
            new Label(1.2 * t, t, Caption(cut, plan.Precision), t, Anchor.Start, Ink.Accent),
            .. bench.Shapes(),
            .. CutMarks(checkedPlan, cut, bench, plan.Precision),
        ];
        return Finished(shapes, bench, plan.Precision, frame) with
        {
            Title = $"{plan.Board.Name} before cut {cut.Number}",
            TextTwin = CutWords.Before(plan, cut, pieces),
        };
    }

    /// <summary>All pieces of all boards after the last cut.</summary>
    public static Drawing AfterTheLast(CheckedPlan checkedPlan, DrawingFrame frame)
    {
        var t = frame.TextSize;
        var shapes = new List<Shape>();
        var lines = new List<string>();
        PiecesOnBench? bench = null;
        foreach (var layout in checkedPlan.Plan.Boards)
        {
            var plan = PlanOnBoard.Of(checkedPlan, layout.BoardId);
            var pieces = PiecesAfter(checkedPlan, int.MaxValue, layout.BoardId);
            var top = bench is null ? 1.2 * t : bench.Bottom + 3 * t;
            shapes.Add(new Label(1.2 * t, top, plan.Board.Name, t, Anchor.Start, Ink.Quiet));
            bench = new(plan, pieces, frame, top + 1.4 * t);
            shapes.AddRange(bench.Shapes());
            lines.AddRange(CutWords.Pieces(plan, pieces));
        }

        var precision = checkedPlan.Request.Rules.Precision;
        var drawing = bench is null
            ? new(frame.Width, t, "", "", shapes)
            : Finished(shapes, bench, precision, frame);
        return drawing with
        {
            Title = "All pieces after the last cut",
            TextTwin = string.Join('\n', lines.Prepend("All cuts are made.")),
        };
    }

    private static IReadOnlyList<Piece> PiecesAfter(
        CheckedPlan plan,
        int cutNumber,
        string boardId
    ) =>
        [
            .. plan.Rehearsal.Steps.LastOrDefault(s => s.CutNumber <= cutNumber)
                ?.Pieces.Where(p => p.BoardId == boardId)
                ?? [],
        ];

    private static Drawing Finished(
        List<Shape> shapes,
        PiecesOnBench bench,
        Precision precision,
        DrawingFrame frame
    )
    {
        var t = frame.TextSize;
        var bar = new Point(1.2 * t, Math.Round(bench.Bottom + 2.9 * t, 2));
        shapes.AddRange(ScaleBar.At(bar, bench.PointsPerTick, precision, frame));
        return new(frame.Width, bench.Bottom + 3.6 * t, "", "", shapes);
    }

    private static string Caption(Cut cut, Precision precision) =>
        $"Cut {cut.Number}: {CutWords.Kind(cut.Kind)}, {CutWords.Position(cut, precision)}";

    private static IReadOnlyList<Shape> CutMarks(
        CheckedPlan plan,
        Cut cut,
        PiecesOnBench bench,
        Precision precision
    )
    {
        var sketch = bench.Around(cut.Piece);
        var s = sketch.Scale.PointsPerTick;
        var over = 0.4 * sketch.Frame.TextSize;
        foreach (var waste in WasteOf(plan, cut))
            sketch.Rect(waste, Ink.Waste);
        sketch.Rect(cut.Kerf, Ink.Kerf);
        var at = cut.Position.Ticks * s;
        var piece = cut.Piece;
        if (cut.Kind is CutKind.Rip)
            sketch.Line(piece.From.Ticks * s - over, at, piece.To.Ticks * s + over, at, Ink.Accent);
        else
        {
            sketch.Line(
                at,
                piece.Near.Ticks * s - over,
                at,
                piece.Far.Ticks * s + over,
                Ink.Accent
            );
            AddFigure(sketch, cut, at, piece.Near.Ticks * s - over, precision);
        }

        return sketch.Shapes;
    }

    private static void AddFigure(
        Sketch sketch,
        Cut cut,
        double along,
        double across,
        Precision precision
    )
    {
        var t = sketch.Frame.TextSize;
        var text = LengthWriter.Write(cut.Position, precision);
        if (!sketch.Scale.IsUpright)
            sketch.Words(along, across - 0.8 * t, text, t, Anchor.Middle, Ink.Accent);
    }

    private static IEnumerable<BoardRect> WasteOf(CheckedPlan plan, Cut cut) =>
        PiecesAfter(plan, cut.Number, cut.BoardId)
            .Where(p => p.Fate is PieceFate.Waste)
            .Select(p => p.Rect)
            .Where(r =>
                cut.Piece.From <= r.From
                && r.To <= cut.Piece.To
                && cut.Piece.Near <= r.Near
                && r.Far <= cut.Piece.Far
            );
}
