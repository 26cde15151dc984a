namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// A rule every plan keeps and a mixture of sections may break: some kinds of which an odd number of blanks is wanted make
/// up only so many pairs, so that sections with two of these blanks each are at most that many (subset-row inequalities of
/// Jepsen, Petersen, Spoorendonk and Pisinger 2008, for counts above one).
/// </summary>
/// <param name="Kinds">The kinds.</param>
/// <param name="Most">The most pairs.</param>
internal sealed record PairRule(int[] Kinds, int Most)
{
    /// <summary>How many whole pairs of these kinds a section holds.</summary>
    public int Pairs(ulong packed, Packing packing)
    {
        var blanks = 0;
        foreach (var kind in Kinds)
            blanks += packing.Count(packed, kind);
        return blanks / 2;
    }

    /// <summary>The rules that a mixture breaks most.</summary>
    public static IEnumerable<PairRule> Broken(
        IReadOnlyList<int> demand,
        Packing packing,
        IReadOnlyList<(Column Column, double Share)> mixture,
        int most
    )
    {
        const double Enough = 0.02;
        var broken = new List<(PairRule Rule, double By)>();
        foreach (var kinds in Groups(demand.Count))
        {
            var wanted = kinds.Sum(k => demand[k]);
            if (wanted % 2 == 0 || wanted == 1 || kinds.Any(k => demand[k] == 0))
                continue;
            var rule = new PairRule(kinds, wanted / 2);
            var by = mixture.Sum(m => m.Share * rule.Pairs(m.Column.Packed, packing)) - rule.Most;
            if (by > Enough)
                broken.Add((rule, by));
        }

        return broken.OrderByDescending(b => b.By).Take(most).Select(b => b.Rule);
    }

    /// <summary>All groups of one, two or three kinds.</summary>
    private static IEnumerable<int[]> Groups(int kinds)
    {
        for (var a = 0; a < kinds; a++)
        {
            yield return [a];
            for (var b = a + 1; b < kinds; b++)
            {
                yield return [a, b];
                for (var c = b + 1; c < kinds; c++)
                    yield return [a, b, c];
            }
        }
    }
}
