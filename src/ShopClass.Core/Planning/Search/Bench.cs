using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning.Search;

/// <summary>What lies ready for one search: the boards and the blanks to get out of them, for one choice of glue-ups.</summary>
internal sealed class Bench
{
    private Bench(
        PlanningRequest request,
        IReadOnlyList<Stock> stocks,
        IReadOnlyList<Kind> kinds,
        IReadOnlyDictionary<string, int> glueUps,
        bool costMatters
    )
    {
        Request = request;
        CostMatters = costMatters;
        Stocks = stocks;
        Kinds = kinds;
        GlueUps = glueUps;
        Demand = [.. kinds.Select(k => k.Items.Count)];
    }

    public PlanningRequest Request { get; }

    /// <summary>Whether better plans are looked for, or any that has everything will do.</summary>
    public bool CostMatters { get; }
    public IReadOnlyList<Stock> Stocks { get; }

    /// <summary>Largest first.</summary>
    public IReadOnlyList<Kind> Kinds { get; }
    public IReadOnlyDictionary<string, int> GlueUps { get; }
    public IReadOnlyList<int> Demand { get; }

    /// <summary>Whether every blank by itself has a board that is thick, wide and long enough.</summary>
    public bool EachHasABoard => Kinds.All(k => Stocks.Any(s => IsBigEnough(s, k)));

    private static bool IsBigEnough(Stock stock, Kind kind)
    {
        var least = stock.Board.HasStraightEdges ? kind.WidthBetweenStraightEdges : kind.Width;
        var straight = kind.Length <= stock.Usable && least <= stock.Width;
        var turned = kind.MayTurn && kind.Width <= stock.Usable && kind.Length <= stock.Width;
        return kind.Suits[stock.Index] && (straight || turned);
    }

    /// <summary>Whether what can be sawn from one of two boards can be sawn from the other, as far as its length goes.</summary>
    public bool AreSawnAlike(Stock a, Stock b) =>
        a.Width == b.Width
        && a.Board.Thickness == b.Board.Thickness
        && a.Board.HasStraightEdges == b.Board.HasStraightEdges
        && Kinds.All(k => k.Suits[a.Index] == k.Suits[b.Index]);

    /// <summary>The same where any plan that has everything will do.</summary>
    public Bench ForAnyPlan() => new(Request, Stocks, Kinds, GlueUps, costMatters: false);

    /// <summary>Edges to glue.</summary>
    public int Joints =>
        Request
            .Project.Parts.Where(p => GlueUps.ContainsKey(p.Letter))
            .Sum(p => p.Quantity * (GlueUps[p.Letter] - 1));

    /// <summary>Sorts the request's parts into kinds.</summary>
    public static Bench Lay(
        PlanningRequest request,
        IReadOnlyDictionary<string, int> glueUps,
        bool costMatters = true
    )
    {
        Stock[] stocks =
        [
            .. request.Boards.Select((board, index) => new Stock(index, board, request.Rules)),
        ];
        var kinds = request
            .Project.Parts.Where(p => p.Quantity > 0)
            .SelectMany(part => Items(part, glueUps))
            .GroupBy(item => Sketch(item, request))
            .OrderByDescending(group => group.Key.Area)
            .ThenByDescending(group => group.Key.Length)
            .ThenByDescending(group => group.Key.MayTurn)
            .ThenByDescending(group => group.Key.AcceptsHiddenDefect)
            .ThenBy(group => group.Key.Suits, StringComparer.Ordinal)
            .Select((group, index) => group.Key.ToKind(index, [.. group]));
        return new(request, stocks, [.. kinds], glueUps, costMatters);
    }

    private static IEnumerable<Item> Items(Part part, IReadOnlyDictionary<string, int> glueUps)
    {
        var strips = glueUps.GetValueOrDefault(part.Letter, 1);
        for (var copy = 1; copy <= part.Quantity; copy++)
        {
            for (var strip = 1; strip <= strips; strip++)
                yield return new(new(part.Letter, copy, strips == 1 ? 0 : strip), part, strips);
        }
    }

    private static KindSketch Sketch(Item item, PlanningRequest request)
    {
        var size = NeedOf(item, request, Surfacing.S4S);
        var suits = request.Boards.Select(b =>
            BlankNeeds.ThicknessProblem(item.Part, request.Rules, b) is null ? '+' : '-'
        );
        return new(
            size.Length.Ticks,
            size.Width.Ticks,
            item.Strips == 1
                ? BlankNeeds.WidthBetweenStraightEdges(item.Part).Ticks
                : size.Width.Ticks,
            item.Part.Grain is GrainDirection.Any && size.Length != size.Width,
            item.Part.AcceptsHiddenDefect,
            string.Concat(suits)
        );
    }

    /// <summary>The least size of an item's blank on stock surfaced like this.</summary>
    public static RoughSize NeedOf(Item item, PlanningRequest request, Surfacing surfacing) =>
        item.Strips == 1
            ? BlankNeeds.OnePiece(item.Part, request.Rules, surfacing)
            : BlankNeeds.GlueUpStrip(item.Part, request.Rules, surfacing, item.Strips);

    private readonly record struct KindSketch(
        long Length,
        long Width,
        long WidthBetweenStraightEdges,
        bool MayTurn,
        bool AcceptsHiddenDefect,
        string Suits
    )
    {
        public Int128 Area => (Int128)Length * Width;

        public Kind ToKind(int index, IReadOnlyList<Item> items) =>
            new(
                index,
                Length,
                Width,
                WidthBetweenStraightEdges,
                MayTurn,
                AcceptsHiddenDefect,
                [.. Suits.Select(c => c == '+')],
                items
            );
    }
}
