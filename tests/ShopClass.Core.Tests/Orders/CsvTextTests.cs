using CsCheck;
using Microsoft.VisualBasic.FileIO;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using Xunit;

namespace ShopClass.Core.Tests.Orders;

/// <summary>Format: RFC 4180. Read back with .NET's own reader of delimited text, which shares no line with the writer.</summary>
public class CsvTextTests
{
    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+1", "'+1")]
    [InlineData("-2", "'-2")]
    [InlineData("@x", "'@x")]
    [InlineData("\t=1", "'\t=1")]
    [InlineData("plain", "plain")]
    [InlineData("1x10", "1x10")]
    public void A_formula_is_defused(string words, string written) =>
        Assert.Equal(written, CsvText.Words(words).Text);

    [Fact]
    public void Numbers_stay_numbers() =>
        Assert.Equal(
            "count,price,feet\r\n3,12.50,5.33\r\n",
            new CsvText("count", "price", "feet")
                .Add(
                    CsvText.Number(3),
                    CsvText.Amount(new Money(1250, "USD")),
                    CsvText.Hundredths(533)
                )
                .ToString()
        );

    [Fact]
    public void A_line_break_stays_inside_its_cell() =>
        Assert.EndsWith(
            "\"two\nlines\",\"say \"\"six\"\"\"\r\n",
            new CsvText("a", "b")
                .Add(CsvText.Words("two\nlines"), CsvText.Words("say \"six\""))
                .ToString(),
            StringComparison.Ordinal
        );

    // .NET's reader drops line breaks at a cell's ends, so the cells here have none.
    [Fact]
    public void Whatever_is_written_is_read_back() =>
        Gen.OneOf(Gen.String["ab ,\";é漢ع"], Gen.String["x=+-@1"])
            .Array[1, 6]
            .Sample(cells =>
            {
                var text = new CsvText("head", "two").Add([.. cells.Select(CsvText.Words)]);
                using var reader = new TextFieldParser(new StringReader(text.ToString()))
                {
                    Delimiters = [","],
                    HasFieldsEnclosedInQuotes = true,
                    TrimWhiteSpace = false,
                };
                reader.ReadFields();
                var read = reader.ReadFields() ?? [];
                // The reader skips a line without anything in it.
                return cells.All(c => c.Length == 0)
                    || read.SequenceEqual(cells.Select(c => CsvText.Words(c).Text));
            });
}
