using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Classes;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Orders;

/// <summary>What goes back on the rack when kits are made up or a plan is sawn, and what has been taken off it.</summary>
public static class LeftForRack
{
    /// <summary>What an order's kits leave: offcuts worth keeping, and boards that came with a pack. Pieces alike are one entry.</summary>
    public static IReadOnlyList<RackPiece> Of(ClassOrder order)
    {
        var boards = order.Plan.Boards.SelectMany(board =>
            ClassRehearsal
                .PiecesLeft(order.Request, order.Plan, board)
                .Select(rect =>
                    SawnPiece.Of(
                        board.Board,
                        rect,
                        "",
                        NameOf(order.LineOf(board)?.Stock.Name ?? board.Board.Name)
                    )
                )
        );
        var whole =
            from line in order.Lines
            where line.Bought > line.Needed
            let size = order.Request.Stock.First(s =>
                s.Id == ClassOrders.KeyOf(line.SellerId, line.Stock)
            )
            from _ in Enumerable.Range(1, line.Bought - line.Needed)
            select size.ToBoard("", line.Stock.Name, order.Ask.Rules);
        return Alike(boards.Concat(whole));
    }

    /// <summary>What a plan leaves when all of it is sawn.</summary>
    public static IReadOnlyList<RackPiece> Of(CheckedPlan plan) =>
        Alike(
            from piece in plan.Rehearsal.Steps[^1].Pieces
            where piece.Fate is PieceFate.Offcut
            let board = plan.Request.Boards.First(b => b.Id == piece.BoardId)
            select SawnPiece.Of(board, piece.Rect, "", NameOf(board.Name))
        );

    /// <summary>How many boards of each entry of the rack an order's kits take.</summary>
    public static IReadOnlyDictionary<string, int> Taken(ClassOrder order) =>
        order
            .Plan.Boards.Select(order.RackOf)
            .OfType<RackPiece>()
            .GroupBy(r => r.Id, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal);

    private static RackPiece[] Alike(IEnumerable<Board> boards)
    {
        var found = new List<RackPiece>();
        foreach (
            var board in boards
                .OrderByDescending(b => b.Length)
                .ThenByDescending(b => b.SmallestWidth)
                .ThenBy(b => b.Name, StringComparer.Ordinal)
        )
        {
            var same = found.FindIndex(f => IsAlike(f.Board, board));
            if (same < 0)
                found.Add(new() { Id = "", Board = board });
            else
                found[same] = found[same] with { Count = found[same].Count + 1 };
        }

        return [.. found];
    }

    private static bool IsAlike(Board a, Board b) =>
        a with { Defects = [] } == b with { Defects = [] } && a.Defects.SequenceEqual(b.Defects);

    /// <summary>What a piece that is left of a board is called.</summary>
    /// <param name="from">The board's name.</param>
    public static string NameOf(string from)
    {
        var name = $"Offcut of {from}";
        return name.Length <= TypedText.LongestName ? name : name[..TypedText.LongestName];
    }
}
