using ShopClass.Core.Measure;

namespace ShopClass.Core.Tools;

/// <summary>Tools of one kind in the shop.</summary>
/// <param name="Name">What the shop calls them: "Panel saw, 10 points".</param>
/// <param name="Kind">What they count as when a step asks: a name of <see cref="ToolBook"/>, or a word of a step.</param>
/// <param name="Count">How many there are, those in tool sets included.</param>
/// <param name="SharpenedUtc">When they were last sharpened; null when that was never said. Saws only.</param>
public sealed record ShopTool(string Name, string Kind, int Count, DateTime? SharpenedUtc = null);

/// <summary>Tools every student is handed with the kit and keeps at hand: "Marking set".</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Tools">What is in it.</param>
public sealed record ToolSet(string Name, IReadOnlyList<SetTool> Tools)
{
    /// <summary>What is in it, in words: "square, marking knife, 2 × pencil".</summary>
    public string Words =>
        string.Join(", ", Tools.Select(t => t.Count == 1 ? t.Kind : $"{t.Count} × {t.Kind}"));

    /// <inheritdoc/>
    public bool Equals(ToolSet? other) =>
        other is not null && Name == other.Name && Tools.SequenceEqual(other.Tools);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Name, Tools.Count);
}

/// <summary>A line of a tool set.</summary>
/// <param name="Kind">A name of <see cref="ToolBook"/>.</param>
/// <param name="Count">How many.</param>
public sealed record SetTool(string Kind, int Count);

/// <summary>A shop's tools: what there is, what goes out with the kits, and when saws are sharpened.</summary>
/// <param name="Tools">What there is.</param>
/// <param name="Sets">What each student is handed.</param>
/// <param name="SharpenAfter">Minutes of sawing after which a saw is sharpened.</param>
public sealed record ToolChest(
    IReadOnlyList<ShopTool> Tools,
    IReadOnlyList<ToolSet> Sets,
    int SharpenAfter
)
{
    /// <summary>
    /// Four hours of sawing. Our proposal: no published figure was found, and it depends on wood, steel and sawyer. The cut
    /// tells first: a dull saw wanders, needs pressure and leaves a shiny line on its teeth.
    /// </summary>
    public const int UsualSharpenAfter = 240;

    /// <summary>A shop nothing has been said about.</summary>
    public static ToolChest Empty { get; } = new([], [], UsualSharpenAfter);

    /// <summary>How many there are of any of these kinds.</summary>
    public int CountOf(IReadOnlyList<string> anyOf) =>
        Tools.Where(t => anyOf.Contains(t.Kind, StringComparer.Ordinal)).Sum(t => t.Count);

    /// <summary>How many of a kind one student is handed with the kit.</summary>
    public int InEveryKit(string kind) =>
        Sets.SelectMany(s => s.Tools).Where(t => t.Kind == kind).Sum(t => t.Count);
}

/// <summary>What is wrong with a list of tools, as field and sentence; fields like Tools[0].Count, Sets[0].Name, SharpenAfter.</summary>
public static class ToolChecks
{
    /// <summary>Most lines of tools.</summary>
    public const int MostTools = 60;

    /// <summary>Most tools in one line.</summary>
    public const int MostCount = 500;

    /// <summary>Most tool sets.</summary>
    public const int MostSets = 8;

    /// <summary>Most lines in a set.</summary>
    public const int MostInASet = 20;

    /// <summary>Fewest and most minutes between sharpenings.</summary>
    public const int FewestMinutes = 10;

    /// <summary>Most minutes between sharpenings.</summary>
    public const int MostMinutes = 6000;

    /// <summary>The problems; empty when all is right.</summary>
    public static IReadOnlyList<(string Field, string Sentence)> ProblemsIn(ToolChest chest)
    {
        var found = new List<(string, string)>();
        if (chest.Tools.Count > MostTools)
            found.Add(
                ("Tools", $"A shop has at most {MostTools} lines of tools. Put like with like.")
            );
        if (chest.Sets.Count > MostSets)
            found.Add(("Sets", $"There are at most {MostSets} tool sets."));
        if (chest.SharpenAfter is < FewestMinutes or > MostMinutes)
            found.Add(
                (
                    "SharpenAfter",
                    $"Write minutes of sawing from {FewestMinutes} to {MostMinutes:N0}."
                )
            );
        foreach (var (i, tool) in chest.Tools.Index())
            found.AddRange(ProblemsIn(chest, i, tool));
        foreach (var (i, set) in chest.Sets.Index())
            found.AddRange(ProblemsIn(i, set));
        return found;
    }

    private static IEnumerable<(string, string)> ProblemsIn(ToolChest chest, int i, ShopTool tool)
    {
        if (TypedText.NameProblem(tool.Name) is { } name)
            yield return ($"Tools[{i}].Name", name);
        else if (
            chest
                .Tools.Take(i)
                .Any(t => string.Equals(t.Name, tool.Name, StringComparison.OrdinalIgnoreCase))
        )
            yield return (
                $"Tools[{i}].Name",
                $"“{tool.Name}” is in the list already. Change its count there."
            );
        if (TypedText.NameProblem(tool.Kind) is { } kind)
            yield return ($"Tools[{i}].Kind", kind);
        if (tool.Count is < 0 or > MostCount)
            yield return ($"Tools[{i}].Count", CountSentence(0));
    }

    private static IEnumerable<(string, string)> ProblemsIn(int i, ToolSet set)
    {
        if (TypedText.NameProblem(set.Name) is { } name)
            yield return ($"Sets[{i}].Name", name);
        if (set.Tools.Count is 0 or > MostInASet)
            yield return (
                $"Sets[{i}].Tools",
                $"A tool set holds 1 to {MostInASet} kinds of tools."
            );
        foreach (var (j, tool) in set.Tools.Index())
        {
            if (TypedText.NameProblem(tool.Kind) is { } kind)
                yield return ($"Sets[{i}].Tools[{j}].Kind", kind);
            if (tool.Count is < 1 or > MostCount)
                yield return ($"Sets[{i}].Tools[{j}].Count", CountSentence(1));
        }
    }

    private static string CountSentence(int least) =>
        $"Write how many there are, a whole number from {least} to {MostCount}.";
}
