using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Sawing.Rehearsing;

/// <summary>Says what each piece is, and where a board's area went.</summary>
internal static class Leftovers
{
    /// <summary>The state after each cut, beginning with the whole boards.</summary>
    public static IReadOnlyList<RehearsalStep> Steps(Replay replay) =>
        [
            .. replay.States.Select(
                (state, i) =>
                    new RehearsalStep(
                        i == 0 ? 0 : replay.Cuts[i - 1].Cut.Number,
                        [.. state.Select(p => Named(p, replay))]
                    )
            ),
        ];

    /// <summary>The blank a piece has become: it holds that one only, and no more beside it than a sliver thinner than a kerf.</summary>
    public static Claimed? SawnOut(Lying piece, Replay replay)
    {
        var inside = Inside(piece, replay).ToList();
        return inside is [var only] && IsSawnTo(piece.Rect, only.Rect, replay.Request.Rules)
            ? only
            : null;
    }

    /// <summary>The blanks that lie wholly in a piece.</summary>
    public static IEnumerable<Claimed> Inside(Lying piece, Replay replay) =>
        replay.Blanks.Where(b => b.BoardId == piece.Board.Id && piece.Rect.Contains(b.Rect));

    /// <summary>Where each board's area went.</summary>
    public static IReadOnlyList<AreaBalance> Balances(Replay replay) =>
        [.. replay.States[0].Select(whole => Balance(whole.Board, replay))];

    private static AreaBalance Balance(Board board, Replay replay)
    {
        var pieces = replay
            .Final.Where(p => p.Board.Id == board.Id)
            .Select(p => Named(p, replay))
            .ToList();
        return new(
            board.Id,
            board.Length * board.SmallestWidth,
            Sum(PieceFate.Blank),
            replay
                .Cuts.Where(c => c.IsMade && c.Cut.BoardId == board.Id)
                .Aggregate(Area.Zero, (sum, c) => sum + c.Cut.Kerf.Area),
            Sum(PieceFate.Offcut),
            Sum(PieceFate.Waste) + Sum(PieceFate.Stock)
        );

        Area Sum(PieceFate fate) =>
            pieces.Where(p => p.Fate == fate).Aggregate(Area.Zero, (sum, p) => sum + p.Rect.Area);
    }

    /// <summary>What a piece is. A piece lies there through many steps, so each is named once and looked up after.</summary>
    private static Piece Named(Lying piece, Replay replay)
    {
        if (!replay.Named.TryGetValue(piece, out var named))
            replay.Named[piece] = named = Name(piece, replay);
        return named;
    }

    private static Piece Name(Lying piece, Replay replay)
    {
        var id = piece.Board.Id;
        if (SawnOut(piece, replay) is { } blank)
            return new(id, piece.Rect, PieceFate.Blank, blank.Key);
        if (Inside(piece, replay).Any())
            return new(id, piece.Rect, PieceFate.Stock);
        var fate = IsWorthKeeping(piece, replay.Request.Rules) ? PieceFate.Offcut : PieceFate.Waste;
        return new(id, piece.Rect, fate);
    }

    /// <summary>Big enough without its bad ends, and no defect goes through it.</summary>
    private static bool IsWorthKeeping(Lying piece, CourseRules rules)
    {
        var board = piece.Board;
        var sound =
            Length.Min(piece.Rect.To, board.Length - board.TrimEnd)
            - Length.Max(piece.Rect.From, board.TrimStart);
        return sound >= rules.ShortestOffcut
            && piece.Rect.Across >= rules.NarrowestOffcut
            && !board.Defects.Any(d =>
                d.Reach is DefectReach.Through && d.Place.Overlaps(piece.Rect)
            );
    }

    private static bool IsSawnTo(BoardRect piece, BoardRect blank, CourseRules rules) =>
        IsSliver(blank.From - piece.From, rules.CrosscutKerf)
        && IsSliver(piece.To - blank.To, rules.CrosscutKerf)
        && IsSliver(blank.Near - piece.Near, rules.RipKerf)
        && IsSliver(piece.Far - blank.Far, rules.RipKerf);

    private static bool IsSliver(Length over, Length kerf) => over == Length.Zero || over < kerf;
}
