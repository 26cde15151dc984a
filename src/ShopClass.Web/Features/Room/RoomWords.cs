using ShopClass.Core.Paces;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Progress;

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

    /// <summary>What minutes rest on, in a sentence; empty where nobody has work in hand.</summary>
    public static string Basis(IEnumerable<StudentAtWork> students) =>
        students.FirstOrDefault(s => s.InHand is not null)?.InHand!.Pace.Basis ?? "";

    /// <summary>How the first three cuts stand, where the course wants them timed and it is of interest yet; else empty.</summary>
    public static string FirstCutsOf(PlanInHand? work)
    {
        if (work is not { TimesFirstCuts: true })
            return "";
        var cuts = FirstCuts.Of(work.Progress);
        return cuts.AreAsked ? $"{cuts.Timed} of {FirstCuts.Wanted} first cuts timed"
            : cuts is { AreTimed: true, Done: <= FirstCuts.LastAsked } ? "first cuts timed"
            : "";
    }

    public static string Waited(TimeSpan since) =>
        since.TotalMinutes < 1 ? "just now"
        : since.TotalMinutes < 90 ? $"{since.TotalMinutes:0} min"
        : since.TotalHours < 36 ? $"{since.TotalHours:0} h"
        : $"{since.TotalDays:0} days";
}
