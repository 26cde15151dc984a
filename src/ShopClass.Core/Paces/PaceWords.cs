using System.Globalization;

namespace ShopClass.Core.Paces;

/// <summary>Paces, waste and spoilage in words, always with what they rest on.</summary>
public static class PaceWords
{
    /// <summary>What forecasts of minutes rest on, in a sentence.</summary>
    public static string Basis(CoursePace pace) =>
        pace.Kinds.Count == 0
            ? "Minutes by the usual rate; nothing was timed yet."
            : $"Minutes by this course's own pace: {From(pace)}; by the usual rate where nothing was timed.";

    /// <summary>A factor as it is written: "× 1.25".</summary>
    public static string Times(PaceFactor factor) =>
        $"× {(factor.Hundredths / 100m).ToString("0.00", CultureInfo.InvariantCulture)}";

    /// <summary>"34 % waste, from 11 plans".</summary>
    public static string Of(WasteShare waste) =>
        $"{waste.Percent} % waste, from {Counted(waste.Plans, "plan")}";

    /// <summary>"3 of 24 A spoiled".</summary>
    public static string Of(SpoiledShare share) =>
        $"{share.Spoiled} of {share.Made} {share.Part} spoiled";

    private static string From(CoursePace pace) =>
        (pace.Steps, pace.Before) switch
        {
            (var own, 0) => Timed(own),
            (0, var before) => $"the last course's, from {Timed(before)}",
            var (own, before) => $"{Timed(own)}, and {before} of the last course",
        };

    private static string Timed(int steps) => Counted(steps, "timed step");

    private static string Counted(int count, string what) =>
        count == 1 ? $"1 {what}" : $"{count} {what}s";
}
