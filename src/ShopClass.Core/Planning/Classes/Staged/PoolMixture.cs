namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>The boards settled so far, and what is left to pack.</summary>
internal sealed class Settled(Cutting cutting)
{
    private readonly List<CutBoard> boards = [];

    /// <summary>The boards, no piece cut more often than it is asked for.</summary>
    public IReadOnlyList<CutBoard> Boards => boards;

    /// <summary>How many of each piece are left.</summary>
    public int[] Left { get; } = [.. cutting.Pieces.Select(p => p.Count)];

    /// <summary>How many of each board are left.</summary>
    public int[] Copies { get; } = [.. cutting.Planks.Select(p => p.Copies)];

    /// <summary>What the boards cost.</summary>
    public long Cost { get; private set; }

    /// <summary>Settles one more; false where there is none left of it or nothing on it is wanted.</summary>
    public bool Take(Column column)
    {
        var plank = column.Board.Plank;
        if (Copies[plank] == 0)
            return false;
        var board = Trimming.Take(column.Board, Left);
        if (board.Sections.Count == 0)
            return false;
        boards.Add(board);
        Cost += column.Cost;
        if (Copies[plank] < int.MaxValue)
            Copies[plank]--;
        return true;
    }
}

/// <summary>The cheapest mixture of known boards for what is left to pack.</summary>
internal sealed class PoolMixture
{
    private readonly double[] saved;

    public PoolMixture(
        Cutting cutting,
        IReadOnlyList<Column> open,
        int[] rows,
        Settled settled,
        Effort effort
    )
    {
        var programme = new Master(cutting, [.. rows.Select(k => settled.Left[k])], settled.Copies);
        var whole = new Dictionary<Column, Column>(ReferenceEqualityComparer.Instance);
        foreach (var column in open)
        {
            int[] counts = [.. rows.Select(k => Math.Min(settled.Left[k], column.Counts[k]))];
            if (Array.TrueForAll(counts, n => n == 0))
                continue;
            var part = new Column(column.Board, counts, column.Cost);
            whole.Add(part, column);
            programme.Add(part);
        }

        effort.Take(programme.Solve() / 4);
        Cost = programme.Value;
        Worths = new double[settled.Left.Length];
        for (var r = 0; r < rows.Length; r++)
            Worths[rows[r]] = Math.Max(0, programme.Duals[r]);
        Levels = [.. programme.Mixture().Select(m => (whole[m.Column], m.Times))];
        saved = [.. cutting.Planks.Select((_, p) => programme.SavedBy(p))];
    }

    /// <summary>What the mixture costs; more than any packing where the boards do not hold all that is left.</summary>
    public double Cost { get; }

    /// <summary>What one more of each piece costs at the margin.</summary>
    public double[] Worths { get; }

    /// <summary>How often each board is used; only those above zero.</summary>
    public IReadOnlyList<(Column Column, double Times)> Levels { get; }

    /// <summary>How much more a board costs than what is on it is worth.</summary>
    public double LossOf(Column column)
    {
        var loss = column.Cost + saved[column.Board.Plank];
        for (var k = 0; k < Worths.Length; k++)
            loss -= column.Counts[k] * Worths[k];
        return loss;
    }
}
