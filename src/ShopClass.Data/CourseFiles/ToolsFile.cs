using Newtonsoft.Json.Linq;
using ShopClass.Core.Tools;
using ShopClass.Data.Courses;
using ShopClass.Data.Tools;

namespace ShopClass.Data.CourseFiles;

/// <summary>The sections “tools”, “toolSets” and “sharpenAfter” of a course file. When a saw was sharpened stays behind, as all that has happened does.</summary>
internal static class ToolsFile
{
    public static void Write(JObject course, CourseRow row)
    {
        if (row.Tools?.ToChest() is not { } chest)
            return;
        CourseFileWriter.Add(
            course,
            "tools",
            chest.Tools.Select(t =>
            {
                var all = new JObject { ["name"] = t.Name };
                if (t.Kind != t.Name)
                    all["kind"] = t.Kind;
                all["count"] = t.Count;
                return all;
            })
        );
        CourseFileWriter.Add(
            course,
            "toolSets",
            chest.Sets.Select(s => new JObject
            {
                ["name"] = s.Name,
                ["tools"] = new JArray(
                    s.Tools.Select(t => new JObject { ["kind"] = t.Kind, ["count"] = t.Count })
                ),
            })
        );
        if (chest.SharpenAfter != ToolChest.UsualSharpenAfter)
            course["sharpenAfter"] = chest.SharpenAfter;
    }

    /// <summary>The tools, or null where the file has none.</summary>
    public static ToolChest? Read(FileNode course, FileFindings findings)
    {
        if (!course.Has("tools") && !course.Has("toolSets") && !course.Has("sharpenAfter"))
            return null;
        var nodes = new Dictionary<string, FileNode> { [""] = course };
        var tools = new List<ShopTool>();
        foreach (var item in course.Items("tools", ToolChecks.MostTools, "tools"))
        {
            if (FileNode.Open(item, "a tool", findings, FileFields.Tool) is not { } node)
                continue;
            nodes[$"Tools[{tools.Count}]."] = node;
            var name = node.Text("name");
            tools.Add(new(name, node.Text("kind", name), node.Whole("count", 1)));
        }

        var sets = new List<ToolSet>();
        foreach (var item in course.Items("toolSets", ToolChecks.MostSets, "tool sets"))
        {
            if (FileNode.Open(item, "a tool set", findings, FileFields.ToolSet) is not { } node)
                continue;
            nodes[$"Sets[{sets.Count}]."] = node;
            var inSet = new List<SetTool>();
            foreach (var tool in node.Items("tools", ToolChecks.MostInASet, "tools"))
            {
                if (
                    FileNode.Open(tool, "a tool of a set", findings, FileFields.SetTool)
                    is not { } line
                )
                    continue;
                nodes[$"Sets[{sets.Count}].Tools[{inSet.Count}]."] = line;
                inSet.Add(new(line.Text("kind"), line.Has("count") ? line.Whole("count", 1) : 1));
            }

            sets.Add(new(node.Text("name"), inSet));
        }

        var chest = ToolStore.Tidy(
            new(
                tools,
                sets,
                course.Has("sharpenAfter")
                    ? course.Whole("sharpenAfter", ToolChest.UsualSharpenAfter)
                    : ToolChest.UsualSharpenAfter
            )
        );
        foreach (var (field, sentence) in ToolChecks.ProblemsIn(chest))
        {
            var at =
                field.LastIndexOf("].", StringComparison.Ordinal) is var dot && dot >= 0
                    ? dot + 2
                    : 0;
            nodes[field[..at]].Problem(PartReader.FileFieldOf(field[at..]), sentence);
        }

        return chest;
    }

    public static void ToRow(ToolChest? chest, CourseRow course)
    {
        if (chest is null)
            return;
        course.Tools = new() { CourseId = course.Id };
        course.Tools.Take(chest);
    }
}
