using ShopClass.Core.Measure;
using Xunit;

namespace ShopClass.Core.Tests.Measure;

public class LengthWriterTests
{
    [Theory]
    [InlineData(375_920, Precision.Sixteenth, "9 1/4 in")]
    [InlineData(386_080, Precision.Sixteenth, "9 1/2 in")] // 9 8/16 is written reduced
    [InlineData(365_760, Precision.Sixteenth, "9 in")]
    [InlineData(30_480, Precision.Sixteenth, "3/4 in")]
    [InlineData(0, Precision.Sixteenth, "0 in")]
    [InlineData(-375_920, Precision.Sixteenth, "-9 1/4 in")]
    [InlineData(-30_480, Precision.SixtyFourth, "-3/4 in")]
    [InlineData(-1, Precision.Sixteenth, "0 in")]
    [InlineData(3_175, Precision.Sixteenth, "1/16 in")] // 5/64 in lies nearer to 1/16 than to 1/8
    [InlineData(3_175, Precision.ThirtySecond, "3/32 in")] // halfway goes up
    [InlineData(3_175, Precision.SixtyFourth, "5/64 in")]
    [InlineData(376_000, Precision.Millimetre, "235 mm")]
    [InlineData(376_800, Precision.Millimetre, "236 mm")] // 235.5: halfway goes up
    [InlineData(376_800, Precision.HalfMillimetre, "235.5 mm")]
    [InlineData(376_799, Precision.Millimetre, "235 mm")]
    [InlineData(-376_000, Precision.HalfMillimetre, "-235 mm")]
    public void A_length_is_written_to_the_precision(
        long ticks,
        Precision precision,
        string expected
    ) => Assert.Equal(expected, LengthWriter.WriteWithUnit(Length.FromTicks(ticks), precision));

    [Theory]
    [InlineData(375_920, UnitSystem.Inch, "9 1/4")]
    [InlineData(635, UnitSystem.Inch, "1/64")]
    [InlineData(377_952, UnitSystem.Inch, "9.3")]
    [InlineData(376_000, UnitSystem.Inch, "235 mm")]
    [InlineData(376_000, UnitSystem.Metric, "235")]
    [InlineData(16, UnitSystem.Metric, "0.01")]
    [InlineData(30_480, UnitSystem.Metric, "19.05")]
    [InlineData(635, UnitSystem.Metric, "1/64 in")]
    [InlineData(1, UnitSystem.Metric, "0.000625")]
    public void A_field_shows_a_length_exactly_as_stored(
        long ticks,
        UnitSystem unit,
        string expected
    ) => Assert.Equal(expected, LengthWriter.WriteExact(Length.FromTicks(ticks), unit));

    [Fact]
    public void A_size_names_its_unit_once() =>
        Assert.Equal(
            "3/4 × 6 × 14 1/2 in",
            LengthWriter.WriteSize(
                Length.FromInches(0, 3, 4),
                Length.FromInches(6),
                Length.FromInches(14, 1, 2),
                Precision.Sixteenth
            )
        );
}
