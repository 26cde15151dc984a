using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Paces;

/// <summary>How long something takes against the table, and how many timed steps say so.</summary>
/// <param name="Hundredths">Hundredths of the table's minutes: 120 is a fifth longer.</param>
/// <param name="Steps">Timed steps behind it; 0 where nothing was timed yet.</param>
public sealed record PaceFactor(int Hundredths, int Steps)
{
    /// <summary>Nothing was timed: the table.</summary>
    public static PaceFactor Usual { get; } = new(100, 0);

    /// <summary>Timed steps of the course it started from, which stand in the place of the usual rate; 0 for the usual rate.</summary>
    public int Before { get; init; }

    /// <summary>How sure it is, in words: "from 3 steps, still mostly the usual rate".</summary>
    public string HowSure
    {
        get
        {
            var start =
                Before == 0 ? "the usual rate" : $"the last course's rate, from {Counted(Before)}";
            return Steps switch
            {
                0 => $"nothing timed yet, {start}",
                < PaceEstimate.Weight => $"from {Counted(Steps)}, still mostly {start}",
                < 3 * PaceEstimate.Weight when Before == 0 =>
                    $"from {Counted(Steps)}, about as much timed as usual",
                < 3 * PaceEstimate.Weight =>
                    $"from {Counted(Steps)}, about as much timed as {start}",
                _ => $"from {Counted(Steps)}, mostly what was timed",
            };
        }
    }

    private static string Counted(int steps) => steps == 1 ? "1 step" : $"{steps} steps";
}

/// <summary>The pace of a kind of step.</summary>
public sealed record KindPace(StepKind Kind, PaceFactor Factor);

/// <summary>The pace of a kind of step in one species.</summary>
public sealed record SpeciesPace(StepKind Kind, string SpeciesId, PaceFactor Factor);

/// <summary>A course's own pace; it names no student.</summary>
/// <param name="Kinds">Kinds that were timed, in the usual order of the work.</param>
/// <param name="Species">Kinds that were timed in more than one species, for each with enough steps.</param>
public sealed record CoursePace(IReadOnlyList<KindPace> Kinds, IReadOnlyList<SpeciesPace> Species)
{
    /// <summary>Nothing was timed: the table throughout.</summary>
    public static CoursePace Usual { get; } = new([], []);

    /// <summary>How many steps were timed in the course itself.</summary>
    public int Steps => Kinds.Sum(k => k.Factor.Steps);

    /// <summary>How many were timed in the course it started from.</summary>
    public int Before => Kinds.Sum(k => k.Factor.Before);

    /// <summary>The same for another course to start from: all steps behind it are of one course before.</summary>
    public CoursePace AsStart() =>
        new(
            [.. Kinds.Select(k => k with { Factor = Told(k.Factor) })],
            [.. Species.Select(s => s with { Factor = Told(s.Factor) })]
        );

    private static PaceFactor Told(PaceFactor factor) =>
        new(factor.Hundredths, factor.Steps + factor.Before);

    /// <summary>The factor of a kind of step in a species: the species' own, else the kind's, else the table's.</summary>
    public PaceFactor Of(StepKind kind, string speciesId) =>
        Species.FirstOrDefault(s => s.Kind == kind && s.SpeciesId == speciesId)?.Factor
        ?? Kinds.FirstOrDefault(k => k.Kind == kind)?.Factor
        ?? PaceFactor.Usual;
}

/// <summary>The pace of a course and of each student who timed a step, against the course's.</summary>
/// <param name="Course">The course's.</param>
/// <param name="Students">By the student's key; who timed nothing is left out.</param>
public sealed record ClassPace(CoursePace Course, IReadOnlyDictionary<string, PaceFactor> Students)
{
    /// <summary>Whether anything was timed at all.</summary>
    public bool IsUsual => Course.Kinds.Count == 0;
}
