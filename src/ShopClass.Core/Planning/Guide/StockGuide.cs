using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning.Guide;

/// <summary>What to buy for a project: the smallest boards that yield it, and the species that suit a hand saw.</summary>
/// <param name="Project">What is to be made.</param>
/// <param name="Rules">The course's settings.</param>
/// <param name="Groups">One for each finished thickness, thickest first; each thickness comes from boards of its own.</param>
/// <param name="Species">Every species, lightest first.</param>
public sealed record StockGuide(
    Project Project,
    CourseRules Rules,
    IReadOnlyList<StockGroup> Groups,
    IReadOnlyList<SpeciesFit> Species
)
{
    /// <summary>Works the guide out. The same project and rules give the same guide.</summary>
    /// <param name="project">What is to be made.</param>
    /// <param name="rules">The course's settings.</param>
    /// <param name="progress">Told how far it is, in hundredths.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static StockGuide Make(
        Project project,
        CourseRules rules,
        IProgress<int>? progress = null,
        CancellationToken cancel = default
    )
    {
        var groups = project
            .Parts.Where(p => p.Quantity > 0)
            .GroupBy(p => p.Finished.Thickness)
            .OrderByDescending(g => g.Key)
            .Select(g => project with { Parts = [.. g] })
            .ToList();
        var made = new List<StockGroup>();
        foreach (var parts in groups)
        {
            var before = made.Count;
            made.Add(
                GroupSearch.Over(
                    parts,
                    rules,
                    share => progress?.Report((100 * before + share) / groups.Count),
                    cancel
                )
            );
        }

        return new(project, rules, made, SpeciesFit.Rank(rules));
    }
}

/// <summary>The parts of one finished thickness and the boards that yield them.</summary>
/// <param name="Finished">Their finished thickness.</param>
/// <param name="Parts">The parts, in the order of the parts list.</param>
/// <param name="Stock">Actual thickness of the planed boards to buy; null when no seller's planed size is thick enough.</param>
/// <param name="Thicknessing">How the boards come to the parts' thickness.</param>
/// <param name="Options">The smallest boards: none of them is bigger than another and needs as much work.</param>
/// <param name="AlsoDo">Sizes that do as well, but a smaller one of <paramref name="Options"/> does with no more work.</param>
public sealed record StockGroup(
    Length Finished,
    IReadOnlyList<Part> Parts,
    Length? Stock,
    Thicknessing Thicknessing,
    IReadOnlyList<StockOption> Options,
    IReadOnlyList<StockOption> AlsoDo
);

/// <summary>How a board comes to a part's thickness. Later ones are more work.</summary>
public enum Thicknessing
{
    /// <summary>Used as it is bought.</summary>
    AsItComes,

    /// <summary>Students plane it thinner; the course teaches it.</summary>
    PlanedByStudents,

    /// <summary>The instructor prepares it: planing is not taught, or it is more than the course asks of students.</summary>
    PreparedByInstructor,
}

/// <summary>One or two equal boards that yield a group's parts.</summary>
public sealed record StockOption
{
    /// <summary>The seller's size.</summary>
    public required SellerSize Size { get; init; }

    /// <summary>How many of them: one or two.</summary>
    public required int Boards { get; init; }

    /// <summary>The shortest length found that does, end trims included; each of two boards is this long.</summary>
    public required Length Shortest { get; init; }

    /// <summary>
    /// Whether it is proven that boards one step of the course's precision shorter do not yield the parts. Otherwise it is the
    /// shortest length the planner found.
    /// </summary>
    public required bool IsProvenShortest { get; init; }

    /// <summary>
    /// The next length sellers keep; null for two boards where one of that length would do already, so that only
    /// offcuts make sense.
    /// </summary>
    public required Length? Sold { get; init; }

    /// <summary>A rehearsed plan on boards of the shortest length.</summary>
    public required CheckedPlan Plan { get; init; }

    /// <summary>Whether the instructor must prepare it, because it takes work the course does not teach.</summary>
    public required bool IsPrepared { get; init; }

    /// <summary>Strips of each part that is glued up, by letter.</summary>
    public IReadOnlyDictionary<string, int> GlueUps => Plan.Plan.GlueUps;

    /// <summary>Edge joints to glue, over all copies.</summary>
    public int Joints =>
        Plan.Request.Project.Parts.Sum(p =>
            GlueUps.TryGetValue(p.Letter, out var strips) ? (strips - 1) * p.Quantity : 0
        );
}
