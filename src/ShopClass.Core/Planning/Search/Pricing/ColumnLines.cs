namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>Lines to mark on sections, worked out when they are asked for.</summary>
internal sealed class ColumnLines
{
    private readonly IReadOnlyList<Column> columns;
    private readonly int[] lines;

    public ColumnLines(IReadOnlyList<Column> columns)
    {
        this.columns = columns;
        lines = new int[columns.Count];
        Array.Fill(lines, -1);
    }

    /// <summary>Lines of a section.</summary>
    public int Of(int c) => lines[c] >= 0 ? lines[c] : lines[c] = columns[c].Lines();

    /// <summary>Lines of a section placed and all before it.</summary>
    public long Of(Placed? path)
    {
        if (path is null)
            return 0;
        if (path.Lines < 0)
            path.Lines = Of(path.Before) + Of(path.Column);
        return path.Lines;
    }
}
