using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;
using Xunit;
using static ShopClass.Core.Tests.Sawing.HandDrawn;

namespace ShopClass.Core.Tests.Sawing;

/// <summary>Each rule about sizes: one case that breaks it, and one that only just does not.</summary>
public class SizeRuleTests
{
    private const decimal Tick = 1m / Length.TicksPerInch;
    private static readonly BaseCase Sound = new();

    [Fact]
    public void Blanks_must_be_long_enough()
    {
        (Sound with { A1 = Blank("A1", 1, 25.5m, 5.25m, 25) }).Breaks(
            "BlanksMustBeLongEnough",
            "A1",
            0.5m
        );
        (Sound with { A1 = Blank("A1", 1, 26 - Tick, 5.25m, 25) }).Breaks(
            "BlanksMustBeLongEnough",
            "A1",
            Tick
        );
    }

    [Fact]
    public void What_stays_open_counts_as_length() =>
        (
            Sound with
            {
                B = Sound.B with
                {
                    Open = [new(PartDimension.Length, In(0.5m), "the shelves are seated")],
                },
            }
        ).Breaks("BlanksMustBeLongEnough", "B1", 0.5m);

    [Fact]
    public void Blanks_must_be_wide_enough() =>
        (
            Sound with
            {
                B = Sound.B with { Finished = new(In(0.75m), In(2 + Tick), In(24)) },
            }
        ).Breaks("BlanksMustBeWideEnough", "B1", Tick);

    [Theory]
    [InlineData(Surfacing.S4S, "5", true)]
    [InlineData(Surfacing.S4S, "4.999", false)]
    [InlineData(Surfacing.S3S, "5.25", true)]
    [InlineData(Surfacing.S3S, "5.2", false)]
    public void Only_a_blank_between_two_mill_edges_needs_no_width_allowance(
        Surfacing surfacing,
        decimal boardWidth,
        bool isWideEnough
    )
    {
        var request = Request(
            [Board(60, boardWidth) with { Surfacing = surfacing }],
            [Part("A", 5, 24)]
        );
        var plan = Plan(Layout("b1", Section(0, 25, Strip(0, boardWidth, Blank("A1", 0, 25)))));
        Assert.Equal(isWideEnough, Rehearse(request, plan).Passed);
    }

    [Theory]
    [InlineData(2, "3.1875", true)] // (6 + 1/4 + 2 x 1/16) / 2 = 3 3/16
    [InlineData(2, "3.1874", false)]
    [InlineData(3, "2.1667", true)] // (6 + 1/4 + 4 x 1/16) / 3 = 2 1/6
    [InlineData(3, "2.1666", false)]
    public void Strips_of_a_glue_up_share_width_allowance_and_joints(
        int strips,
        decimal width,
        bool isWideEnough
    )
    {
        var request = Request([Board(90, 4)], [Part("A", 6, 24) with { GlueUpAllowed = true }]);
        var sections = Enumerable
            .Range(0, strips)
            .Select(i =>
                Section(
                    i * 25.125m,
                    i * 25.125m + 25,
                    Strip(
                        0,
                        width,
                        Blank("A1", i * 25.125m, i * 25.125m + 25) with
                        {
                            Key = new("A", 1, i + 1),
                        }
                    )
                )
            );
        var plan = Plan(Layout("b1", [.. sections])) with
        {
            GlueUps = new SortedDictionary<string, int>(StringComparer.Ordinal) { ["A"] = strips },
        };
        Assert.Equal(isWideEnough, Rehearse(request, plan).Passed);
        var notTaught = request with { Rules = request.Rules with { EdgeGluingTaught = false } };
        Assert.Contains(
            Rehearse(notTaught, plan).Findings,
            f => f.Rule == "GlueUpsMustBeTaught" && f.Subject == "A"
        );
        var notAllowed = Request(request.Boards, [Part("A", 6, 24)]);
        Assert.Contains(
            Rehearse(notAllowed, plan).Findings,
            f => f.Rule == "GlueUpsMustBeAllowed" && f.Subject == "A"
        );
    }

    [Fact]
    public void Needed_sizes_must_not_be_understated() =>
        (Sound with { A1 = Blank("A1", 1, 26, 5.25m, 24.75m) }).Breaks(
            "NeededSizesMustNotBeUnderstated",
            "A1",
            0.25m
        );

    [Fact]
    public void Boards_must_be_thick_enough()
    {
        (Sound with { Board = Sound.Board with { Thickness = In(0.6875m) } }).Breaks(
            "BoardsMustBeThickEnough",
            "A",
            0.0625m
        );
        // Rough: 3/4 and 3/32 for each face make 15/16.
        Rough(0.9375m).Keeps();
        Rough(0.9375m - Tick).Breaks("BoardsMustBeThickEnough", "A", Tick);
    }

    [Fact]
    public void Boards_must_not_be_thicker_than_is_planed_away()
    {
        (Sound with { Board = Sound.Board with { Thickness = In(1) } }).Keeps();
        (Sound with { Board = Sound.Board with { Thickness = In(1.0625m) } }).Breaks(
            "BoardsMustNotBeThickerThanIsPlanedAway",
            "A",
            0.0625m
        );
        Untaught(0.78125m, Surfacing.S4S).Keeps();
        Untaught(0.8125m, Surfacing.S4S)
            .Breaks("BoardsMustNotBeThickerThanIsPlanedAway", "A", 0.03125m);
    }

    [Fact]
    public void Rough_boards_need_planing_taught()
    {
        Untaught(0.9375m, Surfacing.Rough).Breaks("RoughBoardsNeedPlaningTaught", null);
        Rough(0.9375m).Keeps();
    }

    private static BaseCase Rough(decimal thickness) =>
        Sound with
        {
            Board = Sound.Board with { Surfacing = Surfacing.Rough, Thickness = In(thickness) },
            A1 = Sound.A1 with { Needed = Sound.A1.Needed with { Thickness = In(0.9375m) } },
            A2 = Sound.A2 with { Needed = Sound.A2.Needed with { Thickness = In(0.9375m) } },
            B1 = Sound.B1 with { Needed = Sound.B1.Needed with { Thickness = In(0.9375m) } },
        };

    private static BaseCase Untaught(decimal thickness, Surfacing surfacing) =>
        (surfacing is Surfacing.Rough ? Rough(thickness) : Sound) with
        {
            Board = Sound.Board with { Surfacing = surfacing, Thickness = In(thickness) },
            Asking = r => r with { Rules = r.Rules with { PlaningTaught = false } },
        };
}
