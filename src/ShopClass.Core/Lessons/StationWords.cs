using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons;

/// <summary>How stations are called.</summary>
public static class StationWords
{
    /// <summary>One of them: "saw bench".</summary>
    public static string One(Station station) =>
        station switch
        {
            Station.SawBench => "saw bench",
            Station.Vise => "bench with a vise",
            Station.BenchHook => "bench hook",
            Station.BenchTop => "bench top",
            Station.Gluing => "glue table",
            _ => "sharpening place",
        };

    /// <summary>Several: "saw benches".</summary>
    public static string Several(Station station) =>
        station switch
        {
            Station.SawBench => "saw benches",
            Station.Vise => "benches with a vise",
            Station.BenchHook => "bench hooks",
            Station.BenchTop => "bench tops",
            Station.Gluing => "glue tables",
            _ => "sharpening places",
        };

    /// <summary>A short name for a rotation: "Saw bench 2", "Bench top".</summary>
    public static string Place(Station station, int? place)
    {
        var name = station switch
        {
            Station.SawBench => "Saw bench",
            Station.Vise => "Vise",
            Station.BenchHook => "Bench hook",
            Station.BenchTop => "Bench top",
            Station.Gluing => "Glue table",
            _ => "Sharpening",
        };
        return place is { } n ? $"{name} {n}" : name;
    }

    /// <summary>"1 saw bench", "3 saw benches".</summary>
    public static string Count(int count, Station station) =>
        count == 1 ? $"1 {One(station)}" : $"{count} {Several(station)}";

    internal static string Steps(int steps) => steps == 1 ? "1 step is" : $"{steps} steps are";
}
