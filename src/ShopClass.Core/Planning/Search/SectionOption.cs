namespace ShopClass.Core.Planning.Search;

/// <summary>One blank of a strip that is not placed yet.</summary>
internal readonly record struct Lie(int Kind, bool Turned, long Along);

/// <summary>A strip that could be ripped: its blanks longest first.</summary>
/// <param name="Code">Its blanks as a choice of the lattice.</param>
/// <param name="Width">Width it takes from its section.</param>
/// <param name="NeededWidth">Width its blanks need; less only where it is the whole width of a board.</param>
/// <param name="Length">Length of its blanks with a kerf between each two.</param>
/// <param name="Kerf">Kerf between two blanks.</param>
/// <param name="Blanks">Its blanks.</param>
internal sealed record StripOption(
    int Code,
    long Width,
    long NeededWidth,
    long Length,
    long Kerf,
    IReadOnlyList<Lie> Blanks
)
{
    /// <summary>Every place where one of its blanks may end, whatever their order, sorted.</summary>
    public long[] Ends => endsOnce ??= EndsOf(Kerf, Blanks);

    /// <summary>Its blanks in every order worth trying, with the place where each ends.</summary>
    public IReadOnlyList<StripOrder> Orders =>
        orders ??= [.. SectionPlacer.Orders(Blanks).Select(Order)];

    private long[]? endsOnce;
    private IReadOnlyList<StripOrder>? orders;

    private StripOrder Order(IReadOnlyList<Lie> blanks)
    {
        var ends = new long[blanks.Count];
        var at = -Kerf;
        for (var i = 0; i < ends.Length; i++)
        {
            at += Kerf + blanks[i].Along;
            ends[i] = at;
        }

        return new(blanks, ends);
    }

    private static long[] EndsOf(long kerf, IReadOnlyList<Lie> blanks)
    {
        SortedSet<long> ends = [-kerf];
        foreach (var blank in blanks)
            ends.UnionWith([.. ends.Select(e => e + kerf + blank.Along)]);
        ends.Remove(-kerf);
        return [.. ends];
    }
}

/// <summary>A strip's blanks in one order, with the place where each ends.</summary>
internal sealed record StripOrder(IReadOnlyList<Lie> Blanks, long[] Ends);

/// <summary>A section that could be crosscut, on clear wood.</summary>
/// <param name="Code">Its blanks as a choice of the lattice.</param>
/// <param name="Packed">The same, packed.</param>
/// <param name="Length">Its length, that of its longest strip.</param>
/// <param name="Cost">Its sawing and lines.</param>
/// <param name="Strips">Its strips.</param>
internal sealed record SectionOption(
    int Code,
    ulong Packed,
    long Length,
    Cost Cost,
    IReadOnlyList<StripOption> Strips
)
{
    /// <summary>Its strips in every order worth trying.</summary>
    public IReadOnlyList<IReadOnlyList<StripOption>> Orders =>
        orders ??= [.. SectionPlacer.Orders(Strips)];

    private IReadOnlyList<IReadOnlyList<StripOption>>? orders;
}

/// <summary>Sawing effort and lines of a part of a plan.</summary>
internal readonly record struct Cost(Int128 Effort, long Lines)
{
    public static Cost operator +(Cost a, Cost b) => new(a.Effort + b.Effort, a.Lines + b.Lines);

    public static Cost operator -(Cost a, Cost b) => new(a.Effort - b.Effort, a.Lines - b.Lines);
}

/// <summary>Which of two costs is better, by the goals' order.</summary>
internal sealed class Taste
{
    private readonly PlanGoal[] inner;

    public Taste(Bench bench)
    {
        CostMatters = bench.CostMatters;
        inner =
        [
            .. GoalOrder
                .Of(bench.Request)
                .Where(g => g is not (PlanGoal.Boards or PlanGoal.GlueUps)),
        ];
        LinesFirst =
            Array.IndexOf(inner, PlanGoal.Lines) < Array.IndexOf(inner, PlanGoal.SawingEffort);
    }

    /// <summary>The goals after boards and glue-ups.</summary>
    public IReadOnlyList<PlanGoal> Inner => inner;

    /// <summary>Whether lines come before sawing.</summary>
    public bool LinesFirst { get; }

    /// <summary>Whether a better cost is looked for at all.</summary>
    public bool CostMatters { get; }

    /// <summary>Compares costs apart from length.</summary>
    public int Compare(Cost a, Cost b)
    {
        if (!CostMatters)
            return 0;
        var byEffort = a.Effort.CompareTo(b.Effort);
        var byLines = a.Lines.CompareTo(b.Lines);
        return LinesFirst
            ? byLines != 0
                ? byLines
                : byEffort
            : byEffort != 0
                ? byEffort
                : byLines;
    }

    /// <summary>
    /// Compares ways to have the same blanks by sawing, lines and length; lines are counted only where nothing before them
    /// decides.
    /// </summary>
    public int Compare<TWay>(
        (TWay Way, Int128 Effort, long Length) a,
        (TWay Way, Int128 Effort, long Length) b,
        Func<TWay, long> linesOf
    ) => CostMatters ? InOrder(a, b, linesOf) : 0;

    /// <summary>Compares finished boards: costs and length used.</summary>
    public int Compare(Cost a, long lengthA, Cost b, long lengthB) =>
        InOrder((a, a.Effort, lengthA), (b, b.Effort, lengthB), static c => c.Lines);

    private int InOrder<TWay>(
        (TWay Way, Int128 Effort, long Length) a,
        (TWay Way, Int128 Effort, long Length) b,
        Func<TWay, long> linesOf
    )
    {
        foreach (var goal in inner)
        {
            var by = goal switch
            {
                PlanGoal.SawingEffort => a.Effort.CompareTo(b.Effort),
                PlanGoal.Lines => linesOf(a.Way).CompareTo(linesOf(b.Way)),
                _ => a.Length.CompareTo(b.Length),
            };
            if (by != 0)
                return by;
        }

        return 0;
    }
}
