using ShopClass.Core.Planning.Patterns;

namespace ShopClass.Bench.Instances.Knapsack;

/// <summary>
/// One board in two stages with trims, most profit: branch and price. The linear programme over shelves bounds each
/// branch; branches limit how many shelves of a height there are and then how often an item lies on shelves of a height.
/// Where both are whole, the shelves of each height are an ordinary packing of lengths.
/// </summary>
internal sealed class TwoStageKnapsack(ShelfProblem problem, int nodes, CancellationToken cancel)
{
    private sealed record Node(IReadOnlyList<Limit> Limits, double Bound);

    private readonly ShelfPricing pricing = new(problem);
    private readonly List<Shelf> pool = [];
    private readonly PriorityQueue<Node, (double Bound, int Age)> open = new();
    private const int NodesPerDive = 8;
    private int nodesLeft = nodes;
    private int age;
    private int looked;
    private double lost = double.MinValue;

    public IReadOnlyList<Shelf> Best { get; private set; } = [];

    public long Value { get; private set; }

    /// <summary>No choice of items brings more.</summary>
    public long Bound { get; private set; } = long.MaxValue;

    public void Solve()
    {
        open.Enqueue(new([], double.MaxValue), (double.MinValue, 0));
        while (open.Count > 0 && nodesLeft-- > 0 && !cancel.IsCancellationRequested)
        {
            var node = open.Dequeue();
            if (Whole(node.Bound) > Value)
                Look(node);
        }

        var left = open.UnorderedItems.Select(o => o.Element.Bound).Append(lost).Max();
        Bound = Math.Max(Value, left == double.MaxValue ? long.MaxValue : Whole(left));
    }

    private static long Whole(double bound) =>
        bound >= long.MaxValue / 2.0 ? long.MaxValue
        : bound <= long.MinValue / 2.0 ? long.MinValue
        : (long)Math.Floor(bound + 1e-4);

    private void Look(Node node)
    {
        var programme = Relax(problem, node.Limits);
        if (programme == null)
        {
            lost = Math.Max(lost, node.Bound);
            return;
        }

        if (!programme.IsFeasible || Whole(programme.Profit) <= Value)
            return;
        var used = programme.Used().ToList();
        if (looked++ % NodesPerDive == 0)
            Dive(used);
        if (Whole(programme.Profit) <= Value)
            return;
        if (Branch(used) is { } limit)
        {
            Open(node, limit with { AtLeast = true, Number = limit.Number + 1 }, programme.Profit);
            Open(node, limit with { AtLeast = false }, programme.Profit);
        }
        else if (!Pack(used))
        {
            lost = Math.Max(lost, programme.Profit);
        }
    }

    private void Open(Node node, Limit limit, double bound) =>
        open.Enqueue(new([.. node.Limits, limit], bound), (-bound, --age));

    /// <summary>Null when cancelled.</summary>
    private ShelfProgramme? Relax(ShelfProblem rest, IReadOnlyList<Limit> limits)
    {
        var programme = new ShelfProgramme(rest, limits);
        var theirs = ReferenceEquals(rest, problem) ? pricing : new ShelfPricing(rest);
        var known = ReferenceEquals(rest, problem) ? pool : [];
        for (var turn = 0; turn < 5000 && !cancel.IsCancellationRequested; turn++)
        {
            for (var again = 0; again < 30 && programme.EnterBest(known, 1e-6); again++) { }
            var better = theirs
                .Best(programme.Prices, limits)
                .OrderByDescending(b => b.Saving)
                .ToList();
            if (better.Count == 0 && !programme.EnterIdle(1e-7))
                return programme;
            foreach (var (shelf, _) in better.Take(5))
            {
                known.Add(shelf);
                if (programme.Saving(shelf) > 1e-6)
                    programme.Enter(shelf);
            }
        }

        return null;
    }

    /// <summary>Keeps the shelf used most, again and again, each time with the best shelves for what is left.</summary>
    private void Dive(List<(Shelf Shelf, double Level)> used)
    {
        var kept = new List<Shelf>();
        int[] left = [.. problem.Items.Select(i => i.Count)];
        var length = problem.Length;
        for (var more = true; more && used.Count > 0; )
        {
            var before = kept.Count;
            foreach (var (shelf, level) in used)
            {
                for (var n = 0; n < (int)(level + 0.01); n++)
                    Keep(shelf);
            }

            foreach (var (shelf, _) in used.OrderByDescending(u => u.Level))
            {
                if (kept.Count == before)
                    Keep(shelf);
            }

            more = kept.Count > before;
            var rest = new ShelfProblem(
                problem.Width,
                length,
                [.. problem.Items.Select((item, i) => item with { Count = left[i] })]
            );
            if (rest.Heights.Length == 0 || Relax(rest, []) is not { } programme)
                break;
            used = [.. programme.Used().Select(u => (Named(u.Shelf, rest), u.Level))];
        }

        Offer(kept);

        Shelf Named(Shelf shelf, ShelfProblem rest) =>
            new(Array.IndexOf(problem.Heights, rest.Heights[shelf.Height]), shelf.Counts);

        void Keep(Shelf shelf)
        {
            int[] counts = [.. shelf.Counts.Select((c, i) => Math.Min(c, left[i]))];
            if (problem.Heights[shelf.Height] > length || counts.All(c => c == 0))
                return;
            length -= problem.Heights[shelf.Height];
            for (var i = 0; i < counts.Length; i++)
                left[i] -= counts[i];
            kept.Add(new(shelf.Height, counts));
        }
    }

    private void Offer(IReadOnlyList<Shelf> shelves)
    {
        var value = shelves.Sum(problem.Profit);
        if (value > Value)
            (Value, Best) = (value, shelves);
    }

    /// <summary>The count farthest from a whole number: shelves of a height first, then items on a height.</summary>
    private Limit? Branch(List<(Shelf Shelf, double Level)> used)
    {
        var byHeight = used.GroupBy(u => u.Shelf.Height).OrderBy(g => g.Key).ToList();
        var heights = byHeight.Select(g => (g.Key, Item: (int?)null, Sum: g.Sum(u => u.Level)));
        var items = byHeight.SelectMany(g =>
            Enumerable
                .Range(0, problem.Items.Count)
                .Select(i => (g.Key, Item: (int?)i, Sum: g.Sum(u => u.Level * u.Shelf.Counts[i])))
        );
        foreach (var counts in new[] { heights, items })
        {
            var farthest = counts.MaxBy(c => Off(c.Sum));
            if (Off(farthest.Sum) > 1e-4)
                return new(farthest.Key, farthest.Item, false, (int)Math.Floor(farthest.Sum));
        }

        return null;

        static double Off(double sum) => Math.Abs(sum - Math.Round(sum));
    }

    /// <summary>Packs whole counts onto whole shelves; false when they do not go.</summary>
    private bool Pack(List<(Shelf Shelf, double Level)> used)
    {
        var shelves = new List<Shelf>();
        foreach (var group in used.GroupBy(u => u.Shelf.Height))
        {
            int[] counts =
            [
                .. Enumerable
                    .Range(0, problem.Items.Count)
                    .Select(i => (int)Math.Round(group.Sum(u => u.Level * u.Shelf.Counts[i]))),
            ];
            int[] kinds = [.. Enumerable.Range(0, counts.Length).Where(i => counts[i] > 0)];
            var plan = LengthsFromBoards.Fewest(
                new(
                    problem.Width,
                    0,
                    [.. kinds.Select(i => new LengthWanted(problem.Items[i].W, counts[i]))]
                ),
                cancel
            );
            if (plan.Boards.Count > (int)Math.Round(group.Sum(u => u.Level)))
                return false;
            shelves.AddRange(
                plan.Boards.Select(b => new Shelf(
                    group.Key,
                    [.. Enumerable.Range(0, counts.Length).Select(i => b.Count(x => kinds[x] == i))]
                ))
            );
        }

        Offer(shelves);
        return true;
    }
}
