using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using static ShopClass.Core.Sawing.Rehearsing.Found;

namespace ShopClass.Core.Sawing.Rehearsing;

/// <summary>What must hold of sizes: length, width, thickness, and what the plan says of them.</summary>
internal static class SizeRules
{
    public static IEnumerable<Finding> BlanksMustBeLongEnough(Replay replay) =>
        from b in replay.Blanks
        where b.Part is not null
        let asked = SizeAskedFor.AlongTheGrain(b.Part!, replay.Request.Rules)
        let has = b.Blank.Turned ? b.Rect.Across : b.Rect.Along
        where has < asked
        select Must(b, asked - has, Short(replay, b, "long", has, asked));

    public static IEnumerable<Finding> BlanksMustBeWideEnough(Replay replay) =>
        from b in replay.Blanks
        where b.Part is not null
        let asked = WidthAsked(b, replay)
        let has = b.Blank.Turned ? b.Rect.Along : b.Rect.Across
        where has < asked
        select Must(b, asked - has, Short(replay, b, "wide", has, asked));

    public static IEnumerable<Finding> NeededSizesMustNotBeUnderstated(Replay replay)
    {
        foreach (var b in replay.Blanks.Where(b => b is { Part: not null, Board: not null }))
        {
            var rules = replay.Request.Rules;
            var under = Length.Max(
                SizeAskedFor.AlongTheGrain(b.Part!, rules) - b.Blank.Needed.Length,
                Length.Max(
                    WidthAsked(b, replay) - b.Blank.Needed.Width,
                    SizeAskedFor.Thick(b.Part!, rules, b.Board!) - b.Blank.Needed.Thickness
                )
            );
            if (under > Length.Zero)
                yield return Must(
                    b,
                    under,
                    $"The size the plan says {b.Key} on {b.BoardName} needs is {replay.Tell.Long(under)} less than the part, "
                        + "what stays open and the course's allowances come to."
                );
        }
    }

    public static IEnumerable<Finding> BoardsMustBeThickEnough(Replay replay) =>
        from use in Uses(replay)
        let asked = SizeAskedFor.ThickOn(use.Board, use.Part, replay.Request.Rules)
        let under = asked - use.Board.Thickness
        where under > Length.Zero
        select Must(
            use.Board.Id,
            use.Part.Letter,
            under,
            $"{use.Board.Name} is {replay.Tell.Long(use.Board.Thickness)} thick; {use.Part.Letter} takes "
                + $"{replay.Tell.Long(asked)}{(asked == SizeAskedFor.BeforePlaning(use.Part) ? "" : " before both faces are planed")}, so it is "
                + $"{replay.Tell.Long(under)} too thin."
        );

    public static IEnumerable<Finding> BoardsMustNotBeThickerThanIsPlanedAway(Replay replay)
    {
        var rules = replay.Request.Rules;
        foreach (var (board, part) in Uses(replay))
        {
            var away = board.Thickness - SizeAskedFor.BeforePlaning(part);
            var most = MostThicker(board, rules);
            if (away > most)
                yield return Must(
                    board.Id,
                    part.Letter,
                    away - most,
                    $"{board.Name} is {replay.Tell.Long(away)} thicker than {part.Letter}; the course "
                        + (
                            rules.PlaningTaught
                                ? $"asks nobody to plane away more than {replay.Tell.Long(most)}."
                                : $"teaches no planing and uses stock up to {replay.Tell.Long(most)} thicker as it comes."
                        )
                );
        }
    }

    /// <summary>
    /// How much thicker than the part a board may be. Where planing is taught, rough stock may always be as much thicker
    /// as its two faces are planed.
    /// </summary>
    private static Length MostThicker(Board board, CourseRules rules)
    {
        if (!rules.PlaningTaught)
            return rules.ThicknessLeeway;
        return Length.Max(
            rules.MostPlanedAway,
            board.HasPlanedFaces ? rules.ThicknessLeeway : rules.PlaningPerFace * 2
        );
    }

    private static Length WidthAsked(Claimed b, Replay replay)
    {
        var rules = replay.Request.Rules;
        if (b.Key.Strip > 0 && replay.Plan.GlueUps.TryGetValue(b.Key.Part, out var strips))
            return SizeAskedFor.AcrossOneStrip(b.Part!, rules, Math.Max(strips, 1));
        var keepsMillEdges =
            !b.Blank.Turned
            && b.Board is { HasStraightEdges: true } board
            && WoodRules.AsSawn(b, replay) is var sawn
            && sawn.Near == Length.Zero
            && sawn.Far == board.SmallestWidth;
        return SizeAskedFor.AcrossTheGrain(b.Part!, rules, keepsMillEdges);
    }

    private static IEnumerable<(Board Board, Part Part)> Uses(Replay replay) =>
        replay
            .Blanks.Where(b => b is { Board: not null, Part: not null })
            .Select(b => (b.Board!, b.Part!))
            .DistinctBy(use => (use.Item1.Id, use.Item2.Letter));

    private static string Short(Replay replay, Claimed b, string way, Length has, Length asked) =>
        $"{b.Key} on {b.BoardName} is {replay.Tell.Long(has)} {way} and must be {replay.Tell.Long(asked)}: "
        + $"{replay.Tell.Long(asked - has)} short.";
}
