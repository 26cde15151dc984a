using ShopClass.Core.Planning.Classes.Staged;

namespace ShopClass.Core.Planning.Classes.Kits;

/// <summary>
/// The cheapest boards that kits can have each for itself. Sets of boards are tried from the cheapest up, always one that
/// the mixture of sets not yet ruled out leans on; a set proven too few makes room for those with one board more.
/// </summary>
/// <remarks>
/// At every moment each set that holds a kit contains one of the sets at hand, or costs at least the ceiling. So the
/// mixture of those at hand costs no more than any way, and the bound stands whenever the search ends.
/// </remarks>
internal sealed class KitSets
{
    private const int MostSets = 12_000;
    private readonly Cutting cutting;
    private readonly int[] planks;
    private readonly int[] pieces;
    private readonly long ceiling;
    private readonly long area;
    private readonly List<BoardSet> open = [];
    private readonly HashSet<string> known = new(StringComparer.Ordinal);
    private readonly List<BoardSet> tooFew = [];

    /// <param name="cutting">One kit, on boards as if they were clear.</param>
    /// <param name="planks">Boards of one sort.</param>
    /// <param name="pieces">The pieces that go on them.</param>
    /// <param name="ceiling">Sets that cost as much are not looked at.</param>
    public KitSets(
        Cutting cutting,
        IReadOnlyList<int> planks,
        IReadOnlyList<int> pieces,
        long ceiling
    )
    {
        this.cutting = cutting;
        this.ceiling = ceiling;
        this.pieces = [.. pieces];
        this.planks = [.. planks.Where(p => !IsOutdone(p, planks))];
        area = pieces.Sum(k => cutting.Pieces[k].Area * cutting.Pieces[k].Count);
        Add(new(new int[cutting.Planks.Count], 0));
    }

    /// <summary>The sets that hold a kit, with their layouts.</summary>
    public IEnumerable<BoardSet> Holding => open.Where(s => s.Layout is not null);

    /// <summary>Tries sets until the mixture leans only on sets that hold a kit or could not be ruled out.</summary>
    /// <param name="kits">How many kits there are.</param>
    /// <param name="trial">Tries a set.</param>
    /// <param name="effort">The steps there are.</param>
    /// <returns>The mixture with the best bound.</returns>
    public KitMixture Search(int kits, KitTrial trial, Effort effort)
    {
        var best = Mixed(kits);
        for (var mixture = best; ; mixture = Mixed(kits))
        {
            effort.Take(open.Count);
            if (mixture.Bound >= best.Bound)
                best = mixture;
            if (effort.IsUp || mixture.Used.FirstOrDefault(s => !s.IsTried) is not { } next)
                return best;
            if (trial.Fits(next) is not false)
                continue;
            tooFew.Add(next);
            open.Remove(next);
            Extend(next);
        }
    }

    private KitMixture Mixed(int kits) => KitMixture.Of(cutting, planks, open, kits, ceiling);

    private void Extend(BoardSet set)
    {
        foreach (var p in planks)
        {
            if (set.Numbers[p] < cutting.Planks[p].Copies)
                Add(set.And(p, cutting.Planks[p].Cost));
        }
    }

    private void Add(BoardSet set)
    {
        if (set.Cost >= ceiling || !known.Add(set.Key))
            return;
        if (known.Count <= MostSets && IsTooFew(set))
            Extend(set);
        else
            open.Add(set);
    }

    /// <summary>Too little wood, a piece that fits on none of them, or no better than a set known to be too few.</summary>
    private bool IsTooFew(BoardSet set)
    {
        int[] boards = [.. set.Boards];
        return boards.Sum(p => cutting.Planks[p].Area) < area
            || pieces.Any(k => boards.All(p => cutting.Ways[p].All(f => f.Piece != k)))
            || tooFew.Exists(t => IsNoBetter(boards, t));
    }

    /// <summary>Whether every board has one at least as good for it in the other set, which has as many.</summary>
    private bool IsNoBetter(int[] boards, BoardSet other)
    {
        var free = other.Boards.ToList();
        if (free.Count != boards.Length)
            return false;
        // Longest first; a board takes the shortest that will do. Where that fails there may still be a way: nothing is lost.
        foreach (var p in boards.OrderByDescending(p => cutting.Planks[p].Area))
        {
            var at = free.FindIndex(q => IsAtLeast(q, p));
            if (at < 0)
                return false;
            free.RemoveAt(at);
        }

        return true;
    }

    private bool IsOutdone(int plank, IReadOnlyList<int> among) =>
        among.Any(q =>
            q != plank
            && cutting.Planks[q].IsEndless
            && cutting.Planks[q].Cost <= cutting.Planks[plank].Cost
            && IsAtLeast(q, plank)
            && (q < plank || cutting.Planks[q] != cutting.Planks[plank] || !IsAtLeast(plank, q))
        );

    /// <summary>Whether whatever one board yields can be had from the other.</summary>
    private bool IsAtLeast(int better, int plank)
    {
        var (a, b) = (cutting.Planks[better], cutting.Planks[plank]);
        return a.Length >= b.Length
            && a.Width >= b.Width
            && (a.KeepsEdges || !b.KeepsEdges)
            && pieces.All(k => cutting.Pieces[k].Suit(better) || !cutting.Pieces[k].Suit(plank));
    }
}
