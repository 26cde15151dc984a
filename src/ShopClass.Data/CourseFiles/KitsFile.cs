using Newtonsoft.Json.Linq;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Orders;
using ShopClass.Data.Projects;

namespace ShopClass.Data.CourseFiles;

/// <summary>A project's “supplies” and a course's “labels”. The address printed on labels belongs to one shop and stays behind.</summary>
internal static class KitsFile
{
    public static void WriteSupplies(JObject project, ProjectRow row) =>
        CourseFileWriter.Add(
            project,
            "supplies",
            (row.Kits?.Supplies ?? []).Select(s =>
            {
                var all = new JObject { ["name"] = s.Name };
                if (s.Kind is not SupplyKind.Hardware)
                    all["kind"] = FileWords.SupplyKinds.For(s.Kind);
                CourseFileWriter.Add(all, "amount", s.Amount);
                if (s.CostPerKit is { } cost)
                    all["price"] = CourseFileWriter.Price(cost);
                return all;
            })
        );

    public static IReadOnlyList<Supply> ReadSupplies(JToken project, FileFindings findings)
    {
        if (project is not JObject node || node["supplies"] is not { } listed)
            return [];
        if (listed is not JArray list)
        {
            findings.Add(listed, "“supplies” is a list of supplies in square brackets.");
            return [];
        }

        if (list.Count > SupplyChecks.MostSupplies)
        {
            findings.Add(
                listed,
                $"Here are {list.Count} supplies; {SupplyChecks.MostSupplies} is the most."
            );
            return [];
        }

        return [.. list.Select(s => ReadSupply(s, findings)).OfType<Supply>()];
    }

    public static void AddSupplies(IReadOnlyList<Supply> supplies, ProjectRow project)
    {
        if (supplies.Count > 0)
            project.Kits = new()
            {
                ProjectId = project.Id,
                Supplies = supplies,
                Version = Guid.NewGuid(),
            };
    }

    public static void WriteLabels(JObject course, CourseRow row)
    {
        if (row.Desk?.Labels is not { } labels)
            return;
        var unit = row.Rules.Unit;
        var all = new JObject { ["sheet"] = labels.SheetId };
        if (labels.Right != Length.Zero)
            all["right"] = LengthWriter.WriteExactWithUnit(labels.Right, unit);
        if (labels.Down != Length.Zero)
            all["down"] = LengthWriter.WriteExactWithUnit(labels.Down, unit);
        course["labels"] = all;
    }

    public static LabelSetting? ReadLabels(FileNode course, UnitSystem unit)
    {
        if (
            !course.Has("labels")
            || course.Child("labels", "the labels", FileFields.Labels) is not { } node
        )
            return null;
        var sheet = node.Text("sheet");
        if (!LabelSetting.SheetIds.Contains(sheet))
            node.Problem(
                "sheet",
                $"“sheet” is one of {string.Join(", ", LabelSetting.SheetIds.Select(s => $"“{s}”"))}."
            );
        var setting = new LabelSetting(
            sheet,
            node.Length("right", unit, Length.Zero) ?? Length.Zero,
            node.Length("down", unit, Length.Zero) ?? Length.Zero
        );
        foreach (var (field, sentence) in KitStore.ProblemsIn("", setting))
            node.Problem(PartReader.FileFieldOf(field), sentence);
        return setting;
    }

    private static Supply? ReadSupply(JToken token, FileFindings findings)
    {
        if (FileNode.Open(token, "a supply", findings, FileFields.Supply) is not { } node)
            return null;
        var supply = new Supply(
            Wording.Tidy(node.Text("name")),
            node.Choice("kind", FileWords.SupplyKinds, SupplyKind.Hardware) ?? default,
            Wording.Tidy(node.Text("amount", "")),
            BoardReader.ReadPrice(node)
        );
        foreach (var (field, sentence) in SupplyChecks.ProblemsIn(supply))
            node.Problem(field is "Cost" ? "price" : PartReader.FileFieldOf(field), sentence);
        return supply;
    }
}
