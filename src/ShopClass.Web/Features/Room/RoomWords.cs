using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Web.Features.Room;

/// <summary>The room in words.</summary>
public static class RoomWords
{
    /// <summary>What steps are usually sent back for (common practice).</summary>
    public static IReadOnlyList<string> Faults { get; } =
    [
        "sawed on the wrong side of the line",
        "sawed off the line",
        "out of square",
        "too short",
        "marked from the wrong face or edge",
        "not finished",
    ];

    public static string Of(Station station) =>
        station switch
        {
            Station.SawBench => "Saw bench",
            Station.Vise => "Vise",
            Station.BenchHook => "Bench hook",
            Station.BenchTop => "Bench top",
            Station.Gluing => "Gluing",
            Station.Sharpening => "Sharpening",
            _ => station.ToString(),
        };

    public static string Waited(TimeSpan since) =>
        since.TotalMinutes < 1 ? "just now"
        : since.TotalMinutes < 90 ? $"{since.TotalMinutes:0} min"
        : since.TotalHours < 36 ? $"{since.TotalHours:0} h"
        : $"{since.TotalDays:0} days";
}
