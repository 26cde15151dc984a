namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>
/// The boards that searches have cut up on their way, good and bad packings alike: what one packing does well on one board
/// and another on the next can then be put together (<see cref="PoolDive"/>).
/// </summary>
/// <remarks>
/// At prices at which no board yields more than it costs, a packing cheaper than the best so far cannot hold a board that
/// wastes more than the whole packing may. Such boards are not kept.
/// </remarks>
internal sealed class BoardPool(Cutting cutting, double[] prices)
{
    private const int Most = 20_000;
    private readonly double worth = cutting.Pieces.Select((p, k) => prices[k] * p.Count).Sum();
    private readonly ulong[][] keys = BeamKeys.For(cutting.Pieces);
    private readonly int[] counts = new int[cutting.Pieces.Count];
    private readonly HashSet<ulong> known = [];
    private readonly HashSet<int> seen = [];
    private readonly List<Laid> board = [];

    /// <summary>Random words that name what is on a board.</summary>
    public ulong[][] Keys => keys;

    /// <summary>The boards, in the order they were found.</summary>
    public List<Column> Columns { get; } = [];

    /// <summary>What a packing must cost less than.</summary>
    public long Below { get; set; } = long.MaxValue;

    /// <summary>A pool that holds the same boards.</summary>
    public BoardPool Copy()
    {
        var copy = new BoardPool(cutting, prices) { Below = Below };
        copy.Columns.AddRange(Columns);
        copy.known.UnionWith(known);
        return copy;
    }

    /// <summary>Takes in every board that a search has closed.</summary>
    /// <param name="log">What was laid, each with what was laid before it.</param>
    /// <returns>Looks it took.</returns>
    public long Collect(IReadOnlyList<(int Before, Laid Laid)> log)
    {
        seen.Clear();
        var looks = (long)log.Count;
        for (var i = 0; i < log.Count && Columns.Count < Most; i++)
        {
            var at = log[i].Before;
            if (log[i].Laid.Level >= 0 || at < 0 || !seen.Add(at))
                continue;
            board.Clear();
            do
            {
                board.Add(log[at].Laid);
                at = log[at].Before;
            } while (board[^1].Level >= 0);

            looks += 4 * board.Count;
            Offer();
        }

        return looks / 8;
    }

    /// <summary>Takes in the boards of a packing.</summary>
    public void Add(IEnumerable<CutBoard> boards)
    {
        foreach (var cut in boards)
        {
            int[] all = [.. cutting.Pieces.Select(p => p.Count)];
            var column = Column.Of(cutting, Trimming.Take(cut, all));
            if (known.Add(KeyOf(cut.Plank, column.Counts)))
                Columns.Add(column);
        }
    }

    /// <summary>Forgets what no packing this cheap can hold.</summary>
    public void Sift() =>
        Columns.RemoveAll(c => c.Cost - c.Counts.Select((n, k) => n * prices[k]).Sum() > Spare);

    /// <summary>Keeps so many, those that lose least.</summary>
    public void Keep(int many, Func<Column, double> loss)
    {
        if (Columns.Count <= many)
            return;
        Column[] kept = [.. Columns.OrderBy(loss).Take(many)];
        Columns.Clear();
        Columns.AddRange(kept);
    }

    private double Spare => Below - 1 - worth + 1e-6;

    private void Offer()
    {
        var plank = board[^1].Plank;
        double loss = cutting.Planks[plank].Cost;
        foreach (var laid in board)
            loss -= prices[laid.Piece];
        if (loss > Spare)
            return;
        Array.Clear(counts);
        foreach (var laid in board)
            counts[laid.Piece]++;
        if (!known.Add(KeyOf(plank, counts)))
            return;
        board.Reverse();
        Columns.Add(Column.Of(cutting, BeamLog.Board(board)));
    }

    private ulong KeyOf(int plank, IReadOnlyList<int> numbers)
    {
        var key = (ulong)plank;
        for (var k = 0; k < numbers.Count; k++)
        {
            for (var n = 0; n < numbers[k]; n++)
                key = unchecked(key + keys[k][n]);
        }

        return key;
    }
}
