using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;
using ShopClass.Core.Drawings;
using ShopClass.Print.Lettering;
using ShopClass.Print.Pens;

namespace ShopClass.Print.Pages;

/// <summary>Cards on a sheet, side by side; each stays whole.</summary>
internal sealed partial class Sheet
{
    private const double CardPadding = 9;

    private const double BetweenColumns = 14;

    // Short lines may stand closer together than long ones and are as easily followed.
    private double StepIn(Card card) => card.IsInTwoColumns ? Size * 1.18 : Step;

    /// <summary>The width a card's picture may have; half of it where the card stands in two columns.</summary>
    public double PictureWidth(int columns, bool inTwoColumns = false) =>
        inTwoColumns
            ? (PictureWidth(columns) - BetweenColumns) / 2
            : Width / columns - 2 * CardPadding;

    /// <summary>Cards one below the other in so many columns; with lines to cut along, or a rule between.</summary>
    public void Cards(IReadOnlyList<Card> cards, int columns, bool withCutLines)
    {
        var (column, top, bottom) = (0, y, y);
        foreach (var card in cards.Select(c => Laid(c, columns)))
        {
            if (y + card.Height > frame.BodyBottom && y > top)
            {
                bottom = Math.Max(bottom, y);
                column++;
                y = top;
            }

            if (column == columns || y + card.Height > frame.BodyBottom)
            {
                DrawBetween(columns, top, bottom, withCutLines);
                Keep(frame.Height);
                (column, top, bottom) = (0, y, y);
            }

            var left = PageFrame.Margin + column * Width / columns;
            Draw(card, left);
            y += card.Height;
            DrawBelow(left, columns, withCutLines);
        }

        y = Math.Max(bottom, y);
        DrawBetween(columns, top, y, withCutLines);
    }

    private LaidCard Laid(Card card, int columns)
    {
        var room = PictureWidth(columns);
        var heading = Lines(card.Heading, Face.Strong, Size * 1.2, room - Size * 1.8);
        var wide = PictureWidth(columns, card.IsInTwoColumns);
        var step = StepIn(card);
        var all = Wrapped(card.Lines, wide);
        var picture = card.Picture?.Height + 6 ?? 0;
        // What stands left of the break is chosen so that the card is as low as can be.
        var left = card.IsInTwoColumns
            ? Enumerable
                .Range(0, all.Count + 1)
                .MinBy(k => Math.Max(picture + Tall(all.Take(k), step), Tall(all.Skip(k), step)))
            : all.Count;
        var (lines, beside) = (all[..left], all[left..]);
        var height =
            2 * CardPadding
            + heading.Count * Size * 1.45
            + Math.Max(picture + Tall(lines, step), Tall(beside, step))
            + (card.Foot.Length > 0 ? Size * 1.6 : 0);
        return new(card, heading, lines, beside, wide, height);
    }

    private List<(Face Face, List<string> Lines)> Wrapped(
        IReadOnlyList<CardLine> lines,
        double room
    ) => [.. lines.Select(l => (l.Face, Lines(l.Text, l.Face, Size, room)))];

    private static double Tall(IEnumerable<(Face Face, List<string> Lines)> lines, double step) =>
        lines.Sum(l => l.Lines.Count * step + 2.5);

    private void Draw(LaidCard laid, double left)
    {
        var x = left + CardPadding;
        var at = y + CardPadding;
        var box = 0.95 * Size;
        tags.AsArtifact(() =>
            StrokeBox(PdfInks.Stroke(PdfInks.Black, 0.9), x, at + 0.3 * Size, box, box)
        );
        tags.As(
            PdfBlockLevelElementTag.Heading2,
            () =>
                DrawLines(
                    laid.Heading,
                    Face.Strong,
                    Size * 1.2,
                    x + Size * 1.8,
                    Size * 1.45,
                    at + Size * 1.2
                )
        );
        at += laid.Heading.Count * Size * 1.45 + 3;
        var top = at;
        if (laid.Card.Picture is { } picture)
        {
            Place(picture, x, at);
            at += picture.Height + 6;
        }

        var step = StepIn(laid.Card);
        at = Draw(laid.Lines, x, at, step);
        if (laid.Beside.Count > 0)
            at = Math.Max(at, Draw(laid.Beside, x + laid.Wide + BetweenColumns, top, step));
        if (laid.Card.Foot.Length > 0)
            DrawFoot(laid.Card.Foot, x, at + 0.9 * Size);
    }

    /// <summary>Draws paragraphs one below the other; gives where they end.</summary>
    private double Draw(
        List<(Face Face, List<string> Lines)> paragraphs,
        double x,
        double at,
        double step
    )
    {
        foreach (var (face, lines) in paragraphs)
        {
            var baseline = at + Size;
            tags.As(
                PdfBlockLevelElementTag.Paragraph,
                () => DrawLines(lines, face, Size, x, step, baseline)
            );
            at += lines.Count * step + 2.5;
        }

        return at;
    }

    private void DrawFoot(string foot, double x, double baseline) =>
        tags.As(
            PdfBlockLevelElementTag.Paragraph,
            () =>
                Letters.Draw(
                    Letters.Prepared(foot, Face.Text),
                    Face.Text,
                    0.8 * Size,
                    PdfInks.WordsIn(Ink.Quiet),
                    x,
                    baseline
                )
        );

    private void DrawBelow(double left, int columns, bool withCutLines) =>
        tags.AsArtifact(() =>
            StrokeLine(EdgePen(withCutLines), left, y, left + Width / columns, y)
        );

    private void DrawBetween(int columns, double top, double bottom, bool withCutLines)
    {
        for (var column = 1; withCutLines && column < columns; column++)
        {
            var x = PageFrame.Margin + column * Width / columns;
            tags.AsArtifact(() => StrokeLine(EdgePen(withCutLines), x, top, x, bottom));
        }
    }

    private static XPen EdgePen(bool toCut)
    {
        var pen = PdfInks.Stroke(PdfInks.Soft, 0.6);
        if (toCut)
            (pen.DashStyle, pen.DashPattern) = (XDashStyle.Custom, [5.0, 4.0]);
        return pen;
    }

    private sealed record LaidCard(
        Card Card,
        List<string> Heading,
        List<(Face Face, List<string> Lines)> Lines,
        List<(Face Face, List<string> Lines)> Beside,
        double Wide,
        double Height
    );
}
