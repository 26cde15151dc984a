using ShopClass.Core.Planning.Classes.Staged;

namespace ShopClass.Core.Planning.Classes;

/// <summary>Boards cut up, each for a kit or for all; what they cost and what any way costs at least.</summary>
internal sealed record ClassResult(
    IReadOnlyList<(CutBoard Board, int? Kit)> Boards,
    long Cost,
    long Bound,
    int StepsTaken
);

/// <summary>Packs a class's pieces, pooled or kit by kit.</summary>
internal sealed class ClassSearch(
    ClassRequest request,
    ClassWood wood,
    Effort effort,
    IProgress<ClassProgress>? progress
)
{
    // A kit is a small case: what is not found in this share of the steps is hardly found at all.
    private const int KitShare = 8;

    /// <summary>All kits over all boards.</summary>
    public ClassResult Pooled()
    {
        var (layouts, bounds) = wood.For(request.AllKits, spareParts: true, Copies());
        var (boards, bound) = Pack(layouts, bounds, effort);
        return new(
            [.. boards.Select(b => (b, (int?)null))],
            layouts.CostOf(boards),
            bound,
            effort.Taken
        );
    }

    /// <summary>Each kit from boards of its own. Kits that can have the same boards get the same.</summary>
    public ClassResult WholeBoards()
    {
        var copies = Copies();
        var boards = new List<(CutBoard Board, int? Kit)>();
        var bound = KitsBound(copies);
        for (var kit = 1; kit <= request.AllKits; )
        {
            var (layouts, bounds) = wood.For(1, spareParts: false, copies);
            var (cut, _) = Pack(layouts, bounds, effort.Share(KitShare));
            var alike = Math.Min(request.AllKits - kit + 1, Times(cut, copies));
            for (var n = 0; n < alike; n++, kit++)
            {
                boards.AddRange(cut.Select(b => (b, (int?)kit)));
                Use(cut, copies);
            }
        }

        if (request.SpareParts.Values.Any(n => n > 0))
        {
            var (layouts, bounds) = wood.For(0, spareParts: true, copies);
            var (cut, _) = Pack(layouts, bounds, effort.Share(KitShare));
            boards.AddRange(cut.Select(b => (b, (int?)0)));
        }

        var cost = boards.Sum(b => wood.Sources[b.Board.Plank].Cost);
        return new(boards, cost, Math.Min(cost, bound), effort.Taken);
    }

    /// <summary>What the kits cost at least: each by itself with all boards to choose from, or all together pooled.</summary>
    private long KitsBound(int[] copies)
    {
        var (one, clear) = wood.For(1, spareParts: false, copies);
        var (_, each) = Pack(one, clear, effort.Share(KitShare));
        var (all, allClear) = wood.For(request.AllKits, spareParts: true, copies);
        var (_, pooled) = Pack(all, allClear, effort.Share(KitShare));
        return Math.Max(each * request.AllKits, pooled);
    }

    private (IReadOnlyList<CutBoard> Boards, long Bound) Pack(
        Cutting layouts,
        Cutting bounds,
        Effort share
    )
    {
        var tell = progress is null
            ? null
            : new Relay(p => progress.Report(new(p.StepsTaken, p.Cost, p.Bound)));
        return SortedPacker.Run(layouts, bounds, share, tell);
    }

    private int[] Copies() => [.. wood.Sources.Select(s => s.Copies)];

    /// <summary>How often these boards can be had.</summary>
    private static int Times(IReadOnlyList<CutBoard> cut, int[] copies) =>
        cut.GroupBy(b => b.Plank)
            .Select(g => copies[g.Key] == int.MaxValue ? int.MaxValue : copies[g.Key] / g.Count())
            .DefaultIfEmpty(int.MaxValue)
            .Min();

    private static void Use(IReadOnlyList<CutBoard> cut, int[] copies)
    {
        foreach (var board in cut.Where(b => copies[b.Plank] < int.MaxValue))
            copies[board.Plank]--;
    }

    private sealed class Relay(Action<StagedProgress> tell) : IProgress<StagedProgress>
    {
        public void Report(StagedProgress value) => tell(value);
    }
}
