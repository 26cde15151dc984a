using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Orders;

/// <summary>Wood to practise on, in every kit.</summary>
/// <param name="Count">How many pieces each kit gets. At least 1.</param>
/// <param name="Thickness">Their thickness.</param>
/// <param name="Width">Their width.</param>
/// <param name="Length">Their length, along the grain.</param>
public sealed record PracticePiece(int Count, Length Thickness, Length Width, Length Length)
{
    /// <summary>Most pieces in a kit.</summary>
    public const int Most = 20;

    /// <summary>The letters practice pieces have beside a project's parts; the first that no part has.</summary>
    private static readonly string[] Letters = ["P", "PR", "PP", "PX"];

    /// <summary>What is wrong with it for this project, as field and sentence; empty when nothing is.</summary>
    public IReadOnlyList<(string Field, string Sentence)> ProblemsIn(
        Project project,
        CourseRules rules
    ) =>
        [
            .. Count is >= 1 and <= Most
                ? Array.Empty<(string, string)>()
                :
                [
                    (
                        "Quantity",
                        $"Write how many practice pieces each kit gets, from 1 to {Most}."
                    ),
                ],
            .. PartChecks
                .ProblemsIn(AsPart(project) with { Quantity = 1 }, project.Parts, rules)
                .Where(p => p.Field is not "Quantity"),
        ];

    /// <summary>The pieces as a part beside the project's own.</summary>
    internal Part AsPart(Project project) =>
        new()
        {
            Letter = Letters.FirstOrDefault(l => project.Parts.All(p => p.Letter != l)) ?? "PZ",
            Name = "practice piece",
            Quantity = Count,
            Finished = new(Thickness, Width, Length),
        };
}
