namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>The fewest different crosscut lines inside a section, of the ways its strips can be laid out.</summary>
internal static class LeastLines
{
    private const int MostTogether = 2000;
    private const int TogetherInLook = 8;

    /// <summary>
    /// Never more than there are: two cuts are taken to fall together where they may do so, for a section that ends there or as
    /// much later as said.
    /// </summary>
    /// <param name="choices">For each strip the ways to lay it out.</param>
    /// <param name="reach">How much later the section may end.</param>
    /// <param name="steps">Counts the looks.</param>
    public static int Of(StripLayout[][] choices, long reach, Steps steps)
    {
        var most = choices.Max(c => c[0].Cuts);
        var product = 1L;
        foreach (var choice in choices)
        {
            product *= choice.Length;
            if (product > MostTogether)
                return most;
        }

        var fewest = int.MaxValue;
        var chosen = new int[choices.Length];
        var these = choices.Select(c => c[0]).ToArray();
        var looked = 0;
        for (var turned = 0; turned >= 0 && fewest > most; looked++)
        {
            fewest = Math.Min(fewest, Of(these, reach));
            turned = Turn(choices, chosen, these);
        }

        steps.Take(1 + looked / TogetherInLook);
        return Math.Max(most, fewest);
    }

    /// <summary>Goes on to the next ways taken together; -1 after the last.</summary>
    private static int Turn(StripLayout[][] choices, int[] chosen, StripLayout[] these)
    {
        for (var i = 0; i < chosen.Length; i++)
        {
            chosen[i] = (chosen[i] + 1) % choices[i].Length;
            these[i] = choices[i][chosen[i]];
            if (chosen[i] > 0)
                return i;
        }

        return -1;
    }

    /// <summary>All cuts, less those of each strip that may fall on another's, but for the strip that has most of these.</summary>
    private static int Of(StripLayout[] layouts, long reach)
    {
        var cuts = 0;
        var shared = 0;
        var most = 0;
        for (var i = 0; i < layouts.Length; i++)
        {
            var own = 0;
            foreach (ref readonly var mark in layouts[i].Marks.AsSpan())
            {
                if (MayMeetAny(mark, layouts, i, reach))
                    own++;
            }

            cuts += layouts[i].Cuts;
            shared += own;
            most = Math.Max(most, own);
        }

        return cuts - (shared - most);
    }

    private static bool MayMeetAny(in Mark mark, StripLayout[] layouts, int own, long reach)
    {
        for (var i = 0; i < layouts.Length; i++)
        {
            if (i == own)
                continue;
            foreach (ref readonly var other in layouts[i].Marks.AsSpan())
            {
                if (MayMeet(mark, other, reach))
                    return true;
            }
        }

        return false;
    }

    private static bool MayMeet(in Mark a, in Mark b, long reach) =>
        (a.Moves, b.Moves) switch
        {
            (MarkMoves.Not, MarkMoves.Not) => a.From == b.From,
            (MarkMoves.Freely, MarkMoves.Freely) => true,
            (MarkMoves.Freely, MarkMoves.Not) => b.From >= a.From,
            (MarkMoves.Not, MarkMoves.Freely) => a.From >= b.From,
            (MarkMoves.Freely, MarkMoves.WithEnd) => b.To + reach >= a.From,
            (MarkMoves.WithEnd, MarkMoves.Freely) => a.To + reach >= b.From,
            (MarkMoves.WithEnd, MarkMoves.WithEnd) => a.From <= b.To && b.From <= a.To,
            (MarkMoves.WithEnd, _) => a.From <= b.From && b.From <= a.To + reach,
            _ => b.From <= a.From && a.From <= b.To + reach,
        };
}
