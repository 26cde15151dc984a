namespace ShopClass.Core.Drawings;

/// <summary>A few words that belong to a place along a board and are written beside it.</summary>
/// <param name="Along">The place, in points from the board's start.</param>
/// <param name="Across">Where its leader begins, in points from the near edge.</param>
/// <param name="Text">The words.</param>
/// <param name="Ink">How they are written.</param>
internal sealed record SideNote(double Along, double Across, string Text, Ink Ink);

/// <summary>A note in its place.</summary>
/// <param name="Note">The note.</param>
/// <param name="Row">Row, counted away from the board (a board that lies), or 0.</param>
/// <param name="Place">Along the board, where the words are: their start, or their end when they run back.</param>
/// <param name="RunsBack">Whether the words end at the place rather than begin there.</param>
internal sealed record PlacedNote(SideNote Note, int Row, double Place, bool RunsBack = false);

/// <summary>Places notes so that neither words nor leaders cross other words.</summary>
internal static class SideNotes
{
    /// <summary>
    /// Notes as flags beside a board that lies: the words stand to the right of their leader, in as few rows as will do.
    /// </summary>
    public static IReadOnlyList<PlacedNote> InRows(
        IEnumerable<SideNote> notes,
        double from,
        double to,
        double size
    )
    {
        var sorted = notes.OrderBy(n => n.Along).ThenByDescending(n => n.Across).ToList();
        var back = sorted.Where(n => Right(n, size) > to).ToList();
        var placed = new List<PlacedNote>();
        foreach (var note in back.Concat(sorted.Except(back).Reverse()))
        {
            var runsBack = back.Contains(note) && Left(note, size) >= from;
            var turned =
                runsBack || Left(note, size) < from ? null : FirstFree(placed, note, true, size);
            placed.Add(
                FirstFree(placed, note, runsBack, size)
                    ?? turned
                    ?? new(note, placed.Max(p => p.Row) + 1, note.Along, runsBack)
            );
        }

        return placed;
    }

    /// <summary>Notes beside a board on end, one under another, as near their places as they can be.</summary>
    public static IReadOnlyList<PlacedNote> InColumn(
        IEnumerable<SideNote> notes,
        double size,
        double to
    )
    {
        var step = size * 1.25;
        var sorted = notes.OrderBy(n => n.Along).ThenBy(n => n.Across).ToList();
        var places = sorted.ConvertAll(n => n.Along);
        for (var i = 1; i < places.Count; i++)
            places[i] = Math.Max(places[i], places[i - 1] + step);
        for (var i = places.Count - 1; i >= 0; i--)
        {
            var limit = i == places.Count - 1 ? Math.Max(to, step * i) : places[i + 1] - step;
            places[i] = Math.Min(places[i], limit);
        }

        return [.. sorted.Select((n, i) => new PlacedNote(n, 0, places[i]))];
    }

    private static PlacedNote? FirstFree(
        List<PlacedNote> placed,
        SideNote note,
        bool runsBack,
        double size
    ) =>
        Enumerable
            .Range(0, placed.Count + 1)
            .Select(row => new PlacedNote(note, row, note.Along, runsBack))
            .FirstOrDefault(candidate => !placed.Exists(other => Clash(candidate, other, size)));

    private static bool Clash(PlacedNote a, PlacedNote b, double size)
    {
        var (lower, upper) = a.Row <= b.Row ? (a, b) : (b, a);
        var (left, right) = Span(lower, size);
        if (lower.Row < upper.Row)
            return left < upper.Note.Along && upper.Note.Along < right;
        var (otherLeft, otherRight) = Span(upper, size);
        return left < otherRight && otherLeft < right;
    }

    private static (double Left, double Right) Span(PlacedNote placed, double size) =>
        placed.RunsBack
            ? (Left(placed.Note, size), placed.Note.Along + 0.3 * size)
            : (placed.Note.Along - 0.3 * size, Right(placed.Note, size));

    private static double Right(SideNote note, double size) =>
        note.Along + LetterWidths.Of(note.Text, size) + 0.6 * size;

    private static double Left(SideNote note, double size) =>
        note.Along - LetterWidths.Of(note.Text, size) - 0.6 * size;
}
