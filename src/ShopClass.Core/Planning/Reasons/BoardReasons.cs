using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Planning.Reasons;

/// <summary>Why a blank comes from its board and from no other.</summary>
internal static class BoardReasons
{
    public static BlankReason? OnlyBoard(BlankInPlace blank)
    {
        var others = blank.Request.Boards.Where(b => b.Id != blank.Board.Id).ToList();
        if (others.Count == 0)
            return null;
        bool IsWrongThickness(Board board) =>
            BlankNeeds.ThicknessProblem(blank.Part, blank.Request.Rules, board) is not null;
        if (others.All(IsWrongThickness))
            return blank.Because(
                ReasonKind.OnlyBoard,
                $"Only {blank.Board.Name} has the right thickness for it."
            );
        return others.All(b => IsWrongThickness(b) || IsTooSmall(blank, b))
            ? blank.Because(
                ReasonKind.OnlyBoard,
                $"Only {blank.Board.Name} is big enough for it and of the right thickness."
            )
            : null;
    }

    /// <summary>An earlier board would have done, had there been a piece left of it.</summary>
    public static BlankReason? NothingLeftElsewhere(BlankInPlace blank)
    {
        var other = blank
            .Made.Plan.Boards.TakeWhile(l => l.BoardId != blank.Layout.BoardId)
            .Select(l => blank.Request.Boards.First(b => b.Id == l.BoardId))
            .FirstOrDefault(b =>
                BlankNeeds.ThicknessProblem(blank.Part, blank.Request.Rules, b) is null
                && !IsTooSmall(blank, b)
            );
        if (
            other is null
            || blank.Made.Rehearsal.Steps.Count == 0
            || Leftovers(blank.Made, other).Any(rect => MayHold(rect, blank))
        )
            return null;
        var free =
            blank.Board.Price is null && blank.Request.Boards.Any(b => b.Price is not null)
                ? $", and {blank.Board.Name} has no price"
                : "";
        return blank.Because(
            ReasonKind.NothingLeftElsewhere,
            $"No piece left over from {other.Name} is big enough for it{free}."
        ) with
        {
            OtherBoard = other.Id,
        };
    }

    private static IEnumerable<BoardRect> Leftovers(CheckedPlan made, Board board) =>
        made
            .Rehearsal.Steps[^1]
            .Pieces.Where(p => p.BoardId == board.Id && p.Fate is not PieceFate.Blank)
            .Select(p => p.Rect);

    private static bool MayHold(BoardRect rect, BlankInPlace blank)
    {
        var size = blank.Blank.Needed;
        var across =
            blank.Blank.Key.Strip > 0
                ? size.Width
                : BlankNeeds.WidthBetweenStraightEdges(blank.Part);
        bool Holds(Length along, Length over) => rect.Along >= along && rect.Across >= over;
        return Holds(size.Length, across)
            || (blank.Part.Grain is GrainDirection.Any && Holds(across, size.Length));
    }

    private static bool IsTooSmall(BlankInPlace blank, Board board) =>
        !MayHold(
            new(
                board.TrimStart,
                Length.Max(board.TrimStart, board.Length - board.TrimEnd),
                Length.Zero,
                board.SmallestWidth
            ),
            blank
        );
}
