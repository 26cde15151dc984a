using ShopClass.Core.Lumber;
using static ShopClass.Core.Sawing.Rehearsing.Found;

namespace ShopClass.Core.Sawing.Rehearsing;

/// <summary>What is worth knowing although the plan stands.</summary>
internal static class Notes
{
    public static IEnumerable<Finding> MissingBlanksAreNamedByThePlan(Replay replay) =>
        replay.Plan.Missing.Select(m =>
            Note(
                null,
                m.ToString(),
                $"{m} did not fit on the boards at hand; the plan says so itself."
            )
        );

    public static IEnumerable<Finding> HiddenDefectsGoToTheHiddenFace(Replay replay)
    {
        foreach (var b in replay.Blanks.Where(b => b.Board is not null))
        {
            var inside = WoodRules.Defects(b, replay);
            if (inside.Count == 0 || !WoodRules.HasHiddenFaceForAll(b, inside))
                continue;
            var face =
                inside[0].Reach is DefectReach.MarkedFace ? "face you mark on" : "other face";
            yield return Note(
                b.BoardId,
                b.Key.ToString(),
                $"{b.Key} on {b.BoardName} has a {string.Join(" and a ", inside.Select(d => d.Kind.Word()).Distinct(StringComparer.Ordinal))} "
                    + $"on the {face}: make that its hidden face."
            );
        }
    }
}
