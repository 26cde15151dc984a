using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace ShopClass.Print.Lettering;

/// <summary>
/// Puts chosen letter forms on a page. PDFsharp chooses forms by itself, one for each sign; so a form is passed to it as a
/// private sign (plane 16, which no font of ours has) and put in its place when PDFsharp asks.
/// </summary>
internal static class ShapedText
{
    private const int FirstCode = 0x100000;

    /// <summary>The private sign of a form.</summary>
    public static string CodeOf(ushort form) => char.ConvertFromUtf32(FirstCode + form);

    /// <summary>Makes a document take private signs for forms.</summary>
    public static void Watch(PdfDocument document) =>
        document.RenderEvents.RenderTextEvent += (_, text) =>
        {
            if (text.CodePointGlyphIndexPairs.Any(p => p.CodePoint >= FirstCode))
                text.CodePointGlyphIndexPairs =
                [
                    .. text.CodePointGlyphIndexPairs.Select(p =>
                        FormOf(p, text.Font.FontFamily.Name)
                    ),
                ];
        };

    /// <summary>Draws forms from a left edge on a line, as they are spoken.</summary>
    public static void Draw(
        XGraphics page,
        Shaped shaped,
        XFont font,
        XBrush ink,
        double x,
        double y
    )
    {
        foreach (var glyph in shaped.Glyphs)
            page.DrawString(
                glyph.Code,
                font,
                ink,
                x + glyph.X * font.Size,
                y - glyph.Up * font.Size
            );
    }

    private static CodePointGlyphIndexPair FormOf(CodePointGlyphIndexPair pair, string file)
    {
        if (pair.CodePoint < FirstCode)
            return pair;
        var form = (ushort)(pair.CodePoint - FirstCode);
        return new(Shaper.Of(file).TextOf(form), form);
    }
}
