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
}
