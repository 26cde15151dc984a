using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;
using Xunit;
using static ShopClass.Core.Tests.Sawing.HandDrawn;

namespace ShopClass.Core.Tests.Sawing;

/// <summary>Each rule about blanks and wood: one case that breaks it, and one that only just does not.</summary>
public class BlankRuleTests
{
    private const decimal Tick = 1m / Length.TicksPerInch;
    private static readonly BaseCase Sound = new();

    [Fact]
    public void Blanks_must_belong_to_the_project() =>
        (Sound with { A2 = Sound.A2 with { Key = new("A", 3) } }).Breaks(
            "BlanksMustBelongToTheProject",
            "A3"
        );

    [Fact]
    public void Every_blank_must_be_there_once()
    {
        (Sound with { A = Sound.A with { Quantity = 3 } }).Breaks(
            "EveryBlankMustBeThereOnce",
            "A3"
        );
        (Sound with { A2 = Sound.A2 with { Key = new("A", 1) } }).Breaks(
            "EveryBlankMustBeThereOnce",
            "A1"
        );
        (Sound with { Planning = p => p with { Missing = [new("A", 2)] } }).Breaks(
            "EveryBlankMustBeThereOnce",
            "A2"
        );
    }

    [Fact]
    public void A_blank_the_plan_calls_missing_is_only_a_note()
    {
        var report = (
            Sound with
            {
                A = Sound.A with { Quantity = 3 },
                Planning = p => p with { Missing = [new("A", 3)] },
            }
        ).Report;
        Assert.True(report.Passed);
        var note = Assert.Single(report.Findings);
        Assert.Equal(
            (FindingKind.Note, "MissingBlanksAreNamedByThePlan", "A3"),
            (note.Kind, note.Rule, note.Subject)
        );
    }

    [Fact]
    public void Blanks_must_be_sawn_out()
    {
        (Sound with { Sawing = cuts => cuts.SkipLast(1) }).Breaks("BlanksMustBeSawnOut", "A2", 0);
        (Sound with { Sawing = cuts => cuts.Take(1) }).Breaks("BlanksMustBeSawnOut", "A1", 34);
    }

    [Fact]
    public void A_sliver_thinner_than_a_kerf_may_stay_on_a_blank()
    {
        // The second length reaches to 59 in: at a blank ending a tick less than a kerf before the board's end there is
        // no waste wide enough to saw off.
        BaseCase Ending(decimal beforeTheEnd) =>
            Sound with
            {
                Board = Board(51.125m + beforeTheEnd, 8) with { TrimStart = In(1) },
            };
        Ending(0.125m - Tick).Keeps();
        Assert.Equal(5, Ending(0.125m - Tick).Sequence.Cuts.Count);
        Ending(0.125m).Keeps();
        Assert.Equal(6, Ending(0.125m).Sequence.Cuts.Count);
    }

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
    public void Grain_must_run_along_the_blanks()
    {
        // 5 in long and 4 in wide, lying across: 5 + 1 in across the board, 4 + 1/4 in along it.
        BaseCase Across(GrainDirection grain) =>
            new()
            {
                Asking = _ => Request([Board(60, 8)], [Part("A", 4, 5) with { Grain = grain }]),
                Planning = _ =>
                    Plan(
                        Layout(
                            "b1",
                            Section(
                                0,
                                4.25m,
                                Strip(0, 6, Blank("A1", 0, 4.25m) with { Turned = true })
                            )
                        )
                    ),
            };
        Across(GrainDirection.AlongLength).Breaks("GrainMustRunAlongTheBlanks", "A1");
        Across(GrainDirection.Any).Keeps();
    }

    [Fact]
    public void Blanks_must_clear_the_end_trim()
    {
        (Sound with { Board = Sound.Board with { TrimStart = In(1 + Tick) } }).Breaks(
            "BlanksMustClearTheEndTrim",
            "A1",
            Tick
        );
        (Sound with { Board = Sound.Board with { TrimEnd = In(9) } }).Breaks(
            "BlanksMustClearTheEndTrim",
            "A2",
            0.125m
        );
        (Sound with { Board = Sound.Board with { TrimEnd = In(8.875m) } }).Keeps();
    }

    [Fact]
    public void Blanks_must_lie_within_the_smallest_width()
    {
        (Sound with { Board = Sound.Board with { WidthAtMiddle = In(7.5m) } }).Breaks(
            "BlanksMustLieWithinTheSmallestWidth",
            "B1",
            0.125m
        );
        (Sound with { Board = Sound.Board with { WidthAtMiddle = In(7.625m) } }).Keeps();
    }

    [Fact]
    public void Blanks_must_be_clear_of_defects()
    {
        With(new Defect(DefectKind.Knot, Rect(20, 22, 4, 5.25m + Tick)))
            .Breaks("BlanksMustBeClearOfDefects", "A1", 2);
        With(new Defect(DefectKind.Knot, Rect(20, 22, 5.25m, 5.375m))).Keeps();
    }

    [Fact]
    public void A_hidden_face_hides_what_shows_on_it_alone()
    {
        var marked = new Defect(DefectKind.Knot, Rect(3, 4, 1, 2), DefectReach.MarkedFace);
        var back = new Defect(DefectKind.Stain, Rect(6, 8, 1, 2), DefectReach.BackFace);
        var through = new Defect(DefectKind.Hole, Rect(9, 9.5m, 1, 2));
        var hiding = Sound.A with { AcceptsHiddenDefect = true };
        With(marked).Breaks("BlanksMustBeClearOfDefects", "A1", 1);
        (With(marked) with { A = hiding }).Keeps();
        (With(marked, back) with { A = hiding }).Breaks("BlanksMustBeClearOfDefects", "A1", 1);
        (With(through) with { A = hiding }).Breaks("BlanksMustBeClearOfDefects", "A1", 0.5m);
        var note = Assert.Single((With(marked) with { A = hiding }).Report.Findings);
        Assert.Equal("HiddenDefectsGoToTheHiddenFace", note.Rule);
        Assert.Equal(
            "A1 on Board 1 has a knot on the face you mark on: make that its hidden face.",
            note.Sentence
        );
    }

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

    [Fact]
    public void A_finding_names_board_blank_place_and_amount_at_the_courses_precision() =>
        Assert.Contains(
            "A1 on Board 1 takes in 2 in of the knot from 20 to 22 in along the board and 4 to 5 in across it.",
            With(new Defect(DefectKind.Knot, Rect(20, 22, 4, 5)))
                .Report.Findings.Select(f => f.Sentence)
        );

    [Fact]
    public void An_amount_too_small_to_write_is_called_less_than_the_smallest_division() =>
        Assert.Contains(
            "A1 on Board 1 takes in less than 1/16 in of the end trim at the start.",
            (
                Sound with
                {
                    Board = Sound.Board with { TrimStart = In(1 + Tick) },
                }
            ).Report.Findings.Select(f => f.Sentence)
        );

    private static BaseCase With(params Defect[] defects) =>
        Sound with
        {
            Board = Sound.Board with { Defects = defects },
        };

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
