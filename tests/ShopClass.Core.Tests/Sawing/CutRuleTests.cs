using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Sawing;
using Xunit;
using static ShopClass.Core.Tests.Sawing.HandDrawn;

namespace ShopClass.Core.Tests.Sawing;

/// <summary>Each rule about cuts and kerfs: one case that breaks it, and one that only just does not.</summary>
public class CutRuleTests
{
    private static readonly BaseCase Sound = new();

    // The base case is sawn like this: 1 trims the start, 2 trims the far end with the waste beside it, 3 parts the two
    // lengths, 4 and 5 rip the first, 6 rips the second.
    private const int Trim = 1;
    private const int Between = 3;
    private const int FirstRip = 4;

    [Fact]
    public void The_base_case_breaks_no_rule()
    {
        Sound.Keeps();
        Assert.Equal(
            [
                CutKind.EndTrim,
                CutKind.EndTrim,
                CutKind.Crosscut,
                CutKind.Rip,
                CutKind.Rip,
                CutKind.Rip,
            ],
            Sound.Sequence.Cuts.Select(c => c.Kind)
        );
    }

    [Fact]
    public void Boards_must_be_at_hand_and_laid_out_once()
    {
        var other = Sound with
        {
            Planning = p => p with { Boards = [p.Boards[0] with { BoardId = "b7" }] },
        };
        var twice = Sound with
        {
            Planning = p => p with { Boards = [p.Boards[0], p.Boards[0] with { Sections = [] }] },
        };
        other.Breaks("BoardsMustBeAtHandAndLaidOutOnce", null);
        twice.Breaks("BoardsMustBeAtHandAndLaidOutOnce", null);
        Assert.Equal("b7", other.Report.Findings[0].BoardId);
        (
            Sound with
            {
                Asking = r => r with { Boards = [.. r.Boards, Board(10, 3, "b2")] },
            }
        ).Keeps();
    }

    [Fact]
    public void Cuts_must_be_numbered_in_order() =>
        Sound
            .WithCut(Between, c => c with { Number = 4 })
            .Breaks("CutsMustBeNumberedInOrder", "cut 4");

    [Fact]
    public void Cuts_must_be_made_in_a_piece_that_is_there()
    {
        (Sound with { Sawing = cuts => Renumbered(cuts.Where(c => c.Number != Trim)) }).Breaks(
            "CutsMustBeMadeInAPieceThatIsThere",
            "cut 1"
        );
        Sound
            .WithCut(
                Between,
                c => c with { Piece = c.Piece with { To = c.Piece.To - Length.FromTicks(1) } }
            )
            .Breaks("CutsMustBeMadeInAPieceThatIsThere", "cut 3");
    }

    [Fact]
    public void Cuts_must_run_edge_to_edge()
    {
        Sound
            .WithCut(Between, c => c with { Kerf = c.Kerf with { Far = In(7.5m) } })
            .Breaks("CutsMustRunEdgeToEdge", "cut 3", 0.5m);
        Sound
            .WithCut(
                FirstRip,
                c => c with { Kerf = c.Kerf with { To = c.Kerf.To - Length.FromTicks(1) } }
            )
            .Breaks("CutsMustRunEdgeToEdge", "cut 4", 1m / Length.TicksPerInch);
    }

    [Fact]
    public void Cuts_must_be_made_with_a_saw_for_them()
    {
        Sound
            .WithCut(FirstRip, c => c with { Saw = SawKind.HandCrosscut })
            .Breaks("CutsMustBeMadeWithASawForThem", "cut 4");
        Sound
            .WithCut(Between, c => c with { Saw = SawKind.HandRip })
            .Breaks("CutsMustBeMadeWithASawForThem", "cut 3");
        Sound.WithCut(Between, c => c with { Saw = SawKind.BackSaw }).Keeps();
    }

    [Fact]
    public void Kerfs_must_be_as_wide_as_the_saw()
    {
        (
            Sound with
            {
                Asking = r => r with { Rules = r.Rules with { RipKerf = In(0.0625m) } },
            }
        ).Keeps();
        var sawn = Sound.Sequence;
        (
            Sound with
            {
                Asking = r => r with { Rules = r.Rules with { RipKerf = In(0.0625m) } },
                Sawing = _ => sawn.Cuts,
            }
        ).Breaks("KerfsMustBeAsWideAsTheSaw", "cut 4", 0.0625m);
    }

    [Fact]
    public void A_kerf_may_take_the_rest_of_a_piece_that_is_thinner()
    {
        var shortTrim = Sound with { Board = Sound.Board with { TrimStart = In(0.0625m) } };
        var thin = shortTrim with
        {
            Planning = p =>
                Plan(
                    Layout(
                        "b1",
                        Section(
                            0.0625m,
                            26,
                            Strip(0, 5.25m, Sound.A1 with { From = In(0.0625m) }),
                            Strip(5.375m, 7.625m, Sound.B1)
                        ),
                        p.Boards[0].Sections[1]
                    )
                ),
        };
        thin.Keeps();
        Assert.Equal(In(0.0625m), thin.Sequence.Cuts[0].Kerf.Along);
    }

    [Fact]
    public void Kerfs_must_spare_the_blanks()
    {
        var crowded = Sound with { A2 = Blank("A2", 26.0625m, 51.125m, 5.25m, 25) };
        crowded.Breaks("KerfsMustSpareTheBlanks", "A2", 0.0625m);
        Sound.Keeps();
    }

    [Fact]
    public void Cuts_must_be_sawn_to_a_line_of_the_plan()
    {
        var late = Sound.Sequence.Cuts[^1];
        Sound
            .WithCut(late.Number, c => c with { Position = c.Position + Length.FromTicks(1) })
            .Breaks(
                "CutsMustBeSawnToALineOfThePlan",
                $"cut {late.Number}",
                1m / Length.TicksPerInch
            );
        Sound
            .WithCut(
                late.Number,
                c =>
                    c with
                    {
                        Position = c.Position + In(0.25m),
                        Kerf = c.Kerf with
                        {
                            Near = c.Kerf.Near + In(0.25m),
                            Far = c.Kerf.Far + In(0.25m),
                        },
                    }
            )
            .Breaks("CutsMustBeSawnToALineOfThePlan", $"cut {late.Number}", 0.25m);
    }

    [Fact]
    public void Sawn_lengths_must_be_true() =>
        Sound
            .WithCut(Between, c => c with { SawnLength = c.SawnLength + In(0.5m) })
            .Breaks("SawnLengthsMustBeTrue", "cut 3", 0.5m);

    [Fact]
    public void Pieces_must_be_broken_down_in_three_stages()
    {
        var blank = Blank("A1", 0, 25, 5.25m, 25);
        var oneBlank = new BaseCase
        {
            Board = Board(60, 8),
            A = Part("A", 5, 24),
            Asking = r => r with { Project = r.Project with { Parts = [r.Project.Parts[0]] } },
            Planning = _ => Plan(Layout("b1", Section(0, 25, Strip(0, 5.25m, blank)))),
        };
        oneBlank.Keeps();
        // Crosscut after the first rip, then ripped again: the second rip is a fourth stage.
        var template = oneBlank.Sequence.Cuts[0];
        var wide = Rect(0, 60, 0, 6);
        (
            oneBlank with
            {
                Sawing = _ =>
                    [
                        Drawn(
                            template,
                            1,
                            CutKind.Rip,
                            Rect(0, 60, 0, 8),
                            Rect(0, 60, 6, 6.125m),
                            6
                        ),
                        Drawn(template, 2, CutKind.Crosscut, wide, Rect(25, 25.125m, 0, 6), 25),
                        Drawn(
                            template,
                            3,
                            CutKind.Rip,
                            Rect(0, 25, 0, 6),
                            Rect(0, 25, 5.25m, 5.375m),
                            5.25m
                        ),
                    ],
            }
        ).Breaks("PiecesMustBeBrokenDownInThreeStages", "cut 3");
    }

    [Theory]
    [InlineData(CutKind.Rip)]
    [InlineData(CutKind.Crosscut)]
    public void Pieces_must_be_long_enough_for_the_saw_bench(CutKind kind)
    {
        var cut = Sound.Sequence.Cuts.Last(c => c.Kind == kind);
        BaseCase Limited(Length limit) =>
            Sound with
            {
                Asking = r => r with { Rules = r.Rules with { SawBenchLimit = limit } },
                Sawing = _ =>
                    Sound.Sequence.Cuts.Select(c =>
                        c.Number == cut.Number ? c : c with { Support = Support.Vise }
                    ),
            };
        Limited(cut.Piece.Along).Keeps();
        Limited(cut.Piece.Along + In(0.5m))
            .Breaks("PiecesMustBeLongEnoughForTheirSupport", $"cut {cut.Number}", 0.5m);
    }

    [Fact]
    public void Pieces_must_be_long_enough_for_the_bench_hook()
    {
        // The longer side is held: both lengths are 25 in.
        BaseCase Hooked(decimal limit) =>
            Sound.WithCut(Between, c => c with { Support = Support.BenchHook }) with
            {
                Asking = r => r with { Rules = r.Rules with { BenchHookLimit = In(limit) } },
            };
        Hooked(25).Keeps();
        Hooked(25.25m).Breaks("PiecesMustBeLongEnoughForTheirSupport", "cut 3", 0.25m);
    }

    [Fact]
    public void A_bench_hook_holds_no_rips() =>
        Sound
            .WithCut(FirstRip, c => c with { Support = Support.BenchHook })
            .Breaks("PiecesMustBeLongEnoughForTheirSupport", "cut 4");

    private static Cut Drawn(
        Cut like,
        int number,
        CutKind kind,
        BoardRect piece,
        BoardRect kerf,
        decimal at
    ) =>
        like with
        {
            Number = number,
            Kind = kind,
            Saw = kind is CutKind.Rip ? SawKind.HandRip : SawKind.HandCrosscut,
            Support = Support.Vise,
            Piece = piece,
            Kerf = kerf,
            Position = In(at),
            SawnLength = kind is CutKind.Rip ? piece.Along : piece.Across,
        };

    private static IEnumerable<Cut> Renumbered(IEnumerable<Cut> cuts) =>
        cuts.Select((c, i) => c with { Number = i + 1 });
}
