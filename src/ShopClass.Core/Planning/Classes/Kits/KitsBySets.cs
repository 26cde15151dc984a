using ShopClass.Core.Planning.Classes.Staged;

namespace ShopClass.Core.Planning.Classes.Kits;

/// <summary>
/// What kits on boards of their own cost at least, sort of wood by sort; and cheaper boards for them where the search for
/// that bound has found some.
/// </summary>
internal sealed class KitsBySets(ClassRequest request, ClassWood wood, Effort effort)
{
    private readonly Cutting one = wood.For(
        1,
        spareParts: false,
        [.. wood.Sources.Select(s => s.Copies)]
    ).Bounds;

    /// <summary>The boards, some of them exchanged for cheaper ones, and the bound of the kits' cost.</summary>
    /// <param name="boards">Every kit complete on boards of its own; kit 0 for spare parts.</param>
    public (List<(CutBoard Board, int? Kit)> Boards, long Bound) Improve(
        IReadOnlyList<(CutBoard Board, int? Kit)> boards
    )
    {
        var all = boards.ToList();
        var bound = 0L;
        var sorts = Sorts.Of(one);
        for (var s = 0; s < sorts.Count; s++)
        {
            int[] planks = [.. sorts[s].Where(p => one.Planks[p].Copies > 0)];
            int[] pieces =
            [
                .. Enumerable
                    .Range(0, one.Pieces.Count)
                    .Where(k => planks.Any(p => one.Ways[p].Any(f => f.Piece == k))),
            ];
            if (pieces.Length == 0)
                continue;
            var share = effort.Share(sorts.Count - s);
            bound += OfSort(all, planks, pieces, share);
        }

        return (all, bound);
    }

    private long OfSort(
        List<(CutBoard Board, int? Kit)> boards,
        int[] planks,
        int[] pieces,
        Effort share
    )
    {
        var own = boards.Where(b => b.Kit > 0 && planks.Contains(b.Board.Plank)).ToList();
        var costs = own.GroupBy(b => b.Kit).Select(g => one.CostOf(g.Select(b => b.Board)));
        var sets = new KitSets(one, planks, pieces, costs.DefaultIfEmpty(0).Max());
        var trial = new KitTrial(wood, one, request.Project, pieces, share);
        var mixture = sets.Search(request.AllKits, trial, share);
        var dealt = new KitDealing(
            one,
            wood,
            [.. boards.Where(b => b.Kit == 0).Select(b => b.Board)]
        ).Deal(sets.Holding, mixture, own);
        if (one.CostOf(dealt.Select(b => b.Board)) < one.CostOf(own.Select(b => b.Board)))
        {
            boards.RemoveAll(b => b.Kit > 0 && planks.Contains(b.Board.Plank));
            boards.AddRange(dealt);
        }

        return mixture.Bound;
    }
}
