using System.Globalization;
using Newtonsoft.Json;
using Newtonsoft.Json.Linq;
using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Paces;
using ShopClass.Core.Projects;
using ShopClass.Data.Courses;
using ShopClass.Data.Projects;
using ShopClass.Data.Students;

namespace ShopClass.Data.CourseFiles;

/// <summary>
/// Writes course files. The same course gives the same text, and what is as usual is left out: no notes, no flags that
/// are false.
/// </summary>
internal static class CourseFileWriter
{
    private const int Version = 1;

    public static string Course(CourseRow course, Learned learned)
    {
        var unit = course.Rules.Unit;
        ProjectRow[] projects = [.. course.Projects.OrderBy(p => p.Position).ThenBy(p => p.Id)];
        var students = Students(course.Students, projects, unit);
        var all = new JObject
        {
            ["name"] = course.Name,
            ["unit"] = FileWords.Units.For(unit),
            ["precision"] = FileWords.Precisions.For(course.Rules.Precision),
            ["rules"] = Rules(course.Rules),
        };
        Add(all, "boardsWaitForYes", course.BoardsWaitForYes);
        Add(all, "firstCutsUntimed", course.FirstCutsUntimed);
        all["projects"] = new JArray(projects.Select(p => Project(p, p.ToProject(), unit)));
        all["students"] = new JArray(students.Select(s => s.Written));
        Add(
            all,
            "techniques",
            course.TechniqueNotes.Select(n => new JObject { ["about"] = n.Key, ["words"] = n.Text })
        );
        MaterialsFile.Write(all, course);
        ToolsFile.Write(all, course);
        KitsFile.WriteLabels(all, course);
        LessonWriter.Add(course, [.. students.Select(s => s.Row)], all);
        LearnedFile.Write(all, learned);
        return TextOf(
            new JObject
            {
                ["shopclass"] = Version,
                ["kind"] = "course",
                ["course"] = all,
            }
        );
    }

    public static string Project(ProjectRow project, UnitSystem unit) =>
        TextOf(
            new JObject
            {
                ["shopclass"] = Version,
                ["kind"] = "project",
                ["unit"] = FileWords.Units.For(unit),
                ["project"] = Project(project, project.ToProject(), unit),
            }
        );

    private static JObject Rules(CourseRules rules)
    {
        var all = new JObject();
        foreach (var rule in RuleBook.Lengths)
        {
            all[rule.Key] = LengthWriter.WriteExactWithUnit(rule.Get(rules), rules.Unit);
        }

        all["planingTaught"] = rules.PlaningTaught;
        all["edgeGluingTaught"] = rules.EdgeGluingTaught;
        all[RuleBook.MostGlueUpStripsKey] = rules.MostGlueUpStrips;
        all[RuleBook.HardGoingKey] = rules.HardGoingAbove / 100m;
        all[RuleBook.ShopHumidityKey] = rules.ShopHumidity;
        all[RuleBook.RoomHumidityKey] = rules.RoomHumidity;
        return all;
    }

    private static JObject Project(ProjectRow row, Project project, UnitSystem unit)
    {
        var all = new JObject { ["name"] = project.Name };
        Add(all, "notes", project.Notes);
        all["parts"] = new JArray(project.Parts.Select(p => Part(p, unit)));
        Add(all, "joints", project.Joints.Select(j => JointWriter.Joint(j, unit)));
        Add(all, "sizesThatAgree", project.SizeChecks.Select(c => JointWriter.SizeCheck(c, unit)));
        KitsFile.WriteSupplies(all, row);
        return all;
    }

    private static JObject Part(Part part, UnitSystem unit)
    {
        var all = new JObject
        {
            ["letter"] = part.Letter,
            ["name"] = part.Name,
            ["quantity"] = part.Quantity,
            ["thickness"] = LengthWriter.WriteExactWithUnit(part.Finished.Thickness, unit),
            ["width"] = LengthWriter.WriteExactWithUnit(part.Finished.Width, unit),
            ["length"] = LengthWriter.WriteExactWithUnit(part.Finished.Length, unit),
        };
        if (part.Grain is not GrainDirection.AlongLength)
        {
            all["grain"] = FileWords.Grains.For(part.Grain);
        }

        Add(all, "showFace", part.ShowFace);
        Add(all, "glueUpAllowed", part.GlueUpAllowed);
        Add(all, "acceptsHiddenDefect", part.AcceptsHiddenDefect);
        if (part.ReferenceFace is not ReferenceFace.Truest)
        {
            all["referenceFace"] = FileWords.ReferenceFaces.For(part.ReferenceFace);
        }

        Add(all, "jointNotes", part.JointNotes);
        Add(all, "open", part.Open.Select(o => JointWriter.Open(o, unit)));
        return all;
    }

    /// <summary>By shown name; where names are the same, by all that is written about them, since nothing else lasts.</summary>
    private static List<(StudentRow Row, JObject Written)> Students(
        IEnumerable<StudentRow> students,
        IReadOnlyList<ProjectRow> projects,
        UnitSystem unit
    ) =>
        [
            .. students
                .Select(s => (Row: s, Written: Student(s, projects, unit)))
                .OrderBy(s => s.Row.ToView().Shown, Access.Ordering.OfNames)
                .ThenBy(s => s.Written.ToString(Formatting.None), StringComparer.Ordinal),
        ];

    private static JObject Student(
        StudentRow student,
        IReadOnlyList<ProjectRow> projects,
        UnitSystem unit
    )
    {
        var all = new JObject { ["name"] = student.Name };
        Add(all, "alias", student.Alias);
        Add(all, "leftHanded", student.IsLeftHanded);
        Add(
            all,
            "boards",
            from project in projects.Index()
            from board in student.Boards.OrderBy(b => b.Position)
            where board.ProjectId == project.Item.Id
            select Board(board.ToBoard(), ReferenceTo(project.Index, projects), unit)
        );
        return all;
    }

    private static JToken ReferenceTo(int index, IReadOnlyList<ProjectRow> projects) =>
        projects.Count(p => p.Name == projects[index].Name) == 1 ? projects[index].Name : index + 1;

    private static JObject Board(Board board, JToken project, UnitSystem unit)
    {
        var all = new JObject { ["project"] = project };
        all.Merge(Sizes(board, unit));
        return all;
    }

    /// <summary>What a board is and measures, whoever's it is and wherever it lies.</summary>
    internal static JObject Sizes(Board board, UnitSystem unit)
    {
        var all = new JObject
        {
            ["name"] = board.Name,
            ["species"] = board.SpeciesId,
            ["surfacing"] = FileWords.Surfacings.For(board.Surfacing),
            ["thickness"] = LengthWriter.WriteExactWithUnit(board.Thickness, unit),
            ["widthAtStart"] = LengthWriter.WriteExactWithUnit(board.WidthAtStart, unit),
            ["widthAtMiddle"] = LengthWriter.WriteExactWithUnit(board.WidthAtMiddle, unit),
            ["widthAtEnd"] = LengthWriter.WriteExactWithUnit(board.WidthAtEnd, unit),
            ["length"] = LengthWriter.WriteExactWithUnit(board.Length, unit),
            ["trimStart"] = LengthWriter.WriteExactWithUnit(board.TrimStart, unit),
            ["trimEnd"] = LengthWriter.WriteExactWithUnit(board.TrimEnd, unit),
        };
        if (board.Cup > Length.Zero)
        {
            all["cup"] = LengthWriter.WriteExactWithUnit(board.Cup, unit);
        }

        if (board.Twist > Length.Zero)
        {
            all["twist"] = LengthWriter.WriteExactWithUnit(board.Twist, unit);
        }

        if (board.Price is { } price)
        {
            all["price"] = Price(price);
        }

        Add(all, "defects", board.Defects.Select(d => Defect(d, unit)));
        return all;
    }

    internal static JObject Price(Money price) =>
        new() { ["minorUnits"] = price.MinorUnits, ["currency"] = price.Currency };

    private static JObject Defect(Defect defect, UnitSystem unit)
    {
        var all = new JObject
        {
            ["kind"] = FileWords.Defects.For(defect.Kind),
            ["from"] = LengthWriter.WriteExactWithUnit(defect.Place.From, unit),
            ["to"] = LengthWriter.WriteExactWithUnit(defect.Place.To, unit),
            ["near"] = LengthWriter.WriteExactWithUnit(defect.Place.Near, unit),
            ["far"] = LengthWriter.WriteExactWithUnit(defect.Place.Far, unit),
        };
        if (defect.Reach is not DefectReach.Through)
        {
            all["shows"] = FileWords.Reaches.For(defect.Reach);
        }

        return all;
    }

    internal static void Add(JObject all, string field, string text)
    {
        if (text.Length > 0)
        {
            all[field] = text;
        }
    }

    internal static void Add(JObject all, string field, bool flag)
    {
        if (flag)
        {
            all[field] = true;
        }
    }

    internal static void Add(JObject all, string field, IEnumerable<JObject> items)
    {
        var list = new JArray(items);
        if (list.Count > 0)
        {
            all[field] = list;
        }
    }

    private static string TextOf(JObject file)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        using (
            var writer = new JsonTextWriter(text)
            {
                Formatting = Formatting.Indented,
                Indentation = 2,
            }
        )
        {
            file.WriteTo(writer);
        }

        return text + "\n";
    }
}
