using ShopClass.Core.Drawings;

namespace ShopClass.Web.Features.Logging;

/// <summary>A drawing for a phone with a weak signal: without the grain, which is half of its weight.</summary>
public static class Light
{
    public static Drawing Of(Drawing drawing) =>
        drawing with
        {
            Shapes = [.. drawing.Shapes.Where(s => s.Ink is not Ink.Grain)],
        };
}
