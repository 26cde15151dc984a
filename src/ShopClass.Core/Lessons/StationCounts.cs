using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons;

/// <summary>How many students can work at once at each kind of station.</summary>
/// <param name="SawBenches">Saw benches.</param>
/// <param name="Vises">Benches with a vise.</param>
/// <param name="BenchHooks">Bench hooks.</param>
/// <param name="Sharpening">Places to sharpen at.</param>
public sealed record StationCounts(int SawBenches, int Vises, int BenchHooks, int Sharpening)
{
    /// <summary>The most of one kind that are kept.</summary>
    public const int Most = 60;

    /// <summary>A small shop to start from.</summary>
    public static StationCounts Usual { get; } = new(4, 6, 8, 2);

    /// <summary>The kinds that are counted; at a bench top or with the glue there is room for everybody.</summary>
    public static IReadOnlyList<Station> Counted { get; } =
    [Station.SawBench, Station.Vise, Station.BenchHook, Station.Sharpening];

    /// <summary>Places at a station, or null where they are not counted.</summary>
    public int? PlacesAt(Station station) =>
        station switch
        {
            Station.SawBench => SawBenches,
            Station.Vise => Vises,
            Station.BenchHook => BenchHooks,
            Station.Sharpening => Sharpening,
            _ => null,
        };

    /// <summary>The same shop with one place more at a station; unchanged where places are not counted.</summary>
    public StationCounts WithOneMore(Station station) =>
        station switch
        {
            Station.SawBench => this with { SawBenches = SawBenches + 1 },
            Station.Vise => this with { Vises = Vises + 1 },
            Station.BenchHook => this with { BenchHooks = BenchHooks + 1 },
            Station.Sharpening => this with { Sharpening = Sharpening + 1 },
            _ => this,
        };
}
