using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning.Classes.Staged;
using ShopClass.Core.Planning.Search;

namespace ShopClass.Core.Planning.Classes;

/// <summary>Writes cut-up boards out as layouts of real boards, and gives every place its blank.</summary>
/// <remarks>
/// Surplus length and width become what they become in a student's plan (<see cref="PlanWriter"/>). Pooled blanks are given
/// to kits in the order of the boards, so that a kit's blanks come from few boards.
/// </remarks>
internal sealed class ClassWriter(ClassRequest request, ClassWood wood)
{
    private readonly Dictionary<CutBoard, BoardLayout> drawn = new(
        ReferenceEqualityComparer.Instance
    );
    private readonly int[] numbers = new int[wood.Sources.Count];

    public ClassPlan Write(ClassResult result)
    {
        var keys = new KitKeys(request, wood);
        ClassBoard[] boards =
        [
            .. result
                .Boards.Where(b => b.Board.Sections.Count > 0)
                .OrderBy(b => b.Kit ?? 0)
                .ThenBy(b => b.Board.Plank)
                .Select(b => Write(b.Board, b.Kit, keys)),
        ];
        return new()
        {
            Purchases =
            [
                .. request
                    .Stock.Select((size, i) => new Purchase(size, numbers[i]))
                    .Where(p => p.Count > 0),
            ],
            Boards = boards,
            Missing = keys.Left(),
            GlueUps = wood.GlueUps,
            Cost = result.Cost,
            Bound = result.Bound,
            StepsTaken = result.StepsTaken,
        };
    }

    private ClassBoard Write(CutBoard cut, int? kit, KitKeys keys)
    {
        if (!drawn.TryGetValue(cut, out var layout))
            drawn.Add(cut, layout = Drawn(cut));
        var source = wood.Sources[cut.Plank];
        var number = ++numbers[cut.Plank];
        var board = source.Size is null
            ? source.Board
            : source.Board with
            {
                Id = $"{source.Size.Id}#{number}",
                Name = $"{source.Size.Name} no. {number}",
            };
        PlacedBlank Named(PlacedBlank blank) => blank with { Key = keys.Next(blank.Key.Part, kit) };
        return new(
            board,
            source.Size?.Id,
            new(
                board.Id,
                [
                    .. layout.Sections.Select(section =>
                        section with
                        {
                            Strips =
                            [
                                .. section.Strips.Select(strip =>
                                    strip with
                                    {
                                        Blanks = [.. strip.Blanks.Select(Named)],
                                    }
                                ),
                            ],
                        }
                    ),
                ]
            ),
            kit
        );
    }

    /// <summary>The layout with every blank named after the first part of its kind.</summary>
    private BoardLayout Drawn(CutBoard cut)
    {
        var counts = cut.Pieces.GroupBy(k => k).ToDictionary(g => g.Key, g => g.Count());
        var parts = counts
            .Keys.Order()
            .Select(k => wood.Kinds[k].Items[0].Part with { Quantity = counts[k] });
        var ask = wood.AskFor(
            request.Project with
            {
                Parts = [.. parts],
            },
            [wood.Sources[cut.Plank]]
        );
        var bench = Bench.Lay(ask, wood.GlueUps);
        var kinds = counts.Keys.ToDictionary(
            k => k,
            k =>
                bench
                    .Kinds.First(b =>
                        b.Items.Any(i => i.Part.Letter == wood.Kinds[k].Items[0].Part.Letter)
                    )
                    .Index
        );
        var stock = bench.Stocks[0];
        var from = wood.Sources[cut.Plank].Run.From.Ticks;
        var draft = new List<DraftSection>();
        foreach (var section in cut.Sections)
        {
            draft.Add(Section(section, stock, from, kinds));
            from = draft[^1].To + stock.CrosscutKerf;
        }

        return new PlanWriter(bench).Write(new([new(stock, draft)], [])).Boards[0];
    }

    private static DraftSection Section(
        CutSection section,
        Stock stock,
        long from,
        Dictionary<int, int> kinds
    )
    {
        var near = 0L;
        var strips = new List<DraftStrip>();
        foreach (var strip in section.Strips)
        {
            var far = near + strip.Pieces.Max(p => Across(p.Way, stock));
            var at = from;
            var blanks = new List<DraftBlank>();
            foreach (var (piece, way) in strip.Pieces)
            {
                var to = at + way.Along - stock.CrosscutKerf;
                blanks.Add(new(kinds[piece], way.Turned, at, to));
                at = to + stock.CrosscutKerf;
            }

            strips.Add(new(near, far, blanks));
            near = far + stock.RipKerf;
        }

        return new(from, strips.Max(s => s.Blanks[^1].To), strips);
    }

    private static long Across(Way way, Stock stock) =>
        Math.Min(way.Across - stock.RipKerf, stock.Width);
}
