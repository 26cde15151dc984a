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

    public static string Grain(GrainDirection grain) =>
        grain is GrainDirection.Any ? "any way" : "along its length";

    public static string Open(OpenDimension open, Precision precision) =>
        $"{open.Dimension} {LengthWriter.WriteWithUnit(open.Extra, precision)} over until {open.Until}";

    /// <summary>What is told in a few words beside the sizes.</summary>
    public static IEnumerable<string> Marks(Part part, Precision precision)
    {
        foreach (var open in part.Open)
            yield return Open(open, precision);
        if (part.ShowFace)
            yield return "show face";
        if (part.GlueUpAllowed)
            yield return "may be glued up";
        if (part.AcceptsHiddenDefect)
            yield return "defect on hidden face accepted";
    }

    /// <summary>The same for a row being edited, short enough for its cell.</summary>
    public static string Marks(PartDraft row, Precision precision)
    {
        var open = row
            .Open.Select(o => o.ToOpen())
            .OfType<OpenDimension>()
            .Select(o => $"{o.Dimension.ToString()[0]} +{LengthWriter.Write(o.Extra, precision)}");
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

    public static string Whole(Part part, Precision precision)
    {
        string[] more =
        [
            .. When(part.Grain is GrainDirection.Any, "grain any way"),
            .. When(part.JointNotes.Length > 0, part.JointNotes),
            .. Marks(part, precision),
        ];
        var pieces = part.Quantity == 1 ? "1 piece" : $"{part.Quantity} pieces";
        return string.Join(
            "; ",
            [$"{part.Letter}, {part.Name}, {Size(part, precision)}, {pieces}", .. more]
        );
    }

    /// <summary>"9 pieces, 6.41 board feet finished".</summary>
    public static string Total(PartsTotal total, UnitSystem unit)
    {
        var hundredths =
            unit is UnitSystem.Inch
                ? BoardFeet.HundredthsIn(total.Wood)
                : SquareMetres.HundredthsIn(total.Faces);
        var amount = $"{hundredths / 100}.{hundredths % 100:00}";
        var pieces = total.Pieces == 1 ? "1 piece" : $"{total.Pieces} pieces";
        return unit is UnitSystem.Inch
            ? $"{pieces}, {amount} board feet finished"
            : $"{pieces}, {amount} m² finished";
    }

    private static IEnumerable<string> When(bool holds, string words) => holds ? [words] : [];
}
