using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>The parts of a kit, with finished and rough sizes, and what is glued up.</summary>
internal static class KitParts
{
    private static readonly Column[] Columns =
    [
        new("Part", 0.55, IsStrong: true),
        new("Name", 1.2),
        new("Qty", 0.5),
        new("Finished size", 1.9),
        new("Rough size, at least", 1.9),
        new("Grain", 0.9),
        new("Keep in mind", 2.4),
    ];

    public static void Write(Sheet sheet, CheckedPlan plan)
    {
        sheet.Heading("Parts");
        sheet.Table(Columns, [.. plan.Request.Project.Parts.Select(p => RowOf(p, plan))]);
        if (plan.Plan.GlueUps.Count == 0)
            return;
        sheet.Heading("Glue-ups");
        sheet.List(plan.Plan.GlueUps.Select(g => GlueUp(g.Key, g.Value, plan)));
    }

    private static Row RowOf(Part part, CheckedPlan plan)
    {
        var precision = plan.Request.Rules.Precision;
        var size = part.Finished;
        return new([
            part.Letter,
            part.Name,
            $"{part.Quantity}",
            LengthWriter.WriteSize(size.Thickness, size.Width, size.Length, precision),
            RoughSizes(part, plan, precision),
            part.Grain is GrainDirection.Any ? "either way" : "along",
            KeepInMind(part, precision),
        ]);
    }

    private static string RoughSizes(Part part, CheckedPlan plan, Precision precision)
    {
        var sizes = plan
            .Plan.Boards.SelectMany(b => b.Sections)
            .SelectMany(s => s.Strips)
            .SelectMany(s => s.Blanks)
            .Where(b => b.Key.Part == part.Letter)
            .Select(b => b.Needed)
            .Distinct()
            .Select(n => LengthWriter.WriteSize(n.Thickness, n.Width, n.Length, precision))
            .Distinct(StringComparer.Ordinal)
            .ToList();
        if (sizes.Count == 0)
            return "not on these boards";
        var strips = plan.Plan.GlueUps.TryGetValue(part.Letter, out var n)
            ? $"{n} strips each of "
            : "";
        return strips + string.Join(" or ", sizes);
    }

    private static string KeepInMind(Part part, Precision precision)
    {
        var open = part.Open.Select(o =>
            $"{Name(o.Dimension)} {Exactly(o.Extra, precision)} over until {o.Until}"
        );
        var face = part.ShowFace ? new[] { "show face" } : [];
        var joints = part.JointNotes.Length > 0 ? new[] { part.JointNotes.TrimEnd('.') } : [];
        return string.Join("; ", open.Concat(joints).Concat(face));
    }

    // These are often finer than the course measures, so they are written as they were entered.
    private static string Exactly(Length extra, Precision precision) =>
        LengthWriter.WriteExactWithUnit(extra, precision.Unit());

    private static string Name(PartDimension dimension) =>
        dimension switch
        {
            PartDimension.Thickness => "thickness",
            PartDimension.Width => "width",
            PartDimension.Length => "length",
            _ => throw new ArgumentOutOfRangeException(
                nameof(dimension),
                dimension,
                "Not a dimension."
            ),
        };

    private static string GlueUp(string letter, int strips, CheckedPlan plan)
    {
        var part = plan.Request.Project.Parts.First(p => p.Letter == letter);
        var rules = plan.Request.Rules;
        var joint = Exactly(rules.EdgeJointAllowance, rules.Precision);
        return $"{letter} ({part.Name}): each from {strips} strips. Plane {joint} off each edge that is glued, match the "
            + "grain, glue and clamp. Leave it in clamps at least an hour and work it next day (common practice).";
    }
}
