using ShopClass.Core.Measure;

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

/// <summary>Compares what came with what was ordered; <see cref="Replanning"/> lays the kits out again on it.</summary>
public static class Receiving
{
    /// <summary>How many of a line have come and are kept.</summary>
    public static int Kept(OrderLine line, IReadOnlyList<Arrived> arrived) =>
        arrived
            .Where(a => a.SellerId == line.SellerId && a.StockId == line.Stock.Id && !a.IsRefused)
            .Sum(a => a.Count);

    /// <summary>Why what is said to have come cannot be, in sentences: a count or a measure out of reason.</summary>
    public static IReadOnlyList<string> ProblemsIn(ClassOrder order, IReadOnlyList<Arrived> arrived)
    {
        var found = new List<string>();
        foreach (var a in arrived)
        {
            if (a.Count is < 1 or > StockChecks.MostBoards)
                found.Add($"Write how many came, from 1 to {StockChecks.MostBoards:N0}.");
            if (
                order.ToBuy.FirstOrDefault(l => (l.SellerId, l.Stock.Id) == (a.SellerId, a.StockId))
                is not { } line
            )
            {
                found.Add(
                    "A board that was not ordered cannot be received with it; put it on the rack."
                );
                continue;
            }

            var measured = line.Stock with
            {
                Thickness = a.Thickness,
                Width = a.Width,
                Length = a.Length,
            };
            found.AddRange(
                StockChecks
                    .ProblemsIn(measured, order.Ask.Rules.Unit)
                    .Where(p => p.Field is "Thickness" or "Width" or "Length")
                    .Select(p => p.Sentence)
            );
        }

        return [.. found.Distinct()];
    }

    /// <summary>What differs from the order, line by line in sentences; empty when all came as ordered.</summary>
    public static IReadOnlyList<string> Differences(
        ClassOrder order,
        IReadOnlyList<Arrived> arrived
    )
    {
        var rules = order.Ask.Rules;
        var found = new List<string>();
        foreach (var line in order.ToBuy)
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

    /// <summary>
    /// Whether the kits can be cut as they were laid out: of every line as many boards came, as thick as listed and no
    /// smaller, as are cut.
    /// </summary>
    public static bool StillFits(ClassOrder order, IReadOnlyList<Arrived> arrived) =>
        order.ToBuy.All(line =>
            arrived
                .Where(a =>
                    !a.IsRefused
                    && (a.SellerId, a.StockId) == (line.SellerId, line.Stock.Id)
                    && a.Thickness == line.Stock.Thickness
                    && a.Width >= line.Stock.Width
                    && a.Length >= line.Stock.Length
                )
                .Sum(a => a.Count) >= line.Needed
        );
}
