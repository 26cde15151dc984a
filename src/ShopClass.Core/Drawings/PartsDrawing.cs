using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Drawings;

/// <summary>A parts list as a picture: each part once, face up, all to one scale, with letter, grain, size and quantity.</summary>
public static class PartsDrawing
{
    /// <summary>Draws the list. Part boxes carry the part's letter as tag.</summary>
    public static Drawing Of(Project project, Precision precision, DrawingFrame frame) =>
        throw new NotImplementedException();
}
