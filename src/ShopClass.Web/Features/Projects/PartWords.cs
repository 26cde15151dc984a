using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Web.Features.Projects;

/// <summary>Parts in words, for tables, notes and whoever cannot see the drawing.</summary>
public static class PartWords
{
    public static string Size(Part part, Precision precision) =>
        LengthWriter.WriteSize(
            part.Finished.Thickness,
            part.Finished.Width,
            part.Finished.Length,
            precision
        );

    // An extra is often smaller than the finest mark of the course, so it is written as it is stored.
    public static string Open(OpenDimension open, UnitSystem unit) =>
        $"{open.Dimension} {LengthWriter.WriteExactWithUnit(open.Extra, unit)} over until {open.Until}{From(open)}";

    private static string From(OpenDimension open) =>
        open.TakenFrom is { } letter ? $", taken from {letter}" : "";

    /// <summary>What is told in a few words beside the sizes.</summary>
    public static IEnumerable<string> Notes(Part part, UnitSystem unit)
    {
        if (part.Grain is GrainDirection.Any)
            yield return "grain any way";
        foreach (var open in part.Open)
            yield return Open(open, unit);
        if (part.ShowFace)
            yield return "show face";
        if (part.GlueUpAllowed)
            yield return "may be glued up";
        if (part.AcceptsHiddenDefect)
            yield return "defect on hidden face accepted";
        if (part.ReferenceFace is not ReferenceFace.Truest)
            yield return part.ReferenceFace is ReferenceFace.Inside
                ? "reference face inside"
                : "reference face outside";
    }

    /// <summary>The same for a row being edited, short enough for its cell.</summary>
    public static string Marks(PartDraft row, UnitSystem unit)
    {
        var open = row
            .Open.Select(o => o.ToOpen())
            .OfType<OpenDimension>()
            .Select(o => $"{o.Dimension.ToString()[0]} +{LengthWriter.WriteExact(o.Extra, unit)}");
        return string.Join(
            " · ",
            [
                .. open,
                .. When(row.ShowFace, "show face"),
                .. When(row.GlueUpAllowed, "glue-up"),
                .. When(row.AcceptsHiddenDefect, "defect hidden"),
            ]
        );
    }

    /// <summary>The whole row as stored, to the last tick: two rows that differ never read the same.</summary>
    public static string Whole(Part part, UnitSystem unit)
    {
        string[] more =
        [
            .. When(part.JointNotes.Length > 0, part.JointNotes),
            .. Notes(part, unit),
        ];
        var pieces = part.Quantity == 1 ? "1 piece" : $"{part.Quantity} pieces";
        return string.Join(
            "; ",
            [$"{part.Letter}, {part.Name}, {ExactSize(part.Finished, unit)}, {pieces}", .. more]
        );
    }

    /// <summary>"9 pieces, 6.41 board feet".</summary>
    public static string Total(PartsTotal total, UnitSystem unit)
    {
        var hundredths =
            unit is UnitSystem.Inch
                ? BoardFeet.HundredthsIn(total.Wood)
                : SquareMetres.HundredthsIn(total.Faces);
        var amount = $"{hundredths / 100}.{hundredths % 100:00}";
        var pieces = total.Pieces == 1 ? "1 piece" : $"{total.Pieces} pieces";
        return unit is UnitSystem.Inch
            ? $"{pieces}, {amount} board feet"
            : $"{pieces}, {amount} m²";
    }

    private static string ExactSize(FinishedSize size, UnitSystem unit) =>
        $"{LengthWriter.WriteExact(size.Thickness, unit)} × {LengthWriter.WriteExact(size.Width, unit)} × {LengthWriter.WriteExactWithUnit(size.Length, unit)}";

    private static IEnumerable<string> When(bool holds, string words) => holds ? [words] : [];
}
