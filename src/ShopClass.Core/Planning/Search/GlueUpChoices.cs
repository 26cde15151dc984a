using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning.Search;

/// <summary>Which parts may be glued up from how many strips.</summary>
internal static class GlueUpChoices
{
    /// <summary>The most strips tried for one part.</summary>
    public const int MostStrips = 4;

    /// <summary>The most choices tried for one request.</summary>
    public const int MostChoices = 64;

    /// <summary>
    /// Choices by number of joints, fewest first; letters with one strip are not listed. Parts are glued up only where
    /// the part allows it and the course teaches it.
    /// </summary>
    public static IReadOnlyList<IReadOnlyDictionary<string, int>> For(PlanningRequest request)
    {
        Part[] open = request.Rules.EdgeGluingTaught
            ? [.. request.Project.Parts.Where(p => p.GlueUpAllowed && p.Quantity > 0)]
            : [];
        List<SortedDictionary<string, int>> choices = [new(StringComparer.Ordinal)];
        foreach (var part in open)
        {
            choices =
            [
                .. choices
                    .SelectMany(c => Enumerable.Range(1, MostStrips).Select(n => With(c, part, n)))
                    .OrderBy(c => Joints(c, open))
                    .Take(MostChoices),
            ];
        }

        return choices;
    }

    private static SortedDictionary<string, int> With(
        SortedDictionary<string, int> choice,
        Part part,
        int strips
    )
    {
        var next = new SortedDictionary<string, int>(choice, StringComparer.Ordinal);
        if (strips > 1)
            next[part.Letter] = strips;
        return next;
    }

    private static int Joints(SortedDictionary<string, int> choice, Part[] parts) =>
        parts.Sum(p => p.Quantity * (choice.GetValueOrDefault(p.Letter, 1) - 1));
}
