using ShopClass.Core.Drawings;
using ShopClass.Core.Measure;
using ShopClass.Print.Labels;
using Xunit;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace ShopClass.Print.Tests;

public class KitLabelTests
{
    private const string Address = "http://192.168.1.20:5000/courses/6d8f/students/0f3a?project=77";

    public static TheoryData<string> Grids => [.. LabelSheet.All.Select(s => s.Id)];

    // Half a millimetre is 1.42 points.
    [Theory]
    [MemberData(nameof(Grids))]
    public void Every_label_s_code_lies_where_the_grid_says_to_half_a_millimetre(string id)
    {
        var grid = LabelSheet.Find(id)!;
        var labels = Enumerable.Range(1, grid.Count).Select(Label).ToList();
        var sheet = new PrintedSheet(KitLabels.Make(labels, grid, Length.Zero, Length.Zero));
        var page = Assert.Single(sheet.Pages);
        foreach (var number in new[] { 1, grid.Across, grid.Count })
        {
            var drawn = KitLabels.Draw(labels[number - 1], grid).Shapes.OfType<Box>().ToList();
            var (row, column) = Math.DivRem(number - 1, grid.Across);
            var left = Points(grid.Left + grid.StepAcross * column) + drawn.Min(b => b.X);
            var top = Points(grid.Top + grid.StepDown * row) + drawn.Min(b => b.Y);
            Assert.Contains(
                page.Paths.Select(p => p.GetBoundingRectangle())
                    .OfType<UglyToad.PdfPig.Core.PdfRectangle>(),
                r => Math.Abs(r.Left - left) < 1.42 && Math.Abs(page.Height - r.Top - top) < 1.42
            );
        }
    }

    [Fact]
    public void A_printer_s_offset_moves_every_label_as_far()
    {
        var grid = LabelSheet.Find("a4-2x7")!;
        var as_is = Leftmost(KitLabels.Make([Label(1)], grid, Length.Zero, Length.Zero));
        var moved = Leftmost(
            KitLabels.Make([Label(1)], grid, Length.FromMillimetres(2), Length.FromMillimetres(-1))
        );
        Assert.Equal(2 / 25.4 * 72, moved.Left - as_is.Left, 1.0);
        Assert.Equal(1 / 25.4 * 72, moved.Top - as_is.Top, 1.0);
    }

    [Fact]
    public void Labels_that_would_run_off_the_paper_are_refused_in_a_sentence() =>
        Assert.Contains(
            "run off the paper",
            LabelSheet.Find("a4-3x8")!.Problem(Length.FromMillimetres(5), Length.Zero),
            StringComparison.Ordinal
        );

    [Fact]
    public void Used_labels_are_left_free()
    {
        var grid = LabelSheet.Find("letter-3x10")!;
        var labels = Enumerable.Range(1, 4).Select(Label).ToList();
        var sheet = new PrintedSheet(
            KitLabels.Make(labels, grid, Length.Zero, Length.Zero, skip: 28)
        );
        Assert.Equal(2, sheet.Pages.Count);
        Assert.Contains("Mira 3", sheet.TextOf(1), StringComparison.Ordinal);
    }

    // Read back by ZXing.Net, which had no part in making the code.
    [Theory]
    [InlineData(Address)]
    [InlineData(
        "https://shop.example/courses/1b4e28ba-2fa1-11d2-883f-0016d3cca427/students/1b4e28ba-2fa1-11d2-883f-0016d3cca428?project=1b4e28ba-2fa1-11d2-883f-0016d3cca429"
    )]
    public void The_code_is_read_by_another_library(string address)
    {
        const int side = 900;
        var grey = new byte[side * side];
        Array.Fill(grey, (byte)255);
        foreach (var box in KitLabels.Code(address, 0, 0, side).Cast<Box>())
        {
            for (var y = (int)Math.Round(box.Y); y < (int)Math.Round(box.Y + box.Height); y++)
            for (var x = (int)Math.Round(box.X); x < (int)Math.Round(box.X + box.Width); x++)
                grey[y * side + x] = 0;
        }

        var source = new RGBLuminanceSource(
            grey,
            side,
            side,
            RGBLuminanceSource.BitmapFormat.Gray8
        );
        var read = new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source)));
        Assert.Equal(address, read?.Text);
    }

    // Every line of every label, on the smallest label there is.
    [Fact]
    public void A_label_says_by_which_plan_its_kit_is_made_up_and_all_of_it_stays_on_the_label()
    {
        foreach (var grid in LabelSheet.All)
        {
            var words = new PrintedSheet(
                KitLabels.Make([Label(1)], grid, Length.Zero, Length.Zero)
            ).Words[0];
            Assert.Contains(
                "Plan 3 of 20 Nov 2026",
                string.Join(' ', words.Select(w => w.Text)),
                StringComparison.Ordinal
            );
            var page = grid.Paper is Sheets.Paper.A4 ? 297 / 25.4 * 72 : 11 * 72;
            var bottom = page - Points(grid.Top + grid.Height);
            Assert.All(words, w => Assert.True(w.BoundingBox.Bottom > bottom, grid.Name));
        }
    }

    [Fact]
    public void A_long_name_in_another_script_stays_on_its_label_and_is_not_silently_boxed()
    {
        var grid = LabelSheet.Find("letter-3x10")!;
        var label = Label(1) with { Name = "Wolfeschlegelsteinhausenbergerdorff-Ångström 山田" };
        var sheet = new PrintedSheet(KitLabels.Make([label], grid, Length.Zero, Length.Zero));
        var right = Points(grid.Left + grid.Width);
        Assert.All(sheet.Words[0], w => Assert.True(w.BoundingBox.Right <= right));
    }

    // U+5C71 and U+7530 are Chinese letters (Unicode code charts, from memory).
    [Theory]
    [InlineData("Mira", null)]
    [InlineData("Ångström Øyvind Łucja", null)]
    [InlineData("山", "U+5C71")]
    [InlineData("山田", "U+5C71, U+7530")]
    public void Letters_the_typeface_lacks_are_question_marks_and_are_told(
        string name,
        string? codes
    )
    {
        var sheet = KitLabels.Of(
            [Label(1) with { Name = name }],
            LabelSheet.Find("letter-3x10")!,
            Length.Zero,
            Length.Zero
        );
        var text = new PrintedSheet(sheet.ToPdf()).Text;
        if (codes is null)
        {
            Assert.Null(sheet.LettersMissing);
            Assert.Contains(name, text, StringComparison.Ordinal);
            return;
        }

        Assert.Contains(codes, sheet.LettersMissing!, StringComparison.Ordinal);
        Assert.Contains(new string('?', name.Length), text, StringComparison.Ordinal);
    }

    private static KitLabel Label(int number) =>
        new(
            $"Mira {number}",
            "Evening class",
            "Bench hook",
            number,
            "A, B, C",
            "Plan 3 of 20 Nov 2026",
            Address
        );

    private static UglyToad.PdfPig.Core.PdfRectangle Leftmost(byte[] pdf) =>
        new PrintedSheet(pdf)
            .Pages[0]
            .Paths.Select(p => p.GetBoundingRectangle())
            .OfType<UglyToad.PdfPig.Core.PdfRectangle>()
            .OrderBy(r => r.Left)
            .ThenByDescending(r => r.Top)
            .First();

    private static double Points(Length length) => (double)length.Ticks / Length.TicksPerInch * 72;
}
