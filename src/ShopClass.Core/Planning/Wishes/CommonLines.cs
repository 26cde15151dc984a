using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Wishes;

/// <summary>Gives neighbouring sections the same rip lines, where surplus width lets them have the same.</summary>
internal static class CommonLines
{
    /// <summary>Every run of neighbours with as many strips, and every section brought beside another with as many.</summary>
    public static IEnumerable<LaidOut> Of(LaidOut laid)
    {
        for (var b = 0; b < laid.Boards.Count; b++)
        {
            var layout = laid.Boards[b].Layout;
            foreach (var tried in Runs(laid.Boards[b], layout).Concat(Brought(laid.Boards[b])))
                yield return laid.With((b, tried));
        }
    }

    private static IEnumerable<BoardLayout> Runs(LaidBoard board, BoardLayout layout)
    {
        foreach (var (first, last) in Swaps.Pairs(layout.Sections.Count))
        {
            if (Aligned(board, layout, first, last) is { } aligned)
                yield return aligned;
        }
    }

    private static IEnumerable<BoardLayout> Brought(LaidBoard board)
    {
        var sections = board.Layout.Sections;
        for (var to = 0; to < sections.Count; to++)
        for (var which = 0; which < sections.Count; which++)
        {
            if (which == to || which == to + 1 || !AreAsMany(sections[which], sections[to]))
                continue;
            var order = sections.ToList();
            order.RemoveAt(which);
            var at = which < to ? to : to + 1;
            order.Insert(at, sections[which]);
            var moved = Relaid.InOrder(board.Layout, order);
            if (Aligned(board, moved, at - 1, at) is { } aligned)
                yield return aligned;
        }
    }

    private static bool AreAsMany(Section one, Section other) =>
        one.Strips.Count == other.Strips.Count;

    /// <summary>The sections from the first to the last with one set of lines; null where the board is too narrow for it.</summary>
    private static BoardLayout? Aligned(LaidBoard board, BoardLayout layout, int first, int last)
    {
        Section[] run = [.. layout.Sections.Take(first..(last + 1))];
        if (run.Any(s => !AreAsMany(s, run[0])))
            return null;
        Strip[][] strips = [.. run.Select(s => LikeFirst(run[0], s))];
        Length[] needed =
        [
            .. run[0].Strips.Select((_, i) => strips.Max(s => LaidOut.Needed(s[i]))),
        ];
        if (Shares.Of(needed, board) is not { } lines)
            return null;
        var most = board.Rules.RipKerf + board.Rules.NarrowestOffcut;
        Section[] sections = [.. layout.Sections];
        for (var k = 0; k < run.Length; k++)
        {
            Strip[] laid =
            [
                .. strips[k].Select((s, i) => s with { Near = lines[i].Near, Far = lines[i].Far }),
            ];
            // As much as an offcut would have is never left in a blank for the sake of a line.
            if (laid.Any(s => EvenSurplus.Over(s) >= most))
                return null;
            sections[first + k] = run[k] with { Strips = laid };
        }

        return layout with
        {
            Sections = sections,
        };
    }

    /// <summary>The strips in the order of the first section's: its widest where that has its widest.</summary>
    private static Strip[] LikeFirst(Section first, Section section)
    {
        int[] places = [.. Ranked(first)];
        int[] own = [.. Ranked(section)];
        var ordered = new Strip[places.Length];
        for (var rank = 0; rank < places.Length; rank++)
            ordered[places[rank]] = section.Strips[own[rank]];
        return ordered;
    }

    private static IEnumerable<int> Ranked(Section section) =>
        Enumerable
            .Range(0, section.Strips.Count)
            .OrderByDescending(i => LaidOut.Needed(section.Strips[i]));
}
