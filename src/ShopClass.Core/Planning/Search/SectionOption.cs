namespace ShopClass.Core.Planning.Search;

/// <summary>One blank of a strip that is not placed yet.</summary>
internal readonly record struct Lie(int Kind, bool Turned, long Along);

/// <summary>A strip that could be ripped: its blanks longest first.</summary>
/// <param name="Code">Its blanks as a choice of the lattice.</param>
/// <param name="Width">Width it takes from its section.</param>
/// <param name="NeededWidth">Width its blanks need; less only where it is the whole width of a board.</param>
/// <param name="Length">Length of its blanks with a kerf between each two.</param>
/// <param name="Blanks">Its blanks.</param>
internal sealed record StripOption(
    int Code,
    long Width,
    long NeededWidth,
    long Length,
    IReadOnlyList<Lie> Blanks
);

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
);

/// <summary>Sawing effort and lines of a part of a plan.</summary>
internal readonly record struct Cost(Int128 Effort, long Lines)
{
    public static Cost operator +(Cost a, Cost b) => new(a.Effort + b.Effort, a.Lines + b.Lines);
}

/// <summary>Which of two costs is better, by the goals' order.</summary>
internal sealed class Taste
{
    private readonly PlanGoal[] inner;
    private readonly bool linesFirst;

    public Taste(PlanningRequest request)
    {
        inner =
        [
            .. GoalOrder.Of(request).Where(g => g is not (PlanGoal.Boards or PlanGoal.GlueUps)),
        ];
        linesFirst =
            Array.IndexOf(inner, PlanGoal.Lines) < Array.IndexOf(inner, PlanGoal.SawingEffort);
    }

    /// <summary>Compares costs apart from length.</summary>
    public int Compare(Cost a, Cost b)
    {
        var byEffort = a.Effort.CompareTo(b.Effort);
        var byLines = a.Lines.CompareTo(b.Lines);
        return linesFirst
            ? byLines != 0
                ? byLines
                : byEffort
            : byEffort != 0
                ? byEffort
                : byLines;
    }

    /// <summary>Compares finished boards: costs and length used.</summary>
    public int Compare(Cost a, long lengthA, Cost b, long lengthB)
    {
        foreach (var goal in inner)
        {
            var by = goal switch
            {
                PlanGoal.SawingEffort => a.Effort.CompareTo(b.Effort),
                PlanGoal.Lines => a.Lines.CompareTo(b.Lines),
                _ => lengthA.CompareTo(lengthB),
            };
            if (by != 0)
                return by;
        }

        return 0;
    }
}
