using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing.Ordering;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>The cuts of one board as steps, each after the cut that set its piece free.</summary>
internal sealed class BreakdownSteps(
    Job job,
    Board board,
    int number,
    IReadOnlyList<LaidBlank> blanks
)
{
    private readonly List<(Cut Cut, string Id)> made = [];
    private readonly SideNames names = new(board, job.Rules, blanks);

    /// <summary>The step of this cut; <paramref name="last"/> is what comes before the first.</summary>
    /// <param name="cut">The cut.</param>
    /// <param name="last">The step it waits for.</param>
    /// <param name="strip">The strip it takes apart, where that was worked on meanwhile.</param>
    public string Cut(Cut cut, string? last, Workpiece? strip = null)
    {
        var sides = Sides(cut).ToList();
        var step = Write(cut, sides);
        var id = job.Steps.Add(
            $"{Verb(cut)}:{number}:{Freed(sides)}",
            strip is null ? step : Apart(step, cut, strip),
            [last, LastOn(cut.Piece)]
        );
        made.Add((cut, id));
        if (sides.Where(s => !Inside(s).Any()).Select(s => (Length?)s.Along).Max() is { } left)
            job.LeaveWaste(id, left);
        return id;
    }

    /// <summary>A cut that takes a trued strip apart is measured along the strip, whose lines the plane may have taken.</summary>
    private Step Apart(Step step, Cut cut, Workpiece strip) =>
        step with
        {
            Title = $"Crosscut {strip.Called} apart: {cut.Leaves}",
            MarkedFrom =
                "the end of the strip nearer the start of the board; the square on the reference edge",
            Marks =
            [
                $"{job.AtTape(cut.Position - WoodAround(cut.Piece).From)} along the piece, in pencil",
            ],
            Reason =
                "Kept joined until the strip was at width: a strip can be held and planed, short pieces can not. Crosscut last.",
            Needs = ["The strip is at width."],
            Leaves =
            [
                .. step.Leaves.Select(l =>
                    l with
                    {
                        Thickness = strip.Thickness,
                        Width = strip.Width,
                    }
                ),
            ],
            Time = job.Pace.Worked(
                Pace.RoughSetUp,
                strip.Width * strip.Thickness,
                Pace.Crosscut,
                "crosscut",
                board
            ),
        };

    /// <summary>The blanks as they are when the last cut is made; those of a strip that stays joined are one piece.</summary>
    public IEnumerable<Workpiece> Blanks(
        BoardLayout layout,
        string last,
        IReadOnlyList<JoinedStrip> strips
    )
    {
        foreach (var strip in strips)
        {
            var piece = new Workpiece(strip.Blanks[0].Key, PartOf(strip.Blanks[0].Key)!, board)
            {
                Joined = [.. strip.Blanks.Select(b => b.Key).Order()],
                Thickness = board.Thickness,
                Width = strip.Rect.Across,
                Length = strip.Rect.Along,
                IsRough = !board.HasPlanedFaces,
                IsHollow = !Warp.IsFlat(board, strip.Rect.Across, strip.Rect.Along),
                HasStraightEdge = KeepsMillEdge(strip.Rect),
                // A whole board may be such a strip: trimmed first, marked out after.
                Last = job.Steps.Later(LastOn(strip.Rect), last),
            };
            job.Strips.Add((this, piece, strip));
            yield return piece;
        }

        var placed = layout
            .Sections.SelectMany(s => s.Strips)
            .SelectMany(s => s.Blanks.Select(b => (Blank: b, Rect: b.In(s))))
            .Where(x => !strips.Any(s => s.Blanks.Any(b => b.Key == x.Blank.Key)));
        foreach (var (blank, rect) in placed)
        {
            if (PartOf(blank.Key) is { } part)
                yield return Blank(
                    blank.Key,
                    part,
                    WoodAround(rect),
                    blank.Turned,
                    LastOn(rect) ?? last
                );
        }
    }

    /// <summary>The blanks of a strip, now that it is taken apart.</summary>
    public IEnumerable<Workpiece> Blanks(JoinedStrip strip, Workpiece worked) =>
        strip.Blanks.Select(b =>
        {
            var piece = Blank(b.Key, PartOf(b.Key)!, WoodAround(b.Rect), false, LastOn(b.Rect));
            piece.Thickness = worked.Thickness;
            piece.Width = worked.Width;
            piece.IsRough = worked.IsRough;
            piece.IsHollow = worked.IsHollow;
            piece.HasStraightEdge = true;
            return piece;
        });

    /// <summary>The blanks that lie in a piece.</summary>
    public IReadOnlyList<LaidBlank> In(BoardRect piece) => [.. Inside(piece)];

    /// <summary>Whether a cut sets free something that holds no blank and is worth keeping.</summary>
    public bool FreesAnOffcut(Cut cut) =>
        Sides(cut).Any(s => !Inside(s).Any() && names.Of(s, cut.Kind) is not "waste");

    /// <summary>Whether blanks lie on both sides of a cut.</summary>
    public bool PartsBlanks(Cut cut) => Sides(cut).Count(s => Inside(s).Any()) == 2;

    private Part? PartOf(BlankKey key) =>
        job.Project.Parts.FirstOrDefault(p => p.Letter == key.Part);

    private Workpiece Blank(BlankKey key, Part part, BoardRect wood, bool isTurned, string? last) =>
        new(key, part, board)
        {
            Thickness = board.Thickness,
            Width = isTurned ? wood.Along : wood.Across,
            Length = isTurned ? wood.Across : wood.Along,
            IsRough = !board.HasPlanedFaces,
            IsHollow = IsHollow(part, wood, isTurned),
            HasStraightEdge = !isTurned && KeepsMillEdge(wood),
            Last = last,
        };

    /// <summary>Only what will be the part has to be flat: wood beyond its blank comes off when it is brought to width.</summary>
    private bool IsHollow(Part part, BoardRect wood, bool isTurned)
    {
        var blank = BlankNeeds.OnePiece(part, job.Rules, Surfacing.S4S);
        var (across, along) = isTurned ? (blank.Length, blank.Width) : (blank.Width, blank.Length);
        return !Warp.IsFlat(board, Length.Min(wood.Across, across), Length.Min(wood.Along, along));
    }

    /// <summary>Whether a strip that stays joined leaves its parts their thickness when it is planed flat whole.</summary>
    public bool LeavesThickness(BoardRect strip, IEnumerable<Part> parts)
    {
        var lost = Warp.LostIn(board, strip.Across, strip.Along);
        return lost < Warp.TakenAsFlat
            || parts.All(p =>
                WorkRules.BeforeItsEvent(p, PartDimension.Thickness) + lost <= board.Thickness
            );
    }

    private bool KeepsMillEdge(BoardRect wood) =>
        board.Surfacing switch
        {
            Surfacing.S4S => wood.Near == Length.Zero
                || (wood.Far == board.SmallestWidth && board.WidthAtStart == board.WidthAtEnd),
            // A board surfaced on three sides is marked out from its straight edge.
            Surfacing.S3S => wood.Near == Length.Zero,
            _ => false,
        };

    private string? LastOn(BoardRect rect) => made.FindLast(m => m.Cut.Piece.Contains(rect)).Id;

    private BoardRect WoodAround(BoardRect blank)
    {
        var last = made.FindLast(m => m.Cut.Piece.Contains(blank)).Cut;
        return last is null
            ? new(Length.Zero, board.Length, Length.Zero, board.SmallestWidth)
            : Sides(last).First(s => s.Contains(blank));
    }

    private static IEnumerable<BoardRect> Sides(Cut cut)
    {
        BoardRect[] sides =
            cut.Kind is CutKind.Rip
                ? [cut.Piece with { Far = cut.Kerf.Near }, cut.Piece with { Near = cut.Kerf.Far }]
                : [cut.Piece with { To = cut.Kerf.From }, cut.Piece with { From = cut.Kerf.To }];
        return sides.Where(s => s.Area > Area.Zero);
    }

    private IEnumerable<LaidBlank> Inside(BoardRect side) =>
        blanks.Where(b => side.Contains(b.Rect));

    /// <summary>Names the cut by the blanks it sets free: those of the smaller side that has any.</summary>
    private string Freed(List<BoardRect> sides)
    {
        var freed = sides
            .Select(s => Inside(s).Select(b => b.Key).Order().ToList())
            .Where(keys => keys.Count > 0)
            .MinBy(keys => keys.Count);
        return freed switch
        {
            null => "waste",
            [var only] => only.ToString(),
            _ => $"{freed[0]}-{freed[^1]}",
        };
    }

    private Step Write(Cut cut, List<BoardRect> sides)
    {
        var isRip = cut.Kind is CutKind.Rip;
        var within = Inside(cut.Piece)
            .Select(b => b.Key)
            .Order()
            .Select(k => k.ToString())
            .ToList();
        return new()
        {
            Id = "",
            Number = 0,
            Kind = cut.Kind switch
            {
                CutKind.EndTrim => StepKind.EndTrim,
                CutKind.Rip => StepKind.Rip,
                _ => StepKind.Crosscut,
            },
            Skill = isRip ? Skill.Ripping : Skill.Crosscutting,
            Station = StationFor(cut.Support),
            Title = Title(cut),
            Pieces = within.Count == 0 ? [board.Name] : within,
            Cut = cut,
            Class = cut.Class,
            Saw = Saws.For(cut.Saw, job.Rules),
            Support = cut.Support,
            Line = cut.Line,
            MarkedFrom = isRip ? Near : $"the start of the board; the square on {Near}",
            Marks = [Mark(cut)],
            WasteSide = Side.Right,
            Hold = string.Join(' ', [cut.Hold, .. LyingStill(cut), Holds.SidesOf(cut)]),
            Technique = job.Technique(TechniqueOf(cut)),
            Reason = cut.Reason,
            Needs =
                cut.Line is LineKind.Knife
                    ?
                    [
                        "The line is knifed all round, with a small step chiselled on the waste side.",
                    ]
                    : Needs(),
            Leaves = [.. sides.Select(s => Left(s, cut.Kind))],
            Tools = isRip ? [Saws.Name(cut.Saw), "wedge"] : [Saws.Name(cut.Saw)],
            Caution = cut.HoldNote is null ? "" : $"{Words.Sentence(cut.HoldNote)}.",
            Time = job.Pace.Worked(
                cut.Line is LineKind.Knife ? Pace.KnifeSetUp : Pace.RoughSetUp,
                cut.SawnLength * board.Thickness,
                isRip ? Pace.Rip : Pace.Crosscut,
                isRip ? "ripped" : "crosscut",
                board
            ),
        };
    }

    /// <summary>A board that rocks is no board to saw: how it is made to lie still.</summary>
    private IEnumerable<string> LyingStill(Cut cut)
    {
        if (cut.Support is Support.Vise || Warp.IsFlat(board, cut.Piece.Across, cut.Piece.Along))
            yield break;
        if (Warp.CupOver(board, cut.Piece.Across) >= Warp.TakenAsFlat)
            yield return Holds.HollowDown;
        if (Warp.TwistOver(board, cut.Piece.Across, cut.Piece.Along) >= Warp.TakenAsFlat)
            yield return Holds.WedgeUnder;
    }

    private string Near => Words.NearEdge(board);

    private string Title(Cut cut)
    {
        if (cut.Kind is CutKind.EndTrim)
            return Inside(cut.Piece).Any(b => b.Rect.From >= cut.Kerf.To)
                ? $"Trim the start of {Words.Called(board)} at {job.AtTape(cut.Position)}"
                : $"Trim the far end of {Words.Called(board)} at {job.AtTape(cut.Position)}";
        var verb = cut.Kind is CutKind.Rip ? "Rip" : "Crosscut";
        return $"{verb} {Words.Called(board)} at {job.AtTape(cut.Position)}: {cut.Leaves}";
    }

    private string Mark(Cut cut) =>
        cut.Kind is CutKind.Rip
            ? $"{job.AtTape(cut.Position)} from {Near}"
            : $"{job.AtTape(cut.Position)} from the start";

    private IReadOnlyList<string> Needs() =>
        made.Count == 0 && !job.Steps.Has($"markout:{number}")
            ? ["The board is looked over."]
            : ["The line is marked, and the waste side shaded."];

    private PieceLeft Left(BoardRect side, CutKind kind)
    {
        var name = names.Of(side, kind);
        var inside = Inside(side).ToList();
        var use =
            inside.Count > 0 ? PieceUse.Work
            : name is "waste" ? PieceUse.Waste
            : PieceUse.Offcut;
        return new(
            use is PieceUse.Offcut ? "offcut" : WithoutArticle(name),
            board.Thickness,
            side.Across,
            side.Along,
            use
        );
    }

    private static string WithoutArticle(string name) =>
        name.StartsWith("a ", StringComparison.Ordinal) ? name[2..]
        : name.StartsWith("the ", StringComparison.Ordinal) ? name[4..]
        : name;

    private static string TechniqueOf(Cut cut) =>
        (cut.Kind, cut.Support) switch
        {
            (CutKind.Rip, Support.Vise) => "RipInVise",
            (CutKind.Rip, _) => "Rip",
            _ when WorkRules.IsWideCrosscut(cut.SawnLength) => "WideCrosscut",
            _ => "Crosscut",
        };

    private static string Verb(Cut cut) =>
        cut.Kind switch
        {
            CutKind.EndTrim => "trim",
            CutKind.Rip => "rip",
            _ => "crosscut",
        };

    internal static Station StationFor(Support support) =>
        support switch
        {
            Support.SawBench => Station.SawBench,
            Support.BenchHook => Station.BenchHook,
            _ => Station.Vise,
        };
}
