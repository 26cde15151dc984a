using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Drawings;

/// <summary>A parts list as a picture: each part once, face up, all to one scale, with letter, grain, size and quantity.</summary>
public static class PartsDrawing
{
    // Room for the weight of outlines at the drawing's edge.
    private const double Inset = 1;

    /// <summary>Draws the list. Part boxes carry the part's letter as tag.</summary>
    public static Drawing Of(Project project, Precision precision, DrawingFrame frame)
    {
        var parts = project.Parts.Where(IsDrawable).ToList();
        if (parts.Count == 0)
            return Empty(project, frame);
        var shapes = new List<Shape>();
        var cells = CellsOf(parts, precision, frame);
        var (x, y, rowHeight) = (Inset, Inset, 0.0);
        foreach (var cell in cells)
        {
            if (x > Inset && x + cell.Width > frame.Width - Inset)
                (x, y, rowHeight) = (Inset, y + rowHeight + frame.TextSize * 1.6, 0);
            shapes.AddRange(cell.At(x, y));
            x += cell.Width + frame.TextSize * 2;
            rowHeight = Math.Max(rowHeight, cell.Height);
        }

        return new(
            frame.Width,
            y + rowHeight + frame.TextSize * 0.4,
            $"Parts of {project.Name}",
            Words(project, parts, precision),
            shapes
        );
    }

    private static bool IsDrawable(Part part) =>
        part.Finished.Length > Length.Zero && part.Finished.Width > Length.Zero;

    private static Drawing Empty(Project project, DrawingFrame frame)
    {
        var t = frame.TextSize;
        return new(
            frame.Width,
            3 * t,
            $"Parts of {project.Name}",
            "No parts yet.",
            [new Label(0, 1.5 * t, "No parts yet", t, Anchor.Start, Ink.Quiet)]
        );
    }

    private static List<PartCell> CellsOf(List<Part> parts, Precision precision, DrawingFrame frame)
    {
        var longest = parts.Max(p => p.Finished.Length.Ticks);
        var widest = parts.Max(p => p.Finished.Width.Ticks);
        var share = frame.Upright ? 0.9 : 0.46;
        var scale = Math.Min(frame.Width * share / longest, frame.Width * share * 0.5 / widest);
        return parts.ConvertAll(p => new PartCell(p, precision, frame, scale));
    }

    private static string Words(Project project, List<Part> parts, Precision precision)
    {
        var sentences = parts.Select(p =>
            $"{p.Letter}, {p.Name}: {p.Quantity} of {PartCell.SizeOf(p, precision)}"
            + (p.Grain is GrainDirection.Any ? ", grain either way." : ", grain along its length.")
        );
        return $"Parts of {project.Name}, all to one scale.\n{string.Join('\n', sentences)}";
    }
}
