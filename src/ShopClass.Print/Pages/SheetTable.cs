using PdfSharp.UniversalAccessibility;
using ShopClass.Print.Lettering;

namespace ShopClass.Print.Pages;

/// <summary>Tables on a sheet; the head is repeated on every page they reach.</summary>
internal sealed partial class Sheet
{
    private const double CellStep = TextSize * 1.22;
    private const double CellGap = 7;

    /// <summary>A table. Rows stay whole.</summary>
    public void Table(IReadOnlyList<Column> columns, IReadOnlyList<Row> rows)
    {
        var shares = columns.Sum(c => c.Share);
        double[] widths = [.. columns.Select(c => Width * c.Share / shares)];
        Face[] faces = [.. columns.Select(c => c.IsStrong ? Face.Strong : Face.Text)];
        var head = Laid(
            new(columns.Select(c => c.Head).ToList()),
            widths,
            [.. columns.Select(_ => Face.Strong)]
        );
        Keep(head.Height + rows.Take(1).Sum(r => Laid(r, widths, faces).Height));
        tags.As(PdfBlockLevelElementTag.Table, () => DrawTable(head, rows, widths, faces));
        y += 4;
    }

    private void DrawTable(LaidRow head, IReadOnlyList<Row> rows, double[] widths, Face[] faces)
    {
        tags.As(
            PdfBlockLevelElementTag.TableRow,
            () => DrawRow(head, PdfBlockLevelElementTag.TableHeaderCell)
        );
        AfterRow(head, 1);
        foreach (var row in rows)
        {
            var laid = Laid(row, widths, faces);
            var pageNow = Pages;
            Keep(laid.Height);
            if (Pages != pageNow)
            {
                tags.AsArtifact(() => DrawRow(head, tag: null));
                AfterRow(head, 1);
            }

            tags.As(
                PdfBlockLevelElementTag.TableRow,
                () => DrawRow(laid, PdfBlockLevelElementTag.TableDataCell)
            );
            AfterRow(laid, 0.4);
        }
    }

    private void AfterRow(LaidRow row, double weight)
    {
        y += row.Height;
        tags.AsArtifact(() => DrawRule(weight));
    }

    private void DrawRow(LaidRow row, PdfBlockLevelElementTag? tag)
    {
        foreach (var cell in row.Cells)
        {
            if (tag is { } kind)
                tags.As(kind, () => DrawCell(cell));
            else
                DrawCell(cell);
        }
    }

    private void DrawCell(LaidCell cell)
    {
        if (cell.IsTickBox)
            DrawTickBox(PageFrame.Margin + cell.X, y + cell.Top);
        else
            DrawLines(
                cell.Lines,
                cell.Face,
                TextSize,
                PageFrame.Margin + cell.X,
                CellStep,
                y + cell.Top + TextSize
            );
    }

    private LaidRow Laid(Row row, double[] widths, Face[] faces)
    {
        var cells = new List<LaidCell>();
        var x = 0.0;
        for (var i = 0; i < widths.Length; x += widths[i], i++)
            cells.Add(CellOf(row.Cells[i], faces[i], x, 2.5, widths[i] - CellGap));
        var bottom = cells.Max(c => c.Bottom);
        var indent = widths.Length > 2 ? widths[0] + widths[1] : 0;
        foreach (var (text, below) in new[] { (row.Warning, Face.Strong), (row.Below, Face.Text) })
        {
            if (text is null)
                continue;
            cells.Add(CellOf(text, below, indent, bottom + 1, Width - indent));
            bottom = cells[^1].Bottom;
        }

        return new(cells, bottom + 3.5);
    }

    private LaidCell CellOf(string text, Face face, double x, double top, double width)
    {
        var isTickBox = text == Row.TickBox;
        var lines = isTickBox ? [""] : Lines(text, face, TextSize, width);
        return new(lines, face, x, top, isTickBox);
    }

    private sealed record LaidRow(IReadOnlyList<LaidCell> Cells, double Height);

    private sealed record LaidCell(
        List<string> Lines,
        Face Face,
        double X,
        double Top,
        bool IsTickBox
    )
    {
        public double Bottom => Top + Lines.Count * CellStep;
    }
}
