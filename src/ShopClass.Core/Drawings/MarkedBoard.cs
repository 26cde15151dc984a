using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Drawings;

/// <summary>A board with everything marked out on it.</summary>
internal static class MarkedBoard
{
    /// <summary>Draws it.</summary>
    public static Drawing Draw(PlanOnBoard plan, DrawingFrame frame)
    {
        var room = BoardRoom.In(frame);
        var scale = BoardScale.Fitting(plan.Board, frame, room);
        var notes = AddPlan(new Sketch(frame, scale), plan);
        var above = frame.Upright
            ? 0
            : Margins.RoomForRows(Margins.InRows(frame, scale, notes), frame.TextSize);
        var sketch = new Sketch(frame, scale.StartingAt(room.StartOf(scale, above)));
        WoodSketch.AddWood(sketch, plan.Board);
        AddPlan(sketch, plan);
        Margins.AddFarNotes(sketch, notes, scale.WidthDrawn);
        TapeBand.Add(sketch, plan.Board.Length, plan.Precision);
        var below = Margins.AddTapeMarks(sketch, plan.TapeMarks(), plan.Precision);
        BoardDimensions.AddTo(sketch, plan.Board, plan.Precision, withMiddle: false);
        return new(
            frame.Width,
            BoardDimensions.HeightOf(sketch) + below,
            $"{plan.Board.Name} with its cuts marked out",
            PlanWords.Of(plan),
            sketch.Shapes
        );
    }

    /// <summary>Draws what lies on the wood.</summary>
    /// <returns>What found no room on the wood and is to be written beside it.</returns>
    private static List<SideNote> AddPlan(Sketch sketch, PlanOnBoard plan)
    {
        AddTaper(sketch, plan.Board);
        foreach (var piece in plan.Leftovers.Where(p => p.Fate is PieceFate.Waste))
            sketch.Rect(piece.Rect, Ink.Waste);
        DefectMarks.AddTo(sketch, plan.Board);
        WoodSketch.AddDefectFrames(sketch, plan.Board);
        foreach (var piece in plan.Leftovers.Where(p => p.Fate is PieceFate.Offcut))
            sketch.Rect(piece.Rect, Ink.Offcut);
        if (plan.Spare is { } spare)
            sketch.Rect(spare.Place, Ink.Offcut, $"spare {spare.Letter}");
        foreach (var (blank, rect) in plan.Blanks)
            AddBlank(sketch, plan, blank, rect);
        foreach (var cut in plan.Cuts)
            sketch.Rect(cut.Kerf, Ink.Kerf);
        return AddNames(sketch, plan);
    }

    private static void AddBlank(
        Sketch sketch,
        PlanOnBoard plan,
        Planning.PlacedBlank blank,
        BoardRect rect
    )
    {
        sketch.Rect(rect, Ink.Blank, blank.Key.ToString());
        if (plan.FinishedWithin(blank, rect) is not { } finished)
            return;
        // Narrower than a line of letters, the dashes would only strike the name out.
        var narrow = Math.Min(finished.Along.Ticks, finished.Across.Ticks);
        if (narrow * sketch.Scale.PointsPerTick >= 0.9 * sketch.Frame.TextSize)
            sketch.Rect(finished, Ink.Finished);
    }

    private static List<SideNote> AddNames(Sketch sketch, PlanOnBoard plan)
    {
        var outside = new List<(BoardRect Rect, string Name)>();
        foreach (var (blank, rect) in plan.Blanks)
            AddName(rect, rect, blank.Key.ToString(), Ink.Lettering);
        foreach (var piece in plan.Leftovers.Where(p => p.Fate is PieceFate.Offcut))
            AddName(piece.Rect, BesideTheSpare(plan, piece.Rect), "offcut", Ink.Quiet);
        if (plan.Spare is { } spare)
            AddName(spare.Place, spare.Place, $"spare {spare.Letter}", Ink.Quiet);
        return
        [
            .. outside
                .GroupBy(o => (o.Rect.From, o.Rect.To, plan.SizeOf(o.Rect)))
                .Select(g => NoteOn(sketch.Scale, [.. g], g.Key.Item3)),
        ];

        void AddName(BoardRect rect, BoardRect room, string name, Ink ink)
        {
            if (!Fitting.Write(sketch, plan.ClearPartOf(room), name, plan.SizeOf(rect), ink))
                outside.Add((rect, name));
        }
    }

    /// <summary>What of an offcut lies past the spare, or beside it where nothing lies past it.</summary>
    private static BoardRect BesideTheSpare(PlanOnBoard plan, BoardRect offcut)
    {
        if (plan.Spare?.Place is not { } place || !offcut.Contains(place))
            return offcut;
        return place.To < offcut.To
            ? offcut with
            {
                From = place.To,
            }
            : offcut with
            {
                Near = place.Far,
            };
    }

    /// <summary>One note for pieces of one size that lie beside one another.</summary>
    private static SideNote NoteOn(
        BoardScale scale,
        IReadOnlyList<(BoardRect Rect, string Name)> pieces,
        string size
    )
    {
        var first = pieces[0].Rect;
        var names = PlanOnBoard.Row([.. pieces.Select(p => p.Name)]);
        return new(
            (first.From.Ticks + first.To.Ticks) / 2.0 * scale.PointsPerTick,
            pieces.Min(p => p.Rect.Near.Ticks + p.Rect.Far.Ticks) / 2.0 * scale.PointsPerTick,
            pieces.Count == 1 ? $"{names}, {size}" : $"{names}, each {size}",
            Ink.Lettering
        );
    }

    // A plan counts on the smallest width only; the rest of a tapered board is waste.
    private static void AddTaper(Sketch sketch, Board board)
    {
        if (BoardScale.GreatestWidth(board) == board.SmallestWidth)
            return;
        var s = sketch.Scale.PointsPerTick;
        var (length, smallest) = (board.Length.Ticks * s, board.SmallestWidth.Ticks * s);
        sketch.Shape(
            [
                (0, smallest),
                (0, board.WidthAtStart.Ticks * s),
                (length / 2, board.WidthAtMiddle.Ticks * s),
                (length, board.WidthAtEnd.Ticks * s),
                (length, smallest),
            ],
            Ink.Waste
        );
    }
}
