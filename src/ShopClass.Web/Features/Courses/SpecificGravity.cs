using System.Globalization;

namespace ShopClass.Web.Features.Courses;

/// <summary>Specific gravity as written and typed: 0.55, kept as hundredths. A decimal comma is read too.</summary>
public static class SpecificGravity
{
    public static string Write(int hundredths) =>
        (hundredths / 100m).ToString("0.00", CultureInfo.InvariantCulture);

    /// <summary>Hundredths, or null when it is no number with at most two decimals between 0 and 2.</summary>
    public static int? Read(string text)
    {
        var plain = text.Trim().Replace(',', '.');
        return
            decimal.TryParse(
                plain,
                NumberStyles.AllowDecimalPoint,
                CultureInfo.InvariantCulture,
                out var value
            )
            && value is > 0 and < 2
            && decimal.Truncate(value * 100) == value * 100
            ? (int)(value * 100)
            : null;
    }
}
