using ShopClass.Core.Planning.Classes.Kits;
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
        var bound = PooledBound(copies);
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

        if (IsEveryKitWhole(boards))
        {
            var spares = SparesBound();
            (boards, var kits) = new KitsBySets(request, wood, effort).Improve(boards);
            bound = Math.Max(bound, kits + spares);
        }

        var cost = boards.Sum(b => wood.Sources[b.Board.Plank].Cost);
        return new(boards, cost, Math.Min(cost, bound), effort.Taken);
    }

    private bool IsEveryKitWhole(IReadOnlyList<(CutBoard Board, int? Kit)> boards) =>
        boards.Where(b => b.Kit > 0).Sum(b => b.Board.Pieces.Count())
        == request.AllKits * wood.Kinds.Sum(k => k.Items.Count);

    /// <summary>What all pieces cost at least, pooled.</summary>
    private long PooledBound(int[] copies)
    {
        var (all, clear) = wood.For(request.AllKits, spareParts: true, copies);
        return Pack(all, clear, effort.Share(KitShare)).Bound;
    }

    /// <summary>What boards for the spare parts cost at least, with all boards to choose from.</summary>
    private long SparesBound()
    {
        if (request.SpareParts.Values.All(n => n == 0))
            return 0;
        var (spares, clear) = wood.For(0, spareParts: true, Copies());
        return Pack(spares, clear, effort.Share(KitShare)).Bound;
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
