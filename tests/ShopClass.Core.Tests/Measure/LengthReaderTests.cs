using ShopClass.Core.Measure;
using Xunit;
using static ShopClass.Core.Measure.UnitSystem;

namespace ShopClass.Core.Tests.Measure;

public class LengthReaderTests
{
    // Ticks are worked out by hand: 1 in = 40,640 ticks (so 1/4 in = 10,160 and 1/64 in = 635), 1 mm = 1,600 ticks.
    [Theory]
    [InlineData("9 1/4", Inch, 375_920)]
    [InlineData("9-1/4", Inch, 375_920)]
    [InlineData("9-1/4\"", Inch, 375_920)]
    [InlineData("9.25", Inch, 375_920)]
    [InlineData("9.25in", Inch, 375_920)]
    [InlineData("9,25 in", Inch, 375_920)]
    [InlineData("9¼", Inch, 375_920)]
    [InlineData("9 ¼ in.", Inch, 375_920)]
    [InlineData("9 1⁄4″", Inch, 375_920)]
    [InlineData("9 1∕4 inches", Inch, 375_920)]
    [InlineData("  9  1 / 4  ", Inch, 375_920)]
    [InlineData("9\u00A01/4", Inch, 375_920)]
    [InlineData("9\u20091/4\u202Fin", Inch, 375_920)]
    [InlineData("9–¼", Inch, 375_920)]
    [InlineData("9 16/64", Inch, 375_920)]
    [InlineData("3' 4 1/2\"", Inch, 1_645_920)]
    [InlineData("3'4-1/2\"", Inch, 1_645_920)]
    [InlineData("3' - 4½\"", Inch, 1_645_920)]
    [InlineData("3′ 4 1⁄2″", Inch, 1_645_920)]
    [InlineData("3’ 4 1/2”", Inch, 1_645_920)]
    [InlineData("3' 4.5", Inch, 1_645_920)]
    [InlineData("3' 4 1/2''", Inch, 1_645_920)]
    [InlineData("3 ft 4 in", Inch, 1_625_600)]
    [InlineData("3ft. 4in.", Inch, 1_625_600)]
    [InlineData("3 feet 4 inches", Inch, 1_625_600)]
    [InlineData("3'", Inch, 1_463_040)]
    [InlineData("3.5 ft", Inch, 1_706_880)]
    [InlineData("½", Inch, 20_320)]
    [InlineData("1/2", Inch, 20_320)]
    [InlineData(".5", Inch, 20_320)]
    [InlineData("0,5", Inch, 20_320)]
    [InlineData("9½", Inch, 386_080)]
    [InlineData("9 ⅝", Inch, 391_160)]
    [InlineData("3/4", Inch, 30_480)]
    [InlineData("3/4 in", Inch, 30_480)]
    [InlineData("3/4 IN", Metric, 30_480)]
    [InlineData("1/64", Inch, 635)]
    [InlineData("9.3 in", Inch, 377_952)]
    [InlineData("0", Inch, 0)]
    [InlineData("0", Metric, 0)]
    [InlineData("100 ft", Inch, 48_768_000)]
    [InlineData("235", Metric, 376_000)]
    [InlineData("235", Inch, 9_550_400)]
    [InlineData("235mm", Inch, 376_000)]
    [InlineData("235 MM", Metric, 376_000)]
    [InlineData("23.5 cm", Metric, 376_000)]
    [InlineData("23,5cm", Inch, 376_000)]
    [InlineData("0,5 mm", Metric, 800)]
    [InlineData("0.5", Metric, 800)]
    [InlineData("0,125", Metric, 200)]
    [InlineData("1.2 m", Metric, 1_920_000)]
    [InlineData("1.234 m", Metric, 1_974_400)]
    [InlineData("1 metre", Metric, 1_600_000)]
    [InlineData("12 millimeters", Metric, 19_200)]
    [InlineData("25.4", Metric, 40_640)]
    [InlineData("1 in", Metric, 40_640)]
    [InlineData("0.01", Metric, 16)]
    [InlineData("1/2 mm", Metric, 800)]
    [InlineData("9 1/4 \"", Metric, 375_920)]
    public void A_length_is_read_to_the_tick(string text, UnitSystem unit, long ticks)
    {
        var read = LengthReader.Read(text, unit);
        Assert.Null(read.Problem);
        Assert.Equal(ticks, read.Value.Ticks);
    }

    [Theory]
    [InlineData(null, Inch, "Nothing was typed. Write a length such as 9 1/4, 9.25 or 3' 4 1/2\".")]
    [InlineData(
        " \u00A0 ",
        Metric,
        "Nothing was typed. Write a length such as 235, 23.5 cm or 1.2 m."
    )]
    [InlineData(
        "abc",
        Inch,
        "“abc” has letters that cannot be read as a length. Write a length such as 9 1/4"
    )]
    [InlineData(
        "nine",
        Metric,
        "“nine” has letters that cannot be read as a length. Write a length such as 235"
    )]
    [InlineData(
        "9 1/4 apples",
        Inch,
        "“9 1/4 apples” ends in “apples”, which is no unit known here."
    )]
    [InlineData("1 mile", Inch, "“1 mile” ends in “mile”, which is no unit known here.")]
    [InlineData("9 µm", Metric, "“9 µm” ends in “µm”, which is no unit known here.")]
    [InlineData("1e9", Inch, "“1e9” has letters that cannot be read as a length.")]
    [InlineData("-3", Inch, "“-3” is less than zero. A length is zero or more.")]
    [InlineData("−½", Inch, "“−½” is less than zero.")]
    [InlineData("3/0", Inch, "“3/0” has a zero under the fraction line.")]
    [InlineData("9 1/0 in", Metric, "“9 1/0 in” has a zero under the fraction line.")]
    [InlineData("1,234", Inch, "“1,234” can be read in two ways")]
    [InlineData("1,234", Metric, "“1,234” can be read in two ways")]
    [InlineData("1.234,5", Metric, "“1.234,5” can be read in two ways")]
    [InlineData("1,234,567", Metric, "“1,234,567” can be read in two ways")]
    [InlineData("1.2.3", Inch, "“1.2.3” can be read in two ways")]
    [InlineData("91/4", Inch, "“91/4” has a fraction that is one or more.")]
    [InlineData("5/4", Inch, "“5/4” has a fraction that is one or more.")]
    [InlineData("9 5/4", Inch, "“9 5/4” has a fraction that is one or more.")]
    [InlineData(
        "9 1/4",
        Metric,
        "“9 1/4” is a fraction without a unit, and this field is in millimetres."
    )]
    [InlineData("3' 14\"", Inch, "“3' 14\"” has 12 or more inches after the feet.")]
    [InlineData(
        "1/3",
        Inch,
        "“1/3” falls between the marks a length is kept to. The nearest is 21/64 in."
    )]
    [InlineData(
        "0.333 in",
        Metric,
        "“0.333 in” falls between the marks a length is kept to. The nearest is 21/64 in."
    )]
    [InlineData(
        "9.26",
        Inch,
        "“9.26” falls between the marks a length is kept to. The nearest is 9 17/64 in."
    )]
    [InlineData(
        "0.00001 mm",
        Metric,
        "“0.00001 mm” falls between the marks a length is kept to. The nearest is 0 mm."
    )]
    [InlineData(
        "12.3456",
        Metric,
        "“12.3456” falls between the marks a length is kept to. The nearest is 12.35 mm."
    )]
    [InlineData("5280 ft", Inch, "“5280 ft” is longer than 100 ft (30 m), the most read here.")]
    [InlineData("1609344 mm", Metric, "“1609344 mm” is longer than 100 ft (30 m)")]
    [InlineData("100' 1/64\"", Inch, "“100' 1/64\"” is longer than 100 ft (30 m)")]
    [InlineData(
        "999999999999999999999999999999 in",
        Inch,
        "“999999999999999999999999999999 in” is longer than"
    )]
    [InlineData("1 234", Metric, "“1 234” cannot be read as one length.")]
    [InlineData("9 - 1/4 - 2", Inch, "“9 - 1/4 - 2” cannot be read as one length.")]
    [InlineData("1/2/3", Inch, "“1/2/3” cannot be read as one length.")]
    [InlineData("½½", Inch, "“½½” cannot be read as one length.")]
    [InlineData("9..", Inch, "“9..” can be read in two ways")]
    [InlineData("\"", Inch, "“\"” cannot be read as one length.")]
    [InlineData("=1+1", Inch, "“=1+1” cannot be read as one length.")]
    [InlineData("<b>9</b>", Inch, "“<b>9</b>” has letters that cannot be read as a length.")]
    [InlineData("٩", Metric, "“٩” cannot be read as one length.")]
    [InlineData("9\u00006", Metric, "“9 6” cannot be read as one length.")]
    [InlineData(
        "99999999999999999999999999999999999999999",
        Inch,
        "That is more than 40 characters"
    )]
    public void What_is_no_length_is_refused_with_a_sentence(
        string? text,
        UnitSystem unit,
        string beginning
    )
    {
        var read = LengthReader.Read(text, unit);
        Assert.StartsWith(beginning, read.Problem, StringComparison.Ordinal);
        Assert.EndsWith(".", read.Problem, StringComparison.Ordinal);
    }
}
