namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>Leaves out of a board what is no longer asked for.</summary>
internal static class Trimming
{
    /// <summary>The board with what is still asked for, which is taken off what is left.</summary>
    public static CutBoard Take(CutBoard board, int[] left)
    {
        if (board.Pieces.GroupBy(k => k).All(g => left[g.Key] >= g.Count()))
        {
            foreach (var piece in board.Pieces)
                left[piece]--;
            return board;
        }

        CutStrip Strip(CutStrip strip) => new([.. strip.Pieces.Where(p => Takes(left, p.Piece))]);
        CutSection Section(CutSection section) =>
            new([.. section.Strips.Select(Strip).Where(s => s.Pieces.Count > 0)]);
        return board with
        {
            Sections = [.. board.Sections.Select(Section).Where(s => s.Strips.Count > 0)],
        };
    }

    private static bool Takes(int[] left, int piece)
    {
        if (left[piece] == 0)
            return false;
        left[piece]--;
        return true;
    }
}
