using CsCheck;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;
using Xunit;

namespace ShopClass.Core.Tests.Sawing;

/// <summary>Whatever is spoiled in a valid sequence, the rehearsal notices.</summary>
public class SpoiledSequenceLaws
{
    private const int Runs = 300;

    [Fact]
    public void A_dropped_cut_is_always_noticed() =>
        WithCut.Sample(
            (l, cuts, i) => Noticed(l, Renumbered(cuts.Where((_, at) => at != i))),
            iter: Runs
        );

    [Fact]
    public void A_shifted_kerf_is_always_noticed() =>
        Gen.Select(WithCut, Gen.Int[-40, 40].Where(d => d != 0))
            .Sample(
                (x, shift) =>
                {
                    var (l, cuts, i) = x;
                    Noticed(l, Renumbered(cuts.Select((c, at) => at == i ? Shifted(c, shift) : c)));
                },
                iter: Runs
            );

    [Fact]
    public void A_kerf_on_the_wrong_side_of_its_line_is_always_noticed() =>
        WithCut.Sample(
            (l, cuts, i) =>
                Noticed(l, Renumbered(cuts.Select((c, at) => at == i ? Flipped(c) : c))),
            iter: Runs
        );

    [Fact]
    public void Two_swapped_cuts_are_always_noticed() =>
        Gen.Select(WithCut, Gen.Int[0, 1000])
            .Where(x => x.Item1.Cuts.Count > 1)
            .Sample(
                (x, other) =>
                {
                    var (l, cuts, i) = x;
                    var j = other % (cuts.Count - 1);
                    if (j >= i)
                        j++;
                    var swapped = cuts.ToList();
                    (swapped[i], swapped[j]) = (swapped[j], swapped[i]);
                    Noticed(l, new(swapped));
                },
                iter: Runs
            );

    [Fact]
    public void A_blank_that_shrinks_by_a_tick_is_always_noticed() =>
        Gen.Select(RandomLayouts.Any, Gen.Int[0, 1000])
            .Where(x => Blanks(x.Item1).Count > 0)
            .Sample(
                (l, pick) =>
                {
                    var spoiled = Blanks(l)[pick % Blanks(l).Count];
                    var plan = l.Plan with
                    {
                        Boards =
                        [
                            l.Plan.Boards[0] with
                            {
                                Sections =
                                [
                                    .. l.Plan.Boards[0].Sections.Select(s => Shrunk(s, spoiled)),
                                ],
                            },
                        ],
                    };
                    var report = Rehearsal.Replay(
                        l.Request,
                        plan,
                        Sequencer.Order(l.Request, plan)
                    );
                    var finding = report.Findings.First(f => f.Kind is FindingKind.Must);
                    Assert.Equal(spoiled.Key.ToString(), finding.Subject);
                    Assert.Equal(Length.FromTicks(1), finding.Amount);
                },
                iter: Runs
            );

    private static Gen<(RandomLayout L, IReadOnlyList<Cut> Cuts, int At)> WithCut { get; } =
        Gen.Select(RandomLayouts.Any, Gen.Int[0, 1000])
            .Select(x => (x.Item1, Sequencer.Order(x.Item1.Request, x.Item1.Plan).Cuts, x.Item2))
            .Where(x => x.Cuts.Count > 0)
            .Select(x => (x.Item1, x.Cuts, x.Item3 % x.Cuts.Count));

    private static void Noticed(RandomLayout l, SawingSequence sequence) =>
        Assert.False(Rehearsal.Replay(l.Request, l.Plan, sequence).Passed);

    private static SawingSequence Renumbered(IEnumerable<Cut> cuts) =>
        new([.. cuts.Select((c, i) => c with { Number = i + 1 })]);

    private static Cut Shifted(Cut cut, int ticks)
    {
        var by = Length.FromTicks(ticks);
        var kerf = cut.Kerf;
        return cut with
        {
            Position = cut.Position + by,
            Kerf =
                cut.Kind is CutKind.Rip
                    ? kerf with
                    {
                        Near = kerf.Near + by,
                        Far = kerf.Far + by,
                    }
                    : kerf with
                    {
                        From = kerf.From + by,
                        To = kerf.To + by,
                    },
        };
    }

    private static Cut Flipped(Cut cut)
    {
        var kerf = cut.Kerf;
        if (cut.Kind is CutKind.Rip)
            return cut with
            {
                Kerf = Turned(kerf.Near, kerf.Far, (n, f) => kerf with { Near = n, Far = f }),
            };
        return cut with
        {
            Kerf = Turned(kerf.From, kerf.To, (n, f) => kerf with { From = n, To = f }),
        };

        BoardRect Turned(Length start, Length end, Func<Length, Length, BoardRect> with) =>
            cut.Position == start
                ? with(start - (end - start), start)
                : with(end, end + (end - start));
    }

    private static List<PlacedBlank> Blanks(RandomLayout l) =>
        [.. l.Plan.Boards[0].Sections.SelectMany(s => s.Strips).SelectMany(t => t.Blanks)];

    private static Section Shrunk(Section s, PlacedBlank spoiled) =>
        s with
        {
            Strips =
            [
                .. s.Strips.Select(t =>
                    t with
                    {
                        Blanks =
                        [
                            .. t.Blanks.Select(b =>
                                ReferenceEquals(b, spoiled)
                                    ? b with
                                    {
                                        To = b.To - Length.FromTicks(1),
                                    }
                                    : b
                            ),
                        ],
                    }
                ),
            ],
        };
}
