using CsCheck;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Core.Tests.Planning;
using Xunit;

namespace ShopClass.Core.Tests.Orders;

/// <summary>Orders of small random classes, put to a general solver as well (CP-SAT of Google OR-Tools).</summary>
public class OrderOracleTests
{
    // As many as there are pieces at most: the seller's stock is not limited, so the oracle's must not be.
    private const int Copies = 6;
    private static readonly Length Unit = Wood.Mm(10);

    private static readonly Gen<OrderAsk> Small = Gen.Select(
        Gen.Select(Gen.Int[2, 6], Gen.Int[2, 8]).Array[1, 2],
        Gen.Int[1, 2],
        Gen.Int[0, 1],
        Gen.Int[50, 100],
        Gen.Int[30, 90],
        (parts, people, kerf, first, second) => Ask(parts, people, kerf, first, second)
    );

    [Fact]
    public void The_cheapest_order_costs_what_a_general_solver_finds() =>
        Small.Sample(
            ask =>
            {
                if (LeastCost(ask) is not { } least)
                    return;
                var order = ClassOrders.Make(ask);
                Assert.True(order.IsComplete);
                Assert.True(order.Bound <= least, $"bound {order.Bound}, optimum {least}");
                Assert.Equal(least, order.Total.MinorUnits);
            },
            iter: 20,
            threads: 1
        );

    private static long? LeastCost(OrderAsk ask)
    {
        var stock = ask
            .Sellers.SelectMany(s => s.Stock)
            .SelectMany(s => Enumerable.Repeat(s, Copies))
            .ToList();
        return new SmallOracle(
            [
                .. ask.Project.Parts.SelectMany(p =>
                    Enumerable.Repeat((p.Finished.Length, p.Finished.Width), ask.AllKits)
                ),
            ],
            [.. stock.Select(s => (s.Length, s.Width))],
            ask.Rules.CrosscutKerf,
            Unit
        ).LeastCost([.. stock.Select(s => s.BoardPrice.MinorUnits)]);
    }

    private static OrderAsk Ask(
        (int Width, int Length)[] parts,
        int people,
        int kerf,
        int first,
        int second
    ) =>
        new()
        {
            Project = new()
            {
                Name = "tiny",
                Parts =
                [
                    .. parts.Select(
                        (p, i) =>
                            Wood.Part(
                                $"{(char)('A' + i)}",
                                1,
                                Wood.Mm(20),
                                Wood.Mm(p.Width * 10),
                                Wood.Mm(p.Length * 10)
                            )
                    ),
                ],
            },
            Rules = Wood.Bare(Wood.Mm(kerf * 10)),
            People = [.. Enumerable.Range(1, people).Select(i => new OrderPerson($"{i}", $"S{i}"))],
            SpareKits = 1,
            Currency = "EUR",
            Sellers =
            [
                new("near", "Near", "EUR", [Board("wide", 7, 12, first)]),
                new("far", "Far", "EUR", [Board("narrow", 6, 8, second)]),
            ],
        };

    private static PricedStock Board(string id, int width, int length, int cents) =>
        new()
        {
            Id = id,
            Name = id,
            SpeciesId = "eastern-white-pine",
            Surfacing = Surfacing.S2S,
            Thickness = Wood.Mm(20),
            Width = Wood.Mm(width * 10),
            Length = Wood.Mm(length * 10),
            Price = new(cents, "EUR"),
            Basis = PriceBasis.Each,
        };
}
