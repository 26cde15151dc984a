using ShopClass.Core.Measure;
using ShopClass.Core.Planning.Classes;

namespace ShopClass.Core.Orders;

/// <summary>Boards that came, as they measure.</summary>
/// <param name="SellerId">From which seller.</param>
/// <param name="StockId">Of which line of the list.</param>
/// <param name="Count">How many that measure this.</param>
/// <param name="Thickness">Measured thickness.</param>
/// <param name="Width">Measured width, at its smallest.</param>
/// <param name="Length">Measured length.</param>
/// <param name="IsRefused">Whether they go back: split, wrong or too wet.</param>
public sealed record Arrived(
    string SellerId,
    string StockId,
    int Count,
    Length Thickness,
    Length Width,
    Length Length,
    bool IsRefused = false
);

/// <summary>Compares what came with what was ordered, and lays the kits out again on what is really there.</summary>
public static class Receiving
{
    /// <summary>How many of a line have come and are kept.</summary>
    public static int Kept(OrderLine line, IReadOnlyList<Arrived> arrived) =>
        arrived
            .Where(a => a.SellerId == line.SellerId && a.StockId == line.Stock.Id && !a.IsRefused)
            .Sum(a => a.Count);

    /// <summary>What differs from the order, line by line in sentences; empty when all came as ordered.</summary>
    public static IReadOnlyList<string> Differences(
        ClassOrder order,
        IReadOnlyList<Arrived> arrived
    )
    {
        var rules = order.Ask.Rules;
        var found = new List<string>();
        foreach (var line in order.Lines)
        {
            var name = $"{OrderWords.Board(line.Stock, rules.Precision)} from {line.Seller}";
            var kept = Kept(line, arrived);
            if (kept != line.Bought)
                found.Add($"{name}: {line.Bought} ordered, {kept} kept.");
            foreach (
                var a in arrived.Where(a =>
                    a.SellerId == line.SellerId && a.StockId == line.Stock.Id && !a.IsRefused
                )
            )
            {
                if (
                    a.Thickness < line.Stock.Thickness
                    || a.Width < line.Stock.Width
                    || a.Length < line.Stock.Length
                )
                    found.Add(
                        $"{name}: {OrderWords.Say(a.Count, "board")} measured {LengthWriter.WriteSize(a.Thickness, a.Width, a.Length, rules.Precision)}, smaller than listed."
                    );
            }
        }

        return found;
    }

    /// <summary>The order's kits laid out on the boards that came, the rack as before; nothing is bought.</summary>
    public static ClassOrder Again(
        ClassOrder order,
        IReadOnlyList<Arrived> arrived,
        CancellationToken cancel = default
    )
    {
        var boards = new List<RackBoard>(order.Request.Rack);
        foreach (var (a, index) in arrived.Select((a, i) => (a, i)))
        {
            if (
                a.IsRefused
                || order.Lines.FirstOrDefault(l =>
                    l.SellerId == a.SellerId && l.Stock.Id == a.StockId
                )
                    is not { } line
            )
                continue;
            var size = order.Request.Stock.First(s =>
                s.Id == ClassOrders.KeyOf(a.SellerId, line.Stock)
            ) with
            {
                Thickness = a.Thickness,
                Width = a.Width,
                Length = a.Length,
            };
            for (var copy = 1; copy <= a.Count; copy++)
                boards.Add(
                    new(
                        size.ToBoard(
                            $"came-{index + 1}/{copy}",
                            $"{line.Stock.Name} {copy}",
                            order.Ask.Rules
                        ),
                        1
                    )
                );
        }

        var request = order.Request with { Stock = [], Rack = boards };
        var plan = ClassPlanner.Plan(request, progress: null, cancel);
        return order with { Request = request, Plan = plan, Lines = [], Bound = plan.Bound };
    }
}
