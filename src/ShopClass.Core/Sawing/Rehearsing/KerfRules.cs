using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using static ShopClass.Core.Sawing.Rehearsing.Found;

namespace ShopClass.Core.Sawing.Rehearsing;

/// <summary>What must hold of the kerfs: their width, their side and their line.</summary>
internal static class KerfRules
{
    public static IEnumerable<Finding> KerfsMustBeAsWideAsTheSaw(Replay replay)
    {
        foreach (var c in replay.Cuts.Where(c => c.IsMade))
        {
            var saw = KerfOf(c.Cut.Saw, replay.Request.Rules);
            var kerf = c.IsRip ? c.Cut.Kerf.Across : c.Cut.Kerf.Along;
            var takesTheRest = kerf < saw && c.Halves.Count == 1;
            if (kerf != saw && !takesTheRest)
                yield return Must(
                    c,
                    kerf > saw ? kerf - saw : saw - kerf,
                    $"Cut {c.Cut.Number} on {c.BoardName} has a kerf of {replay.Tell.Long(kerf)}; its saw takes "
                        + $"{replay.Tell.Long(saw)}."
                );
        }
    }

    public static IEnumerable<Finding> KerfsMustSpareTheBlanks(Replay replay)
    {
        foreach (var c in replay.Cuts.Where(c => c.IsMade))
        foreach (
            var b in replay.Blanks.Where(b =>
                b.BoardId == c.Cut.BoardId && b.Rect.Overlaps(c.Cut.Kerf)
            )
        )
        {
            var bite = c.IsRip
                ? Shared(b.Rect.Near, b.Rect.Far, c.Cut.Kerf.Near, c.Cut.Kerf.Far)
                : Shared(b.Rect.From, b.Rect.To, c.Cut.Kerf.From, c.Cut.Kerf.To);
            yield return Must(
                b,
                bite,
                $"Cut {c.Cut.Number} on {c.BoardName} takes {replay.Tell.Long(bite)} out of {b.Key}: the kerf belongs on "
                    + "the waste side of the line."
            );
        }
    }

    public static IEnumerable<Finding> CutsMustBeSawnToALineOfThePlan(Replay replay)
    {
        foreach (var c in replay.Cuts.Where(c => c.IsMade && c.Board is not null))
        {
            var (start, end) = c.IsRip
                ? (c.Cut.Kerf.Near, c.Cut.Kerf.Far)
                : (c.Cut.Kerf.From, c.Cut.Kerf.To);
            var away = Lines(c, replay)
                .Select(line => Away(line, c.Cut.Position))
                .DefaultIfEmpty(c.Cut.Position)
                .Min();
            if (c.Cut.Position != start && c.Cut.Position != end)
                yield return Must(
                    c,
                    Length.Min(Away(start, c.Cut.Position), Away(end, c.Cut.Position)),
                    $"Cut {c.Cut.Number} on {c.BoardName} is marked at {replay.Tell.Long(c.Cut.Position)}, but its kerf does "
                        + "not lie against that line."
                );
            else if (away > Length.Zero)
                yield return Must(
                    c,
                    away,
                    $"Cut {c.Cut.Number} on {c.BoardName} at {replay.Tell.Long(c.Cut.Position)} is {replay.Tell.Long(away)} "
                        + "away from the nearest line of the plan."
                );
        }
    }

    private static IEnumerable<Length> Lines(Tried c, Replay replay)
    {
        var inPiece = replay.Blanks.Where(b =>
            b.BoardId == c.Cut.BoardId && b.Rect.Overlaps(c.Cut.Piece)
        );
        if (c.IsRip)
            return inPiece.SelectMany(b => new[] { b.Rect.Near, b.Rect.Far });
        var sections = replay
            .Plan.Boards.Where(l => l.BoardId == c.Cut.BoardId)
            .SelectMany(l => l.Sections)
            .SelectMany(s => new[] { s.From, s.To });
        return inPiece
            .SelectMany(b => new[] { b.Rect.From, b.Rect.To })
            .Concat(sections)
            .Append(c.Board!.TrimStart)
            .Append(c.Board.Length - c.Board.TrimEnd);
    }

    private static Length KerfOf(SawKind saw, CourseRules rules) =>
        saw switch
        {
            SawKind.HandRip => rules.RipKerf,
            SawKind.HandCrosscut => rules.CrosscutKerf,
            _ => rules.BackSawKerf,
        };

    private static Length Shared(Length from, Length to, Length otherFrom, Length otherTo) =>
        Length.Min(to, otherTo) - Length.Max(from, otherFrom);

    private static Length Away(Length a, Length b) => a > b ? a - b : b - a;
}
