using ShopClass.Core.Measure;

namespace ShopClass.Core.Lumber;

/// <summary>Two places with their humidity: the shop where parts are fitted, and the room where the piece will stand.</summary>
/// <param name="Celsius">Temperature of both, degrees Celsius.</param>
/// <param name="ShopHumidity">Relative humidity of the shop, per cent.</param>
/// <param name="RoomHumidity">Relative humidity of the room, per cent.</param>
public sealed record Climate(decimal Celsius, decimal ShopHumidity, decimal RoomHumidity);

/// <summary>How wood changes its width with the air around it, by the Wood Handbook.</summary>
/// <remarks>
/// Equilibrium moisture content: FPL-GTR-282 (2021), Equation 4-5. Change of size from 6 to 14 %: FPL-GTR-190 (2010),
/// Equation 13-2 with the coefficients of Table 13-5; outside that range Equation 13-3, whose form is from memory. All are
/// averages: a single board may move half as much again.
/// </remarks>
public static class Movement
{
    private const decimal LeastForCoefficient = 6;
    private const decimal MostForCoefficient = 14;

    /// <summary>The moisture content that wood comes to in such air, per cent.</summary>
    /// <param name="celsius">Temperature, degrees Celsius; the table it was fitted to runs from -1 to 132.</param>
    /// <param name="humidity">Relative humidity, per cent, from 0 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">Humidity is not a share of a hundred.</exception>
    public static decimal MoistureContent(decimal celsius, decimal humidity)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(humidity, 0);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(humidity, 100);
        var (t, h) = (celsius, humidity / 100);
        var w = 349 + 1.29m * t + 0.0135m * t * t;
        var k = 0.805m + 0.000736m * t - 0.00000273m * t * t;
        var k1 = 6.27m - 0.00938m * t - 0.000303m * t * t;
        var k2 = 1.91m + 0.0407m * t - 0.000293m * t * t;
        var kh = k * h;
        var k1kh = k1 * kh;
        var k2kh = k1kh * k2 * kh;
        return 1800 / w * (kh / (1 - kh) + (k1kh + 2 * k2kh) / (1 + k1kh + k2kh));
    }

    /// <summary>
    /// How much a flatsawn width grows (or, below zero, shrinks) between two moisture contents, per cent; null where the
    /// tables have no figure for the species.
    /// </summary>
    public static Length? OfFlatsawnWidth(Species species, Length width, decimal from, decimal to)
    {
        var isNear =
            decimal.Min(from, to) >= LeastForCoefficient
            && decimal.Max(from, to) <= MostForCoefficient;
        if (isNear && species.MovementTangential is { } coefficient)
            return Ticks(width.Ticks * coefficient.Value * (to - from));
        if (species.ShrinkageTangential is not { Value: > 0 } shrinkage)
            return null;
        return Ticks(width.Ticks * (to - from) / (3000 / shrinkage.Value - 30 + from));
    }

    private static Length Ticks(decimal ticks) =>
        Length.FromTicks((long)decimal.Round(ticks, MidpointRounding.AwayFromZero));
}
