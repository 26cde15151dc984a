namespace ShopClass.Core.Paces;

/// <summary>How much of the wood used up went into no finished part.</summary>
/// <param name="Percent">Whole per cent, 0 to 95. Offcuts worth keeping count as not used up.</param>
/// <param name="Plans">From how many students' plans.</param>
public sealed record WasteShare(int Percent, int Plans)
{
    /// <summary>Both together, each by its plans.</summary>
    public static WasteShare? Of(WasteShare? one, WasteShare? other)
    {
        if (one is null || other is null)
            return one ?? other;
        var plans = one.Plans + other.Plans;
        var sum = ((long)one.Percent * one.Plans) + ((long)other.Percent * other.Plans);
        return new((int)(((2 * sum) + plans) / (2L * plans)), plans);
    }
}

/// <summary>How many pieces of a part were spoiled.</summary>
/// <param name="Part">Its letter.</param>
/// <param name="Spoiled">How many were spoiled.</param>
/// <param name="Made">Of how many that were made, from 1.</param>
public sealed record SpoiledShare(string Part, int Spoiled, int Made)
{
    /// <summary>Spares that so many pieces would need at this share, rounded up.</summary>
    public int SparesFor(int pieces) => (int)((((long)pieces * Spoiled) + Made - 1) / Made);
}

/// <summary>What a course has learned of one project.</summary>
/// <param name="Name">What the project is called.</param>
/// <param name="Waste">Its waste; null where nothing was sawn.</param>
/// <param name="Spoiled">Its parts, by letter; those of which none was made are left out.</param>
public sealed record LearnedProject(
    string Name,
    WasteShare? Waste,
    IReadOnlyList<SpoiledShare> Spoiled
)
{
    /// <summary>Both together.</summary>
    public LearnedProject And(LearnedProject? other) =>
        other is null
            ? this
            : this with
            {
                Waste = WasteShare.Of(Waste, other.Waste),
                Spoiled =
                [
                    .. Spoiled
                        .Concat(other.Spoiled)
                        .GroupBy(s => s.Part, StringComparer.Ordinal)
                        .OrderBy(g => g.Key, StringComparer.Ordinal)
                        .Select(g => new SpoiledShare(
                            g.Key,
                            g.Sum(s => s.Spoiled),
                            g.Sum(s => s.Made)
                        )),
                ],
            };
}

/// <summary>
/// What a course has learned, for the next one of the same project to start from: numbers, and no names of people. See
/// docs/decisions/0026-pace.md.
/// </summary>
/// <param name="Pace">How fast it was, by kind of step and species.</param>
/// <param name="Projects">Waste and spoilage of its projects.</param>
public sealed record Learned(CoursePace Pace, IReadOnlyList<LearnedProject> Projects)
{
    /// <summary>Nothing.</summary>
    public static Learned Nothing { get; } = new(CoursePace.Usual, []);

    /// <summary>Whether nothing was learned.</summary>
    public bool IsNothing => Pace.Kinds.Count == 0 && Projects.Count == 0;

    /// <summary>Of the project of this name; letters' case does not matter.</summary>
    public LearnedProject? Find(string project) =>
        Projects.FirstOrDefault(p =>
            string.Equals(p.Name.Trim(), project.Trim(), StringComparison.OrdinalIgnoreCase)
        );

    /// <summary>
    /// What stands when a course that started from this has learned so much of its projects since, at this pace (which
    /// started from this one's).
    /// </summary>
    public Learned Since(CoursePace pace, IReadOnlyList<LearnedProject> since) =>
        new(
            pace.AsStart(),
            [
                .. since.Select(p => p.And(Find(p.Name))),
                .. Projects.Where(p =>
                    since.All(s =>
                        !string.Equals(
                            s.Name.Trim(),
                            p.Name.Trim(),
                            StringComparison.OrdinalIgnoreCase
                        )
                    )
                ),
            ]
        );
}
