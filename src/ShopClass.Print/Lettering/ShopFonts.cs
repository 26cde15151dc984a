using System.Collections.Concurrent;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace ShopClass.Print.Lettering;

/// <summary>The app's own fonts; no font of the machine is ever used.</summary>
internal sealed class ShopFonts : IFontResolver
{
    private static readonly ConcurrentDictionary<(Face Face, double Size), XFont> Fonts = new();

    private static readonly XPdfFontOptions Options = new(PdfFontEncoding.Unicode);

    // PDFsharp keeps its font settings for the whole process: set once, before the first font is made.
    static ShopFonts() => GlobalFontSettings.FontResolver = new ShopFonts();

    private ShopFonts() { }

    /// <summary>A face at a size.</summary>
    public static XFont At(Face face, double size) =>
        Fonts.GetOrAdd(
            (face, size),
            key => new(key.Face.ToString(), key.Size, XFontStyleEx.Regular, Options)
        );

    /// <inheritdoc/>
    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        Enum.TryParse<Face>(familyName, out var face) ? new(FileOf(face)) : null;

    /// <inheritdoc/>
    public byte[] GetFont(string faceName)
    {
        using var font =
            typeof(ShopFonts).Assembly.GetManifestResourceStream($"Fonts/{faceName}")
            ?? throw new InvalidOperationException($"The font {faceName} is not in the program.");
        using var bytes = new MemoryStream();
        font.CopyTo(bytes);
        return bytes.ToArray();
    }

    private static string FileOf(Face face) =>
        face switch
        {
            Face.Text => "SourceSans3_400Regular",
            Face.Strong => "SourceSans3_600SemiBold",
            Face.Italic => "SourceSans3_400Regular_Italic",
            Face.Heading => "ZillaSlab_600SemiBold",
            _ => throw new ArgumentOutOfRangeException(nameof(face), face, "Not a face."),
        };
}
