using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning.Search;

/// <summary>Blanks that are alike for a layout: same size, same boards, same leave to turn and to hide a defect. All sizes in ticks.</summary>
internal sealed record Kind(
    int Index,
    long Length,
    long Width,
    long WidthBetweenStraightEdges,
    bool MayTurn,
    bool AcceptsHiddenDefect,
    IReadOnlyList<bool> Suits,
    IReadOnlyList<Item> Items
)
{
    /// <summary>Size along the board.</summary>
    public long Along(bool turned) => turned ? Width : Length;

    /// <summary>Size across the board.</summary>
    public long Across(bool turned) => turned ? Length : Width;

    /// <summary>Area in square ticks.</summary>
    public Int128 Area => (Int128)Length * Width;
}

/// <summary>One blank to lay out.</summary>
internal sealed record Item(BlankKey Key, Part Part, int Strips);
