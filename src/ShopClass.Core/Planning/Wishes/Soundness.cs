using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Wishes;

/// <summary>Whether a rearranged layout still keeps the musts that rearranging can break.</summary>
internal static class Soundness
{
    /// <summary>Every blank between the trims and the edges, big enough, and clear of what its part must be clear of.</summary>
    public static bool Of(LaidOut laid, LaidOut before)
    {
        for (var i = 0; i < laid.Boards.Count; i++)
        {
            if (laid.Boards[i] != before.Boards[i] && !IsSound(laid, laid.Boards[i]))
                return false;
        }

        return true;
    }

    private static bool IsSound(LaidOut laid, LaidBoard board)
    {
        var (wood, rules) = (board.Board, board.Rules);
        var ready = wood.TrimStart;
        foreach (var section in board.Layout.Sections)
        {
            if (section.From < ready)
                return false;
            ready = section.To + rules.CrosscutKerf;
            var edge = Length.Zero;
            foreach (var strip in section.Strips)
            {
                if (strip.Near < edge)
                    return false;
                edge = strip.Far + rules.RipKerf;
                if (strip.Far > wood.SmallestWidth || !AreSound(laid, board, section, strip))
                    return false;
            }
        }

        return board.Layout.Sections[^1].To <= wood.Length - wood.TrimEnd;
    }

    private static bool AreSound(LaidOut laid, LaidBoard board, Section section, Strip strip)
    {
        var ready = section.From;
        foreach (var blank in strip.Blanks)
        {
            var (along, across) = LaidOut.Needed(blank);
            if (
                blank.From < ready
                || blank.To > section.To
                || blank.To - blank.From < along
                || strip.Far - strip.Near < across
                || !SparePlace.MayCover(laid.PartOf(blank), blank.In(strip), board.Board.Defects)
            )
                return false;
            ready = blank.To + board.Rules.CrosscutKerf;
        }

        return true;
    }
}
