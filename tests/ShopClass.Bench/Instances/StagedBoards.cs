using ShopClass.Core.Planning.Classes;

namespace ShopClass.Bench.Instances;

/// <summary>Boards of two or three stages with trims, by the planning of classes. Where either direction of the first cut will do, both are tried.</summary>
internal static class StagedBoards
{
    public static Solution Solve(
        Instance instance,
        Variant variant,
        int? steps,
        CancellationToken cancel
    )
    {
        var limit = steps ?? StagedPacking.UsualSteps;
        if (!variant.EitherDirection)
            return Pack(instance, variant, variant.FirstCutDividesW, limit, cancel);
        var upright = Pack(instance, variant, false, limit / 2, cancel);
        var across = Pack(instance, variant, true, limit / 2, cancel);
        var bound = Math.Min(upright.Bound!.Value, across.Bound!.Value);
        var better = Cost(across) < Cost(upright) ? across : upright;
        return better with { Bound = bound, IsProven = Cost(better) == bound };

        long Cost(Solution solution) =>
            solution.Parts.Count < instance.N
                ? long.MaxValue
                : solution.Boards.Sum(b => instance.Stock[b].Cost);
    }

    private static Solution Pack(
        Instance instance,
        Variant variant,
        bool turned,
        int steps,
        CancellationToken cancel
    )
    {
        var result = StagedPacking.Pack(
            [.. instance.Stock.Select(Stock)],
            [
                .. instance.Items.Select(i => new StagedItem(
                    turned ? i.H : i.W,
                    turned ? i.W : i.H,
                    i.Count
                )),
            ],
            steps,
            onePerStrip: variant.Stages == 2,
            cancel: cancel
        );
        List<Placed> parts =
        [
            .. result.Boards.SelectMany(
                (board, b) =>
                    board
                        .Sections.SelectMany(s => s.Strips)
                        .SelectMany(s => s.Places)
                        .Select(p =>
                            turned
                                ? new Placed(p.Item, b, p.From, p.Near)
                                : new Placed(p.Item, b, p.Near, p.From)
                        )
            ),
        ];
        return new([.. result.Boards.Select(b => b.Stock)], parts, result.Bound, result.IsProven);

        StagedStock Stock(StockSize size) =>
            new(
                turned ? size.H : size.W,
                turned ? size.W : size.H,
                variant.Aim == Aim.FewestBoards ? 1 : size.Cost,
                size.Copies < 0 ? null : size.Copies
            );
    }
}
