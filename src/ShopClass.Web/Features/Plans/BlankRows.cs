using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Web.Features.Plans;

/// <summary>One blank in the table.</summary>
public sealed record BlankRow(
    BlankKey Key,
    string Part,
    string Board,
    string Rough,
    string Finished,
    IReadOnlyList<string> Notes
);

/// <summary>The blanks of a plan as the table shows them, by name.</summary>
public static class BlankRows
{
    public static IReadOnlyList<BlankRow> Of(CheckedPlan made) =>
        [
            .. from layout in made.Plan.Boards
            from section in layout.Sections
            from strip in section.Strips
            from blank in strip.Blanks
            orderby blank.Key
            select Row(made, layout.BoardId, strip, blank),
        ];

    private static BlankRow Row(CheckedPlan made, string boardId, Strip strip, PlacedBlank blank)
    {
        var part = made.Request.Project.Parts.First(p => p.Letter == blank.Key.Part);
        var board = made.Request.Boards.First(b => b.Id == boardId);
        var precision = made.Request.Rules.Precision;
        var place = blank.In(strip);
        var (width, length) = blank.Turned
            ? (place.Along, place.Across)
            : (place.Across, place.Along);
        return new(
            blank.Key,
            part.Name,
            board.Name,
            LengthWriter.WriteSize(board.Thickness, width, length, precision),
            LengthWriter.WriteSize(
                part.Finished.Thickness,
                part.Finished.Width,
                part.Finished.Length,
                precision
            ),
            [.. Notes(made, part, blank, precision)]
        );
    }

    private static IEnumerable<string> Notes(
        CheckedPlan made,
        Part part,
        PlacedBlank blank,
        Precision precision
    )
    {
        if (blank.Key.Strip > 0 && made.Plan.GlueUps.TryGetValue(part.Letter, out var strips))
            yield return $"One of {strips} strips to glue up";
        if (blank.Turned)
            yield return "Its length runs across the board";
        foreach (var open in part.Open)
        {
            var extra = LengthWriter.WriteExactWithUnit(open.Extra, precision.Unit());
            yield return $"{Words(open.Dimension)} stays open, {extra} over, until {open.Until}";
        }
    }

    private static string Words(PartDimension dimension) =>
        dimension switch
        {
            PartDimension.Thickness => "Thickness",
            PartDimension.Width => "Width",
            PartDimension.Length => "Length",
            _ => throw new ArgumentOutOfRangeException(nameof(dimension), dimension, "Not a size."),
        };
}
