using CsCheck;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Sawing.Rehearsing;

namespace ShopClass.Core.Tests.Lumber;

/// <summary>Plain geometry: the sagitta of a circle's chord, and a corner of a plane patch (any book of geometry).</summary>
public class WarpTests
{
    // A circle of radius r with a chord c has the sagitta r - sqrt(r² - c²/4).
    [Theory]
    [InlineData(9.25, 0.125, 4.5)]
    [InlineData(9.25, 0.25, 6.0)]
    [InlineData(11.25, 0.375, 2.0)]
    public void A_narrow_piece_of_a_cupped_board_is_hollow_by_the_sagitta_of_its_chord(
        double width,
        double cup,
        double piece
    )
    {
        var board = Board(width, cup, 0);
        var radius = (width * width / 4 + cup * cup) / (2 * cup);
        var exact = radius - Math.Sqrt(radius * radius - piece * piece / 4);
        var said = Inches(Warp.CupOver(board, In(piece)));
        // The arc is taken as a parabola: within half a hundredth of an inch at such cups.
        Assert.InRange(said, exact - 0.005, exact + 0.005);
    }

    [Fact]
    public void Half_the_width_has_a_quarter_of_the_cup_and_the_whole_width_all_of_it()
    {
        var board = Board(8, 0.25, 0);
        Assert.Equal(In(1 / 16.0), Warp.CupOver(board, In(4)));
        Assert.Equal(In(0.25), Warp.CupOver(board, In(8)));
        Assert.Equal(In(0.25), Warp.CupOver(board, In(20)));
    }

    [Fact]
    public void Half_the_length_has_half_the_twist_and_planing_takes_half_of_that()
    {
        var board = Board(8, 0, 0.25);
        Assert.Equal(In(1 / 8.0), Warp.TwistOver(board, In(8), In(48)));
        Assert.Equal(In(1 / 16.0), Warp.LostIn(board, In(8), In(48)));
    }

    [Theory]
    [InlineData(2, false)]
    [InlineData(1.9, true)]
    public void Less_than_a_sixty_fourth_is_taken_as_flat(double across, bool isFlat) =>
        // 1/4 in over 8 in leaves 1/64 in over 2 in.
        Assert.Equal(isFlat, Warp.IsFlat(Board(8, 0.25, 0), In(across), In(96)));

    [Fact]
    public void The_rehearsal_works_out_the_same_hollow_by_itself() =>
        Gen.Select(Gen.Int[1, 96], Gen.Int[0, 64], Gen.Int[0, 64], Gen.Int[1, 120], Gen.Int[1, 900])
            .Sample(
                (wide, cup, twist, across, along) =>
                {
                    var board = Board(wide / 8.0, cup / 64.0, twist / 64.0);
                    var lost = Warp.LostIn(board, In(across / 8.0), In(along / 8.0));
                    Assert.Equal(
                        lost < Warp.TakenAsFlat ? Length.Zero : lost,
                        Hollows.In(board, In(across / 8.0), In(along / 8.0))
                    );
                }
            );

    private static Board Board(double width, double cup, double twist) =>
        new()
        {
            Id = "1",
            Name = "Board 1",
            SpeciesId = "eastern-white-pine",
            Surfacing = Surfacing.S4S,
            Thickness = In(0.875),
            WidthAtStart = In(width),
            WidthAtMiddle = In(width),
            WidthAtEnd = In(width),
            Length = In(96),
            Cup = In(cup),
            Twist = In(twist),
        };

    private static Length In(double inches) =>
        Length.FromInches(0, (long)Math.Round(inches * 320), 320);

    private static double Inches(Length length) => length.Ticks / (double)Length.TicksPerInch;
}
