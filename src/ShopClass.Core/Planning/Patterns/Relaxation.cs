namespace ShopClass.Core.Planning.Patterns;

/// <summary>
/// Column generation (Gilmore and Gomory 1961): solves the linear programme over patterns, making a pattern only when
/// it saves something. Its bound is proven in whole numbers: when no board is worth more than M, boards are at least
/// the worth of all wanted pieces over M (Farley's bound).
/// </summary>
internal sealed class Relaxation
{
    private const int Scale = 1 << 24;

    /// <summary>Known patterns taken in before a new one is made: more would chase worths that change anyway.</summary>
    private const int KnownInARow = 30;

    private readonly Lengths lengths;
    private readonly IPricing pricing;
    private readonly CoverProgramme programme;
    private readonly List<Pattern> pool;

    public Relaxation(Lengths lengths, IEnumerable<Pattern> known, int variation = 0)
    {
        this.lengths = lengths;
        pricing = Pricing.For(lengths);
        programme = new(lengths, variation);
        pool = [.. known];
    }

    private long Pivot => (long)lengths.Sizes.Length * lengths.Sizes.Length / 4;

    /// <summary>No way of cutting needs fewer boards.</summary>
    public int Bound { get; private set; }

    /// <summary>The worths of the last board made to measure, and the most that a board is worth by them.</summary>
    public (int[] Worth, int Most) Last { get; private set; } = ([], 0);

    /// <summary>Every pattern made or given.</summary>
    public IReadOnlyList<Pattern> Pool => pool;

    /// <summary>The patterns in use and how often, in fractions.</summary>
    public IEnumerable<(Pattern Pattern, double Level)> Used => programme.Used();

    /// <summary>Works until the bound is as high as it gets, is more than is asked, or the work ends.</summary>
    /// <param name="enough">A bound above this one is all the caller wants.</param>
    /// <param name="work">The work allowed.</param>
    public void Solve(int enough, Work work)
    {
        var worth = new int[lengths.Sizes.Length];
        var since = 0;
        while (Bound <= enough && !work.IsUp)
        {
            if (since++ < KnownInARow && EnterKnown(work))
                continue;
            since = 0;
            Round(worth);
            if (pricing.Best(worth, Scale, work) is not { } best)
                return;
            Last = ([.. worth], best);
            Bound = Math.Max(Bound, Farley(worth, best));
            if (best <= Scale + 64 || Bound >= programme.Boards - 1e-4)
                return;
            var pattern = pricing.Cut();
            pool.Add(pattern);
            Enter(pattern, work);
        }
    }

    private bool EnterKnown(Work work)
    {
        Pattern? best = null;
        var least = -1e-6;
        foreach (var pattern in pool)
        {
            var saving = programme.Saving(pattern);
            if (saving < least)
                (least, best) = (saving, pattern);
        }

        work.Take(pool.Count);
        var (slack, gain) = programme.Exchange();
        if (gain < least)
        {
            programme.EnterExchange(slack);
            work.Take(Pivot);
            return true;
        }
        if (best == null)
            return false;
        Enter(best, work);
        return true;
    }

    private void Enter(Pattern pattern, Work work)
    {
        programme.Enter(pattern);
        work.Take(Pivot);
    }

    private void Round(int[] worth)
    {
        for (var i = 0; i < worth.Length; i++)
            worth[i] = (int)(Math.Clamp(programme.Worth[i], 0, 1) * Scale);
    }

    private int Farley(int[] worth, int best)
    {
        long sum = 0;
        for (var i = 0; i < worth.Length; i++)
            sum += (long)worth[i] * lengths.Counts[i];
        return best <= 0 ? 0 : (int)((sum + best - 1) / best);
    }
}
