using System.Globalization;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Wishes;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Remakes;

/// <summary>
/// The pieces of wood that lie on the bench when a part is spoiled, each as a board of its own: the planner and the
/// rehearsal then treat them like any other.
/// </summary>
internal sealed class PiecesAtHand
{
    private readonly Mishap mishap;
    private readonly IReadOnlyList<Piece> pieces;
    private readonly List<(string BoardId, BoardRect Rect)> used;

    public PiecesAtHand(Mishap mishap)
    {
        this.mishap = mishap;
        var steps = mishap.Plan.Rehearsal.Steps;
        ArgumentOutOfRangeException.ThrowIfNegative(mishap.CutsMade);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(mishap.CutsMade, steps.Count - 1);
        pieces = steps[mishap.CutsMade].Pieces;
        used =
        [
            .. from other in mishap.Others.Select(o => o.Plan).Append(mishap.Plan)
            from layout in other.Plan.Boards
            let place = PlaceIn(layout.BoardId)
            where place is not null
            select place.Value,
        ];
        Place = PlaceOf(mishap.Plan.Plan, mishap.Spoiled);
        Spare = Spares.Of(mishap.Plan);
    }

    /// <summary>The spare the plan keeps wood for.</summary>
    public Spare? Spare { get; }

    /// <summary>Where the spoiled blank lies, and on which board.</summary>
    public (string BoardId, BoardRect Rect, PlacedBlank Blank) Place { get; }

    /// <summary>The wood that is lost.</summary>
    public BoardRect Lost => mishap.Lost ?? Place.Rect;

    /// <summary>Offcuts, waste and what is left of the spoiled blank: wood that nothing else waits for.</summary>
    public IReadOnlyList<Board> Free =>
        [
            .. Remainders(),
            .. LeftOver.Select(p => AsBoard(p.BoardId, p.Rect, IdOf("free", p), FreeName(p))),
            .. Beside,
        ];

    /// <summary>Which of <see cref="Free"/> holds the wood kept for the spare; null while it is not sawn free.</summary>
    public string? ReservedId =>
        Spare is { } spare
            ? LeftOver
                .Select(p => (Piece: p, Id: IdOf("free", p)))
                .Where(x => x.Piece.BoardId == spare.BoardId && x.Piece.Rect.Contains(spare.Place))
                .Select(x => x.Id)
                .FirstOrDefault()
            : null;

    /// <summary>Wood that blanks are still to be sawn from, with the lost place marked bad.</summary>
    public IReadOnlyList<Board> Unsawn =>
        [
            .. pieces
                .Where(p => p.Fate is PieceFate.Stock && !IsUsed(p))
                .Select(p =>
                    AsBoard(p.BoardId, p.Rect, IdOf("unsawn", p), $"rest of {Name(p.BoardId)}")
                ),
        ];

    /// <summary>The blanks that are not sawn out yet, without the spoiled one.</summary>
    public IReadOnlyList<BlankKey> StillToSaw =>
        [
            .. Placed(mishap.Plan.Plan)
                .Where(b =>
                    b.Blank.Key != mishap.Spoiled
                    && pieces.Any(p =>
                        p.Fate is PieceFate.Stock
                        && p.BoardId == b.BoardId
                        && p.Rect.Contains(b.Rect)
                    )
                )
                .Select(b => b.Blank.Key)
                .Order(),
        ];

    /// <summary>Every blank of a plan and where it lies.</summary>
    public static IEnumerable<(string BoardId, BoardRect Rect, PlacedBlank Blank)> Placed(
        CutPlan plan
    ) =>
        from layout in plan.Boards
        from section in layout.Sections
        from strip in section.Strips
        from blank in strip.Blanks
        select (layout.BoardId, blank.In(strip), blank);

    private static (string, BoardRect, PlacedBlank) PlaceOf(CutPlan plan, BlankKey key)
    {
        foreach (var placed in Placed(plan))
        {
            if (placed.Blank.Key == key)
                return placed;
        }

        throw new ArgumentException($"The plan has no blank {key}.", nameof(key));
    }

    /// <summary>What is left of the spoiled blank before and behind the lost place, where it was sawn out already.</summary>
    private IEnumerable<Board> Remainders()
    {
        var sawn = pieces.FirstOrDefault(p => p.Blank == mishap.Spoiled);
        if (sawn is null)
            yield break;
        var before = sawn.Rect with { To = Length.Min(sawn.Rect.To, Lost.From) };
        var behind = sawn.Rect with { From = Length.Max(sawn.Rect.From, Lost.To) };
        var name = $"what is left of {mishap.Spoiled}";
        if (before.From < before.To)
            yield return AsBoard(sawn.BoardId, before, "left before", name);
        if (behind.From < behind.To)
            yield return AsBoard(sawn.BoardId, behind, "left behind", name);
    }

    private IEnumerable<Piece> LeftOver =>
        pieces.Where(p => p.Fate is PieceFate.Offcut or PieceFate.Waste && !IsUsed(p));

    // What lies free from the other plans.
    private IEnumerable<Board> Beside =>
        from other in mishap.Others
        from piece in other.Plan.Rehearsal.Steps[other.CutsMade].Pieces
        where piece.Fate is PieceFate.Offcut or PieceFate.Waste && !IsUsed(piece)
        select AsBoard(
            other.Plan.Request.Boards.First(b => b.Id == piece.BoardId),
            piece.Rect,
            IdOf("free", piece),
            FreeName(piece)
        );

    // Earlier remakes saw pieces as their boards, and a piece's id says where it lay.
    private bool IsUsed(Piece piece) =>
        used.Any(u => u.BoardId == piece.BoardId && u.Rect.Overlaps(piece.Rect));

    private static string IdOf(string what, Piece piece) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{what} {piece.BoardId} {piece.Rect.From.Ticks}-{piece.Rect.To.Ticks}-{piece.Rect.Near.Ticks}-{piece.Rect.Far.Ticks}"
        );

    private static (string BoardId, BoardRect Rect)? PlaceIn(string id)
    {
        var (first, last) = (id.IndexOf(' ', StringComparison.Ordinal), id.LastIndexOf(' '));
        if (first < 0 || last <= first)
            return null;
        var sides = id[(last + 1)..].Split('-');
        if (sides.Length != 4)
            return null;
        var ticks = new long[4];
        for (var i = 0; i < 4; i++)
        {
            if (
                !long.TryParse(
                    sides[i],
                    NumberStyles.None,
                    CultureInfo.InvariantCulture,
                    out ticks[i]
                )
            )
                return null;
        }

        return (
            id[(first + 1)..last],
            new(
                Length.FromTicks(ticks[0]),
                Length.FromTicks(ticks[1]),
                Length.FromTicks(ticks[2]),
                Length.FromTicks(ticks[3])
            )
        );
    }

    private static string FreeName(Piece piece) =>
        piece.Fate is PieceFate.Offcut ? "offcut" : "waste";

    private string Name(string boardId) => Source(boardId).Name;

    private Board Source(string boardId) => mishap.Plan.Request.Boards.First(b => b.Id == boardId);

    private Board AsBoard(string boardId, BoardRect rect, string id, string name) =>
        AsBoard(Source(boardId), rect, id, name);

    private Board AsBoard(Board board, BoardRect rect, string id, string name) =>
        SawnPiece.Of(
            board.Id == Place.BoardId
                ? board with
                {
                    Defects = [.. board.Defects, new(DefectKind.Other, Lost)],
                }
                : board,
            rect,
            id,
            name
        );
}
