using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
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
    public string Cut(Cut cut, string last)
    {
        var sides = Sides(cut).ToList();
        var id = job.Steps.Add(
            $"{Verb(cut)}:{number}:{Freed(sides)}",
            Write(cut, sides),
            [last, LastOn(cut.Piece)]
        );
        made.Add((cut, id));
        if (sides.Exists(s => !Inside(s).Any()))
            job.WasteFrom ??= id;
        return id;
    }

    /// <summary>The blanks as they are when the last cut is made.</summary>
    public IEnumerable<Workpiece> Blanks(BoardLayout layout, string last)
    {
        var placed = layout
            .Sections.SelectMany(s => s.Strips)
            .SelectMany(s => s.Blanks.Select(b => (Blank: b, Rect: b.In(s))));
        foreach (var (blank, rect) in placed)
        {
            if (job.Project.Parts.FirstOrDefault(p => p.Letter == blank.Key.Part) is not { } part)
                continue;
            var wood = WoodAround(rect);
            yield return new(blank.Key, part, board)
            {
                Thickness = board.Thickness,
                Width = blank.Turned ? wood.Along : wood.Across,
                Length = blank.Turned ? wood.Across : wood.Along,
                IsRough = !board.HasPlanedFaces,
                HasStraightEdge = !blank.Turned && KeepsMillEdge(wood),
                Last = LastOn(rect) ?? last,
            };
        }
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
            MarkedFrom = isRip
                ? "the near edge"
                : "the start of the board; the square on the near edge",
            Marks = [Mark(cut)],
            WasteSide = Side.Right,
            Hold = $"{cut.Hold} {Holds.SidesOf(cut)}",
            Technique = job.Technique(TechniqueOf(cut)),
            Reason = cut.Reason,
            Needs = Needs(),
            Leaves = [.. sides.Select(s => Left(s, cut.Kind))],
            Tools = isRip ? [Saws.Name(cut.Saw), "wedge"] : [Saws.Name(cut.Saw)],
            Caution = cut.HoldNote is null ? "" : $"{Sentence(cut.HoldNote)}.",
            Time = job.Pace.Worked(
                Pace.RoughSetUp,
                cut.SawnLength * board.Thickness,
                isRip ? Pace.Rip : Pace.Crosscut,
                isRip ? "ripped" : "crosscut",
                board
            ),
        };
    }

    private string Title(Cut cut)
    {
        if (cut.Kind is CutKind.EndTrim)
            return Inside(cut.Piece).Any(b => b.Rect.From >= cut.Kerf.To)
                ? $"Trim the start of {board.Name} at {job.AtTape(cut.Position)}"
                : $"Trim the far end of {board.Name} at {job.AtTape(cut.Position)}";
        var verb = cut.Kind is CutKind.Rip ? "Rip" : "Crosscut";
        return $"{verb} {board.Name} at {job.AtTape(cut.Position)}: {cut.Leaves}";
    }

    private string Mark(Cut cut) =>
        cut.Kind is CutKind.Rip
            ? $"{job.AtTape(cut.Position)} from the near edge"
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

    private static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
