namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>The fewest different crosscut lines inside a section, of the ways its strips can be laid out.</summary>
internal static class LeastLines
{
    private const int MostTogether = 2000;

    /// <summary>
    /// Never more than there are: two cuts are taken to fall together where they may do so, for a section that ends there or as
    /// much later as said.
    /// </summary>
    /// <param name="choices">For each strip the ways to lay it out.</param>
    /// <param name="reach">How much later the section may end.</param>
    public static int Of(IReadOnlyList<StripLayout>[] choices, long reach)
    {
        var most = choices.Max(c => c[0].Cuts);
        var product = 1L;
        foreach (var choice in choices)
        {
            product *= choice.Count;
            if (product > MostTogether)
                return most;
        }

        var fewest = int.MaxValue;
        for (var n = 0L; n < product && fewest > most; n++)
        {
            var rest = n;
            var these = new StripLayout[choices.Length];
            for (var i = 0; i < these.Length; i++)
            {
                these[i] = choices[i][(int)(rest % choices[i].Count)];
                rest /= choices[i].Count;
            }

            fewest = Math.Min(fewest, Of(these, reach));
        }

        return Math.Max(most, fewest);
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
            foreach (var mark in layouts[i].Marks)
            {
                for (var j = 0; j < layouts.Length; j++)
                {
                    if (j == i || !layouts[j].Marks.Any(m => MayMeet(mark, m, reach)))
                        continue;
                    own++;
                    break;
                }
            }

            cuts += layouts[i].Cuts;
            shared += own;
            most = Math.Max(most, own);
        }

        return cuts - (shared - most);
    }

    private static bool MayMeet(Mark a, Mark b, long reach) =>
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
