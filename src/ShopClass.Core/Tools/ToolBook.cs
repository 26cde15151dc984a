using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Tools;

/// <summary>A kind of tool that is counted.</summary>
/// <param name="Name">One of it: "back saw".</param>
/// <param name="Several">Several of it: "back saws".</param>
/// <param name="IsSaw">Whether its minutes of sawing are counted until it is sharpened.</param>
public sealed record ToolEntry(string Name, string Several, bool IsSaw = false);

/// <summary>What a step takes: so many of any of these kinds.</summary>
/// <param name="AnyOf">Names of kinds, the usual one first.</param>
/// <param name="Count">How many at once.</param>
public sealed record ToolNeed(IReadOnlyList<string> AnyOf, int Count)
{
    /// <summary>The kinds in words: "bench plane or scraper".</summary>
    public string Words => string.Join(" or ", AnyOf);
}

/// <summary>The tools that steps ask for, and how what a step sets out is counted. Kinds are common practice.</summary>
public static class ToolBook
{
    private static readonly Dictionary<string, ToolNeed[]> Phrases = new(StringComparer.Ordinal)
    {
        ["clamps"] = [new(["clamp"], 2)],
        ["at least three clamps"] = [new(["clamp"], 3)],
        ["chisels"] = [new(["chisel"], 1)],
        ["two battens"] = [new(["batten"], 2)],
        ["two straight sticks"] = [new(["winding stick"], 2)],
        ["plane"] = [new(["bench plane"], 1)],
        ["jointer or bench plane"] = [new(["bench plane"], 1)],
        ["smoothing plane or scraper"] = [new(["bench plane", "scraper"], 1)],
        // A dovetail saw is a small back saw.
        ["dovetail saw"] = [new(["dovetail saw", "back saw"], 1)],
        ["hammer and nail set, or drill and screwdriver"] = [new(["hammer", "screwdriver"], 1)],
        // Used up, or counted with the stations.
        ["glue"] = [],
        ["damp rag"] = [],
        ["finish"] = [],
        ["brush or cloth"] = [],
        ["bench hook"] = [],
    };

    /// <summary>The kinds, saws first.</summary>
    public static IReadOnlyList<ToolEntry> Entries { get; } =
    [
        new("hand crosscut saw", "hand crosscut saws", IsSaw: true),
        new("hand rip saw", "hand rip saws", IsSaw: true),
        new("back saw", "back saws", IsSaw: true),
        new("dovetail saw", "dovetail saws", IsSaw: true),
        new("tape", "tapes"),
        new("rule", "rules"),
        new("square", "squares"),
        new("straightedge", "straightedges"),
        new("winding stick", "winding sticks"),
        new("bevel", "bevels"),
        new("pencil", "pencils"),
        new("marking knife", "marking knives"),
        new("marking gauge", "marking gauges"),
        new("chisel", "chisels"),
        new("mortise chisel", "mortise chisels"),
        new("mallet", "mallets"),
        new("bench plane", "bench planes"),
        new("block plane", "block planes"),
        new("router plane", "router planes"),
        new("scraper", "scrapers"),
        new("brace and bit", "braces with bits"),
        new("hammer", "hammers"),
        new("screwdriver", "screwdrivers"),
        new("clamp", "clamps"),
        new("batten", "battens"),
        new("wedge", "wedges"),
    ];

    /// <summary>The kind of this name, or null.</summary>
    public static ToolEntry? Find(string name) => Entries.FirstOrDefault(e => e.Name == name);

    /// <summary>What a line of a step's tools counts as; nothing for what is used up. A word that is not known is a kind of its own.</summary>
    public static IReadOnlyList<ToolNeed> NeedsOf(string tool) =>
        Phrases.TryGetValue(tool, out var needs) ? needs : [new([tool], 1)];

    /// <summary>What a step takes in tools.</summary>
    public static IEnumerable<ToolNeed> NeedsOf(Step step) => step.Tools.SelectMany(NeedsOf);

    /// <summary>The saws any of which a step is sawn with; empty where nothing is sawn.</summary>
    public static IReadOnlyList<string> SawsOf(Step step)
    {
        if (step.Saw is not { } saw)
            return [];
        var named = NeedsOf(step)
            .FirstOrDefault(n => n.AnyOf.Any(kind => Find(kind) is { IsSaw: true }));
        return named?.AnyOf ?? [NameOf(saw.Kind)];
    }

    /// <summary>A count with its word: "1 chisel", "3 chisels".</summary>
    public static string Count(int count, string kind) =>
        count == 1 ? $"1 {kind}" : $"{count} {Find(kind)?.Several ?? kind}";

    private static string NameOf(SawKind saw) =>
        saw switch
        {
            SawKind.HandCrosscut => "hand crosscut saw",
            SawKind.HandRip => "hand rip saw",
            _ => "back saw",
        };
}
