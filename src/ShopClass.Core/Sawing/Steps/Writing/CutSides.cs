using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>What a cut leaves of its piece.</summary>
internal static class CutSides
{
    /// <summary>The piece on either side of the kerf, the nearer first; one alone where the kerf takes the rest.</summary>
    public static IReadOnlyList<BoardRect> Sides(this Cut cut)
    {
        BoardRect[] sides =
            cut.Kind is CutKind.Rip
                ? [cut.Piece with { Far = cut.Kerf.Near }, cut.Piece with { Near = cut.Kerf.Far }]
                : [cut.Piece with { To = cut.Kerf.From }, cut.Piece with { From = cut.Kerf.To }];
        return [.. sides.Where(s => s.Area > Area.Zero)];
    }
}
