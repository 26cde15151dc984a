namespace ShopClass.Bench.Instances;

/// <summary>A part lying on a board: item and board by number, lower left corner in the file's W and H.</summary>
internal sealed record Placed(int Item, int Board, int X, int Y);

/// <summary>What a solver answers: which size each board is, where the parts lie, and a bound that no solution passes.</summary>
internal sealed record Solution(
    IReadOnlyList<int> Boards,
    IReadOnlyList<Placed> Parts,
    long? Bound,
    bool IsProven
);
