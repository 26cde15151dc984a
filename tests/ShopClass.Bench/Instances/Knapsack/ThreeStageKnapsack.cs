using ShopClass.Core.Planning.Classes.Staged;

namespace ShopClass.Bench.Instances.Knapsack;

/// <summary>
/// One board in three stages with trims, most profit. The linear programme over sections bounds it. Boards come from the
/// beams that pack wood for a class, pieces being worth their profit and not their area, and from two stages.
/// </summary>
internal sealed class ThreeStageKnapsack(ShelfProblem problem, int steps, CancellationToken cancel)
{
    private const int AtOnce = 12;
    private const int MostTurns = 400;
    private const int NodesOfTwoStages = 30;
    private const int Narrowest = 64;
    private const int Widest = 16_384;
    private readonly Effort effort = new(steps, cancel);

    /// <summary>The sections of the best board found.</summary>
    public IReadOnlyList<Section> Best { get; private set; } = [];

    /// <summary>What they bring.</summary>
    public long Value { get; private set; }

    /// <summary>No choice of items brings more.</summary>
    public long Bound { get; private set; } = long.MaxValue;

    public void Solve()
    {
        if (!SectionPricing.HasAny(problem))
        {
            Bound = 0;
            return;
        }

        Relax();
        AsOneSection();
        OneItemStrips();
        ByBeams();
    }

    private bool IsOver => effort.IsUp || Value >= Bound;

    private void Offer(IReadOnlyList<Section> sections)
    {
        var value = sections.Sum(problem.Profit);
        if (value > Value)
            (Value, Best) = (value, sections);
    }

    /// <summary>The best in two stages the other way: one section, its strips shelves.</summary>
    private void AsOneSection()
    {
        Item[] turned = [.. problem.Items.Select(i => i with { W = i.H, H = i.W })];
        var (_, shelves) = TwoStages(problem.Length, problem.Width, turned);
        Offer([
            Section.Of(
                problem.Length,
                [.. shelves.Select(Items).Where(s => s.Length > 0)],
                turned.Length
            ),
        ]);
    }

    /// <summary>The best in two stages: each strip is one item.</summary>
    private void OneItemStrips()
    {
        var (heights, shelves) = TwoStages(problem.Width, problem.Length, problem.Items);
        Offer([
            .. shelves.Select(s =>
                Section.Of(
                    heights[s.Height],
                    [.. Items(s).Select(i => new[] { i })],
                    problem.Items.Count
                )
            ),
        ]);
    }

    private (int[] Heights, IReadOnlyList<Shelf> Shelves) TwoStages(
        int width,
        int length,
        IReadOnlyList<Item> items
    )
    {
        var shelves = new ShelfProblem(width, length, items);
        var knapsack = new TwoStageKnapsack(shelves, NodesOfTwoStages, cancel);
        knapsack.Solve();
        return (shelves.Heights, knapsack.Best);
    }

    private static int[] Items(Shelf shelf) =>
        [.. shelf.Kinds.SelectMany(i => Enumerable.Repeat(i, shelf.Counts[i]))];

    /// <summary>Wider and wider beams; a second board lets them close the first.</summary>
    private void ByBeams()
    {
        var area = (long)problem.Length * problem.Width;
        var cutting = new Cutting(
            [new Plank(problem.Length, problem.Width, area, 2, KeepsEdges: false)],
            [.. problem.Items.Select(i => new Piece([new Way(i.H, i.W, i.W)], i.Count, null))]
        );
        var perProfit = (double)area / Bound;
        double[] worths = [.. problem.Items.Select(i => i.Profit * perProfit)];
        for (var width = Narrowest; width <= Widest; width *= 4)
        {
            foreach (var guide in BeamGuide.ForPool)
            {
                if (IsOver)
                    return;
                var pool = new BoardPool(cutting, new double[worths.Length]);
                var search = new BeamSearch(cutting, effort);
                if (search.Run(width, guide, long.MaxValue / 4, pool, worths) is { } all)
                    pool.Add(all);
                var best = pool.Columns.MaxBy(c =>
                    c.Counts.Select((n, i) => n * problem.Items[i].Profit).Sum()
                );
                if (best is not null)
                    Offer([.. best.Board.Sections.Select(Of)]);
            }
        }
    }

    private Section Of(CutSection section)
    {
        int[][] strips = [.. section.Strips.Select(s => s.Pieces.Select(p => p.Piece).ToArray())];
        return Section.Of(
            strips.Max(s => s.Sum(i => problem.Items[i].H)),
            strips,
            problem.Items.Count
        );
    }

    /// <summary>Finds prices by column generation, and with them the bound.</summary>
    private void Relax()
    {
        var programme = new ShelfProgramme(
            problem with
            {
                Heights = [.. Enumerable.Range(0, problem.Length + 1)],
            },
            []
        );
        var pricing = new SectionPricing(problem);
        var known = new List<Section>();
        for (var turn = 0; turn < MostTurns && !cancel.IsCancellationRequested; turn++)
        {
            while (programme.EnterBest(known, 1e-3)) { }
            var better = pricing.Best(programme.Prices, AtOnce);
            if (better.Count == 0)
                break;
            known.AddRange(better.Select(b => b.Section));
        }

        Bound = pricing.Bound(programme.Prices);
    }
}
