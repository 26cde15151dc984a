using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace ShopClass.Bench.Instances.Knapsack;

/// <summary>
/// The section of each height that is worth most at given prices: exact knapsacks along strips of every breadth, then across
/// the board's width, in whole numbers. A strip holds no more of an item than there are; strips may repeat.
/// </summary>
internal sealed class SectionPricing
{
    private const int Lanes = 8;
    private const int MostWorth = 1 << 29;
    private readonly ShelfProblem problem;
    private readonly int[] order;
    private readonly int[] breadths;
    private readonly int[][] strips;
    private readonly int[] blocksOf;
    private readonly List<(int Item, int Copies)> blocks = [];
    private readonly List<bool[]> taken = [];
    private readonly int[] most;
    private readonly int[] row;
    private readonly int[] heightWorth;

    public SectionPricing(ShelfProblem problem)
    {
        this.problem = problem;
        order =
        [
            .. Enumerable
                .Range(0, problem.Items.Count)
                .Where(i =>
                    problem.Items[i] is { Count: > 0 } item
                    && item.W <= problem.Width
                    && item.H <= problem.Length
                )
                .OrderBy(i => problem.Items[i].W)
                .ThenBy(i => i),
        ];
        breadths = [.. order.Select(i => problem.Items[i].W).Distinct()];
        strips = [.. breadths.Select(_ => new int[problem.Length + 1])];
        blocksOf = new int[breadths.Length];
        most = new int[problem.Width + 1];
        row = new int[breadths.Length];
        heightWorth = new int[problem.Length + 1];
        var density = order.Max(i =>
            (double)problem.Items[i].Profit / ((double)problem.Items[i].W * problem.Items[i].H)
        );
        var all = density * problem.Width * problem.Length;
        while (Scale < 1 << 20 && all * Scale * 2 < MostWorth)
            Scale *= 2;
    }

    /// <summary>Parts that a unit of profit is counted in.</summary>
    public long Scale { get; private set; } = 1;

    /// <summary>Whether any item fits.</summary>
    public static bool HasAny(ShelfProblem problem) =>
        problem.Items.Any(i => i.Count > 0 && i.W <= problem.Width && i.H <= problem.Length);

    /// <summary>The sections that gain most, of different heights. Prices: length first, then items.</summary>
    public IReadOnlyList<(Section Section, double Saving)> Best(double[] prices, int number)
    {
        Count(prices, prices[0]);
        return
        [
            .. Enumerable
                .Range(1, problem.Length)
                .Select(h => (Height: h, Saving: heightWorth[h] / (double)Scale - prices[0] * h))
                .Where(h => h.Saving > 1e-3)
                .OrderByDescending(h => h.Saving)
                .ThenBy(h => h.Height)
                .Take(number)
                .Select(h => (Read(h.Height), h.Saving)),
        ];
    }

    /// <summary>What no choice of items exceeds: at any prices of the items, their worth and the most that sections bring beyond it.</summary>
    public long Bound(double[] prices)
    {
        Count(prices, 0);
        var board = new long[problem.Length + 1];
        for (var length = 1; length <= problem.Length; length++)
        {
            board[length] = board[length - 1];
            for (var h = 1; h <= length; h++)
                board[length] = Math.Max(board[length], board[length - h] + heightWorth[h]);
        }

        var items = order.Sum(i => Price(prices, i) * problem.Items[i].Count);
        return (board[^1] + items) / Scale;
    }

    private long Price(double[] prices, int item) =>
        Math.Clamp(
            (long)Math.Round(prices[1 + item] * Scale),
            0,
            problem.Items[item].Profit * Scale
        );

    /// <summary>Works out what a section of each height is worth, or roughly where that is less than its length costs.</summary>
    private void Count(double[] prices, double perLength)
    {
        FillStrips(prices);
        for (var h = 1; h <= problem.Length; h++)
        {
            heightWorth[h] = heightWorth[h - 1];
            if (!IsNew(h))
                continue;
            // What is not worth its length even by width alone need not be known better.
            var atMost = MostByWidth();
            if (atMost > perLength * h * Scale)
            {
                Fill(h);
                atMost = most[problem.Width];
            }

            heightWorth[h] = Math.Max(heightWorth[h], atMost);
        }
    }

    private void FillStrips(double[] prices)
    {
        var growing = new int[problem.Length + 1];
        blocks.Clear();
        var next = 0;
        for (var b = 0; b < breadths.Length; b++)
        {
            for (; next < order.Length && problem.Items[order[next]].W == breadths[b]; next++)
            {
                var item = order[next];
                var worth = (int)(problem.Items[item].Profit * Scale - Price(prices, item));
                if (worth > 0)
                    Put(growing, item, worth);
            }

            growing.CopyTo(strips[b], 0);
            blocksOf[b] = blocks.Count;
        }
    }

    /// <summary>Offers an item's copies to a strip of every length, in blocks of one, two, four.</summary>
    private void Put(int[] growing, int item, int worth)
    {
        var its = problem.Items[item];
        var copiesLeft = Math.Min(its.Count, problem.Length / its.H);
        for (var copies = 1; copiesLeft > 0; copies = Math.Min(2 * copies, copiesLeft))
        {
            copiesLeft -= copies;
            if (taken.Count == blocks.Count)
                taken.Add(new bool[problem.Length + 1]);
            var takes = taken[blocks.Count];
            Array.Clear(takes);
            var (size, gain) = (its.H * copies, worth * copies);
            for (var x = problem.Length; x >= size; x--)
            {
                var with = growing[x - size] + gain;
                if (with <= growing[x])
                    continue;
                growing[x] = with;
                takes[x] = true;
            }

            blocks.Add((item, copies));
            if (copiesLeft == 0)
                break;
        }
    }

    /// <summary>Whether any strip of this length is worth more than a shorter one; where not, neither is a section.</summary>
    private bool IsNew(int height)
    {
        var isNew = false;
        for (var b = 0; b < breadths.Length; b++)
        {
            row[b] = strips[b][height];
            isNew |= row[b] > strips[b][height - 1];
        }

        return isNew;
    }

    /// <summary>The most that strips of the length at hand could be worth if they filled the width just so.</summary>
    private int MostByWidth()
    {
        var greatest = 0L;
        for (var b = 0; b < breadths.Length; b++)
            greatest = Math.Max(greatest, (long)row[b] * problem.Width / breadths[b] + 1);
        return (int)Math.Min(greatest, int.MaxValue);
    }

    /// <summary>The most that strips of a length side by side are worth, for every width.</summary>
    private void Fill(int height)
    {
        Array.Clear(most);
        var before = 0;
        for (var b = 0; b < breadths.Length; b++)
        {
            var worth = strips[b][height];
            if (worth <= before)
                continue;
            before = worth;
            Repeat(breadths[b], worth);
        }
    }

    private void Repeat(int breadth, int worth)
    {
        var y = breadth;
        // From here on a chunk never reads what it writes itself.
        if (breadth >= Lanes)
        {
            var add = Vector256.Create(worth);
            ref var start = ref MemoryMarshal.GetArrayDataReference(most);
            for (; y + Lanes <= most.Length; y += Lanes)
            {
                var with = Vector256.LoadUnsafe(ref start, (nuint)(y - breadth)) + add;
                Vector256
                    .Max(Vector256.LoadUnsafe(ref start, (nuint)y), with)
                    .StoreUnsafe(ref start, (nuint)y);
            }
        }

        for (; y < most.Length; y++)
            most[y] = Math.Max(most[y], most[y - breadth] + worth);
    }

    /// <summary>The section of a height that is worth most.</summary>
    private Section Read(int height)
    {
        Fill(height);
        var found = new List<int[]>();
        var width = problem.Width;
        while (most[width] > 0)
        {
            while (most[width - 1] == most[width])
                width--;
            var b = 0;
            while (most[width - breadths[b]] + strips[b][height] != most[width])
                b++;
            found.Add(Strip(b, height));
            width -= breadths[b];
        }

        return Section.Of(height, found, problem.Items.Count);
    }

    private int[] Strip(int breadth, int length)
    {
        var items = new List<int>();
        for (var at = blocksOf[breadth] - 1; at >= 0; at--)
        {
            if (!taken[at][length])
                continue;
            var (item, copies) = blocks[at];
            items.AddRange(Enumerable.Repeat(item, copies));
            length -= copies * problem.Items[item].H;
        }

        return [.. items];
    }
}
