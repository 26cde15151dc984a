namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>One sort of wood taken by itself: some boards, and the pieces that go on them.</summary>
internal sealed class Sort
{
    private readonly int[] planks;
    private readonly int[] pieces;
    private readonly Dictionary<CutBoard, CutBoard> back = new(ReferenceEqualityComparer.Instance);

    /// <param name="whole">What is cut from what.</param>
    /// <param name="planks">The boards taken.</param>
    /// <param name="pieces">The pieces taken.</param>
    /// <param name="nowhere">Whether what may run short is allowed to be left over, at a price no board has.</param>
    public Sort(Cutting whole, int[] planks, int[] pieces, bool nowhere)
    {
        this.planks = planks;
        this.pieces = pieces;
        var boards = planks.Select(p => whole.Planks[p]).ToList();
        var taken = pieces
            .Select(k => whole.Pieces[k])
            .Select(p => p with { Suits = [.. planks.Select(p.Suit)] })
            .ToList();
        if (nowhere && !EachIsEndless(whole, planks, pieces))
        {
            boards.Add(Nowhere(boards, taken));
            taken = taken.ConvertAll(p => p with { Suits = [.. p.Suits!, true] });
        }

        Cutting = new(boards, taken);
    }

    /// <summary>The sort by itself.</summary>
    public Cutting Cutting { get; }

    /// <summary>A board of the sort in the terms of the whole; null for what is left over.</summary>
    public CutBoard? Back(CutBoard board)
    {
        if (board.Plank >= planks.Length)
            return null;
        if (back.TryGetValue(board, out var known))
            return known;
        var whole = new CutBoard(planks[board.Plank], [.. board.Sections.Select(Back)]);
        back.Add(board, whole);
        return whole;
    }

    private CutSection Back(CutSection section) =>
        new([
            .. section.Strips.Select(strip => new CutStrip([
                .. strip.Pieces.Select(p => (pieces[p.Piece], p.Way)),
            ])),
        ]);

    private static bool EachIsEndless(Cutting whole, int[] planks, int[] pieces) =>
        pieces.All(k =>
            planks.Any(p => whole.Planks[p].IsEndless && whole.Ways[p].Any(fit => fit.Piece == k))
        );

    private static Plank Nowhere(List<Plank> boards, List<Piece> taken) =>
        new(
            Math.Max(boards.Max(b => b.Length), taken.Max(p => p.Ways.Min(w => w.Along))),
            Math.Max(boards.Max(b => b.Width), taken.Max(p => p.Ways.Max(w => w.Across))),
            8 * Math.Max(1, boards.Max(b => b.Cost)),
            int.MaxValue,
            KeepsEdges: false,
            IsNowhere: true
        );
}
