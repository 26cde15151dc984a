using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Wishes;

/// <summary>
/// A slightly shorter part shares a section with a longer one and keeps the difference: its finish cut takes it, and a rough
/// crosscut is saved. The search counts on it (the sawing goal); here it is named, so that it can be seen and held to.
/// </summary>
internal static class ShorterInLonger
{
    /// <summary>Crosscuts that take off no more than the course's length allowance, which the finish cut could take.</summary>
    public static long FallsShortBy(LaidOut laid) =>
        Ends(laid)
            .Count(e =>
                e.Section.To > e.Blank.To && e.Section.To - e.Blank.To <= laid.Rules.LengthAllowance
            );

    public static WishMet? Met(LaidOut laid)
    {
        var keeping = Ends(laid)
            .Where(e => e.Blank.To == e.Section.To && Over(e.Blank) > Length.Zero)
            .Select(e => e.Blank)
            .OrderBy(b => b.Key)
            .ToList();
        if (keeping.Count == 0)
            return null;
        var cuts = keeping.Count == 1 ? "one rough crosscut" : $"{keeping.Count} rough crosscuts";
        return new(
            WishKind.ShorterInLonger,
            true,
            $"{string.Join(", ", keeping.Select(b => $"{b.Key} keeps {laid.Say(Over(b))}"))} up to the end of a longer section, which saves {cuts}."
        );
    }

    private static Length Over(PlacedBlank blank) =>
        blank.To - blank.From - LaidOut.Needed(blank).Along;

    private static IEnumerable<(Section Section, PlacedBlank Blank)> Ends(LaidOut laid) =>
        from board in laid.Boards
        from section in board.Layout.Sections
        from strip in section.Strips
        select (section, strip.Blanks[^1]);
}
