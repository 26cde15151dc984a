using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Paces;

/// <summary>How long something takes against the table, and how many timed steps say so.</summary>
/// <param name="Hundredths">Hundredths of the table's minutes: 120 is a fifth longer.</param>
/// <param name="Steps">Timed steps behind it; 0 is the table itself.</param>
public sealed record PaceFactor(int Hundredths, int Steps)
{
    /// <summary>Nothing was timed: the table.</summary>
    public static PaceFactor Usual { get; } = new(100, 0);

    /// <summary>How sure it is, in words: "from 3 steps, still mostly the usual rate".</summary>
    public string HowSure
    {
        get
        {
            var from = Steps == 1 ? "from 1 step" : $"from {Steps} steps";
            return Steps switch
            {
                0 => "nothing timed yet, the usual rate",
                < PaceEstimate.Weight => $"{from}, still mostly the usual rate",
                < 3 * PaceEstimate.Weight => $"{from}, about as much timed as usual",
                _ => $"{from}, mostly what was timed",
            };
        }
    }
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
