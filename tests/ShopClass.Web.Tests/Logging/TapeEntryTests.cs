using ShopClass.Core.Measure;
using ShopClass.Web.Features.Logging;

namespace ShopClass.Web.Tests.Logging;

public sealed class TapeEntryTests
{
    [Theory]
    [InlineData("9", "1/4", 9, 1, 4)]
    [InlineData("", "3/4", 0, 3, 4)]
    [InlineData("9 1/4", "", 9, 1, 4)]
    [InlineData("9.25", "", 9, 1, 4)]
    [InlineData(" 12 ", "15/16", 12, 15, 16)]
    public void Whole_inches_and_a_tapped_fraction_make_one_length(
        string typed,
        string tapped,
        int whole,
        int over,
        int under
    )
    {
        var read = TapeEntry.Read(typed, tapped, UnitSystem.Inch);

        Assert.Equal(Length.FromInches(whole, over, under), read.Value);
    }

    [Theory]
    [InlineData("9 1/4", "1/2")]
    [InlineData("9.25", "1/2")]
    [InlineData("235 mm", "1/2")]
    [InlineData("9", "5/3")]
    [InlineData("", "")]
    [InlineData("about so", "")]
    public void What_cannot_be_one_length_gets_a_sentence(string typed, string tapped) =>
        Assert.NotEmpty(TapeEntry.Read(typed, tapped, UnitSystem.Inch).Problem!);

    [Fact]
    public void What_is_shown_again_reads_the_same()
    {
        foreach (var step in (long[])[2_540, 635, 800, 16])
        {
            for (var length = Length.FromTicks(step); length < Length.FromInches(13); length *= 2)
            {
                foreach (var unit in Enum.GetValues<UnitSystem>())
                {
                    var (text, fraction) = TapeEntry.Show(length, unit);
                    Assert.Equal(length, TapeEntry.Read(text, fraction, unit).Value);
                }
            }
        }
    }

    // 48 in and 235 mm are sizes of boards; 48 mm and 235 in are not.
    [Theory]
    [InlineData(EntryScreen.Length, "48", UnitSystem.Metric, true)]
    [InlineData(EntryScreen.Length, "48 mm", UnitSystem.Metric, false)]
    [InlineData(EntryScreen.Length, "1200", UnitSystem.Metric, false)]
    [InlineData(EntryScreen.Start, "235", UnitSystem.Inch, true)]
    [InlineData(EntryScreen.Start, "9 1/4", UnitSystem.Inch, false)]
    [InlineData(EntryScreen.Start, "235\"", UnitSystem.Inch, false)]
    [InlineData(EntryScreen.Thickness, "19", UnitSystem.Inch, true)]
    [InlineData(EntryScreen.Thickness, "19", UnitSystem.Metric, false)]
    public void A_size_in_the_wrong_unit_is_asked_about_unless_the_unit_was_typed(
        EntryScreen screen,
        string typed,
        UnitSystem unit,
        bool asked
    )
    {
        var read = LengthReader.Read(typed, unit).Value;

        Assert.Equal(asked, TapeEntry.WrongUnit(screen, typed, read, unit) is not null);
    }
}
