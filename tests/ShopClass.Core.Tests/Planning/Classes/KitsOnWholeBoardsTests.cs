using CsCheck;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning.Classes;
using Xunit;

namespace ShopClass.Core.Tests.Planning.Classes;

/// <summary>
/// Kits on boards of their own against trying every set of up to three boards for a kit, each put to a general solver
/// (<see cref="SmallOracle"/>), and every way to share the sets out.
/// </summary>
public class KitsOnWholeBoardsTests
{
    private const int Kits = 3;
    private static readonly Length Unit = Wood.Mm(10);

    /// <summary>Three blanks, kerf 0 or 10 mm; a large size and a small one, of which there may be few.</summary>
    private static readonly Gen<ClassRequest> Any = Gen.Select(
        Gen.Select(Gen.Int[2, 6], Gen.Int[3, 8]).Array[3, 3],
        Gen.Int[0, 1],
        Gen.Int[40, 90],
        Gen.Int[0, 4],
        (parts, kerf, price, few) =>
            new ClassRequest
            {
                Project = new()
                {
                    Name = "kit",
                    Parts =
                    [
                        .. parts.Select(
                            (p, i) =>
                                Wood.Part(
                                    $"{(char)('A' + i)}",
                                    1,
                                    Wood.Mm(20),
                                    Unit * p.Item1,
                                    Unit * p.Item2
                                )
                        ),
                    ],
                },
                Rules = Wood.Bare(Unit * kerf),
                Kits = Kits,
                Stock = [Size("0", 8, 12, 100, null), Size("1", 6, 9, price, few > 3 ? null : few)],
                Way = KitWay.WholeBoards,
                StepLimit = 2_000,
            }
    );

    [Fact]
    public void The_cost_and_its_bound_are_what_trying_everything_gives() =>
        Any.Sample(
            request =>
            {
                if (Cheapest(request) is not { } least)
                    return;
                var plan = ClassPlannerTests.Plan(request);
                Assert.True(plan.IsComplete);
                Assert.Empty(ClassRehearsal.Replay(request, plan).Findings);
                Assert.True(plan.Bound <= least, $"bound {plan.Bound}, optimum {least}");
                Assert.Equal(least, plan.Cost);
                // Sets may be mixed in parts only where there are few of a size.
                if (request.Stock[1].Available is null or 0)
                    Assert.Equal(least, plan.Bound);
            },
            iter: 20,
            threads: 1
        );

    /// <summary>A class that buys the cheapest boards a shelf can be made of has proof of it; so many times the area does not give it.</summary>
    [Fact]
    public void Thirty_shelves_on_whole_boards_are_proven_cheapest()
    {
        var plan = ClassPlannerTests.Plan(
            ClassPlannerTests.Shelves(30) with
            {
                Way = KitWay.WholeBoards,
            }
        );
        Assert.True(plan.IsBestPossible, $"cost {plan.Cost}, bound {plan.Bound}");
    }

    /// <summary>A board on the rack serves one kit: it lowers the bound by no more than it saves.</summary>
    [Fact]
    public void One_free_board_is_counted_for_one_kit()
    {
        var request = ClassPlannerTests.Shelves(30) with { Way = KitWay.WholeBoards };
        var board = request.Stock[1].ToBoard("r", "Rack board", request.Rules);
        var with = request with { Rack = [new RackBoard(board)] };
        var (before, after) = (ClassPlannerTests.Plan(request), ClassPlannerTests.Plan(with));
        Assert.True(after.Bound < before.Bound);
        Assert.True(after.Bound >= before.Bound - before.Bound / 30);
        Assert.True(after.Cost <= before.Cost);
    }

    private static StockSize Size(string id, int width, int length, long price, int? available) =>
        RandomClasses.Size(id, Unit * width, Unit * length, price) with
        {
            Surfacing = Core.Lumber.Surfacing.S2S,
            Thickness = Wood.Mm(20),
            Available = available,
        };

    /// <summary>The least that three kits cost on sets of up to three boards each; null where a set of four might be cheaper.</summary>
    private static long? Cheapest(ClassRequest request)
    {
        var (large, small) = (request.Stock[0].Price, request.Stock[1].Price);
        List<(int Small, long Cost)> sets =
        [
            .. from a in Enumerable.Range(0, 4)
            from b in Enumerable.Range(0, 4)
            where a + b is > 0 and < 4 && Holds(request, a, b)
            select (b, a * large + b * small),
        ];
        if (sets.Count == 0)
            return null;
        var most = request.Stock[1].Available ?? int.MaxValue;
        var dearest = sets.Where(s => s.Small == 0).Select(s => s.Cost).DefaultIfEmpty(0).Min();
        // Four of the small size are then no cheaper than a set that can always be had.
        if (dearest == 0 || dearest > 4 * small)
            return null;
        return (
            from x in sets
            from y in sets
            from z in sets
            where x.Small + y.Small + z.Small <= most
            select x.Cost + y.Cost + z.Cost
        ).Min();
    }

    private static bool Holds(ClassRequest request, int large, int small) =>
        new SmallOracle(
            [.. request.Project.Parts.Select(p => (p.Finished.Length, p.Finished.Width))],
            [
                .. Enumerable
                    .Repeat(0, large)
                    .Concat(Enumerable.Repeat(1, small))
                    .Select(s => (request.Stock[s].Length, request.Stock[s].Width)),
            ],
            request.Rules.CrosscutKerf,
            Unit
        ).LeastLength(Unit)
            is not null;
}
