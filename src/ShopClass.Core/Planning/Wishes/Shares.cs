using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Wishes;

/// <summary>Shares the width of a board between strips laid from its near edge, a kerf between two.</summary>
internal static class Shares
{
    /// <summary>
    /// Where each strip lies: surplus worth keeping is left at the far edge, less is shared evenly, with the lines on the
    /// course's precision where that goes. Null where the strips do not fit.
    /// </summary>
    public static IReadOnlyList<(Length Near, Length Far)>? Of(
        IReadOnlyList<Length> needed,
        LaidBoard board
    )
    {
        var (rules, width) = (board.Rules, board.Board.SmallestWidth);
        var over = width - rules.RipKerf * (needed.Count - 1);
        foreach (var strip in needed)
            over -= strip;
        if (over < Length.Zero)
            return null;
        var isKept = over >= rules.RipKerf + rules.NarrowestOffcut;
        var each = (isKept ? Length.Zero : over).Split(needed.Count);
        return On(needed, each, isKept ? null : width, board, rules.Precision.Step())
            ?? On(needed, each, isKept ? null : width, board, Length.FromTicks(1));
    }

    private static List<(Length, Length)>? On(
        IReadOnlyList<Length> needed,
        IReadOnlyList<Length> each,
        Length? end,
        LaidBoard board,
        Length step
    )
    {
        var lines = new List<(Length, Length)>();
        var (near, exact) = (Length.Zero, Length.Zero);
        for (var i = 0; i < needed.Count; i++)
        {
            exact += needed[i] + each[i];
            var far = exact;
            if (i == needed.Count - 1)
                far = end ?? near + needed[i];
            else if (end is not null)
                far = exact.RoundTo(step);
            if (far < near + needed[i])
                far = (near + needed[i]).RoundUpTo(step);
            if (far > board.Board.SmallestWidth)
                return null;
            lines.Add((near, far));
            near = far + board.Rules.RipKerf;
            exact += board.Rules.RipKerf;
        }

        return lines;
    }
}
