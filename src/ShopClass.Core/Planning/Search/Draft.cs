namespace ShopClass.Core.Planning.Search;

/// <summary>A blank in a draft: what it is and where it begins along the board.</summary>
internal readonly record struct DraftBlank(int Kind, bool Turned, long From, long To);

/// <summary>A strip in a draft, as wide as its widest blank needs.</summary>
internal sealed record DraftStrip(long Near, long Far, IReadOnlyList<DraftBlank> Blanks)
{
    public long Width => Far - Near;
}

/// <summary>A section in a draft.</summary>
internal sealed record DraftSection(long From, long To, IReadOnlyList<DraftStrip> Strips)
{
    public IEnumerable<DraftBlank> Blanks => Strips.SelectMany(s => s.Blanks);
}

/// <summary>Sections of one board.</summary>
internal sealed record DraftBoard(Stock Stock, IReadOnlyList<DraftSection> Sections);

/// <summary>A whole layout before it is written out, with how many of each kind are left over.</summary>
internal sealed record Draft(IReadOnlyList<DraftBoard> Boards, IReadOnlyList<int> Left)
{
    /// <summary>Boards laid out, with what they leave of all that is asked for.</summary>
    public static Draft Of(Bench bench, IReadOnlyList<DraftBoard> boards)
    {
        int[] left = [.. bench.Demand];
        foreach (var blank in boards.SelectMany(b => b.Sections).SelectMany(s => s.Blanks))
            left[blank.Kind]--;
        return new(boards, left);
    }
}
