using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Paces;

/// <summary>
/// What timed steps say about the pace of a course: the usual rate counts as so many timed steps, and every step timed moves
/// the estimate from there to what was timed. Whole numbers throughout; the order of the steps does not matter. Weights and
/// bounds are our proposal; no published basis was found. See docs/decisions/0026-pace.md.
/// </summary>
public static class PaceEstimate
{
    /// <summary>The usual rate weighs as much as so many timed steps.</summary>
    public const int Weight = 5;

    /// <summary>A species has a factor of its own from so many timed steps of a kind.</summary>
    public const int EnoughOfASpecies = 3;

    /// <summary>
    /// One step counts as at most so many times its planned minutes, and as at least one so-manieth: beyond that it was a
    /// break, or a slip of the pencil.
    /// </summary>
    public const int Farthest = 4;

    /// <summary>The pace that follows from these steps.</summary>
    /// <param name="timed">The steps.</param>
    /// <param name="start">What the course started from: it stands in the place of the usual rate, and weighs as much; null for none.</param>
    public static ClassPace Of(IEnumerable<TimedStep> timed, CoursePace? start = null)
    {
        TimedStep[] all = [.. timed];
        var from = start ?? CoursePace.Usual;
        KindPace[] kinds =
        [
            .. all.Select(t => t.Kind)
                .Concat(from.Kinds.Select(k => k.Kind))
                .Distinct()
                .Order()
                .Select(kind => new KindPace(
                    kind,
                    Moved(
                        from.Kinds.FirstOrDefault(k => k.Kind == kind)?.Factor ?? PaceFactor.Usual,
                        [.. all.Where(t => t.Kind == kind)]
                    )
                )),
        ];
        var course = new CoursePace(kinds, [.. kinds.SelectMany(k => SpeciesOf(k, all, from))]);
        var students = new SortedDictionary<string, PaceFactor>(StringComparer.Ordinal);
        foreach (var own in all.GroupBy(t => t.StudentId))
            students[own.Key] = Against(course, [.. own]);
        return new(course, students);
    }

    /// <summary>
    /// Steps of one kind: (weight × prior × P + 100 × n × T) / (P × (weight + n)), with n steps of P planned and T taken
    /// minutes in all, to the nearest hundredth.
    /// </summary>
    /// <param name="prior">The rate before any was timed, in hundredths of the table's.</param>
    /// <param name="timed">At least one step.</param>
    public static PaceFactor Shrunk(int prior, IReadOnlyList<TimedStep> timed) =>
        Shrunk(prior, timed.Sum(t => 100L * t.Planned), timed.Sum(HundredthsTaken), timed.Count);

    /// <summary>Hundredths of the table's minutes for a student's step.</summary>
    public static int For(PaceFactor course, PaceFactor student) =>
        (int)Rounded((long)course.Hundredths * student.Hundredths, 100);

    // What a rate becomes by steps timed since.
    private static PaceFactor Moved(PaceFactor start, IReadOnlyList<TimedStep> timed) =>
        (timed.Count == 0 ? new(start.Hundredths, 0) : Shrunk(start.Hundredths, timed)) with
        {
            Before = start.Steps,
        };

    private static IEnumerable<SpeciesPace> SpeciesOf(
        KindPace kind,
        TimedStep[] all,
        CoursePace from
    )
    {
        var timed = all.Where(t => t.Kind == kind.Kind).ToLookup(t => t.SpeciesId);
        var before = from
            .Species.Where(s => s.Kind == kind.Kind)
            .ToDictionary(s => s.SpeciesId, s => s.Factor, StringComparer.Ordinal);
        // In one species alone there is nothing to tell apart.
        var enough =
            timed.Count == 1 && before.Count == 0
                ? []
                : timed.Where(g => g.Key.Length > 0 && g.Count() >= EnoughOfASpecies);
        return enough
            .Select(g => g.Key)
            .Union(before.Keys, StringComparer.Ordinal)
            .Order(StringComparer.Ordinal)
            .Select(species => new SpeciesPace(
                kind.Kind,
                species,
                Moved(
                    before.GetValueOrDefault(species, new(kind.Factor.Hundredths, 0)),
                    [.. timed[species]]
                )
            ));
    }

    // A student is measured against the course, so that who times only slow kinds of step does not seem slow.
    private static PaceFactor Against(CoursePace course, TimedStep[] own) =>
        Shrunk(
            PaceFactor.Usual.Hundredths,
            own.Sum(t => (long)t.Planned * course.Of(t.Kind, t.SpeciesId).Hundredths),
            own.Sum(HundredthsTaken),
            own.Length
        );

    private static PaceFactor Shrunk(int prior, long planned, long taken, int count) =>
        new(
            (int)Rounded(
                (Int128)Weight * prior * planned + (Int128)100 * count * taken,
                (Int128)planned * (Weight + count)
            ),
            count
        );

    private static long HundredthsTaken(TimedStep t) =>
        Math.Clamp(100L * t.Taken, 100L * t.Planned / Farthest, 100L * t.Planned * Farthest);

    private static Int128 Rounded(Int128 over, Int128 under) => (2 * over + under) / (2 * under);
}
