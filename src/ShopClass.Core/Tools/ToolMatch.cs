namespace ShopClass.Core.Tools;

/// <summary>Whether the tools there are go round when some needs may be met by one kind or another.</summary>
internal static class ToolMatch
{
    /// <summary>How many of each need go without, when as many as possible are met. Earlier needs are met first where all cannot be.</summary>
    /// <param name="needs">What is wanted at once.</param>
    /// <param name="have">How many there are of each kind.</param>
    public static int[] Short(IReadOnlyList<ToolNeed> needs, IReadOnlyDictionary<string, int> have)
    {
        var given = new Dictionary<string, List<int>>(StringComparer.Ordinal);
        var without = new int[needs.Count];
        for (var need = 0; need < needs.Count; need++)
        for (var unit = 0; unit < needs[need].Count; unit++)
        {
            if (!Give(need, needs, have, given, new(StringComparer.Ordinal)))
                without[need]++;
        }

        return without;
    }

    // A tool that is free, or one whose holder can take another kind instead.
    private static bool Give(
        int need,
        IReadOnlyList<ToolNeed> needs,
        IReadOnlyDictionary<string, int> have,
        Dictionary<string, List<int>> given,
        HashSet<string> asked
    )
    {
        foreach (var kind in needs[need].AnyOf.Where(asked.Add))
        {
            if (!given.TryGetValue(kind, out var holders))
                given[kind] = holders = [];
            if (holders.Count < have.GetValueOrDefault(kind))
            {
                holders.Add(need);
                return true;
            }

            for (var i = 0; i < holders.Count; i++)
            {
                if (!Give(holders[i], needs, have, given, asked))
                    continue;
                holders[i] = need;
                return true;
            }
        }

        return false;
    }
}
