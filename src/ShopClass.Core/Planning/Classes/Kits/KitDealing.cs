using ShopClass.Core.Planning.Classes.Staged;

namespace ShopClass.Core.Planning.Classes.Kits;

/// <summary>Deals boards out to kits: what the mixture takes whole, then always what costs least at its prices and can still be had.</summary>
internal sealed class KitDealing
{
    private readonly Cutting cutting;
    private readonly ClassWood wood;
    private readonly int[] copies;

    /// <param name="cutting">One kit.</param>
    /// <param name="wood">The class's wood.</param>
    /// <param name="taken">Boards that are not there for kits.</param>
    public KitDealing(Cutting cutting, ClassWood wood, IReadOnlyList<CutBoard> taken)
    {
        this.cutting = cutting;
        this.wood = wood;
        copies = [.. cutting.Planks.Select(p => p.Copies)];
        foreach (var board in taken)
            Use(board.Plank, 1);
    }

    /// <summary>Boards for every kit that had some.</summary>
    /// <param name="holding">Sets of boards with a kit laid out on them.</param>
    /// <param name="mixture">What is cheapest.</param>
    /// <param name="had">The kits as they are.</param>
    public IReadOnlyList<(CutBoard Board, int? Kit)> Deal(
        IEnumerable<BoardSet> holding,
        KitMixture mixture,
        IReadOnlyList<(CutBoard Board, int? Kit)> had
    )
    {
        var before = had.ToLookup(b => b.Kit, b => b.Board);
        List<IReadOnlyList<CutBoard>> layouts =
        [
            .. holding.Select(s => s.Layout!).Where(IsClear),
            .. before.DistinctBy(g => Key([.. g])).Select(g => (IReadOnlyList<CutBoard>)[.. g]),
        ];
        layouts = [.. layouts.OrderBy(l => Worth(l, mixture)).ThenBy(Key, StringComparer.Ordinal)];
        var dealt = new List<(CutBoard, int?)>();
        foreach (var kit in before.Select(g => g.Key).Order())
        {
            if (layouts.Find(CanBeHad) is not { } layout)
                return had;
            foreach (var board in layout)
                Use(board.Plank, 1);
            dealt.AddRange(layout.Select(b => (b, kit)));
        }

        return dealt;
    }

    /// <summary>A layout on clear boards holds only where the boards are clear.</summary>
    private bool IsClear(IReadOnlyList<CutBoard> layout) =>
        layout.All(b => wood.Sources[b.Plank].Run.Along == wood.Sources[b.Plank].Usable);

    private double Worth(IReadOnlyList<CutBoard> layout, KitMixture mixture) =>
        layout.Sum(b => cutting.Planks[b.Plank].Cost + mixture.Prices[b.Plank]);

    private bool CanBeHad(IReadOnlyList<CutBoard> layout) =>
        layout.GroupBy(b => b.Plank).All(g => copies[g.Key] >= g.Count());

    private void Use(int plank, int count)
    {
        if (copies[plank] < int.MaxValue)
            copies[plank] -= count;
    }

    private static string Key(IReadOnlyList<CutBoard> layout) =>
        string.Join(' ', layout.Select(b => b.Plank).Order());
}
