using System.Collections.Concurrent;
using System.Runtime.InteropServices;
using HarfBuzzSharp;
using Buffer = HarfBuzzSharp.Buffer;

namespace ShopClass.Print.Lettering;

/// <summary>A letter form as it is drawn; lengths in parts of the letter height.</summary>
/// <param name="Code">The private sign it is passed to the PDF as.</param>
/// <param name="X">From the left edge of the text.</param>
/// <param name="Up">Above the line.</param>
internal readonly record struct Glyph(string Code, double X, double Up);

/// <summary>Text of one font and direction as letter forms, joined and placed as its script wants it.</summary>
/// <param name="Glyphs">The forms, as they are spoken.</param>
/// <param name="Width">Width of all, in parts of the letter height.</param>
internal sealed record Shaped(IReadOnlyList<Glyph> Glyphs, double Width);

/// <summary>Chooses and places the letter forms of one font.</summary>
internal sealed class Shaper : IDisposable
{
    private const int Scale = 1000;

    // Names come again on every sheet; when so many texts are known, it begins anew.
    private const int MostKept = 4000;

    private static readonly ConcurrentDictionary<string, Shaper> All = new();

    private readonly Lock oneAtATime = new();
    private readonly Dictionary<(string Text, bool IsRightToLeft), Shaped> known = [];
    private readonly Font font;
    private readonly GlyphTexts texts;

    private Shaper(string file)
    {
        using var blob = BlobOf(ShopFonts.Bytes(file));
        using var face = new HarfBuzzSharp.Face(blob, 0);
        font = new(face);
        font.SetFunctionsOpenType();
        font.SetScale(Scale, Scale);
        texts = new(Nominal);
    }

    /// <summary>The one for a font file.</summary>
    public static Shaper Of(string file) => All.GetOrAdd(file, f => new(f));

    /// <summary>Whether the font has a letter.</summary>
    public bool Has(int letter)
    {
        lock (oneAtATime)
            return Nominal(letter) != 0;
    }

    /// <summary>What a letter form stands for in the PDF's text; see <see cref="GlyphTexts"/>.</summary>
    public int TextOf(ushort glyph)
    {
        lock (oneAtATime)
            return texts.Of(glyph);
    }

    /// <summary>The text as letter forms.</summary>
    public Shaped Shape(string text, bool isRightToLeft)
    {
        lock (oneAtATime)
        {
            if (known.TryGetValue((text, isRightToLeft), out var shaped))
                return shaped;
            if (known.Count >= MostKept)
                known.Clear();
            return known[(text, isRightToLeft)] = Made(text, isRightToLeft);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => font.Dispose();

    private Shaped Made(string text, bool isRightToLeft)
    {
        using var buffer = new Buffer();
        buffer.AddUtf16(text);
        buffer.GuessSegmentProperties();
        buffer.Direction = isRightToLeft ? Direction.RightToLeft : Direction.LeftToRight;
        buffer.ClusterLevel = ClusterLevel.MonotoneCharacters;
        font.Shape(buffer);
        var (infos, places) = (buffer.GlyphInfos, buffer.GlyphPositions);
        var forms = new List<(int Spoken, Glyph Glyph)>();
        var x = 0;
        for (var i = 0; i < infos.Length; i++)
        {
            var form = (ushort)infos[i].Codepoint;
            var letters = ClusterAt(text, infos, i);
            var sign = texts.Learn(form, letters);
            var within = sign <= char.MaxValue ? letters.IndexOf((char)sign) : -1;
            forms.Add(
                (
                    (int)infos[i].Cluster + Math.Max(0, within),
                    new(
                        ShapedText.CodeOf(form),
                        (double)(x + places[i].XOffset) / Scale,
                        (double)places[i].YOffset / Scale
                    )
                )
            );
            x += places[i].XAdvance;
        }

        return new([.. forms.OrderBy(f => f.Spoken).Select(f => f.Glyph)], (double)x / Scale);
    }

    // What a form stands for reaches to where the next forms begin.
    private static string ClusterAt(string text, GlyphInfo[] infos, int at)
    {
        var from = (int)infos[at].Cluster;
        var to = infos
            .Select(i => (int)i.Cluster)
            .Where(c => c > from)
            .DefaultIfEmpty(text.Length)
            .Min();
        return text[from..to];
    }

    // The library's own way of reading a stream keeps a pointer to bytes that may move; this one copies them first.
    private static Blob BlobOf(byte[] bytes)
    {
        var pinned = GCHandle.Alloc(bytes, GCHandleType.Pinned);
        try
        {
            return new(pinned.AddrOfPinnedObject(), bytes.Length, MemoryMode.Duplicate);
        }
        finally
        {
            pinned.Free();
        }
    }

    private ushort Nominal(int letter) =>
        font.TryGetNominalGlyph((uint)letter, out var glyph) ? (ushort)glyph : (ushort)0;
}
