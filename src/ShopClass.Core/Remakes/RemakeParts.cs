using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Remakes;

/// <summary>The parts list of a remake: only the blanks wanted, numbered from one again.</summary>
/// <param name="Project">The project with those parts alone.</param>
/// <param name="Blanks">Which blank each of them is in the first plan; a glue-up of the remake is named as a whole.</param>
internal sealed record RemakeParts(Project Project, IReadOnlyList<RenamedBlank> Blanks)
{
    /// <summary>The parts list that makes these blanks.</summary>
    /// <param name="project">The project, with any changed sizes.</param>
    /// <param name="rules">The course's settings.</param>
    /// <param name="wanted">The blanks to make, with the size each needs in the first plan.</param>
    public static RemakeParts Of(
        Project project,
        CourseRules rules,
        IEnumerable<(BlankKey Key, RoughSize Needed)> wanted
    )
    {
        var parts = new List<Part>();
        var blanks = new List<RenamedBlank>();
        foreach (
            var group in wanted.OrderBy(w => w.Key).GroupBy(w => w.Key.Part, StringComparer.Ordinal)
        )
        {
            var part = project.Parts.First(p => p.Letter == group.Key);
            var first = group.First();
            parts.Add(
                (first.Key.Strip == 0 ? part : StripOf(part, first.Needed, rules)) with
                {
                    Quantity = group.Count(),
                }
            );
            blanks.AddRange(group.Select((w, i) => new RenamedBlank(new(group.Key, i + 1), w.Key)));
        }

        return new(project with { Parts = parts, Joints = [], SizeChecks = [] }, blanks);
    }

    /// <summary>A strip of a glue-up as a part of its own: as long as the part, as wide as the strip was to be.</summary>
    private static Part StripOf(Part part, RoughSize needed, CourseRules rules) =>
        part with
        {
            Finished = part.Finished with
            {
                Width = Length.Max(PartChecks.Smallest, needed.Width - rules.WidthAllowance),
            },
            Open = [.. part.Open.Where(o => o.Dimension is not PartDimension.Width)],
            GlueUpAllowed = false,
        };
}
