using ShopClass.Core.Drawings;

namespace ShopClass.Print.Pens;

/// <summary>Writes a drawing as SVG text. Looks come from classes (<c>ink-wood</c>, <c>ink-kerf</c> …) in the app's drawing.css.</summary>
public static class SvgPen
{
    /// <summary>
    /// A whole <c>svg</c> element with viewBox, <c>role="img"</c>, title and description; everything from people is escaped.
    /// <paramref name="idPrefix"/> keeps ids apart when a page holds several drawings.
    /// </summary>
    public static string Write(Drawing drawing, string idPrefix) =>
        throw new NotImplementedException();
}
