using CsCheck;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;
using Xunit;

namespace ShopClass.Core.Tests.Sawing;

/// <summary>Laws over random valid layouts. A failure prints the seed that repeats it.</summary>
public class SequenceLaws
{
    private const int Runs = 400;

    [Fact]
    public void Every_sequence_for_a_valid_layout_passes_the_rehearsal() =>
        RandomLayouts.Any.Sample(
            l =>
            {
                var report = HandDrawn.Rehearse(l.Request, l.Plan);
                Assert.Equal([], report.Findings.Where(f => f.Kind is FindingKind.Must));
            },
            iter: Runs
        );

    [Fact]
    public void Blanks_kerf_offcuts_and_waste_add_up_to_the_board_to_the_tick() =>
        RandomLayouts.Any.Sample(
            l =>
            {
                var balance = Assert.Single(HandDrawn.Rehearse(l.Request, l.Plan).Balances);
                var board = l.Request.Boards[0];
                Assert.Equal(board.Length * board.SmallestWidth, balance.Board);
                Assert.Equal(
                    balance.Board,
                    balance.Blanks + balance.Kerf + balance.Offcuts + balance.Waste
                );
            },
            iter: Runs
        );

    [Fact]
    public void No_kerf_touches_a_blank() =>
        RandomLayouts.Any.Sample(
            l =>
            {
                var kerfs = Sequencer.Order(l.Request, l.Plan).Cuts.Select(c => c.Kerf).ToList();
                var blanks =
                    from s in l.Plan.Boards[0].Sections
                    from t in s.Strips
                    from b in t.Blanks
                    select b.In(t);
                Assert.DoesNotContain(blanks, b => kerfs.Any(k => k.Overlaps(b)));
            },
            iter: Runs
        );

    [Fact]
    public void No_piece_is_held_that_is_shorter_than_its_support_takes() =>
        RandomLayouts.Any.Sample(
            l =>
            {
                var rules = l.Request.Rules;
                foreach (var cut in Sequencer.Order(l.Request, l.Plan).Cuts)
                {
                    var longerSide = Length.Max(
                        cut.Kerf.From - cut.Piece.From,
                        cut.Piece.To - cut.Kerf.To
                    );
                    if (cut.Support is Support.SawBench)
                        Assert.True(cut.Piece.Along >= rules.SawBenchLimit, cut.ToString());
                    else if (cut.Support is Support.BenchHook)
                        Assert.True(longerSide >= rules.BenchHookLimit, cut.ToString());
                    else
                        Assert.NotNull(cut.HoldNote);
                }
            },
            iter: Runs
        );

    [Fact]
    public void The_same_layout_gives_the_same_sequence() =>
        RandomLayouts.Any.Sample(
            l =>
                Assert.Equal(
                    Sequencer.Order(l.Request, l.Plan).Cuts,
                    Sequencer.Order(l.Request, l.Plan).Cuts
                ),
            iter: 200
        );
}
