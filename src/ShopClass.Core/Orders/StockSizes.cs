using System.Text.RegularExpressions;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Orders;

/// <summary>A seller's size as it was read.</summary>
/// <param name="Name">What the seller calls it.</param>
/// <param name="Nominal">Its nominal size, where it has one.</param>
/// <param name="Thickness">Actual thickness.</param>
/// <param name="Width">Actual width.</param>
/// <param name="Usual">How stock of this size usually comes, where nothing is said.</param>
public sealed record SizeRead(
    string Name,
    NominalSize? Nominal,
    Length Thickness,
    Length Width,
    Surfacing Usual
);

/// <summary>Reads a size as a seller writes it in one piece.</summary>
/// <remarks>
/// Whole numbers and quarters are names (<c>1x10</c>, <c>5/4x6</c>, <c>4/4 x 8</c>): they stand for the dressed size of PS
/// 20, or for a hardwood's thickness. What has a fraction, a decimal or a unit is what a rule shows: <c>3/4 x 9 1/4</c>,
/// <c>20 x 195 mm</c>.
/// </remarks>
public static partial class StockSizes
{
    /// <summary>Reads thickness × width; a bare number in a metric list is in millimetres.</summary>
    public static Reading<SizeRead> Read(string? text, Surfacing surfacing, UnitSystem unit)
    {
        var name = (text ?? "").Trim();
        if (name.Length == 0)
            return Reading<SizeRead>.Refused(
                "The size is missing. Write it as the seller does, such as 1x10, or thickness × width."
            );
        var match = TwoSizes().Match(name);
        if (!match.Success || name.Length > TypedText.LongestName)
            return Reading<SizeRead>.Refused(
                $"“{LengthText.Shown(name)}” is no size. Write thickness × width, such as 1x10 or 3/4 x 9 1/4."
            );
        var (thick, wide) = (match.Groups["thick"].Value.Trim(), match.Groups["wide"].Value.Trim());
        if (unit is UnitSystem.Inch && IsAName(thick, wide))
            return Named(name, thick, wide, surfacing);
        return Measured(name, thick, wide, unit);
    }

    private static Reading<SizeRead> Named(
        string name,
        string thick,
        string wide,
        Surfacing surfacing
    )
    {
        if (surfacing is not Surfacing.Rough && Dressed($"{thick}x{wide}") is { } size)
            return Reading<SizeRead>.Of(
                new(
                    name,
                    new(size.NominalThickness, size.NominalWidth),
                    size.Thickness,
                    size.Width,
                    Surfacing.S4S
                )
            );
        var width = LengthReader.Read(wide, UnitSystem.Inch);
        if (
            HardwoodThickness.Named(thick) is { } quarter
            && quarter.Quarters is not "3/4"
            && width.IsRead
        )
            return Reading<SizeRead>.Of(
                new(
                    name,
                    new(quarter.Rough, width.Value),
                    quarter.Actual(surfacing),
                    width.Value,
                    Surfacing.Rough
                )
            );
        if (
            surfacing is Surfacing.Rough
            && LengthReader.Read(thick, UnitSystem.Inch) is { IsRead: true } rough
            && width.IsRead
        )
            return Reading<SizeRead>.Of(
                new(name, new(rough.Value, width.Value), rough.Value, width.Value, Surfacing.Rough)
            );
        return Reading<SizeRead>.Refused(
            $"“{LengthText.Shown(name)}” is no size that PS 20 knows. Write what it measures in the columns thickness and width."
        );
    }

    private static Reading<SizeRead> Measured(
        string name,
        string thick,
        string wide,
        UnitSystem unit
    )
    {
        var width = LengthReader.Read(wide, unit);
        var shared = UnitBehind().Match(wide) is { Success: true } m ? m.Value : "";
        var thickness = LengthReader.Read(
            char.IsAsciiDigit(thick[^1]) ? $"{thick} {shared}" : thick,
            unit
        );
        if ((thickness.Problem ?? width.Problem) is { } problem)
            return Reading<SizeRead>.Refused($"The size: {problem}");
        return Reading<SizeRead>.Of(new(name, null, thickness.Value, width.Value, Surfacing.S4S));
    }

    private static bool IsAName(string thick, string wide) =>
        Whole().IsMatch(wide) && (Whole().IsMatch(thick) || Quarters().IsMatch(thick));

    private static DressedSize? Dressed(string name) =>
        DressedSizes.All.FirstOrDefault(s => s.Nominal == name);

    [GeneratedRegex("""^(?<thick>[0-9][^xX×*]*?)\s*[xX×*]\s*(?<wide>[0-9][^xX×*]*)$""")]
    private static partial Regex TwoSizes();

    [GeneratedRegex("""(?:\p{L}+\.?|"|')$""")]
    private static partial Regex UnitBehind();

    [GeneratedRegex("^[0-9]+$")]
    private static partial Regex Whole();

    [GeneratedRegex("^[0-9]+/4$")]
    private static partial Regex Quarters();
}
