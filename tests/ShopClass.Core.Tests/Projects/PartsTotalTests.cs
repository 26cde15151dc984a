using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using Xunit;

namespace ShopClass.Core.Tests.Projects;

public sealed class PartsTotalTests
{
    // Board feet = thickness in inches × width in inches × length in feet / 12 (Wood Handbook, FPL-GTR-190, glossary;
    // from memory). The answers are worked by hand.
    [Theory]
    [InlineData("1", "12", "12", 1, 100)]
    [InlineData("1", "6", "96", 1, 400)]
    [InlineData("2", "4", "120", 1, 667)] // 2 × 4 × 10 / 12 = 6.666...
    [InlineData("3/4", "6", "14", 2, 88)] // 2 × 63 / 144 = 0.875, halfway up
    [InlineData("3/4", "3/4", "4", 4, 6)] // 9 / 144 = 0.0625
    public void Board_feet_follow_the_published_formula(
        string thickness,
        string width,
        string length,
        int pieces,
        long hundredths
    )
    {
        var total = PartsTotal.Of([Part(thickness, width, length, pieces, UnitSystem.Inch)]);

        Assert.Equal(hundredths, BoardFeet.HundredthsIn(total.Wood));
        Assert.Equal(pieces, total.Pieces);
    }

    [Theory]
    [InlineData("1000", "1000", 1, 100)]
    [InlineData("140", "360", 2, 10)] // 0.1008 m²
    [InlineData("50", "100", 1, 1)] // 0.005 m², halfway up
    public void Square_metres_count_one_face_of_each_piece(
        string width,
        string length,
        int pieces,
        long hundredths
    )
    {
        var total = PartsTotal.Of([Part("20", width, length, pieces, UnitSystem.Metric)]);

        Assert.Equal(hundredths, SquareMetres.HundredthsIn(total.Faces));
    }

    [Fact]
    public void A_full_list_of_the_largest_parts_can_be_added_up()
    {
        var largest = Part("4", "48", "240", PartChecks.MostOfOne, UnitSystem.Inch);

        var total = PartsTotal.Of(Enumerable.Repeat(largest, PartChecks.MostParts));

        Assert.Equal(3000, total.Pieces);
        Assert.Equal(96_000_000, BoardFeet.HundredthsIn(total.Wood)); // 4 × 48 × 20 / 12 = 320 each
    }

    [Fact]
    public void Nothing_adds_up_to_nothing() => Assert.Equal(default, PartsTotal.Of([]));

    private static Part Part(string t, string w, string l, int pieces, UnitSystem unit) =>
        new()
        {
            Letter = "A",
            Name = "part",
            Finished = new(Read(t, unit), Read(w, unit), Read(l, unit)),
            Quantity = pieces,
        };

    private static Length Read(string text, UnitSystem unit) => LengthReader.Read(text, unit).Value;
}
