using System.Collections.Concurrent;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace ShopClass.Print.Lettering;

/// <summary>The app's own fonts; no font of the machine is ever used.</summary>
internal sealed class ShopFonts : IFontResolver
{
    private static readonly ConcurrentDictionary<(string File, double Size), XFont> Fonts = new();

    private static readonly XPdfFontOptions Options = new(PdfFontEncoding.Unicode);

    // PDFsharp keeps its font settings for the whole process: set once, before the first font is made.
    static ShopFonts() => GlobalFontSettings.FontResolver = new ShopFonts();

    private ShopFonts() { }

    /// <summary>A font file at a size.</summary>
    public static XFont At(string file, double size) =>
        Fonts.GetOrAdd((file, size), key => new(key.File, key.Size, XFontStyleEx.Regular, Options));

    /// <summary>The bytes of a font file.</summary>
    public static byte[] Bytes(string file)
    {
        using var font =
            typeof(ShopFonts).Assembly.GetManifestResourceStream($"Fonts/{file}")
            ?? throw new InvalidOperationException($"The font {file} is not in the program.");
        using var bytes = new MemoryStream();
        font.CopyTo(bytes);
        return bytes.ToArray();
    }

    /// <inheritdoc/>
    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        new(familyName);

    /// <inheritdoc/>
    public byte[] GetFont(string faceName) => Bytes(faceName);
}
