using QRCoder;
using ShopClass.Core.Drawings;
using ShopClass.Core.Measure;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Labels;

/// <summary>What a kit's label says.</summary>
/// <param name="Name">The student's alias or name, or "Spare 1".</param>
/// <param name="Course">The course.</param>
/// <param name="Project">The project.</param>
/// <param name="Number">The kit's number.</param>
/// <param name="Letters">Its parts by letter: "A × 2, B, C".</param>
/// <param name="Version">What the kit is made up by: "Plan 3 of 20 Nov 2026".</param>
/// <param name="Address">Where its student's page is; null prints no code.</param>
public sealed record KitLabel(
    string Name,
    string Course,
    string Project,
    int Number,
    string Letters,
    string Version,
    string? Address
);

/// <summary>Labels for kits, with a code that a phone opens the student's page from.</summary>
public static class KitLabels
{
    private const double PointsPerInch = 72;

    // Free of ink inside a label's edge: printers and dies are seldom better than a millimetre.
    private const double Inset = 6;

    /// <summary>The labels as a PDF, filling each sheet row by row; <paramref name="skip"/> leaves the first ones of a begun sheet free.</summary>
    /// <exception cref="ArgumentException">Moved like this, labels would run off the paper.</exception>
    public static byte[] Make(
        IReadOnlyList<KitLabel> labels,
        LabelSheet grid,
        Length right,
        Length down,
        int skip = 0
    ) => Of(labels, grid, right, down, skip).ToPdf();

    /// <summary>The sheet, to be printed alone or in a set.</summary>
    public static Manuscript Of(
        IReadOnlyList<KitLabel> labels,
        LabelSheet grid,
        Length right,
        Length down,
        int skip = 0
    )
    {
        if (grid.Problem(right, down) is { } problem)
            throw new ArgumentException(problem, nameof(grid));
        var frame = new PageFrame(grid.Paper, "Kit labels", "", "") { IsBare = true };
        return new(
            frame,
            sheet =>
            {
                for (var i = 0; i < labels.Count; i++)
                {
                    var place = (i + skip) % grid.Count;
                    if (place == 0 && i > 0)
                        sheet.NewPage();
                    var (row, column) = Math.DivRem(place, grid.Across);
                    sheet.Place(
                        Draw(labels[i], grid),
                        Points(grid.Left + right + grid.StepAcross * column),
                        Points(grid.Top + down + grid.StepDown * row)
                    );
                }
            }
        );
    }

    /// <summary>One label as a drawing, its own top left corner at zero.</summary>
    public static Drawing Draw(KitLabel label, LabelSheet grid)
    {
        var (width, height) = (Points(grid.Width), Points(grid.Height));
        var shapes = new List<Shape>();
        var side = label.Address is null ? 0 : Math.Min(height - 2 * Inset, width * 0.42);
        if (label.Address is { } address)
            shapes.AddRange(Code(address, width - Inset - side, (height - side) / 2, side));
        var room = width - 2 * Inset - side - (side > 0 ? 5 : 0);
        var name = Math.Min(15, height / 5.2);
        var small = Math.Min(8.5, height / 8.5);
        var y = Inset + name * 0.6;
        shapes.Add(Words($"{label.Number}  {label.Name}", name, room, y, Ink.Lettering));
        y += name * 0.75 + small * 0.9;
        foreach (var line in new[] { label.Project, label.Letters, label.Course, label.Version })
        {
            shapes.Add(Words(line, small, room, y, Ink.Dimension));
            y += small * 1.2;
        }

        return new(
            width,
            height,
            $"Label of kit {label.Number}",
            $"Kit {label.Number}, {label.Name}. {label.Project}: {label.Letters}. {label.Course}. {label.Version}.",
            shapes
        );
    }

    /// <summary>A QR code as black squares in a square of this side, its quiet zone of four modules within.</summary>
    internal static IEnumerable<Shape> Code(string text, double x, double y, double side)
    {
        using var code = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.M);
        var rows = code.ModuleMatrix;
        var module = side / rows.Count;
        for (var row = 0; row < rows.Count; row++)
        {
            // Runs of dark modules become one bar each: no hairlines between them, and a smaller file.
            for (var from = 0; from < rows.Count; from++)
            {
                if (!rows[row][from])
                    continue;
                var to = from;
                while (to < rows.Count && rows[row][to])
                    to++;
                yield return new Box(
                    x + from * module,
                    y + row * module,
                    (to - from) * module,
                    module,
                    Ink.Lettering
                );
                from = to;
            }
        }
    }

    private static double Points(Length length) =>
        (double)length.Ticks / Length.TicksPerInch * PointsPerInch;

    // Letters are about half as wide as high; a name that is longer is set smaller rather than cut off, down to a limit.
    private static Label Words(string text, double size, double room, double y, Ink ink)
    {
        var wide = text.Length * size * 0.52;
        var fit = wide <= room ? size : Math.Max(5, size * room / wide);
        var most = (int)(room / (fit * 0.52));
        var shown =
            text.Length <= most + 1 ? text : WholeLetters.Start(text, Math.Max(1, most - 1)) + "…";
        return new(Inset, y, shown, fit, Anchor.Start, ink);
    }
}
