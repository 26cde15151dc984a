using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Wishes;

/// <summary>Rearrangements that change two things over: sections of a board, strips of a section, blanks of a strip, names.</summary>
internal static class Swaps
{
    public static IEnumerable<LaidOut> OfSections(LaidOut laid)
    {
        for (var b = 0; b < laid.Boards.Count; b++)
        {
            var layout = laid.Boards[b].Layout;
            foreach (var (i, j) in Pairs(layout.Sections.Count))
                yield return laid.With(
                    (b, Relaid.InOrder(layout, Relaid.Swapped(layout.Sections, i, j)))
                );
        }
    }

    public static IEnumerable<LaidOut> OfStrips(LaidOut laid)
    {
        foreach (var (b, s, section) in Sections(laid))
        {
            foreach (var (i, j) in Pairs(section.Strips.Count))
                yield return With(
                    laid,
                    b,
                    s,
                    Relaid.InOrder(section, Relaid.Swapped(section.Strips, i, j))
                );
        }
    }

    public static IEnumerable<LaidOut> OfBlanks(LaidOut laid)
    {
        foreach (var (b, s, section) in Sections(laid))
        {
            for (var t = 0; t < section.Strips.Count; t++)
            {
                var strip = section.Strips[t];
                foreach (var (i, j) in Pairs(strip.Blanks.Count))
                {
                    var turned = Relaid.InOrder(strip, Relaid.Swapped(strip.Blanks, i, j));
                    yield return With(
                        laid,
                        b,
                        s,
                        section with
                        {
                            Strips = Relaid.Replaced(section.Strips, t, turned),
                        }
                    );
                }
            }
        }
    }

    /// <summary>Two blanks of the same size for different parts change places.</summary>
    public static IEnumerable<LaidOut> OfNames(LaidOut laid)
    {
        (int Board, Lying At)[] all =
        [
            .. laid.Boards.SelectMany((b, i) => b.Blanks.Select(lying => (i, lying))),
        ];
        foreach (var (i, j) in Pairs(all.Length))
        {
            var (one, other) = (all[i], all[j]);
            if (!AreAlike(laid, one.At.Blank, other.At.Blank))
                continue;
            var (a, b) = (one.At.Blank.Key, other.At.Blank.Key);
            yield return one.Board == other.Board
                ? laid.With((one.Board, Renamed(laid, one.Board, a, b)))
                : laid.With(
                    (one.Board, Renamed(laid, one.Board, a, b)),
                    (other.Board, Renamed(laid, other.Board, a, b))
                );
        }
    }

    /// <summary>All pairs of numbers below this, the first the lower.</summary>
    public static IEnumerable<(int One, int Other)> Pairs(int count)
    {
        for (var i = 0; i < count; i++)
        for (var j = i + 1; j < count; j++)
            yield return (i, j);
    }

    private static bool AreAlike(LaidOut laid, PlacedBlank one, PlacedBlank other)
    {
        var (a, b) = (laid.PartOf(one), laid.PartOf(other));
        return a.Letter != b.Letter
            && one.Key.Strip == 0
            && other.Key.Strip == 0
            && one.Needed == other.Needed
            && one.Turned == other.Turned
            && a.Grain == b.Grain
            && a.Finished.Thickness == b.Finished.Thickness;
    }

    private static BoardLayout Renamed(LaidOut laid, int board, BlankKey a, BlankKey b) =>
        Names.Changed(
            laid.Boards[board].Layout,
            key =>
                key == a ? b
                : key == b ? a
                : key
        );

    private static IEnumerable<(int Board, int At, Section Section)> Sections(LaidOut laid) =>
        laid.Boards.SelectMany((b, i) => b.Layout.Sections.Select((s, at) => (i, at, s)));

    private static LaidOut With(LaidOut laid, int board, int at, Section section)
    {
        var layout = laid.Boards[board].Layout;
        return laid.With(
            (board, layout with { Sections = Relaid.Replaced(layout.Sections, at, section) })
        );
    }
}
