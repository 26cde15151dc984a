using System.Globalization;

namespace ShopClass.Bench.Instances;

/// <summary>One instance solved in one variant. A fault is what the check found, or why nothing was solved.</summary>
internal sealed record InstanceResult(
    Instance Instance,
    Variant Variant,
    long? Value,
    long? Bound,
    bool IsProven,
    double Milliseconds,
    string? Fault
)
{
    public const string Header =
        "set,name,class,n,value,bound,proven,ms,published,key,published_proven,check";

    private const string NoSolver = "no solver: ";

    public bool IsRefused => Fault?.StartsWith(NoSolver, StringComparison.Ordinal) == false;

    /// <summary>Why nothing was solved.</summary>
    public static string WhyNoSolver(Variant variant) =>
        NoSolver
        + (
            variant.Aim is Aim.MostProfit
                ? "here a list is cut out, nobody chooses the most profitable part of it"
                : "no rule here limits sections and their strips like this"
        );

    public double? Published =>
        Instance.Values.TryGetValue(Variant.Key, out var value) ? value : null;

    /// <summary>Below zero when better than published, 0 when equal or nothing is published.</summary>
    public int AgainstPublished =>
        Value is not { } value || Published is not { } published ? 0
        : Variant.Aim == Aim.MostProfit ? published.CompareTo(value)
        : ((double)value).CompareTo(published);

    public string Line() =>
        string.Join(
            ',',
            Instance.Set,
            Instance.Id,
            Instance.Class,
            Instance.N,
            Value,
            Bound,
            IsProven ? "yes" : "no",
            Milliseconds.ToString("0.0", CultureInfo.InvariantCulture),
            Published?.ToString(CultureInfo.InvariantCulture),
            Variant.Key,
            Published == null ? ""
                : Variant.IsClosed(Instance) ? "yes"
                : "no",
            Fault == null ? "ok" : $"\"{Fault}\""
        );

    public static string NotRun(Instance instance, string why) =>
        $"{instance.Set},{instance.Id},{instance.Class},{instance.N},,,,,,,,\"not run: {why}\"";
}
