namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>A way to cut one board, and how many of each piece it gives.</summary>
internal sealed class Column(CutBoard board, int[] counts, long cost)
{
    public CutBoard Board => board;
    public IReadOnlyList<int> Counts => counts;
    public long Cost => cost;

    public static Column Of(Cutting cutting, CutBoard board)
    {
        var counts = new int[cutting.Pieces.Count];
        foreach (var piece in board.Pieces)
            counts[piece]++;
        return new(board, counts, cutting.Planks[board.Plank].Cost);
    }
}
