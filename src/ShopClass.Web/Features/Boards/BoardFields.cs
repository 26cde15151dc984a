namespace ShopClass.Web.Features.Boards;

/// <summary>What the fields of a board are called where a problem is listed away from its field.</summary>
public static class BoardFields
{
    public static string NameOf(string field) =>
        field switch
        {
            "Name" => "Name",
            "Species" => "Wood",
            "Thickness" => "Thickness",
            "WidthAtStart" => "Width at the start",
            "WidthAtMiddle" => "Width in the middle",
            "WidthAtEnd" => "Width at the far end",
            "Length" => "Length",
            "Cup" => "Hollow across",
            "Twist" => "Twist",
            "TrimStart" => "Trim at the start",
            "TrimEnd" => "Trim at the far end",
            _ when BadPlaceNumber(field) is { } number => $"Bad place {number}",
            _ => "The board",
        };

    private static int? BadPlaceNumber(string field)
    {
        var open = field.IndexOf('[', StringComparison.Ordinal);
        var close = field.IndexOf(']', StringComparison.Ordinal);
        return
            open > 0
            && close > open
            && int.TryParse(field.AsSpan(open + 1, close - open - 1), out var index)
            ? index + 1
            : null;
    }
}
