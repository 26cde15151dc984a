namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>
/// What wood is worth to a beam: at least what the cheapest endless board of its sort costs for its area. So wood that is
/// there for nothing is not squandered, though it is taken first.
/// </summary>
internal sealed class BeamWorth
{
    public BeamWorth(Cutting cutting)
    {
        var planks = cutting.Planks;
        double Cheapest(IEnumerable<int> some) =>
            some.Select(p => (double)planks[p].Cost / planks[p].Area).DefaultIfEmpty(0).Min();
        bool Holds(int plank, int piece) => cutting.Ways[plank].Any(f => f.Piece == piece);
        var all = Enumerable.Range(0, planks.Count).ToList();
        var scale = all.Where(p => planks[p].Cost > 0 && !planks[p].IsNowhere).ToList();
        var usual = scale.Count == 0 ? 1.0 / planks[0].Area : Cheapest(scale);
        PieceArea =
        [
            .. cutting.Pieces.Select(
                (piece, k) =>
                {
                    var endless = scale.Where(p => planks[p].IsEndless && Holds(p, k)).ToList();
                    return piece.Area * (endless.Count == 0 ? usual : Cheapest(endless));
                }
            ),
        ];
        Least =
        [
            .. cutting.Pieces.Select(
                (piece, k) => piece.Area * Cheapest(all.Where(p => Holds(p, k)))
            ),
        ];
        Plank = [.. planks.Select(p => Math.Max(p.Cost, usual * p.Area))];
    }

    /// <summary>What a piece's wood is worth.</summary>
    public double[] PieceArea { get; }

    /// <summary>What a piece costs at least, by its share of the cheapest board's area.</summary>
    public double[] Least { get; }

    /// <summary>What a board is worth.</summary>
    public double[] Plank { get; }
}
