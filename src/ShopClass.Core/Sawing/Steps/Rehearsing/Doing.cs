using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;

namespace ShopClass.Core.Sawing.Steps.Rehearsing;

/// <summary>Does one step to the pieces there are.</summary>
internal sealed class Doing(StepRun run)
{
    public (Done Done, IReadOnlyList<Wood> Pieces) Do(Step step, IReadOnlyList<Wood> pieces)
    {
        if (step.Cut is { } cut)
            return Saw(step, cut, pieces);
        var found = pieces.Where(p => IsNamedIn(step, p)).ToList();
        var unknown = step.Pieces.Where(n => !found.Exists(p => Bears(p, n))).ToList();
        var after =
            step.Kind is StepKind.GlueUp
                ? Glued(step, found)
                : found.ConvertAll(p => Worked(step, p));
        return (
            new(step, found, after, unknown, false),
            [.. pieces.Where(p => !found.Contains(p)), .. after]
        );
    }

    private static bool IsNamedIn(Step step, Wood piece) => step.Pieces.Any(n => Bears(piece, n));

    // A board is called by its own name until it is sawn, even where it is a blank as it comes.
    private static bool Bears(Wood piece, string name) =>
        piece.Name == name
        || piece.Name.Split('+').Contains(name)
        || (
            piece.Board?.Name == name
            && piece.Rect is { } rect
            && rect.To == piece.Board.Length
            && rect.Across == piece.Board.SmallestWidth
        );

    private (Done, IReadOnlyList<Wood>) Saw(Step step, Cut cut, IReadOnlyList<Wood> pieces)
    {
        var piece = pieces.FirstOrDefault(p => p.Board?.Id == cut.BoardId && p.Rect == cut.Piece);
        if (piece is null || Sides(cut) is not { Count: > 0 } sides)
            return (new(step, piece is null ? [] : [piece], [], [], false), pieces);
        var halves = sides.ConvertAll(s =>
            Half(Named(run, piece.Board!, s), piece, cut) with
            {
                HasTrueLines = piece.HasTrueLines || piece.IsReferenced,
                Touched = step.Number,
                At = step.Station,
            }
        );
        return (
            new(step, [piece], halves, [], true),
            [.. pieces.SelectMany(p => ReferenceEquals(p, piece) ? halves : [p])]
        );
    }

    /// <summary>A crosscut leaves what was done to faces and edges; a rip makes a new edge.</summary>
    private static Wood Half(Wood half, Wood piece, Cut cut) =>
        cut.Kind is CutKind.Rip || half.Length != half.Rect!.Value.Along
            ? half
            : half with
            {
                Thickness = piece.Thickness,
                Width = piece.Width,
                HasTrueFace = half.HasTrueFace || piece.HasTrueFace,
                HasStraightEdge = half.HasStraightEdge || piece.HasStraightEdge,
                IsReferenced = piece.IsReferenced,
            };

    private static List<BoardRect> Sides(Cut cut)
    {
        var (piece, kerf) = (cut.Piece, cut.Kerf);
        var isRip = cut.Kind is CutKind.Rip;
        var isThrough = isRip
            ? kerf.From == piece.From && kerf.To == piece.To && kerf.Across < piece.Across
            : kerf.Near == piece.Near && kerf.Far == piece.Far && kerf.Along < piece.Along;
        if (!isThrough || !piece.Contains(kerf))
            return [];
        List<BoardRect> sides = isRip
            ? [piece with { Far = kerf.Near }, piece with { Near = kerf.Far }]
            : [piece with { To = kerf.From }, piece with { From = kerf.To }];
        return sides.FindAll(s => s.Area > Area.Zero);
    }

    /// <summary>A piece of a board with what is known of it: its blank where it is sawn out, else the blanks joined in it.</summary>
    public static Wood Named(StepRun run, Board board, BoardRect rect)
    {
        var inside = run.Blanks.Where(b => b.BoardId == board.Id && rect.Contains(b.Rect)).ToList();
        var only = inside is [var one] && IsSawnTo(rect, one.Rect, run) ? one : null;
        var isTurned = only is { IsTurned: true };
        return new()
        {
            Name =
                only is not null ? only.Key.ToString()
                : inside.Count > 0 ? string.Join('+', inside.Select(b => b.Key).Order())
                : IsWorthKeeping(board, rect, run) ? "offcut"
                : "waste",
            Thickness = board.Thickness,
            Width = isTurned ? rect.Along : rect.Across,
            Length = isTurned ? rect.Across : rect.Along,
            Use =
                inside.Count > 0 ? PieceUse.Work
                : IsWorthKeeping(board, rect, run) ? PieceUse.Offcut
                : PieceUse.Waste,
            Board = board,
            Rect = rect,
            Key = only?.Key,
            Part = only?.Part,
            HasTrueFace =
                board.Surfacing is not Surfacing.Rough
                && run.HollowOf(only, rect, board) == Length.Zero,
            HasStraightEdge = !isTurned && HasMillEdge(board, rect),
        };
    }

    private static bool HasMillEdge(Board board, BoardRect rect)
    {
        var isEven = board.WidthAtStart == board.WidthAtEnd;
        return board.Surfacing switch
        {
            Surfacing.S4S => rect.Near == Length.Zero
                || (isEven && rect.Far == board.SmallestWidth),
            Surfacing.S3S => rect.Near == Length.Zero,
            _ => false,
        };
    }

    private static bool IsSawnTo(BoardRect rect, BoardRect blank, StepRun run)
    {
        var (across, along) = (run.Rules.CrosscutKerf, run.Rules.RipKerf);
        return Sliver(blank.From - rect.From, across)
            && Sliver(rect.To - blank.To, across)
            && Sliver(blank.Near - rect.Near, along)
            && Sliver(rect.Far - blank.Far, along);

        static bool Sliver(Length over, Length kerf) => over == Length.Zero || over < kerf;
    }

    private static bool IsWorthKeeping(Board board, BoardRect rect, StepRun run)
    {
        var sound =
            Length.Min(rect.To, board.Length - board.TrimEnd)
            - Length.Max(rect.From, board.TrimStart);
        return sound >= run.Rules.ShortestOffcut
            && rect.Across >= run.Rules.NarrowestOffcut
            && !board.Defects.Any(d => d.Reach is DefectReach.Through && d.Place.Overlaps(rect));
    }

    private static List<Wood> Glued(Step step, List<Wood> strips)
    {
        if (strips.Count == 0 || strips[0].Key is not { } key)
            return strips;
        return
        [
            strips[0] with
            {
                Name = $"{key.Part}{key.Copy}",
                Key = key with { Strip = 0 },
                Thickness = strips.Min(s => s.Thickness),
                Width = strips.Aggregate(Length.Zero, (sum, s) => sum + s.Width),
                Length = strips.Min(s => s.Length),
                Board = null,
                Rect = null,
                HasTrueFace = strips.TrueForAll(s => s.HasTrueFace),
                HasStraightEdge = strips[0].HasStraightEdge || strips[^1].HasStraightEdge,
                Touched = step.Number,
                At = step.Station,
            },
        ];
    }

    /// <summary>The sizes are what the step says it leaves; the rules judge them against what was there.</summary>
    private static Wood Worked(Step step, Wood piece)
    {
        var left = step.Leaves.FirstOrDefault(l => l.Use is PieceUse.Work && l.Name == piece.Name);
        var isBoard = step.Kind is StepKind.CheckBoard or StepKind.MarkOut;
        return piece with
        {
            Thickness = left is null || isBoard ? piece.Thickness : left.Thickness,
            Width = left is null || isBoard ? piece.Width : left.Width,
            Length = left is null || isBoard ? piece.Length : left.Length,
            Touched = step.Number,
            At = step.Station,
            HasTrueFace = piece.HasTrueFace || step.Kind is StepKind.FlattenFace,
            HasStraightEdge = piece.HasStraightEdge || step.Kind is StepKind.StraightenEdge,
            IsReferenced = piece.IsReferenced || step.Kind is StepKind.MarkReference,
            IsSquared = piece.IsSquared || step.Kind is StepKind.SquareEnd,
        };
    }
}
