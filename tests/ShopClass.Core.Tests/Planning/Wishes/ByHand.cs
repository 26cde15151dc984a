using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Wishes;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Tests.Planning.Wishes;

/// <summary>Layouts laid out by hand, in millimetres, to be polished with a wish and without it.</summary>
internal static class ByHand
{
    public static (string Key, int From, int To) Blank(string key, int from, int to) =>
        (key, from, to);

    public static Strip Strip(int near, int far, params (string Key, int From, int To)[] blanks) =>
        new(
            Wood.Mm(near),
            Wood.Mm(far),
            [
                .. blanks.Select(b => new PlacedBlank(
                    new(b.Key[..1], int.Parse(b.Key[1..])),
                    Wood.Mm(b.From),
                    Wood.Mm(b.To),
                    default
                )),
            ]
        );

    public static Section Section(int from, int to, params Strip[] strips) =>
        new(Wood.Mm(from), Wood.Mm(to), strips);

    /// <summary>The plan with these sections on the request's boards, in their order.</summary>
    public static CutPlan Plan(PlanningRequest request, params Section[][] boards) =>
        new()
        {
            Boards =
            [
                .. boards.Select(
                    (sections, i) =>
                        new BoardLayout(
                            request.Boards[i].Id,
                            [.. sections.Select(s => WithNeeds(request, s))]
                        )
                ),
            ],
            Missing = [],
            Goals = [],
            StepsTaken = 0,
        };

    /// <summary>
    /// Polishes the plan with all wishes but this one, and with all; both pass the rehearsal, and the second falls less short
    /// of the wish than the first.
    /// </summary>
    public static (CutPlan Without, CutPlan With) TurnsOn(
        WishKind kind,
        PlanningRequest request,
        CutPlan plan
    )
    {
        var without = Polish.Of(request, plan, [.. CraftWishes.InOrder.Where(w => w.Kind != kind)]);
        var with = Polish.Of(request, plan);
        foreach (var made in (CutPlan[])[plan, without, with])
        {
            var report = Rehearsal.Replay(request, made, Sequencer.Order(request, made));
            Assert.Empty(
                report.Findings.Where(f => f.Kind is FindingKind.Must).Select(f => f.Sentence)
            );
        }

        Assert.True(
            FallsShort(kind, request, with) < FallsShort(kind, request, without),
            $"{kind}: {FallsShort(kind, request, with)}, without it {FallsShort(kind, request, without)}"
        );
        return (without, with);
    }

    public static long FallsShort(WishKind kind, PlanningRequest request, CutPlan plan) =>
        CraftWishes
            .InOrder.Single(w => w.Kind == kind)
            .FallsShortBy(LaidOut.Of(request, plan.Boards)!);

    public static WishMet Met(WishKind kind, PlanningRequest request, CutPlan plan) =>
        Assert.IsType<WishMet>(
            CraftWishes.InOrder.Single(w => w.Kind == kind).Met(LaidOut.Of(request, plan.Boards)!)
        );

    /// <summary>The blanks along a board, from its start: those of one section in the order of their strips.</summary>
    public static string Row(CutPlan plan, int board = 0) =>
        string.Join(
            " ",
            plan.Boards[board]
                .Sections.Select(s =>
                    string.Join(
                        "|",
                        s.Strips.Select(t => string.Join("+", t.Blanks.Select(b => b.Key)))
                    )
                )
        );

    private static Section WithNeeds(PlanningRequest request, Section section) =>
        section with
        {
            Strips =
            [
                .. section.Strips.Select(t =>
                    t with
                    {
                        Blanks =
                        [
                            .. t.Blanks.Select(b =>
                                b with
                                {
                                    Needed = BlankNeeds.OnePiece(
                                        request.Project.Parts.Single(p => p.Letter == b.Key.Part),
                                        request.Rules,
                                        request.Boards[0].Surfacing
                                    ),
                                }
                            ),
                        ],
                    }
                ),
            ],
        };
}
