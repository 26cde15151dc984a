using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using static ShopClass.Core.Sawing.Rehearsing.Found;

namespace ShopClass.Core.Sawing.Rehearsing;

/// <summary>What must hold of the wood the blanks are made of.</summary>
internal static class WoodRules
{
    public static IEnumerable<Finding> BlanksMustClearTheEndTrim(Replay replay)
    {
        foreach (var b in replay.Blanks.Where(b => b.Board is not null))
        {
            var sawn = AsSawn(b, replay);
            var atStart = b.Board!.TrimStart - sawn.From;
            if (atStart > Length.Zero)
                yield return Must(b, atStart, InTrim(replay, b, atStart, "start"));
            var atEnd = sawn.To - (b.Board.Length - b.Board.TrimEnd);
            if (atEnd > Length.Zero)
                yield return Must(b, atEnd, InTrim(replay, b, atEnd, "far end"));
        }
    }

    public static IEnumerable<Finding> BlanksMustLieWithinTheSmallestWidth(Replay replay) =>
        from b in replay.Blanks
        where b.Board is not null
        let over = Length.Max(b.Rect.Far - b.Board!.SmallestWidth, -b.Rect.Near)
        where over > Length.Zero
        select Must(
            b,
            over,
            $"{b.Key} reaches {replay.Tell.Long(over)} beyond the edge of {b.BoardName}, which is "
                + $"{replay.Tell.Long(b.Board!.SmallestWidth)} wide at its narrowest."
        );

    public static IEnumerable<Finding> BlanksMustBeClearOfDefects(Replay replay)
    {
        foreach (var b in replay.Blanks.Where(b => b.Board is not null))
        {
            var inside = Defects(b, replay);
            if (inside.Count == 0 || HasHiddenFaceForAll(b, inside))
                continue;
            foreach (var d in inside)
            {
                var sawn = AsSawn(b, replay);
                var overlap = Length.Min(sawn.To, d.Place.To) - Length.Max(sawn.From, d.Place.From);
                yield return Must(
                    b,
                    overlap,
                    $"{b.Key} on {b.BoardName} takes in {replay.Tell.Long(overlap)} of the {d.Kind.Word()} "
                        + $"{replay.Tell.Place(d.Place)}{WhyNotHidden(b, d)}."
                );
            }
        }
    }

    public static IEnumerable<Finding> RoughBoardsNeedPlaningTaught(Replay replay) =>
        replay.Request.Rules.PlaningTaught
            ? []
            : replay
                .Blanks.Select(b => b.Board)
                .OfType<Board>()
                .Where(b => !b.HasPlanedFaces)
                .DistinctBy(b => b.Id)
                .Select(b =>
                    Must(
                        b.Id,
                        null,
                        null,
                        $"{b.Name} is rough and has to be planed, but the course does not teach planing."
                    )
                );

    /// <summary>The blank as it comes off the saw: with a sliver thinner than a kerf, where one stays on.</summary>
    public static BoardRect AsSawn(Claimed b, Replay replay) =>
        replay.Sawn.TryGetValue(b, out var rect) ? rect : b.Rect;

    /// <summary>The defects a blank takes in.</summary>
    public static IReadOnlyList<Defect> Defects(Claimed b, Replay replay)
    {
        var sawn = AsSawn(b, replay);
        return [.. b.Board!.Defects.Where(d => d.Place.Overlaps(sawn))];
    }

    /// <summary>Whether the part may have these defects: it accepts them on a hidden face, and one face hides them all.</summary>
    public static bool HasHiddenFaceForAll(Claimed b, IReadOnlyList<Defect> inside) =>
        b.Part is { AcceptsHiddenDefect: true }
        && inside[0].Reach is not DefectReach.Through
        && inside.All(d => d.Reach == inside[0].Reach);

    private static string WhyNotHidden(Claimed b, Defect d)
    {
        if (b.Part is not { AcceptsHiddenDefect: true })
            return "";
        return d.Reach is DefectReach.Through
            ? ", which goes right through"
            : ", and not all its defects lie on one face";
    }

    private static string InTrim(Replay replay, Claimed b, Length amount, string end) =>
        $"{b.Key} on {b.BoardName} takes in {replay.Tell.Long(amount)} of the end trim at the {end}.";

    internal static string Word(this DefectKind kind) =>
        kind is DefectKind.PitchPocket ? "pitch pocket"
        : kind is DefectKind.Other ? "bad place"
        : kind.ToString().ToLowerInvariant();
}
