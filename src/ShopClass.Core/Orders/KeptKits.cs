using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Classes;

namespace ShopClass.Core.Orders;

/// <summary>
/// Lays out again only what no longer fits: boards that came and can still be cut as they were laid out keep their layout,
/// each rehearsed on what it measures; the blanks of the others are laid out on what is left. Where kits have boards of
/// their own, a kit is kept or laid out whole.
/// </summary>
internal sealed class KeptKits(
    ClassOrder order,
    IReadOnlyList<OrderLine> here,
    ClassRequest request,
    CancellationToken cancel
)
{
    private readonly Dictionary<string, int> left = here.ToDictionary(
        l => ClassOrders.KeyOf(l.SellerId, l.Stock),
        l => l.Bought,
        StringComparer.Ordinal
    );

    private readonly Dictionary<string, StockSize> sizes = request.Stock.ToDictionary(
        s => s.Id,
        StringComparer.Ordinal
    );

    /// <summary>The plan of all kits; null where what is kept and what is laid out again cannot go together.</summary>
    public ClassPlan? Plan()
    {
        var (kept, lost) = Sorted();
        var again = Rest(kept, lost, out var keys);
        if (again is null)
            return null;
        if (again.GlueUps.Any(g => !Same(order.Plan.GlueUps, g)))
            return null;
        var plan = Together(kept, again, keys);
        return ClassRehearsal.Replay(request, plan).Passed ? plan : null;
    }

    private static bool Same(
        IReadOnlyDictionary<string, int> glueUps,
        KeyValuePair<string, int> glueUp
    ) => glueUps.TryGetValue(glueUp.Key, out var strips) && strips == glueUp.Value;

    // Boards that can be cut as they were, and the blanks of all others with what was missing before.
    private (List<ClassBoard> Kept, List<BlankKey> Lost) Sorted()
    {
        var kept = new List<ClassBoard>();
        var lost = order.Plan.Missing.ToList();
        foreach (var board in order.Plan.Boards)
        {
            if (OnWhatIsHere(board) is { } now)
                kept.Add(now);
            else
                lost.AddRange(board.Blanks.Select(b => b.Key));
        }

        if (request.Way is KitWay.Pooled)
            return (kept, lost);
        var touched = lost.Select(order.Request.KitOf).ToHashSet();
        foreach (var board in kept.Where(b => touched.Contains(b.Kit ?? 0)))
        {
            lost.AddRange(board.Blanks.Select(b => b.Key));
            if (board.StockSizeId is { } size)
                left[size]++;
        }

        return (kept.FindAll(b => !touched.Contains(b.Kit ?? 0)), lost);
    }

    // The smallest board of its line that came, is left, and passes the rehearsal.
    private ClassBoard? OnWhatIsHere(ClassBoard board)
    {
        if (order.LineOf(board) is not { } line)
            return board;
        var ordered = WoodHere.OrderedAs(line);
        foreach (
            var candidate in here.Where(h =>
                    WoodHere.OrderedAs(h) == ordered
                    && h.Stock.Thickness == line.Stock.Thickness
                    && left[ClassOrders.KeyOf(h.SellerId, h.Stock)] > 0
                )
                .OrderBy(h => h.Stock.Length)
                .ThenBy(h => h.Stock.Width)
        )
        {
            var size = sizes[ClassOrders.KeyOf(candidate.SellerId, candidate.Stock)];
            var now = board with
            {
                Board = size.ToBoard(board.Board.Id, board.Board.Name, request.Rules),
                StockSizeId = size.Id,
            };
            if (ClassRehearsal.OnBoard(request, order.Plan, now).Any())
                continue;
            left[size.Id]--;
            return now;
        }

        return null;
    }

    // What is lost, on what is left: as spare parts where blanks are pooled, else as so many kits.
    private ClassPlan? Rest(
        List<ClassBoard> kept,
        List<BlankKey> lost,
        out Func<BlankKey, BlankKey> keys
    )
    {
        keys = key => key;
        var rest = request with
        {
            Stock =
            [
                .. request.Stock.Select(s =>
                    left.TryGetValue(s.Id, out var count) ? s with { Available = count } : s
                ),
            ],
            Rack = [.. request.Rack.Where(r => kept.All(b => b.Board.Id != r.Board.Id))],
            Kits = 0,
            SpareKits = 0,
            SpareParts = new SortedDictionary<string, int>(StringComparer.Ordinal),
        };
        if (lost.Count == 0)
            return Nothing;
        if (request.Way is KitWay.Pooled)
        {
            // A glued-up part whose strips lie on several boards is not taken apart.
            if (lost.Any(k => k.Strip > 0))
                return null;
            var waiting = lost.GroupBy(k => k.Part, StringComparer.Ordinal)
                .ToDictionary(g => g.Key, g => g.Order().ToList(), StringComparer.Ordinal);
            keys = key => waiting[key.Part][key.Copy - 1];
            var counts = new SortedDictionary<string, int>(StringComparer.Ordinal);
            foreach (var (part, copies) in waiting)
                counts[part] = copies.Count;
            return ClassPlanner.Plan(rest with { SpareParts = counts }, progress: null, cancel);
        }

        var kits = lost.Select(request.KitOf).Where(k => k > 0).Distinct().Order().ToList();
        rest = rest with
        {
            Kits = kits.Count,
            SpareParts = lost.Any(k => request.KitOf(k) == 0)
                ? request.SpareParts
                : rest.SpareParts,
        };
        keys = key => InTheClass(key, kits);
        return ClassPlanner.Plan(rest, progress: null, cancel);
    }

    private BlankKey InTheClass(BlankKey key, List<int> kits)
    {
        var quantity = request.Project.Parts.First(p => p.Letter == key.Part).Quantity;
        var (kit, copy) = quantity == 0 ? (kits.Count, key.Copy - 1) : Kit(key.Copy, quantity);
        var before = kit < kits.Count ? kits[kit] - 1 : request.AllKits;
        return key with { Copy = quantity * before + copy + 1 };

        (int, int) Kit(int number, int each) =>
            number > each * kits.Count
                ? (kits.Count, number - 1 - each * kits.Count)
                : Math.DivRem(number - 1, each);
    }

    private static ClassPlan Nothing { get; } =
        new()
        {
            Purchases = [],
            Boards = [],
            Missing = [],
            GlueUps = new SortedDictionary<string, int>(StringComparer.Ordinal),
            Cost = 0,
            Bound = 0,
            StepsTaken = 0,
        };

    private ClassPlan Together(
        List<ClassBoard> kept,
        ClassPlan again,
        Func<BlankKey, BlankKey> keys
    )
    {
        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        var boards = kept.Concat(again.Boards.Select(b => Renamed(b, keys)))
            .OrderBy(b => b.Kit ?? 0)
            .ThenBy(b => request.Stock.TakeWhile(s => s.Id != b.StockSizeId).Count())
            .Select(b => Numbered(b, numbers))
            .ToList();
        return order.Plan with
        {
            Purchases =
            [
                .. request
                    .Stock.Select(s => new Purchase(s, numbers.GetValueOrDefault(s.Id)))
                    .Where(p => p.Count > 0),
            ],
            Boards = boards,
            Missing = [.. again.Missing.Select(keys).Order()],
            Cost = boards.Sum(CostOf),
            Bound = 0,
            StepsTaken = again.StepsTaken,
        };
    }

    private long CostOf(ClassBoard board) =>
        board.StockSizeId is { } size
            ? sizes[size].Price
            : request.Rack.First(r => r.Board.Id == board.Board.Id).Value;

    private ClassBoard Renamed(ClassBoard board, Func<BlankKey, BlankKey> keys)
    {
        Strip In(Strip strip) =>
            strip with
            {
                Blanks = [.. strip.Blanks.Select(b => b with { Key = keys(b.Key) })],
            };
        var named = board with
        {
            Layout = board.Layout with
            {
                Sections =
                [
                    .. board.Layout.Sections.Select(s =>
                        s with
                        {
                            Strips = [.. s.Strips.Select(In)],
                        }
                    ),
                ],
            },
        };
        return board.Kit is null
            ? named
            : named with
            {
                Kit = request.KitOf(named.Blanks.First().Key),
            };
    }

    private ClassBoard Numbered(ClassBoard board, Dictionary<string, int> numbers)
    {
        if (board.StockSizeId is not { } size)
            return board;
        var number = numbers[size] = numbers.GetValueOrDefault(size) + 1;
        var id = $"{size}#{number}";
        return board with
        {
            Board = board.Board with { Id = id, Name = $"{sizes[size].Name} no. {number}" },
            Layout = board.Layout with { BoardId = id },
        };
    }
}
