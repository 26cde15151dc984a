using System.Diagnostics;
using System.Text;
using ShopClass.Print.Sheets;
using Xunit;

namespace ShopClass.Print.Tests;

/// <summary>The file as other programs see it.</summary>
public class PdfFileTests
{
    // PDFsharp 6.2.4 writes streams that qpdf reads with this remark; everything else is a fault.
    private const string Known = "input stream is complete but output may still be valid";

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public async Task Qpdf_finds_no_fault(Paper paper)
    {
        Assert.SkipUnless(await IsInstalled("qpdf"), "qpdf is not installed");
        var complaints = (await Run("qpdf", "--check", paper))
            .Split('\n')
            .Where(l =>
                l.Contains("WARNING", StringComparison.Ordinal)
                || l.Contains("error", StringComparison.OrdinalIgnoreCase)
            );
        Assert.DoesNotContain(complaints, l => !l.Contains(Known, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_screen_reader_finds_headings_tables_and_the_drawing_in_words()
    {
        Assert.SkipUnless(await IsInstalled("pdfinfo"), "pdfinfo (poppler-utils) is not installed");
        var structure = await Run("pdfinfo", "-struct-text", Paper.A4);
        Assert.Contains("H1", structure, StringComparison.Ordinal);
        Assert.Contains("Table", structure, StringComparison.Ordinal);
        Assert.Contains("TH", structure, StringComparison.Ordinal);
        Assert.Contains("Figure", structure, StringComparison.Ordinal);
        var pdf = Encoding.BigEndianUnicode.GetBytes("Blank A1");
        Assert.True(
            Sheet().AsSpan().IndexOf(pdf) > 0 || Sheet().AsSpan().IndexOf("Blank A1"u8) > 0
        );
    }

    [Fact]
    public async Task Every_font_is_embedded()
    {
        Assert.SkipUnless(
            await IsInstalled("pdffonts"),
            "pdffonts (poppler-utils) is not installed"
        );
        var fonts = (await Run("pdffonts", "", Paper.A4))
            .Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Skip(2)
            .ToList();
        Assert.NotEmpty(fonts);
        Assert.All(fonts, f => Assert.Matches(@"(Source Sans|Zilla).*yes yes yes", f));
    }

    [Fact]
    public void Sheets_for_a_class_of_thirty_are_made_within_a_loose_ceiling()
    {
        _ = Sheet();
        var clock = Stopwatch.StartNew();
        for (var i = 0; i < 30; i++)
            _ = Sheet();
        Assert.InRange(clock.Elapsed.TotalSeconds, 0, 20);
    }

    private static byte[] Sheet(Paper paper = Paper.A4) =>
        KitSheet.Make(KitSheetTests.Content(SamplePlans.Shelf()), paper);

    private static async Task<string> Run(string program, string option, Paper paper)
    {
        var file = Path.Combine(Path.GetTempPath(), $"kit-{Guid.NewGuid():N}.pdf");
        await File.WriteAllBytesAsync(file, Sheet(paper), TestContext.Current.CancellationToken);
        try
        {
            return await Said(program, option.Length == 0 ? [file] : [option, file]);
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static async Task<bool> IsInstalled(string program)
    {
        try
        {
            await Said(program, ["--version"]);
            return true;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }

    private static async Task<string> Said(string program, string[] words)
    {
        var start = new ProcessStartInfo(program, words)
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = Process.Start(start)!;
        var cancel = TestContext.Current.CancellationToken;
        var (output, errors) = (
            process.StandardOutput.ReadToEndAsync(cancel),
            process.StandardError.ReadToEndAsync(cancel)
        );
        await process.WaitForExitAsync(cancel);
        return await output + await errors;
    }
}
