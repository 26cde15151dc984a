using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing.Ordering;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>Each board is looked over, trimmed, marked out once and broken down by the cuts of the plan.</summary>
internal sealed class BoardSteps(Job job)
{
    public void Write()
    {
        foreach (var layout in job.Plan.Plan.Boards)
        {
            var index = job
                .Plan.Request.Boards.Select((b, i) => (Board: b, Number: i + 1))
                .FirstOrDefault(x => x.Board.Id == layout.BoardId);
            if (index.Board is not null)
                Break(index.Board, index.Number, layout);
        }

        job.Pieces.Sort((a, b) => a.Key.CompareTo(b.Key));
    }

    private void Break(Board board, int number, BoardLayout layout)
    {
        var blanks = layout.Sections.SelectMany(BoardLengths.Blanks).ToList();
        var cuts = job.Plan.Sequence.Cuts.Where(c => c.BoardId == board.Id).ToList();
        var breakdown = new BreakdownSteps(job, board, number, blanks);
        var strips = new JoinedStrips(job, layout, breakdown).In(cuts);
        var later = strips.SelectMany(s => s.Cuts).ToHashSet();
        var last = job.Steps.Add($"check:{number}", Check(board), []);
        var isStraight = cuts.Exists(c => c.Line is LineKind.Knife);
        if (isStraight)
            last = job.Steps.Add($"reference-board:{number}", MarkReference(board), [last]);
        var isTrimmed = cuts.Count > 0 && IsStartTrim(cuts[0], blanks);
        if (isTrimmed)
            last = breakdown.Cut(cuts[0], last);
        if (cuts.Count > (isTrimmed ? 1 : 0))
            last = job.Steps.Add(
                $"markout:{number}",
                MarkOut(board, cuts.FindAll(c => !later.Contains(c)), isTrimmed ? cuts[0] : null),
                [last]
            );
        foreach (var cut in cuts.Skip(isTrimmed ? 1 : 0).Where(c => !later.Contains(c)))
            breakdown.Cut(cut, last);
        job.Pieces.AddRange(breakdown.Blanks(layout, last, strips));
    }

    private Step MarkReference(Board board) =>
        new()
        {
            Id = "",
            Number = 0,
            Kind = StepKind.MarkReference,
            Skill = Skill.MarkingOut,
            Station = Station.BenchTop,
            Title = $"Mark the reference face and edge of {Words.Called(board)}",
            Pieces = [board.Name],
            Line = LineKind.Pencil,
            Marks = ["reference edge: the near edge"],
            Technique = job.Technique("MarkReference"),
            Reason =
                "Its blanks are sawn straight to length, so every line across it is a knife line and needs something true to be squared from.",
            Needs = ["One face is true.", "One edge is straight and square to it."],
            Leaves = [Whole(board)],
            Tools = ["pencil", "square", "straightedge"],
            Time = job.Pace.Flat(2, "to try a face and an edge of a board"),
        };

    private static bool IsStartTrim(Cut cut, List<LaidBlank> blanks) =>
        cut.Kind is CutKind.EndTrim && blanks.TrueForAll(b => b.Rect.From >= cut.Kerf.To);

    private Step Check(Board board) =>
        new()
        {
            Id = "",
            Number = 0,
            Kind = StepKind.CheckBoard,
            Skill = Skill.MarkingOut,
            Station = Station.BenchTop,
            Title = $"Look over {Words.Called(board)} and measure it",
            Pieces = [board.Name],
            Marks = [.. ToCheck(board)],
            Technique = job.Technique("CheckBoard"),
            Reason =
                "The plan counts on these sizes and bad places; wood that differs is best found before it is sawn.",
            Leaves = [Whole(board)],
            Tools = ["tape", "straightedge", "pencil"],
            Caution = "Never saw into painted, treated or unknown wood, or where a nail may be.",
            Time = job.Pace.Flat(
                5 + board.Defects.Count,
                "to look a board over, one more for each bad place"
            ),
        };

    private IEnumerable<string> ToCheck(Board board)
    {
        yield return board.WidthAtStart == board.WidthAtEnd
        && board.WidthAtStart == board.WidthAtMiddle
            ? $"{job.AtTape(board.WidthAtStart)} wide and {job.AtTape(board.Length)} long, {job.Say(board.Thickness)} thick at the thinnest place"
            : $"{job.AtTape(board.WidthAtStart)} wide at the start, {job.AtTape(board.WidthAtMiddle)} in the middle and {job.AtTape(board.WidthAtEnd)} at the far end; "
                + $"{job.AtTape(board.Length)} long, {job.Say(board.Thickness)} thick at the thinnest place";
        foreach (var d in board.Defects)
            yield return $"{Named(d)} from {job.AtTape(d.Place.From)} to {job.AtTape(d.Place.To)} along and {job.AtTape(d.Place.Near)} to {job.AtTape(d.Place.Far)} across: ring it";
        if (board.Cup > Length.Zero)
            yield return $"hollow by {job.Say(board.Cup)} across under a straightedge: write “hollow” on that face";
        if (board.Twist > Length.Zero)
            yield return $"one corner stands {job.Say(board.Twist)} off a flat bench: ring it";
        if (!board.HasPlanedFaces)
            yield return "rough faces: look along them for cup and wind, and note which side is hollow";
    }

    private static string Named(Defect defect)
    {
        var kind = defect.Kind switch
        {
            DefectKind.PitchPocket => "pitch pocket",
            DefectKind.Other => "bad place",
            _ => defect.Kind.ToString().ToLowerInvariant(),
        };
        return defect.Reach switch
        {
            DefectReach.MarkedFace => $"{kind} on the marked face",
            DefectReach.BackFace => $"{kind} on the back",
            _ => kind,
        };
    }

    private Step MarkOut(Board board, List<Cut> cuts, Cut? trim)
    {
        var marks = new List<string>();
        var near = Words.NearEdge(board);
        if (!board.HasStraightEdges && board.Surfacing is not Surfacing.S3S)
            marks.Add(
                "The near edge is as it came: lay a straightedge along it and pencil a straight line just inside; every width is measured from that line"
            );
        if (board.WidthAtStart != board.WidthAtEnd || board.WidthAtStart != board.WidthAtMiddle)
            marks.Add(
                $"The board tapers: count on {job.AtTape(board.SmallestWidth)}, its smallest width, and measure every width from the near edge; the wedge beyond it is waste"
            );
        if (Warp.CupOver(board, board.SmallestWidth) >= Warp.TakenAsFlat)
            marks.Add(
                "The board is cupped: see that every line is on the rounded face, which lies upwards when it is sawn"
            );
        marks.AddRange(
            cuts.Where(c => c != trim && c.Kind is not CutKind.Rip)
                .OrderBy(c => c.Position)
                .ThenBy(c => c.Piece.Near)
                .Select(c => CrosscutMark(board, c))
                .Distinct(StringComparer.Ordinal)
        );
        marks.AddRange(
            cuts.Where(c => c.Kind is CutKind.Rip)
                .OrderBy(c => c.Piece.From)
                .ThenBy(c => c.Position)
                .Select(RipMark)
        );
        var isStraight = cuts.Exists(c => c.Line is LineKind.Knife);
        return new()
        {
            Id = "",
            Number = 0,
            Kind = StepKind.MarkOut,
            Skill = Skill.MarkingOut,
            Station = Station.BenchTop,
            Title = isStraight
                ? $"Mark out {Words.Called(board)}: lengths with the knife, all round"
                : $"Mark out {Words.Called(board)} in pencil",
            Pieces = [board.Name],
            Line = isStraight ? LineKind.Knife : LineKind.Pencil,
            MarkedFrom = trim is null
                ? $"the start of the board, the tape hooked once; the square on {near}"
                : $"the sawn end, with the tape's {job.AtTape(trim.Kerf.To)} mark on it, so that all numbers agree with the drawing; the square on {near}",
            Marks = marks,
            Technique = job.Technique("MarkOut"),
            Reason =
                "Marked once from one end before anything is sawn apart, so that no error is passed on. Write the names on, and shade the waste.",
            Leaves = [Whole(board) with { Length = board.Length - (trim?.Kerf.To ?? Length.Zero) }],
            Tools = isStraight
                ? ["tape", "square", "straightedge", "marking knife", "pencil"]
                : ["tape", "square", "straightedge", "pencil"],
            Time = job.Pace.Flat(3 + marks.Count, "to mark out, one for each line"),
        };
    }

    private string CrosscutMark(Board board, Cut cut)
    {
        var reach =
            cut.Piece.Across == board.SmallestWidth
                ? "across the whole width"
                : $"across from {job.AtTape(cut.Piece.Near)} to {job.AtTape(cut.Piece.Far)}";
        return $"{job.AtTape(cut.Position)} from the start, {reach}: {(cut.Kind is CutKind.EndTrim ? "end trim" : "crosscut")}";
    }

    private string RipMark(Cut cut) =>
        $"{job.AtTape(cut.Position)} from the near edge, along from {job.AtTape(cut.Piece.From)} to {job.AtTape(cut.Piece.To)}: rip";

    private static PieceLeft Whole(Board board) =>
        new(board.Name, board.Thickness, board.SmallestWidth, board.Length, PieceUse.Work);
}
