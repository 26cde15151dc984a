using ShopClass.Core.Lumber;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Wishes;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Remakes;

/// <summary>What a plan leaves, as boards of their own.</summary>
public static class LeftBoards
{
    /// <summary>The offcuts worth keeping that a plan leaves when all is sawn, without the one a spare is kept in.</summary>
    public static IReadOnlyList<Board> OffcutsOf(CheckedPlan plan)
    {
        var spare = Spares.Of(plan);
        return
        [
            .. plan
                .Rehearsal.Steps[^1]
                .Pieces.Where(p => p.Fate is PieceFate.Offcut)
                .Where(p =>
                    spare is null || p.BoardId != spare.BoardId || !p.Rect.Contains(spare.Place)
                )
                .Select(
                    (p, i) =>
                    {
                        var board = plan.Request.Boards.First(b => b.Id == p.BoardId);
                        var name = $"offcut {i + 1} of {board.Name}";
                        return SawnPiece.Of(board, p.Rect, $"offcut-{i + 1}", name);
                    }
                ),
        ];
    }
}
