using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing.Ordering;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>A cut of the breakdown in the words of a step.</summary>
internal sealed class CutSteps(Job job, Board board, int number, IReadOnlyList<LaidBlank> blanks)
{
    private readonly SideNames names = new(board, job.Rules, blanks);

    /// <summary>What the step is called by: what is done, on which board, and what it sets free.</summary>
    public string IdOf(Cut cut, IReadOnlyList<BoardRect> sides) =>
        $"{Verb(cut)}:{number}:{Freed(sides)}";

    /// <summary>Whether a side that holds no blank is too small to keep.</summary>
    public bool IsWaste(BoardRect side, CutKind kind) => names.Of(side, kind) is "waste";

    /// <summary>The step of a cut that leaves these sides.</summary>
    public Step Of(Cut cut, IReadOnlyList<BoardRect> sides, bool isFirst)
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
            Skill = SkillOf(cut),
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
                    : Needs(isFirst),
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

    private IReadOnlyList<string> Needs(bool isFirst) =>
        isFirst && !job.Steps.Has($"markout:{number}")
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

    /// <summary>A cut that takes a trued strip apart is measured along the strip, whose lines the plane may have taken.</summary>
    public Step Apart(Step step, Cut cut, Workpiece strip, Length start) =>
        step with
        {
            Title = $"Crosscut {strip.Called} apart: {cut.Leaves}",
            MarkedFrom =
                "the end of the strip nearer the start of the board; the square on the reference edge",
            Marks = [$"{job.AtTape(cut.Position - start)} along the piece, in pencil"],
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

    /// <summary>Names the cut by the blanks it sets free: those of the smaller side that has any.</summary>
    private string Freed(IReadOnlyList<BoardRect> sides)
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

    /// <summary>To a knife line a crosscut is finer work than beside a pencil line, though the saw is the same.</summary>
    private static Skill SkillOf(Cut cut) =>
        cut switch
        {
            { Kind: CutKind.Rip } => Skill.Ripping,
            { Line: LineKind.Knife } => Skill.FineCrosscutting,
            _ => Skill.Crosscutting,
        };

    private IEnumerable<LaidBlank> Inside(BoardRect side) =>
        blanks.Where(b => side.Contains(b.Rect));

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
