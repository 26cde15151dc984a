using System.Globalization;
using System.Text.RegularExpressions;

namespace ShopClass.Web.Tests.Shell;

/// <summary>
/// The colours of styles/paper.css against WCAG 2.2: 1.4.3 asks 4.5 : 1 for text, 1.4.11 asks 3 : 1 for the lines that
/// show where a field is. The formula is WCAG's own definition of relative luminance and contrast ratio.
/// </summary>
public sealed class ContrastTests
{
    private static readonly string Css = File.ReadAllText(
        Path.Combine(Root(), "wwwroot-assets", "styles", "paper.css")
    );

    public static TheoryData<string, string, string, double> Pairs()
    {
        var pairs = new TheoryData<string, string, string, double>();
        foreach (var theme in new[] { "light", "dark" })
        {
            foreach (var paper in new[] { "paper", "paper-raised", "paper-sunk" })
            {
                foreach (var text in new[] { "ink", "ink-soft", "pencil", "ok", "warn", "bad" })
                    pairs.Add(theme, text, paper, 4.5);
                pairs.Add(theme, "line-strong", paper, 3);
            }
            pairs.Add(theme, "pencil-ink", "pencil", 4.5);
            pairs.Add(theme, "ink", "wood", 4.5);
        }
        return pairs;
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Lettering_and_lines_stand_out_from_the_paper(
        string theme,
        string front,
        string back,
        double least
    )
    {
        var (a, b) = (Luminance(Colour(theme, front)), Luminance(Colour(theme, back)));
        var contrast = (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);

        Assert.True(contrast >= least, $"{front} on {back} has {contrast:0.00} : 1");
    }

    [Fact]
    public void Dark_by_choice_and_dark_by_the_system_are_the_same()
    {
        var byChoice = Regex
            .Match(Css, @":root\[data-theme=""dark""\] \{(?<in>[^}]*)\}")
            .Groups["in"]
            .Value;
        var bySystem = Regex
            .Match(Css, @":root:not\(\[data-theme=""light""\]\) \{(?<in>[^}]*)\}")
            .Groups["in"]
            .Value;

        Assert.NotEmpty(Lines(byChoice));
        Assert.Equal(Lines(byChoice), Lines(bySystem));
    }

    [Theory]
    [InlineData(255, 255, 255, 1)]
    [InlineData(0, 0, 0, 0)]
    [InlineData(255, 0, 0, 0.2126)]
    public void Luminance_is_as_WCAG_defines_it(int r, int g, int b, double expected) =>
        Assert.Equal(expected, Luminance((r, g, b)), 4);

    private static string[] Lines(string block) =>
        block.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    private static (int R, int G, int B) Colour(string theme, string name)
    {
        var from = Css.IndexOf(
            theme == "light" ? ":root {" : ":root[data-theme=\"dark\"]",
            StringComparison.Ordinal
        );
        var hex = Regex
            .Match(Css[from..], $@"--{name}: #(?<hex>[0-9a-f]{{6}});")
            .Groups["hex"]
            .Value;
        var value = int.Parse(hex, NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        return (value >> 16, (value >> 8) & 255, value & 255);
    }

    private static double Luminance((int R, int G, int B) colour) =>
        (0.2126 * Linear(colour.R)) + (0.7152 * Linear(colour.G)) + (0.0722 * Linear(colour.B));

    private static double Linear(int channel)
    {
        var c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "ShopClass.sln")))
            folder = folder.Parent!;
        return folder.FullName;
    }
}
