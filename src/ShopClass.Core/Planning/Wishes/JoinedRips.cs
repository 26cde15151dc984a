namespace ShopClass.Core.Planning.Wishes;

/// <summary>
/// Neighbouring sections with the same rip lines stay joined and are ripped as one, then crosscut apart: longer to hold,
/// one setting, one line.
/// </summary>
internal static class JoinedRips
{
    /// <summary>Rips, those of sections that stay joined counted once.</summary>
    public static long FallsShortBy(LaidOut laid)
    {
        var rips = 0L;
        foreach (var board in laid.Boards)
        {
            foreach (var length in board.Lengths)
                rips += length.RipLines.Count;
        }

        return rips;
    }

    public static WishMet? Met(LaidOut laid)
    {
        var ripped = laid
            .Boards.SelectMany(b => b.Lengths.Where(l => l.RipLines.Count > 0))
            .ToList();
        if (ripped.Sum(l => l.Sections) < 2)
            return null;
        var saved = ripped.Sum(l => (l.Sections - 1) * l.RipLines.Count);
        var rips = ripped.Sum(l => l.RipLines.Count);
        return saved > 0
            ? new(
                WishKind.JoinedRips,
                true,
                $"Neighbouring sections with the same rip lines are ripped while joined: {Count(rips)} to set and mark instead of {rips + saved}."
            )
            : new(
                WishKind.JoinedRips,
                false,
                "No neighbouring sections have the same rip lines, so each is ripped by itself."
            );
    }

    private static string Count(int rips) => rips == 1 ? "1 rip" : $"{rips} rips";
}
