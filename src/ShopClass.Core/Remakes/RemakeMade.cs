using ShopClass.Core.Lumber;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Remakes;

/// <summary>A remake that was chosen.</summary>
/// <param name="Number">From 1 within its plan, in the order they were chosen.</param>
/// <param name="Spoiled">The blank that was spoiled.</param>
/// <param name="CutsMade">How many cuts were made of the plan that blank came from.</param>
/// <param name="Option">What was chosen.</param>
public sealed record RemakeMade(int Number, BlankKey Spoiled, int CutsMade, RemakeOption Option)
{
    /// <summary>Its plan with the blanks named as in the first plan; null where nothing is sawn.</summary>
    public CheckedPlan? Plan { get; } = NamedRemake.Of(Option);

    /// <summary>Whether this blank comes from it.</summary>
    public bool Makes(BlankKey blank) =>
        Plan is not null
        && Option.Blanks.Any(b =>
            b.InFirstPlan == blank || b.InFirstPlan == blank with { Strip = 0 }
        );
}

/// <summary>A plan that is being followed beside the one with the mishap, and how far its sawing has come.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="CutsMade">How many of its cuts are made.</param>
public sealed record PlanAtHand(CheckedPlan Plan, int CutsMade);

/// <summary>Mishaps to work that may have been remade before.</summary>
public static class Mishaps
{
    /// <summary>The plan a blank comes from now: the last remake that made it, else the first plan.</summary>
    public static CheckedPlan PlanOf(
        CheckedPlan first,
        IReadOnlyList<RemakeMade> made,
        BlankKey blank
    ) => made.LastOrDefault(m => m.Makes(blank))?.Plan ?? first;

    /// <summary>
    /// A mishap as things lie now: the pieces are those of the plan the blank comes from and of all others beside it, less
    /// what earlier remakes have used up.
    /// </summary>
    /// <param name="first">The plan that was followed first.</param>
    /// <param name="made">Remakes chosen so far, in order.</param>
    /// <param name="spoiled">The blank.</param>
    /// <param name="cutsMade">How many cuts of the plan it comes from are made.</param>
    /// <param name="lost">The wood that is lost; null for the whole blank.</param>
    public static Mishap Now(
        CheckedPlan first,
        IReadOnlyList<RemakeMade> made,
        BlankKey spoiled,
        int cutsMade,
        BoardRect? lost = null
    )
    {
        var plan = PlanOf(first, made, spoiled);
        // How far the first plan has come is known from the mishaps to its own blanks.
        var firstCuts = made.Where(
                (m, i) => ReferenceEquals(PlanOf(first, [.. made.Take(i)], m.Spoiled), first)
            )
            .Select(m => m.CutsMade)
            .DefaultIfEmpty(0)
            .Max();
        IEnumerable<PlanAtHand> all =
        [
            new(first, firstCuts),
            .. made.Select(m => m.Plan)
                .OfType<CheckedPlan>()
                .Select(p => new PlanAtHand(p, p.Sequence.Cuts.Count)),
        ];
        return new()
        {
            Plan = plan,
            First = ReferenceEquals(plan, first) ? null : first,
            CutsMade = cutsMade,
            Spoiled = spoiled,
            Lost = lost,
            Others = [.. all.Where(p => !ReferenceEquals(p.Plan, plan))],
        };
    }
}

/// <summary>A remake's plan with its blanks named as they are in the first plan, everywhere in it.</summary>
internal static class NamedRemake
{
    public static CheckedPlan? Of(RemakeOption option)
    {
        if (option.Plan is not { } plan || option.Blanks.All(b => b.Here == b.InFirstPlan))
            return option.Plan;
        var names = option.Blanks.ToDictionary(b => b.Here, b => b.InFirstPlan);
        var renamed = plan.Plan with
        {
            Boards =
            [
                .. plan.Plan.Boards.Select(b =>
                    b with
                    {
                        Sections = [.. b.Sections.Select(s => Named(s, names))],
                    }
                ),
            ],
        };
        return plan with
        {
            Plan = renamed,
            // The same cuts in the same order: only what they leave has other names.
            Sequence = Sequencer.Order(plan.Request, renamed),
            Rehearsal = plan.Rehearsal with
            {
                Steps =
                [
                    .. plan.Rehearsal.Steps.Select(s =>
                        s with
                        {
                            Pieces =
                            [
                                .. s.Pieces.Select(p => p with { Blank = Named(p.Blank, names) }),
                            ],
                        }
                    ),
                ],
            },
        };
    }

    private static Section Named(Section section, Dictionary<BlankKey, BlankKey> names) =>
        section with
        {
            Strips =
            [
                .. section.Strips.Select(s =>
                    s with
                    {
                        Blanks =
                        [
                            .. s.Blanks.Select(b => b with { Key = Named(b.Key, names)!.Value }),
                        ],
                    }
                ),
            ],
        };

    // A strip of a remake that is glued up is a strip of what the whole is in the first plan.
    private static BlankKey? Named(BlankKey? key, Dictionary<BlankKey, BlankKey> names) =>
        key is not { } here ? null
        : names.TryGetValue(here, out var there) ? there
        : names.TryGetValue(here with { Strip = 0 }, out var whole)
            ? whole with
            {
                Strip = here.Strip,
            }
        : here;
}
