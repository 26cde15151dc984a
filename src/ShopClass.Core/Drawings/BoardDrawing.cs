using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Drawings;

/// <summary>A measured board as it lies: grain, end trim, defects, its three widths and its length.</summary>
public static class BoardDrawing
{
    /// <summary>Draws it; a selected defect is marked in the accent. Defect boxes carry the tag <c>defect N</c>, from 1.</summary>
    public static Drawing Of(
        Board board,
        Precision precision,
        DrawingFrame frame,
        int? selectedDefect = null
    ) => throw new NotImplementedException();
}
