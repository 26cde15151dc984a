namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// Ways to have the same blanks that were met before: one that costs no less and uses no less of any board than another is
/// beaten.
/// </summary>
internal sealed class CoverStates(Taste taste, Func<Placed?, long> linesOf, Steps steps)
{
    private const int StatesCounted = 32;

    /// <summary>Ways to have the same blanks that are kept to compare with.</summary>
    private const int MostStates = 256;
    private readonly Dictionary<ulong, List<(Placed? Path, long Length, long[] Usage)>> seen = [];

    /// <summary>Whether a way is beaten; else it is kept.</summary>
    public bool Beat(ulong left, Placed? path, long length, long[] usage)
    {
        if (!seen.TryGetValue(left, out var states))
            seen.Add(left, states = []);
        foreach (var (other, its, before) in states)
        {
            if (FitsWithin(before, usage) && Compare(other, its, path, length) <= 0)
                return true;
        }

        steps.Take(states.Count / StatesCounted);
        if (states.Count >= MostStates)
            return false;
        states.RemoveAll(s =>
            FitsWithin(usage, s.Usage) && Compare(path, length, s.Path, s.Length) <= 0
        );
        states.Add((path, length, usage));
        return false;
    }

    /// <summary>Whether the first uses no more of any board, and has cut every board that the second has: in the end all must be.</summary>
    private static bool FitsWithin(long[] a, long[] b)
    {
        for (var i = 0; i < a.Length; i++)
        {
            if (a[i] > b[i] || (a[i] == 0 && b[i] > 0))
                return false;
        }

        return true;
    }

    /// <summary>Compares what two ways cost and use; what they are completed with adds the same to both.</summary>
    private int Compare(Placed? a, long lengthA, Placed? b, long lengthB) =>
        taste.Compare((a, a?.Effort ?? 0, lengthA), (b, b?.Effort ?? 0, lengthB), linesOf);
}
