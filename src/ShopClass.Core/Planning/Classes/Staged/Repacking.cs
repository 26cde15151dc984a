namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>
/// Takes a few boards of a packing apart and packs their pieces again, cheaper; or for the same cost with the waste
/// gathered on fewer boards, so that in the end one of them is saved.
/// </summary>
internal sealed class Repacking(Cutting cutting, Effort effort, double[]? prices)
{
    private readonly Draws draws = new(0x2545F4914F6CDD1D);

    /// <summary>The packing improved until the bound, the steps or this many tries are reached.</summary>
    public IReadOnlyList<CutBoard> Improve(
        IReadOnlyList<CutBoard> packing,
        long bound,
        int width,
        int tries,
        Action<IReadOnlyList<CutBoard>> cheaper
    )
    {
        var boards = packing.ToList();
        var cost = cutting.CostOf(boards);
        for (var t = 0; t < tries && cost > bound && !effort.IsUp && boards.Count > 1; t++)
        {
            var chosen = Choose(boards);
            if (
                Again(boards, chosen, width, BeamGuide.Usual[t % BeamGuide.Usual.Count])
                is not { } found
            )
                continue;
            foreach (var b in chosen.OrderDescending())
                boards.RemoveAt(b);
            boards.AddRange(found);
            var now = cutting.CostOf(boards);
            if (now < cost)
                cheaper(boards);
            cost = now;
        }

        return boards;
    }

    private IReadOnlyList<CutBoard>? Again(
        List<CutBoard> boards,
        int[] chosen,
        int width,
        BeamGuide guide
    )
    {
        var counts = new int[cutting.Pieces.Count];
        int[] copies = [.. cutting.Planks.Select(p => p.Copies)];
        for (var b = 0; b < boards.Count; b++)
        {
            if (!chosen.Contains(b) && copies[boards[b].Plank] < int.MaxValue)
                copies[boards[b].Plank]--;
        }

        foreach (var piece in chosen.SelectMany(b => boards[b].Pieces))
            counts[piece]++;
        var old = chosen.Select(b => boards[b]).ToList();
        var cost = cutting.CostOf(old);
        var beam = new BeamSearch(cutting.With(counts, copies), effort, prices);
        var found = beam.Run(width, guide, cost + 1);
        if (found is null)
            return null;
        return cutting.CostOf(found) < cost || Gathered(found) > Gathered(old) * (1 + 1e-9)
            ? found
            : null;
    }

    /// <summary>More the more unevenly boards are filled.</summary>
    private double Gathered(IReadOnlyList<CutBoard> boards) =>
        boards.Sum(b =>
        {
            var share = FilledShare(b);
            return cutting.Planks[b.Plank].Cost * share * share;
        });

    private double FilledShare(CutBoard board) =>
        (double)board.Pieces.Sum(k => cutting.Pieces[k].Area) / cutting.Planks[board.Plank].Area;

    /// <summary>One of the emptiest boards and a few others.</summary>
    private int[] Choose(List<CutBoard> boards)
    {
        int[] byFilling =
        [
            .. Enumerable
                .Range(0, boards.Count)
                .OrderBy(b => FilledShare(boards[b]))
                .ThenBy(b => b),
        ];
        var many = Math.Min(boards.Count, 2 + draws.Below(5));
        var chosen = new SortedSet<int> { byFilling[draws.Below(Math.Min(3, boards.Count))] };
        while (chosen.Count < many)
            chosen.Add(draws.Below(boards.Count));
        return [.. chosen];
    }
}
