namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>A section of a plan on one of the chosen boards, and those before it.</summary>
internal sealed class Placed(int column, int board, Placed? before, long effort)
{
    public int Column => column;
    public int Board => board;
    public Placed? Before => before;

    /// <summary>Sawing of it and all before it.</summary>
    public long Effort => effort;

    /// <summary>Lines of it and all before it; -1 until asked for.</summary>
    public long Lines { get; set; } = -1;
}
