using ShopClass.Core.Measure;

namespace ShopClass.Core.Sawing.Ordering;

/// <summary>A stretch of wood, along a board or across it.</summary>
internal readonly record struct Stretch(Length From, Length To)
{
    public Length Long => To - From;

    public bool Holds(Stretch other) => From <= other.From && other.To <= To;
}

/// <summary>A line to saw to and the kerf that lies beside it.</summary>
internal readonly record struct SawLine(Length Position, Stretch Kerf);

/// <summary>Finds the lines that free what is kept from what is not.</summary>
internal static class SawLines
{
    /// <summary>The lines through <paramref name="piece"/> that free every kept stretch, in order of place.</summary>
    /// <param name="piece">The piece, in the direction across the lines.</param>
    /// <param name="kept">What is kept of it, in order.</param>
    /// <param name="kerf">Kerf of the saw.</param>
    /// <param name="mustGo">Whether a sliver thinner than a kerf has to come off all the same.</param>
    public static IReadOnlyList<SawLine> Freeing(
        Stretch piece,
        IReadOnlyList<Stretch> kept,
        Length kerf,
        Func<Stretch, bool> mustGo
    )
    {
        var lines = new List<SawLine>();
        var settled = piece.From;
        Stretch? before = null;
        foreach (var next in kept)
        {
            if (before is { } last)
            {
                if (next.From < last.To || next.To <= last.To + kerf)
                {
                    // They overlap, or the kerf would swallow one: no cut parts them, and the rehearsal says so.
                    before = new(last.From, Length.Max(last.To, next.To));
                    continue;
                }

                settled = last.To + kerf;
                lines.Add(new(last.To, new(last.To, settled)));
            }

            var waste = new Stretch(settled, next.From);
            if (ComesOff(waste, kerf, mustGo))
                lines.Add(new(next.From, new(Length.Max(waste.From, next.From - kerf), next.From)));
            before = next;
        }

        if (before is { } end && ComesOff(new(end.To, piece.To), kerf, mustGo))
            lines.Add(new(end.To, new(end.To, Length.Min(piece.To, end.To + kerf))));
        return lines;
    }

    /// <summary>The stretches that are left of a piece when the kerfs of these lines are gone; one more than there are lines.</summary>
    public static IReadOnlyList<Stretch> Between(Stretch piece, IReadOnlyList<SawLine> lines)
    {
        var starts = lines.Select(l => l.Kerf.To).Prepend(piece.From);
        var ends = lines.Select(l => l.Kerf.From).Append(piece.To);
        return [.. starts.Zip(ends, (from, to) => new Stretch(from, to))];
    }

    private static bool ComesOff(Stretch waste, Length kerf, Func<Stretch, bool> mustGo) =>
        waste.Long > Length.Zero && (waste.Long >= kerf || mustGo(waste));
}
