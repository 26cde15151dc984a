namespace ShopClass.Bench.Instances.Knapsack;

/// <summary>The shelf of each height that gains most at given prices: exact knapsacks across the board's width.</summary>
internal sealed class ShelfPricing(ShelfProblem problem)
{
    private readonly record struct Block(int Item, int Copies);

    private readonly int[] order =
    [
        .. Enumerable
            .Range(0, problem.Items.Count)
            .Where(i => problem.Items[i].W <= problem.Width && problem.Items[i].H <= problem.Length)
            .OrderBy(i => problem.Items[i].H)
            .ThenBy(i => i),
    ];
    private double[][] tables = [];

    /// <summary>Shelves that gain more than nothing, at most one for each height. Prices: length first, then items, then limits.</summary>
    public IEnumerable<(Shelf Shelf, double Saving)> Best(
        double[] prices,
        IReadOnlyList<Limit> limits
    )
    {
        var plain = Worths(prices, limits, -1);
        var blocks = new List<Block>();
        var worths = new List<double>();
        var next = 0;
        Begin();
        for (var h = problem.Heights.Length - 1; h >= 0; h--)
        {
            for (
                ;
                next < order.Length && problem.Items[order[next]].H <= problem.Heights[h];
                next++
            )
                Add(order[next], plain[order[next]], blocks, worths);
            var (theirs, theirBlocks, theirTables) = (worths, blocks, tables);
            if (limits.Any(l => l.Height == h && l.Item != null))
            {
                var special = Worths(prices, limits, h);
                (theirs, theirBlocks) = ([], []);
                Begin();
                for (var o = 0; o < next; o++)
                    Add(order[o], special[order[o]], theirBlocks, theirs);
            }

            var saving =
                tables[theirBlocks.Count][problem.Width]
                - (prices[0] * problem.Heights[h])
                - Fixed(prices, limits, h);
            if (saving > 1e-5)
                yield return (Read(h, theirBlocks, theirs), saving);
            tables = theirTables;
        }
    }

    private void Begin()
    {
        tables = new double[order.Sum(i => 1 + (int)Math.Log2(Math.Max(1, Most(i)))) + 1][];
        tables[0] = new double[problem.Width + 1];
    }

    private int Most(int item) =>
        Math.Min(problem.Items[item].Count, problem.Width / problem.Items[item].W);

    private double[] Worths(double[] prices, IReadOnlyList<Limit> limits, int height)
    {
        double[] worths = [.. problem.Items.Select((item, i) => item.Profit - prices[1 + i])];
        for (var l = 0; l < limits.Count; l++)
        {
            if (limits[l].Height == height && limits[l].Item is { } item)
                worths[item] -= prices[1 + problem.Items.Count + l];
        }

        return worths;
    }

    private double Fixed(double[] prices, IReadOnlyList<Limit> limits, int height)
    {
        var sum = 0.0;
        for (var l = 0; l < limits.Count; l++)
        {
            if (limits[l].Height == height && limits[l].Item == null)
                sum += prices[1 + problem.Items.Count + l];
        }

        return sum;
    }

    private void Add(int item, double worth, List<Block> blocks, List<double> worths)
    {
        if (worth <= 1e-9)
            return;
        var most = Most(item);
        for (var copies = 1; most > 0; most -= copies, copies = Math.Min(2 * copies, most))
        {
            var (size, gain) = (problem.Items[item].W * copies, worth * copies);
            var old = tables[blocks.Count];
            var fresh = tables[blocks.Count + 1] ??= new double[problem.Width + 1];
            Array.Copy(old, fresh, Math.Min(size, old.Length));
            for (var w = size; w < old.Length; w++)
                fresh[w] = Math.Max(old[w], old[w - size] + gain);
            blocks.Add(new(item, copies));
            worths.Add(gain);
        }
    }

    private Shelf Read(int height, List<Block> blocks, List<double> worths)
    {
        var counts = new int[problem.Items.Count];
        var room = problem.Width;
        for (var b = blocks.Count - 1; b >= 0; b--)
        {
            if (tables[b + 1][room] <= tables[b][room])
                continue;
            counts[blocks[b].Item] += blocks[b].Copies;
            room -= blocks[b].Copies * problem.Items[blocks[b].Item].W;
        }

        return new(height, counts);
    }
}
