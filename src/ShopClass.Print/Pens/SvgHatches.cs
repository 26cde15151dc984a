using System.Text;
using ShopClass.Core.Drawings;

namespace ShopClass.Print.Pens;

/// <summary>The hatches of a drawing, each defined once.</summary>
internal static class SvgHatches
{
    /// <summary>The hatch that fills a shape, if any.</summary>
    public static string? For(Shape shape) =>
        shape switch
        {
            Box { Ink: Ink.Waste } or Polygon { Ink: Ink.Waste } => "waste",
            Box { Ink: Ink.Kerf } => "kerf",
            Polygon { Ink: Ink.Defect } => "bark",
            _ => null,
        };

    /// <summary>Writes the definitions the drawing needs.</summary>
    public static void Write(StringBuilder svg, Drawing drawing, string id)
    {
        var used = drawing.Shapes.Select(For).OfType<string>().Distinct().Order().ToList();
        if (used.Count == 0)
            return;
        svg.Append("<defs>");
        foreach (var name in used)
            svg.Append(Definition(name, id));
        svg.Append("</defs>");
    }

    private static string Definition(string name, string id)
    {
        var (size, turn, lines) = name switch
        {
            "waste" => (6, 45, "<path class=\"hatch hatch-waste\" d=\"M0 0V6\"/>"),
            "kerf" => (2, -45, "<path class=\"hatch hatch-kerf\" d=\"M0 0V2\"/>"),
            _ => (5, 20, "<path class=\"hatch hatch-bark\" d=\"M1 0V3M3.5 2V5\"/>"),
        };
        return $"<pattern id=\"{id}-{name}\" width=\"{size}\" height=\"{size}\" patternUnits=\"userSpaceOnUse\" "
            + $"patternTransform=\"rotate({turn})\">{lines}</pattern>";
    }
}
