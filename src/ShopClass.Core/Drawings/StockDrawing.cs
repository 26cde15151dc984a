using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning.Guide;

namespace ShopClass.Core.Drawings;

/// <summary>
/// The smallest boards of a stock guide side by side, all to one scale, width against length: full, what the parts need;
/// dashed, how much longer the board is that sellers keep.
/// </summary>
public static class StockDrawing
{
    /// <summary>Draws a group's options, as many as are given. Each board carries "option 1", "option 2" as tag.</summary>
    public static Drawing Of(
        StockGroup group,
        IReadOnlyList<StockOption> options,
        Courses.CourseRules rules,
        DrawingFrame frame
    )
    {
        var title = $"Smallest boards for {GuideWords.Name(group, rules)}";
        var t = frame.TextSize;
        if (options.Count == 0)
            return new(frame.Width, t, title, GuideWords.Thickness(group, rules), []);
        // Boards lie in every frame: one on top of another they compare best, and they are longer than wide.
        var scale = (frame.Width - 2) / options.Max(o => (o.Sold ?? o.Shortest).Ticks);
        var shapes = new List<Shape>();
        var y = 0.0;
        for (var i = 0; i < options.Count; i++)
        {
            shapes.AddRange(Words(options[i], rules, frame, y + 0.8 * t));
            y += 1.7 * t;
            for (var board = 0; board < options[i].Boards; board++)
            {
                shapes.AddRange(Board(options[i], scale, y, $"option {i + 1}"));
                y += options[i].Size.Width.Ticks * scale + 0.3 * t;
            }

            y += 0.7 * t;
        }

        shapes.AddRange(ScaleBar.At(new(1, Round(y + 0.8 * t)), scale, rules.Precision, frame));
        return new(frame.Width, Round(y + 1.6 * t), title, InWords(title, options, rules), shapes);
    }

    private static IEnumerable<Shape> Words(
        StockOption option,
        Courses.CourseRules rules,
        DrawingFrame frame,
        double y
    )
    {
        var t = frame.TextSize;
        var ask = GuideWords.Ask(option, rules.Unit);
        yield return new Label(1, Round(y), ask, Round(t * 1.1), Anchor.Start, Ink.Lettering);
        var least = GuideWords.AtLeast(option, rules.Precision);
        var glued = option.GlueUps.Count > 0 ? ", glued up" : "";
        var x = 1 + LetterWidths.Of(ask, t * 1.1) + t;
        var rest = new[] { $"at least {least}{glued}", $"{least}{glued}", least }.FirstOrDefault(
            words => x + LetterWidths.Of(words, t) < frame.Width
        );
        if (rest is not null)
            yield return new Label(Round(x), Round(y), rest, t, Anchor.Start, Ink.Dimension);
    }

    private static IEnumerable<Shape> Board(StockOption option, double scale, double y, string tag)
    {
        var height = Round(option.Size.Width.Ticks * scale);
        var needed = Round(option.Shortest.Ticks * scale);
        if (option.Sold is { } sold)
            yield return new Box(1, Round(y), Round(sold.Ticks * scale), height, Ink.Finished);
        yield return new Box(1, Round(y), needed, height, Ink.Wood, tag);
        foreach (var line in Grain(needed, height))
            yield return new Line(
                1 + line.From,
                Round(y + line.At),
                1 + line.To,
                Round(y + line.At),
                Ink.Grain
            );
    }

    // A few quiet lines say which way the grain runs.
    private static IEnumerable<(double From, double To, double At)> Grain(
        double length,
        double width
    )
    {
        for (var i = 1; i <= 3; i++)
            yield return (
                Round(length * 0.04 * i),
                Round(length * (1 - 0.05 * (4 - i))),
                Round(width * i / 4)
            );
    }

    private static string InWords(
        string title,
        IReadOnlyList<StockOption> options,
        Courses.CourseRules rules
    ) =>
        $"{title}, to one scale, width against length.\n"
        + string.Join(
            '\n',
            options.Select(o =>
                $"{GuideWords.Ask(o, rules.Unit)}: at least {GuideWords.AtLeast(o, rules.Precision)}. {GuideWords.Work(o)}"
            )
        );

    private static double Round(double points) => Math.Round(points, 2);
}
