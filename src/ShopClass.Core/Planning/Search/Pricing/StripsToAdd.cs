using System.Runtime.InteropServices;

namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>A strip that may be added to a section.</summary>
/// <param name="Near">Its place among those near.</param>
/// <param name="Breadth">Index of its breadth.</param>
/// <param name="Packed">Its blanks.</param>
/// <param name="Worth">What it adds to the section's worth.</param>
internal readonly record struct StripToAdd(int Near, int Breadth, ulong Packed, long Worth);

/// <summary>The strips to add next, and what they may still add.</summary>
internal sealed record StripsToAdd(SectionBounds Bounds)
{
    /// <summary>The strips breadth by breadth, and within each those worth more before others.</summary>
    public List<StripToAdd> Items { get; } = [];

    /// <summary>Where those of each breadth are.</summary>
    public List<(int Breadth, int From, int To)> Breadths { get; } = [];

    /// <summary>Whether the bounds are of just these strips.</summary>
    public bool IsBounded { get; set; }

    public void Clear()
    {
        Items.Clear();
        Breadths.Clear();
    }

    /// <summary>Sorts those added since the last breadth, which are all of this one.</summary>
    public void SortSince(int breadth)
    {
        var from = Close(breadth);
        if (Items.Count > from + 1)
            CollectionsMarshal.AsSpan(Items)[from..].Sort(ByWorth);
    }

    /// <summary>Notes where those of a breadth are, the last ones added; returns where they begin.</summary>
    public int Close(int breadth)
    {
        var from = Breadths.Count == 0 ? 0 : Breadths[^1].To;
        if (Items.Count > from)
            Breadths.Add((breadth, from, Items.Count));
        return from;
    }

    private static int ByWorth(StripToAdd a, StripToAdd b) =>
        a.Worth != b.Worth ? b.Worth.CompareTo(a.Worth) : a.Near.CompareTo(b.Near);
}
