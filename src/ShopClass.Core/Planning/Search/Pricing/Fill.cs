namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>Sections one after the other along a board.</summary>
/// <param name="Packed">Their blanks.</param>
/// <param name="Span">The length they take, with the kerfs after them.</param>
/// <param name="Loss">What they lose together.</param>
/// <param name="Effort">Their sawing.</param>
/// <param name="Column">The section added last.</param>
/// <param name="Before">Number of the fill without it, or -1.</param>
/// <param name="IsBeaten">Whether something better has taken its place.</param>
internal readonly record struct Fill(
    ulong Packed,
    long Span,
    long Loss,
    long Effort,
    int Column,
    int Before,
    bool IsBeaten = false
);

/// <summary>Sections that could be added to fills, least loss first.</summary>
internal sealed class FillSections(int[] some, IReadOnlyList<Column> all)
{
    public int[] Columns => some;
    public long[] Losses { get; } = [.. some.Select(c => all[c].Loss)];
    public long[] Spans { get; } = [.. some.Select(c => all[c].Span)];
    public long[] Efforts { get; } = [.. some.Select(c => all[c].Effort)];
    public ulong[] Packed { get; } = [.. some.Select(c => all[c].Packed)];
    public long Shortest { get; } = some.Min(c => all[c].Span);

    /// <summary>How many of them lose no more than a limit.</summary>
    public int Within(long limit)
    {
        var (from, to) = (0, some.Length);
        while (from < to)
        {
            var middle = (from + to) / 2;
            (from, to) = Losses[middle] <= limit ? (middle + 1, to) : (from, middle);
        }

        return from;
    }
}
