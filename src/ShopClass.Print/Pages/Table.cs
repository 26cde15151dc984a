namespace ShopClass.Print.Pages;

/// <summary>A table's column.</summary>
/// <param name="Head">Its head.</param>
/// <param name="Share">Its share of the width.</param>
/// <param name="IsStrong">Whether its cells are set in heavier letters, to be found at a glance.</param>
internal sealed record Column(string Head, double Share, bool IsStrong = false);

/// <summary>A table's row.</summary>
/// <param name="Cells">A cell for each column. <see cref="TickBox"/> draws a box to tick.</param>
/// <param name="Below">A sentence under the row, across the columns after the first two.</param>
/// <param name="Warning">The same in heavier letters, before it.</param>
internal sealed record Row(
    IReadOnlyList<string> Cells,
    string? Below = null,
    string? Warning = null
)
{
    /// <summary>A cell that holds a box to tick.</summary>
    public const string TickBox = "[ ]";
}
