using ShopClass.Core.Measure;

namespace ShopClass.Core.Orders;

/// <summary>What one kit costs.</summary>
/// <param name="Kit">Its number, from 1.</param>
/// <param name="Name">Whose it is.</param>
/// <param name="Wood">Its share of the boards it is cut from.</param>
/// <param name="Shared">Its even share of spare kits, spare parts and boards that came with a pack.</param>
/// <param name="Supplies">Its hardware, glue, finish and so on.</param>
public sealed record KitCost(int Kit, string Name, Money Wood, Money Shared, Money Supplies)
{
    /// <summary>All of it.</summary>
    public Money Total => Wood + Shared + Supplies;
}

/// <summary>
/// Shares out what an order costs among the students who get a kit. A board's price goes to its kits by the area of their
/// blanks; what belongs to nobody is shared evenly. The shares add up to the order's total, to the minor unit.
/// </summary>
public static class KitCosts
{
    /// <summary>One for each student; none when nobody gets a kit. Supplies in another currency are not counted.</summary>
    public static IReadOnlyList<KitCost> Of(ClassOrder order, IReadOnlyList<Supply> supplies)
    {
        var people = order.Ask.People.Count;
        if (people == 0)
            return [];
        var currency = order.Ask.Currency;
        var wood = Enumerable.Repeat(Money.Zero(currency), people).ToArray();
        var counted = Money.Zero(currency);
        foreach (var board in order.Plan.Boards)
        {
            if (order.LineOf(board) is not { } line)
                continue;
            var areas = Areas(order, board);
            var shares = line.Stock.BoardPrice.ShareBy([.. areas.Select(a => a.Area)]);
            for (var i = 0; i < areas.Count; i++)
            {
                if (areas[i].Kit < 1 || areas[i].Kit > people)
                    continue;
                wood[areas[i].Kit - 1] += shares[i];
                counted += shares[i];
            }
        }

        var even = (order.Total - counted).Split(people);
        var kit = supplies
            .Where(s => s.CostPerKit?.Currency == currency)
            .Aggregate(Money.Zero(currency), (sum, s) => sum + s.CostPerKit!.Value);
        return
        [
            .. Enumerable
                .Range(1, people)
                .Select(k => new KitCost(k, order.KitName(k), wood[k - 1], even[k - 1], kit)),
        ];
    }

    // In square hundredths of a millimetre, so that a class's areas fit a long.
    private static List<(int Kit, long Area)> Areas(
        ClassOrder order,
        Planning.Classes.ClassBoard board
    ) =>
        [
            .. from section in board.Layout.Sections
            from strip in section.Strips
            from blank in strip.Blanks
            group blank.In(strip).Area.SquareTicks by order.KitOn(board, blank) into kit
            orderby kit.Key
            select (kit.Key, (long)(kit.Aggregate(Int128.Zero, (sum, area) => sum + area) / 256)),
        ];
}
