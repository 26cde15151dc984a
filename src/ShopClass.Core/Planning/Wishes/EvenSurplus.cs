using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Wishes;

/// <summary>
/// Surplus width stays in the blanks and is split evenly between the strips of a section, which are brought to width later
/// anyway, rather than sawn off as a sliver.
/// </summary>
internal static class EvenSurplus
{
    /// <summary>
    /// For each section: by how much the greatest surplus of a strip is over the smallest, in ticks. A step of the course's
    /// precision is nothing: lines fall on it.
    /// </summary>
    public static long FallsShortBy(LaidOut laid)
    {
        var uneven = 0L;
        foreach (var board in laid.Boards)
        {
            foreach (var section in board.Layout.Sections)
            {
                if (section.Strips.Count < 2)
                    continue;
                var (least, most) = (long.MaxValue, 0L);
                foreach (var strip in section.Strips)
                {
                    var over = Over(strip).Ticks;
                    (least, most) = (Math.Min(least, over), Math.Max(most, over));
                }

                var apart = most - least;
                uneven += apart <= laid.Rules.Precision.Step().Ticks ? 0 : apart;
            }
        }

        return uneven;
    }

    public static WishMet? Met(LaidOut laid)
    {
        var step = laid.Rules.Precision.Step();
        Section[] wide =
        [
            .. laid
                .Boards.SelectMany(b => b.Layout.Sections)
                .Where(s => s.Strips.Count > 1 && s.Strips.Any(t => Over(t) >= step)),
        ];
        if (wide.Length == 0)
            return null;
        return FallsShortBy(laid) == 0
            ? new(
                WishKind.EvenSurplus,
                true,
                $"Surplus width is shared evenly instead of ripped off as a sliver: {string.Join("; ", wide.Select(s => $"{LaidOut.List(Keys(s))} keep {laid.Say(s.Strips.Min(Over))} each"))}."
            )
            : new(
                WishKind.EvenSurplus,
                false,
                "Surplus width is not shared evenly everywhere: bad places, or one rip line for neighbouring sections, come first."
            );
    }

    /// <summary>What a strip is wider than it needs to be.</summary>
    public static Length Over(Strip strip) => strip.Far - strip.Near - LaidOut.Needed(strip);

    private static IEnumerable<BlankKey> Keys(Section section) =>
        section.Strips.SelectMany(s => s.Blanks).Select(b => b.Key);
}
