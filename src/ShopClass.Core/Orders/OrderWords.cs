using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Classes;

namespace ShopClass.Core.Orders;

/// <summary>An order in sentences, for screens and sheets alike.</summary>
public static class OrderWords
{
    /// <summary>What a way favours.</summary>
    public static string Of(OrderWay way) =>
        way switch
        {
            OrderWay.Cheapest => "Cheapest",
            OrderWay.FewestSellers => "Fewest sellers",
            OrderWay.FewestSizes => "Fewest board sizes",
            OrderWay.WholeBoards => "Whole boards for each student",
            _ => throw new ArgumentOutOfRangeException(nameof(way), way, "Not a way to order."),
        };

    /// <summary>How good an order is, and how that is known.</summary>
    public static string Quality(ClassOrder order)
    {
        if (!order.IsComplete)
            return "This wood does not make every kit, so nothing is said about how good the order is.";
        var gap = order.Total.MinorUnits - order.Bound;
        if (order.Lines.Any(l => l.IsHere) || order.Replaces is not null)
            return More(order, gap);
        if (order.Ask.Way is OrderWay.FewestSellers or OrderWay.FewestSizes)
            return $"{order.Total.Shown()} with {Say(order.Lines.Select(l => l.SellerId).Distinct().Count(), "seller")} and {Say(order.Lines.Count, "kind")} of board. What costs least with so few is tried, not proven.";
        return gap <= 0
            ? "The cheapest possible, proven."
            : $"Within {new Money(gap, order.Ask.Currency).Shown()} of the cheapest possible.";
    }

    private static string More(ClassOrder order, long gap)
    {
        var more = order.ToBuy.Aggregate(Money.Zero(order.Ask.Currency), (sum, l) => sum + l.Cost);
        if (more.MinorUnits == 0)
            return "All of it is here; nothing more is to be bought.";
        var known =
            gap <= 0
                ? "the least possible, proven"
                : $"within {new Money(gap, order.Ask.Currency).Shown()} of the least possible";
        return $"{more.Shown()} of it is still to be bought: {known}.";
    }

    /// <summary>The rule of thumb beside it: net wood, wood to buy, and what that would cost.</summary>
    public static string Thumb(ClassOrder order)
    {
        var waste = order.Ask.WastePercent;
        var buy = RuleOfThumb.ToBuy(order.Net, waste);
        var cheapest = order.Lines.MinBy(l => RuleOfThumb.CostOf(BoardFeet.One, l.Stock));
        var cost = cheapest is null
            ? ""
            : $", about {RuleOfThumb.CostOf(buy, cheapest.Stock).Shown()} at the cheapest of these prices";
        return $"Rule of thumb: {Wood(order.Net, order.Ask.Rules.Unit)} in the parts / (1 - {waste} % waste) = {Wood(buy, order.Ask.Rules.Unit)} to buy{cost}. It knows no lengths or widths; the order does.";
    }

    /// <summary>A volume as the trade counts it: board feet, or cubic metres.</summary>
    public static string Wood(Volume wood, UnitSystem unit) =>
        unit is UnitSystem.Inch
            ? $"{PriceWords.Hundredths(BoardFeet.HundredthsIn(wood))} board feet"
            : $"{Litres(wood)} dm³";

    /// <summary>What to ask a seller for.</summary>
    public static string Board(PricedStock stock, Precision precision) =>
        $"{stock.Name}, {LengthWriter.WriteWithUnit(stock.Length, precision)}";

    /// <summary>What a line's boards are called: by their measure when they are here.</summary>
    public static string Board(OrderLine line, Precision precision) =>
        line.IsHere
            ? $"{line.Stock.Name} that measures {LengthWriter.WriteSize(line.Stock.Thickness, line.Stock.Width, line.Stock.Length, precision)}"
            : Board(line.Stock, precision);

    /// <summary>What it is made of: "eastern white pine, S4S, Select".</summary>
    public static string Kind(PricedStock stock)
    {
        var surfacing = stock.Surfacing is Surfacing.Rough ? "rough" : stock.Surfacing.ToString();
        var grade = stock.Grade.Length > 0 ? $", {stock.Grade}" : "";
        return $"{SpeciesTable.Find(stock.SpeciesId)?.CommonName}, {surfacing}{grade}";
    }

    /// <summary>Where a board comes from: "1x8, 96 in from Quern Lane", "Pine offcut, rack 1".</summary>
    public static string Source(ClassOrder order, ClassBoard board)
    {
        if (order.LineOf(board) is { } line)
            return $"{Board(line, order.Ask.Rules.Precision)} from {line.Seller}";
        var place = order.RackOf(board)?.Place;
        return string.IsNullOrEmpty(place)
            ? $"{board.Board.Name}, rack"
            : $"{board.Board.Name}, {place}";
    }

    /// <summary>Blanks by their letters and how many: "A × 2, B".</summary>
    public static string Blanks(IEnumerable<PlacedBlank> blanks) => Keys(blanks.Select(b => b.Key));

    /// <summary>Blanks that are missing, by their letters and how many.</summary>
    public static string Keys(IEnumerable<BlankKey> keys) =>
        string.Join(
            ", ",
            keys.GroupBy(k => k.Part)
                .OrderBy(g => g.Key, StringComparer.Ordinal)
                .Select(g => g.Count() == 1 ? g.Key : $"{g.Key} × {g.Count()}")
        );

    /// <summary>Money with its code.</summary>
    public static string Shown(this Money money) => MoneyText.WriteWithCode(money);

    /// <summary>A count with its word.</summary>
    internal static string Say(int count, string one) =>
        count == 1 ? $"1 {one}" : $"{count} {one}s";

    private static string Litres(Volume wood)
    {
        var litre = Volume.Of(
            Length.FromMillimetres(100),
            Length.FromMillimetres(100),
            Length.FromMillimetres(100)
        );
        var tenths = (long)((wood.CubicTicks * 10 + litre.CubicTicks / 2) / litre.CubicTicks);
        return $"{tenths / 10}.{tenths % 10}";
    }
}
