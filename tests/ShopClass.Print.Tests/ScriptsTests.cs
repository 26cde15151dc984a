using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using ShopClass.Core.Measure;
using ShopClass.Print.Labels;
using UglyToad.PdfPig.Content;
using Xunit;

namespace ShopClass.Print.Tests;

/// <summary>
/// Names of other scripts on paper. Scripts' rules are those of the Unicode Standard, chapters 9 (Hebrew, Arabic) and 12
/// (Devanagari); the letters' own numbers are from its code charts. Names invented, from common given names.
/// </summary>
public partial class ScriptsTests
{
    // Where a form of the font stands for one letter or a sign of Unicode's own.
    public static TheoryData<string> Names =>
        [
            "Юлия Лещенко",
            "Ελένη Παππά",
            "שָׂרָה כהן",
            "ג'ורג' לוי",
            "محمد الأمين",
            "فاطمة پارسا",
            "สมชาย ใจดี",
            "Արամ Կարապետյան",
            "გიორგი ბერიძე",
        ];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_name_is_printed_in_its_own_letters(string name)
    {
        var sheet = Sheet(name);
        Assert.Null(sheet.LettersMissing);
        var letters = NameOn(sheet);
        Assert.DoesNotContain(letters, l => l.Value is "?" or "");
        // Every sign of the name is in the PDF's text, in the order it is spoken; forms as letters, joiners left out.
        Assert.Equal(Bare(name), Bare(string.Concat(letters.Select(l => l.Value))));
        Assert.All(letters, l => Assert.InRange(l.Location.X, 0, Points(70)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    [InlineData("क्षितिज शर्मा")]
    [InlineData("আরিফ দাস")]
    [InlineData("அருண் குமார்")]
    public void A_name_is_spelt_out_for_a_screen_reader(string name)
    {
        Assert.Null(Kit(name).LettersMissing);
        var pdf = Kit(name).ToPdf();
        if (Environment.GetEnvironmentVariable("SHOPCLASS_LOOK") is { } folder)
            File.WriteAllBytes(Path.Combine(folder, $"script-{(int)name[0]:X4}.pdf"), pdf);
        foreach (var word in name.Split(' ').Where(w => w.Any(c => c > 0x530)))
            Assert.True(pdf.AsSpan().IndexOf(AsHex(word)) > 0, word);
    }

    [Theory]
    [InlineData("דוד כהן")]
    [InlineData("محمد الأمين")]
    public void Hebrew_and_Arabic_run_from_right_to_left(string name)
    {
        var letters = NameOn(Sheet(name));
        Assert.All(
            letters.Zip(letters.Skip(1)),
            pair => Assert.True(pair.Second.Location.X < pair.First.Location.X + 0.01)
        );
    }

    [Fact]
    public void What_stands_about_a_name_stays_where_it_is()
    {
        var letters = Line(Sheet("דוד (3) b"));
        var at = letters
            .GroupBy(l => l.Value, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.First().Location.X, StringComparer.Ordinal);
        // The kit's number, the name, then the brackets about the figure.
        double[] places = [at["7"], at["ו"], at["("], at["3"], at[")"], at["b"]];
        Assert.Equal(places.Order(), places);
    }

    [Fact]
    public void Figures_within_a_name_keep_their_order()
    {
        var at = Line(Sheet("כיתה 12 ב"))
            .Where(l => l.Value != "7")
            .GroupBy(l => l.Value, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.First().Location.X, StringComparer.Ordinal);
        Assert.True(at["ב"] < at["1"] && at["1"] < at["2"] && at["2"] < at["כ"]);
    }

    // U+FEF7 to U+FEFA are lam with alef and hamza as one sign; beh has a form of its own at a word's begin, middle and end
    // (U+FE91, U+FE92, U+FE90; Arabic Presentation Forms B).
    [Fact]
    public void Arabic_letters_are_joined()
    {
        Assert.Equal("\uFE91\uFE92\uFE90", Forms("ببب"));
        Assert.Single(NameOn(Sheet("لأ")));
    }

    // The vowel sign i is spoken after its consonant and stands before it (Unicode Standard, 12.1, rule R15).
    [Fact]
    public void Devanagari_signs_stand_where_they_belong()
    {
        var letters = NameOn(Sheet("कि"));
        Assert.Equal(2, letters.Count);
        Assert.True(
            letters.Single(l => l.Value == "क").Location.X > letters.Min(l => l.Location.X)
        );
        // A consonant without its vowel, and the next one, are one form.
        Assert.Single(NameOn(Sheet("क्ष")));
    }

    [Fact]
    public void Points_stand_about_their_letter()
    {
        var letters = NameOn(Sheet("שָ"));
        Assert.Equal(["ש", "ָ"], letters.Select(l => l.Value));
        var (letter, point) = (letters[0].BoundingBox, letters[1].BoundingBox);
        Assert.InRange((point.Left + point.Right) / 2, letter.Left, letter.Right);
    }

    [Fact]
    public void The_preview_turns_names_as_paper_does()
    {
        var svg = Kit("שרה כהן").Pages()[0].Svg;
        Assert.Matches(TurnedText(), svg);
        Assert.DoesNotContain("rtl", Kit("Mira").Pages()[0].Svg, StringComparison.Ordinal);
    }

    private static Pages.Manuscript Kit(string name) =>
        Sheets.KitSheet.Of(
            KitSheetTests.Content(SamplePlans.Shelf()) with
            {
                StudentShown = name,
            },
            Sheets.Paper.A4
        );

    private static Pages.Manuscript Sheet(string name) =>
        KitLabels.Of(
            [new(name, "c", "p", 7, "A", "v", null)],
            LabelSheet.Find("a4-3x8")!,
            Length.Zero,
            Length.Zero
        );

    private static List<Letter> Line(Pages.Manuscript sheet)
    {
        var letters = new PrintedSheet(sheet.ToPdf()).Pages[0].Letters;
        var top = letters[0].StartBaseLine.Y;
        return
        [
            .. letters.Where(l =>
                Math.Abs(l.StartBaseLine.Y - top) < 8 && l.PointSize > 8.6 && l.Value != " "
            ),
        ];
    }

    private static List<Letter> NameOn(Pages.Manuscript sheet) => [.. Line(sheet).Skip(1)];

    private static string Forms(string name) =>
        string.Concat(NameOn(Sheet(name)).Select(l => l.Value));

    private static byte[] AsHex(string word) =>
        Encoding.ASCII.GetBytes(Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(word)));

    private static double Points(double millimetres) => millimetres / 25.4 * 72;

    // Presentation forms as plain letters: the charts' own decompositions, for the letters of the names above.
    private static string Bare(string text)
    {
        var bare = new StringBuilder();
        foreach (var sign in text)
            if (char.GetUnicodeCategory(sign) is not UnicodeCategory.Format && sign != ' ')
                bare.Append(PlainArabic(sign));
        return bare.ToString();
    }

    private static string PlainArabic(char sign) =>
        sign switch
        {
            >= '\uFEF7' and <= '\uFEF8' => "لأ",
            >= '\uFE83' and <= '\uFE84' => "أ",
            >= '\uFE8D' and <= '\uFE8E' => "ا",
            >= '\uFE8F' and <= '\uFE92' => "ب",
            >= '\uFE93' and <= '\uFE94' => "ة",
            >= '\uFEA1' and <= '\uFEA4' => "ح",
            >= '\uFEA9' and <= '\uFEAA' => "د",
            >= '\uFEAD' and <= '\uFEAE' => "ر",
            >= '\uFEB1' and <= '\uFEB4' => "س",
            >= '\uFEC1' and <= '\uFEC4' => "ط",
            >= '\uFED1' and <= '\uFED4' => "ف",
            >= '\uFEDD' and <= '\uFEE0' => "ل",
            >= '\uFEE1' and <= '\uFEE4' => "م",
            >= '\uFEE5' and <= '\uFEE8' => "ن",
            >= '\uFEF1' and <= '\uFEF4' => "ي",
            >= '\uFB56' and <= '\uFB59' => "پ",
            _ => $"{sign}",
        };

    [GeneratedRegex("direction=\"rtl\"[^>]*>שרה כהן<")]
    private static partial Regex TurnedText();
}
