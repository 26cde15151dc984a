namespace ShopClass.Core.Sawing.Steps;

/// <summary>What the steps depend on besides the plan and the hand.</summary>
public sealed record WorkSettings
{
    /// <summary>Nothing changed.</summary>
    public static WorkSettings Usual { get; } = new();

    /// <summary>
    /// How long this student takes against the rates, in per cent: 100 as the rates have it, 150 half as long again. At
    /// least 1.
    /// </summary>
    public int StudentPercent { get; init; } = 100;

    /// <summary>The instructor's own technique notes by key; what is not there is taken from <see cref="Techniques.Usual"/>.</summary>
    public IReadOnlyDictionary<string, string> Techniques { get; init; } =
        new SortedDictionary<string, string>(StringComparer.Ordinal);
}
