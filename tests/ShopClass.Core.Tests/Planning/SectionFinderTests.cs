using CsCheck;
using ShopClass.Core.Planning.Search;
using ShopClass.Core.Planning.Search.Pricing;

namespace ShopClass.Core.Tests.Planning;

/// <summary>
/// The sections found at random prices are those that trying every strip beside every other gives, each with the loss its own
/// cuts come to.
/// </summary>
public class SectionFinderTests
{
    /// <summary>So many of the best sections are asked for.</summary>
    private const int Asked = 120;

    [Fact]
    public void All_sections_within_a_limit_are_found_once() =>
        Cases.Sample(
            seed =>
            {
                var (finder, all, limit) = Random(seed);
                var wanted = all.Where(c => c.Loss <= limit).Select(c => (Key(c), c.Loss));
                var found = finder.Within(limit, int.MaxValue - 1)!.Select(c => (Key(c), c.Loss));
                Assert.Equal(wanted.Order(), found.Order());
            },
            iter: 60,
            threads: 1
        );

    [Fact]
    public void Wherever_it_begins_the_best_section_led_by_each_strip_is_found() =>
        Cases.Sample(
            seed =>
            {
                var (finder, all, limit) = Random(seed);
                var wanted = all.Where(c => c.Loss <= limit)
                    .GroupBy(Lead)
                    .Select(g => (g.Key, g.Min(c => c.Loss)));
                var end = finder.Best(limit, 1, 0, 3).End;
                var found = finder.Best(limit, int.MaxValue, end, 1).Found;
                Assert.Equal(wanted.Order(), found.Select(c => (Lead(c), c.Loss)).Order());
            },
            iter: 60,
            threads: 1
        );

    private static readonly Gen<int> Cases = Gen.Int[0, int.MaxValue];

    /// <summary>Seven kinds of blank on a board on which up to five strips lie side by side.</summary>
    private static (SectionFinder Finder, List<Column> All, long Limit) Random(int seed)
    {
        var random = new Random(seed);
        var request = Wood.Ask(
            Wood.Bare(Wood.Mm(random.Next(0, 4))) with
            {
                LengthAllowance = Wood.Mm(random.Next(0, 12)),
            },
            [Wood.Board("1", Wood.Mm(20), Wood.Mm(random.Next(150, 260)), Wood.Mm(800))],
            [
                .. Enumerable
                    .Range(0, 7)
                    .Select(i =>
                        Wood.Part(
                            $"{(char)('A' + i)}",
                            random.Next(1, 3),
                            Wood.Mm(20),
                            Wood.Mm(random.Next(45, 100)),
                            Wood.Mm(random.Next(80, 400))
                        )
                    ),
            ]
        );
        var bench = Core.Planning.Search.Bench.Lay(
            request,
            new SortedDictionary<string, int>(StringComparer.Ordinal)
        );
        var steps = new Steps(int.MaxValue, CancellationToken.None);
        var packing = Packing.For(bench.Demand)!;
        var stock = bench.Stocks[0];
        var pool = StripPool.Of(bench, packing, stock, stock.Usable, 100_000, steps)!;
        var group = new BoardGroup(0, [stock], pool);
        var prices = Any(random, bench, packing, group);
        var all = new List<Column>();
        Try(packing, group, prices, [], all);
        var losses = all.Select(c => c.Loss).Order().ToList();
        return (new(packing, group, prices, steps), all, losses[Math.Min(Asked, losses.Count) - 1]);
    }

    /// <summary>Each blank is worth about what it costs in a section of its own, the length some or nothing.</summary>
    private static Prices Any(
        Random random,
        Core.Planning.Search.Bench bench,
        Packing packing,
        BoardGroup group
    )
    {
        var own = new Prices(1, new long[packing.Kinds], [0], 0);
        var worth = bench.Kinds.Select(k =>
            Column.Of(group, [group.Single(k)], 0).LossAt(own, packing) * random.Next(40, 110) / 100
        );
        return new(1, [.. worth], [random.Next(0, 3) * random.Next(0, 4_000_000)], 0);
    }

    /// <summary>Puts each strip beside those chosen, from the last of them on, as long as width and blanks allow.</summary>
    private static void Try(
        Packing packing,
        BoardGroup group,
        Prices prices,
        List<int> chosen,
        List<Column> all
    )
    {
        var (stock, pool) = (group.First, group.Pool);
        var left = packing.All;
        var room = stock.Width;
        foreach (var i in chosen)
        {
            left -= pool.Strips[i].Packed;
            room -= pool.Breadths[pool.Strips[i].Breadth].Width + stock.RipKerf;
        }

        for (var i = chosen.LastOrDefault(); i < pool.Strips.Length; i++)
        {
            var strip = pool.Strips[i];
            if (
                strip.Length > stock.Usable
                || pool.Breadths[strip.Breadth].Width > room
                || !packing.Holds(left, strip.Packed)
            )
                continue;
            chosen.Add(i);
            all.Add(Column.Of(group, chosen, 0).At(prices, packing));
            Try(packing, group, prices, chosen, all);
            chosen.RemoveAt(chosen.Count - 1);
        }
    }

    private static string Key(Column column) => string.Join(' ', column.Strips.Order());

    /// <summary>Its longest strip, of several the first.</summary>
    private static int Lead(Column column)
    {
        var pool = column.Group.Pool;
        return column.Strips.Order().MaxBy(s => pool.Strips[s].Length);
    }
}
