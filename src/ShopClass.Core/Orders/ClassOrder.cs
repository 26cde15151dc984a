using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Classes;

namespace ShopClass.Core.Orders;

/// <summary>A line of an order: boards of one kind from one seller.</summary>
/// <param name="SellerId">Which seller.</param>
/// <param name="Seller">The seller's name.</param>
/// <param name="Stock">What to ask for.</param>
/// <param name="Needed">Boards that are cut.</param>
/// <param name="Bought">Boards paid for: whole packs.</param>
public sealed record OrderLine(
    string SellerId,
    string Seller,
    PricedStock Stock,
    int Needed,
    int Bought
)
{
    /// <summary>Whether the boards are in the shop already, paid for and measured; nothing is to be ordered.</summary>
    public bool IsHere { get; init; }

    /// <summary>What the line costs.</summary>
    public Money Cost => Stock.BoardPrice * Bought;
}

/// <summary>The order that this one replaces after its wood came, and what became different.</summary>
/// <param name="Order">The number of the order whose wood came.</param>
/// <param name="Changes">What became different, in sentences; see <see cref="Replanning.Changes"/>.</param>
public sealed record Replaced(int Order, IReadOnlyList<string> Changes);

/// <summary>What to buy for a class, what each board is for, and how good it is.</summary>
public sealed record ClassOrder
{
    /// <summary>What was asked.</summary>
    public required OrderAsk Ask { get; init; }

    /// <summary>The same as the class planner was asked; kits are numbered as the people are.</summary>
    public required ClassRequest Request { get; init; }

    /// <summary>The layout of every board.</summary>
    public required ClassPlan Plan { get; init; }

    /// <summary>What to buy, seller by seller in the order of the sellers.</summary>
    public required IReadOnlyList<OrderLine> Lines { get; init; }

    /// <summary>A cost nothing that was asked for goes below, in minor units; packs not reckoned.</summary>
    public required long Bound { get; init; }

    /// <summary>The order whose wood these kits were laid out again on; null for one made from price lists.</summary>
    public Replaced? Replaces { get; init; }

    /// <summary>What is still to be bought: all lines but those whose boards are here.</summary>
    public IEnumerable<OrderLine> ToBuy => Lines.Where(l => !l.IsHere);

    /// <summary>Whether every kit and spare is whole.</summary>
    public bool IsComplete => Plan.IsComplete;

    /// <summary>What everything costs.</summary>
    public Money Total => Lines.Aggregate(Money.Zero(Ask.Currency), (sum, line) => sum + line.Cost);

    /// <summary>Wood in the finished parts of all kits and spares.</summary>
    public Volume Net => Projects.PartsTotal.Of(Request.WholeClass.Parts).Wood;

    /// <summary>Whose kit has which number; spare kits have no name.</summary>
    public string KitName(int kit) =>
        kit <= Ask.People.Count ? Ask.People[kit - 1].Shown : $"Spare {kit - Ask.People.Count}";

    /// <summary>The blanks of a kit, board by board.</summary>
    public IEnumerable<(ClassBoard Board, IReadOnlyList<PlacedBlank> Blanks)> BlanksOf(int kit) =>
        from board in Plan.Boards
        let blanks = board.Blanks.Where(b => KitOn(board, b) == kit).ToList()
        where blanks.Count > 0
        select (board, (IReadOnlyList<PlacedBlank>)blanks);

    /// <summary>Which kit a blank belongs to; 0 for a spare part.</summary>
    public int KitOn(ClassBoard board, PlacedBlank blank) => board.Kit ?? Request.KitOf(blank.Key);

    /// <summary>The line a board is bought on; null for one from the rack.</summary>
    public OrderLine? LineOf(ClassBoard board) =>
        board.StockSizeId is { } id
            ? Lines.First(l => ClassOrders.KeyOf(l.SellerId, l.Stock) == id)
            : null;

    /// <summary>The rack's entry a board comes from; null for one that is bought.</summary>
    public RackPiece? RackOf(ClassBoard board) =>
        board.StockSizeId is null
            ? Ask.Rack.FirstOrDefault(r =>
                board.Board.Id.StartsWith(r.Id + "/", StringComparison.Ordinal)
            )
            : null;

    /// <summary>Who goes without, and which parts, where no board yields them.</summary>
    public IReadOnlyList<(string Kit, IReadOnlyList<BlankKey> Missing)> Without =>
        [
            .. Plan
                .Missing.GroupBy(Request.KitOf)
                .OrderBy(g => g.Key)
                .Select(g =>
                    (
                        g.Key == 0 ? "spare parts" : KitName(g.Key),
                        (IReadOnlyList<BlankKey>)[.. g.Order()]
                    )
                ),
        ];
}
