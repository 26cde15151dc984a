using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using static ShopClass.Core.Sawing.Rehearsing.Found;

namespace ShopClass.Core.Sawing.Rehearsing;

/// <summary>What must hold of the blanks: that all are there, sawn out, with their grain right.</summary>
internal static class BlankRules
{
    public static IEnumerable<Finding> BlanksMustBelongToTheProject(Replay replay)
    {
        var asked = Asked(replay).ToHashSet();
        return replay
            .Blanks.Where(b => !asked.Contains(b.Key))
            .Select(b =>
                Must(b, null, $"{b.Key} on {b.BoardName} is not a blank this project asks for.")
            );
    }

    public static IEnumerable<Finding> EveryBlankMustBeThereOnce(Replay replay)
    {
        foreach (var key in Asked(replay))
        {
            var places = replay.Blanks.Where(b => b.Key == key && b.Board is not null).ToList();
            var isListed = IsNamedMissing(key, replay.Plan);
            if (places.Count == 0 && !isListed)
                yield return Must(
                    null,
                    key.ToString(),
                    null,
                    $"{key} is asked for, but no board yields it and the plan does not say so."
                );
            else if (places.Count > 1)
                yield return Must(
                    places[1],
                    null,
                    $"{key} is laid out {places.Count} times, the second time on {places[1].BoardName}."
                );
            else if (places.Count == 1 && isListed)
                yield return Must(
                    places[0],
                    null,
                    $"{key} lies on {places[0].BoardName}, yet the plan calls it missing."
                );
        }
    }

    public static IEnumerable<Finding> BlanksMustBeSawnOut(Replay replay)
    {
        var unsawn = replay.Blanks.Where(b => b.Board is not null && !replay.Sawn.ContainsKey(b));
        foreach (var b in unsawn)
        {
            var piece = replay.Final.FirstOrDefault(p =>
                p.Board.Id == b.BoardId && p.Rect.Contains(b.Rect)
            );
            yield return piece is null
                ? Must(
                    b,
                    null,
                    $"{b.Key} on {b.BoardName} is not in one piece when the last cut is made."
                )
                : Must(
                    b,
                    piece.Rect.Along - b.Rect.Along,
                    $"{b.Key} on {b.BoardName} is never sawn out: it is still in a piece {replay.Tell.Size(piece.Rect)}, and "
                        + $"should be {replay.Tell.Size(b.Rect)}."
                );
        }
    }

    public static IEnumerable<Finding> GrainMustRunAlongTheBlanks(Replay replay) =>
        replay
            .Blanks.Where(b => b.Blank.Turned && b.Part is { Grain: not GrainDirection.Any })
            .Select(b =>
                Must(
                    b,
                    null,
                    $"{b.Key} on {b.BoardName} lies across the board, but its grain must run along its length."
                )
            );

    public static IEnumerable<Finding> GlueUpsMustBeAllowed(Replay replay) =>
        from glueUp in replay.Plan.GlueUps
        let part = replay.Request.Project.Parts.FirstOrDefault(p => p.Letter == glueUp.Key)
        where part is { GlueUpAllowed: false } || glueUp.Value < 2
        select Must(
            null,
            glueUp.Key,
            null,
            glueUp.Value < 2
                ? $"{glueUp.Key} is called a glue-up of {glueUp.Value}; it takes two strips or more to glue up."
                : $"{glueUp.Key} is glued up from {glueUp.Value} strips, but that part may not be glued up."
        );

    public static IEnumerable<Finding> GlueUpsMustBeTaught(Replay replay) =>
        replay.Request.Rules.EdgeGluingTaught
            ? []
            : replay.Plan.GlueUps.Select(g =>
                Must(
                    null,
                    g.Key,
                    null,
                    $"{g.Key} is glued up from {g.Value} strips, but the course does not teach edge gluing."
                )
            );

    public static IEnumerable<Finding> GlueUpsMustHaveNoMoreStripsThanAllowed(Replay replay) =>
        from glueUp in replay.Plan.GlueUps
        let most = replay.Request.Rules.MostGlueUpStrips
        where glueUp.Value > most
        select Must(
            null,
            glueUp.Key,
            null,
            $"{glueUp.Key} is glued up from {glueUp.Value} strips; the course allows {most} at most."
        );

    /// <summary>The blanks the project asks for, given how its parts are glued up.</summary>
    public static IEnumerable<BlankKey> Asked(Replay replay) =>
        from part in replay.Request.Project.Parts
        from copy in Enumerable.Range(1, part.Quantity)
        from strip in replay.Plan.GlueUps.TryGetValue(part.Letter, out var strips)
            ? Enumerable.Range(1, Math.Max(strips, 0))
            : [0]
        select new BlankKey(part.Letter, copy, strip);

    /// <summary>Whether the plan calls a blank missing: itself, the whole it is a strip of, or a strip of it.</summary>
    private static bool IsNamedMissing(BlankKey key, CutPlan plan) =>
        plan.Missing.Any(m =>
            m.Part == key.Part
            && m.Copy == key.Copy
            && (m.Strip == key.Strip || m.Strip == 0 || key.Strip == 0)
        );
}
