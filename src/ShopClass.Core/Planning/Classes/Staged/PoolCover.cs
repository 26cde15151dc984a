namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>
/// Looks for a cheaper packing among boards already known. The linear programme over them says what each piece is worth;
/// boards that waste more than is left to waste are struck out; then one board after the other is settled, for the piece
/// with the fewest boards still possible, what the programme uses most before the rest.
/// </summary>
internal sealed class PoolCover(Cutting cutting, long below, Effort effort)
{
    private readonly int[] left = [.. cutting.Pieces.Select(p => p.Count)];
    private readonly int[] copies = [.. cutting.Planks.Select(p => p.Copies)];
    private readonly int[] ways = new int[cutting.Pieces.Count];
    private readonly List<Column> kept = [];
    private long cost;

    /// <summary>What the cheapest mixture of the boards costs; with it what each piece is worth there.</summary>
    public (double Cost, double[] Worths) Mixture { get; private set; } = (double.MaxValue, []);

    /// <summary>Whether boards were found that together are cheap enough.</summary>
    public bool Find(IReadOnlyList<Column> pool) => Cover([.. pool], null);

    /// <summary>The packing found, no piece cut more often than it is asked for.</summary>
    public IReadOnlyList<CutBoard> Packing()
    {
        int[] still = [.. cutting.Pieces.Select(p => p.Count)];
        return
        [
            .. kept.Select(c => Trimming.Take(c.Board, still)).Where(b => b.Sections.Count > 0),
        ];
    }

    /// <param name="open">The boards still possible.</param>
    /// <param name="known">How often the programme uses each, where that is known already.</param>
    private bool Cover(List<Column> open, Dictionary<Column, double>? known)
    {
        if (!effort.Take(open.Count / 16))
            return false;
        var scarcest = Scarcest(open);
        if (scarcest < 0)
            return true;
        if (ways[scarcest] == 0)
            return false;
        var levels = known ?? new(ReferenceEqualityComparer.Instance);
        if (known is null && (ways[scarcest] > 1 || kept.Count == 0))
        {
            if (!Strike(open, levels))
                return false;
            scarcest = Scarcest(open);
        }

        Column[] choices =
        [
            .. open.Where(c => c.Counts[scarcest] > 0)
                .OrderByDescending(c => levels.GetValueOrDefault(c)),
        ];
        foreach (var choice in choices)
        {
            // What the programme uses once is settled as it is: the rest of the mixture is the mixture of the rest.
            var isWhole = levels.GetValueOrDefault(choice) > 1 - 1e-4;
            if (Settle(choice, open, isWhole ? levels : null))
                return true;
            if (effort.IsUp)
                return false;
            open.Remove(choice);
        }

        return false;
    }

    private bool Settle(Column choice, List<Column> open, Dictionary<Column, double>? levels)
    {
        var plank = choice.Board.Plank;
        if (copies[plank] == 0 || cost + choice.Cost >= below)
            return false;
        var before = left.ToArray();
        for (var k = 0; k < left.Length; k++)
            left[k] = Math.Max(0, left[k] - choice.Counts[k]);
        if (copies[plank] < int.MaxValue)
            copies[plank]--;
        cost += choice.Cost;
        kept.Add(choice);
        if (Cover([.. open.Where(IsOfUse)], levels))
            return true;
        kept.RemoveAt(kept.Count - 1);
        cost -= choice.Cost;
        if (copies[plank] < int.MaxValue)
            copies[plank]++;
        before.CopyTo(left, 0);
        return false;
    }

    private bool IsOfUse(Column column)
    {
        if (copies[column.Board.Plank] == 0)
            return false;
        for (var k = 0; k < left.Length; k++)
        {
            if (left[k] > 0 && column.Counts[k] > 0)
                return true;
        }

        return false;
    }

    /// <summary>Strikes out what cannot lie in a packing cheap enough; false when none can be.</summary>
    private bool Strike(List<Column> open, Dictionary<Column, double> levels)
    {
        int[] rows = [.. Enumerable.Range(0, left.Length).Where(k => left[k] > 0)];
        var master = new Master(cutting, [.. rows.Select(k => left[k])], copies);
        var named = new Dictionary<Column, Column>(ReferenceEqualityComparer.Instance);
        foreach (var column in open)
        {
            int[] counts = [.. rows.Select(k => Math.Min(left[k], column.Counts[k]))];
            var part = new Column(column.Board, counts, column.Cost);
            named.Add(part, column);
            master.Add(part);
        }

        effort.Take(master.Solve() / 4);
        if (kept.Count == 0)
            Mixture = (master.Value, [.. rows.Select((_, r) => Math.Max(0, master.Duals[r]))]);
        var spare = below - 1 - cost - master.Value + 1e-6;
        if (spare < 0 || effort.IsUp)
            return false;
        open.Clear();
        foreach (var (part, whole) in named)
        {
            var loss = part.Cost + master.SavedBy(part.Board.Plank);
            var worth = 0.0;
            for (var r = 0; r < rows.Length; r++)
                worth += part.Counts[r] * master.Duals[r];
            if (loss - worth <= spare)
                open.Add(whole);
        }

        foreach (var (part, level) in master.Mixture())
            levels[named[part]] = level;
        return true;
    }

    /// <summary>The piece still wanted that the fewest boards hold, or -1 when nothing is wanted; counts the boards of each.</summary>
    private int Scarcest(List<Column> open)
    {
        Array.Clear(ways);
        foreach (var column in open)
        {
            for (var k = 0; k < ways.Length; k++)
                ways[k] += column.Counts[k] > 0 ? 1 : 0;
        }

        var scarcest = -1;
        for (var k = 0; k < left.Length; k++)
        {
            if (left[k] > 0 && (scarcest < 0 || ways[k] < ways[scarcest]))
                scarcest = k;
        }

        return scarcest;
    }
}
