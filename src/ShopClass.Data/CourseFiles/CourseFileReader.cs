using System.Text;
using System.Text.Json;
using Newtonsoft.Json;
using Newtonsoft.Json.Linq;
using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Core.Projects;
using ShopClass.Data.Access;

namespace ShopClass.Data.CourseFiles;

/// <summary>Reads a course file whole: either all of it is right, or every problem is named with its line.</summary>
internal static class CourseFileReader
{
    private const int DeepestNesting = 16;

    private static readonly UTF8Encoding Strict = new(false, throwOnInvalidBytes: true);

    /// <summary>What a file holds: a course or a project, or neither when there are problems.</summary>
    public sealed record Contents(
        CourseDraft? Course,
        Project? Project,
        IReadOnlyList<FileProblem> Problems
    )
    {
        /// <summary>Supplies of the project.</summary>
        public IReadOnlyList<Supply> Supplies { get; init; } = [];
    }

    public static Contents Read(ReadOnlyMemory<byte> file)
    {
        var findings = new FileFindings();
        var contents = Parse(file, findings) is { } root
            ? ReadRoot(root, findings)
            : new(null, null, []);
        return findings.Any ? new(null, null, findings.InOrder) : contents;
    }

    /// <summary>
    /// Two readers: the strict one refuses what is no JSON and says where; the other keeps the line of every value.
    /// </summary>
    private static JToken? Parse(ReadOnlyMemory<byte> file, FileFindings findings)
    {
        if (file.Span.StartsWith("\uFEFF"u8))
        {
            file = file[3..];
        }

        try
        {
            var text = Strict.GetString(file.Span);
            using (JsonDocument.Parse(text, new() { MaxDepth = DeepestNesting })) { }

            using var reader = new JsonTextReader(new StringReader(text))
            {
                DateParseHandling = DateParseHandling.None,
                FloatParseHandling = FloatParseHandling.Decimal,
                MaxDepth = DeepestNesting,
            };
            return JToken.ReadFrom(
                reader,
                new()
                {
                    LineInfoHandling = LineInfoHandling.Load,
                    DuplicatePropertyNameHandling = DuplicatePropertyNameHandling.Error,
                }
            );
        }
        catch (DecoderFallbackException)
        {
            findings.Add(0, "This is not a text file in UTF-8, so it cannot be a course file.");
        }
        catch (System.Text.Json.JsonException slip)
        {
            findings.Add(
                (int)(slip.LineNumber ?? 0) + 1,
                slip.Message.Contains("depth", StringComparison.Ordinal)
                    ? "Braces and brackets are nested too deeply here for a course file."
                    : "From here on the file is not JSON. Look for a comma, a quotation mark or a bracket missing here or just before."
            );
        }
        catch (JsonReaderException slip)
        {
            findings.Add(
                slip.LineNumber,
                slip.Message.Contains("already exists", StringComparison.Ordinal)
                    ? $"The field “{slip.Path?.Split('.')[^1]}” stands here a second time. Keep one of the two."
                    : "This cannot be read: a number here is too large or too finely divided."
            );
        }

        return null;
    }

    private static Contents ReadRoot(JToken root, FileFindings findings)
    {
        if (root is not JObject { } file || !file.ContainsKey("shopclass"))
        {
            findings.Add(
                root,
                "This is not a course file: it does not begin with \"shopclass\": 1."
            );
            return new(null, null, []);
        }

        if (file["shopclass"] is not JValue { Value: 1L })
        {
            findings.Add(
                file["shopclass"],
                "This course file is of another version. Only version 1 can be read here."
            );
            return new(null, null, []);
        }

        switch ((file["kind"] as JValue)?.Value as string)
        {
            case "course":
                return new(ReadCourse(file, findings), null, []);
            case "project":
                return new(null, ReadProject(file, findings), [])
                {
                    Supplies = KitsFile.ReadSupplies(file["project"] ?? file, findings),
                };
            default:
                findings.Add(
                    file["kind"] ?? file,
                    "The field “kind” says what the file holds: “course” or “project”."
                );
                return new(null, null, []);
        }
    }

    private static Project? ReadProject(JObject file, FileFindings findings)
    {
        if (FileNode.Open(file, "a project file", findings, FileFields.ProjectFile) is not { } node)
            return null;
        var unit = node.Choice("unit", FileWords.Units) ?? default;
        if (node.Has("project"))
            return PartReader.ReadProject(
                node.At("project"),
                CourseRules.DefaultsFor(unit),
                findings
            );
        node.Problem("project", "The field “project” is missing in a project file.");
        return null;
    }

    private static CourseDraft? ReadCourse(JObject file, FileFindings findings)
    {
        var top = FileNode.Open(file, "a course file", findings, FileFields.CourseFile);
        if (top?.Child("course", "a course", FileFields.Course) is not { } node)
            return null;
        var name = Wording.Tidy(node.Text("name"));
        if (Wording.ProblemWithName(name) is { } sentence)
        {
            node.Problem("name", sentence);
        }

        var rules = ReadRules(node);
        var projects = new List<Project>();
        var supplies = new List<IReadOnlyList<Supply>>();
        foreach (var item in node.Items("projects", StoreLimits.ProjectsInACourse, "projects"))
        {
            // A project that cannot be read at all keeps its place, so that boards may still name the others.
            projects.Add(
                PartReader.ReadProject(item, rules, findings) ?? new Project { Name = "" }
            );
            supplies.Add(KitsFile.ReadSupplies(item, findings));
        }

        var students = new List<StudentDraft>();
        foreach (
            var item in node.Items("students", StoreLimits.StudentsInACourse, "students")
                .TakeWhile(_ => !findings.IsFull)
        )
        {
            if (BoardReader.ReadStudent(item, projects, rules, findings) is { } student)
            {
                students.Add(student);
            }
        }

        return new(name, rules, projects, students)
        {
            Materials = MaterialsFile.Read(node, rules, findings),
            Supplies = supplies,
            Tools = ToolsFile.Read(node, findings),
            Labels = KitsFile.ReadLabels(node, rules.Unit),
            Lessons = LessonReader.Read(node, students, findings),
            TechniqueNotes = TechniqueReader.Read(node),
            Learned = LearnedFile.Read(node, findings),
            FirstCutsUntimed = node.Flag("firstCutsUntimed"),
            BoardsWaitForYes = node.Flag("boardsWaitForYes"),
        };
    }

    private static CourseRules ReadRules(FileNode course)
    {
        var unit = course.Choice("unit", FileWords.Units) ?? UnitSystem.Inch;
        var rules = CourseRules.DefaultsFor(unit);
        rules = rules with
        {
            Precision =
                course.Choice("precision", FileWords.Precisions, rules.Precision)
                ?? rules.Precision,
        };
        if (!course.Has("rules"))
            return rules;
        if (course.Child("rules", "the settings", FileFields.Rules) is not { } node)
            return rules;
        foreach (var rule in RuleBook.Lengths)
        {
            rules = rule.With(
                rules,
                node.Length(rule.Key, unit, rule.Get(rules)) ?? rule.Get(rules)
            );
        }

        rules = rules with
        {
            PlaningTaught = node.Flag("planingTaught", rules.PlaningTaught),
            EdgeGluingTaught = node.Flag("edgeGluingTaught", rules.EdgeGluingTaught),
            MostGlueUpStrips = ReadMostStrips(node, rules.MostGlueUpStrips),
            HardGoingAbove = ReadHardGoing(node, rules.HardGoingAbove),
            ShopHumidity = ReadHumidity(node, RuleBook.ShopHumidityKey, rules.ShopHumidity),
            RoomHumidity = ReadHumidity(node, RuleBook.RoomHumidityKey, rules.RoomHumidity),
        };
        foreach (var (key, sentence) in RuleBook.ProblemsIn(rules))
        {
            (key == RuleBook.PrecisionKey ? course : node).Problem(key, sentence);
        }

        return rules;
    }

    private static int ReadMostStrips(FileNode rules, int otherwise)
    {
        var most = rules.Number(RuleBook.MostGlueUpStripsKey, otherwise);
        if (
            most is >= RuleBook.LeastGlueUpStrips and <= RuleBook.UsualGlueUpStrips
            && decimal.IsInteger(most)
        )
            return (int)most;
        rules.Problem(
            RuleBook.MostGlueUpStripsKey,
            $"This is a whole number from {RuleBook.LeastGlueUpStrips} to {RuleBook.UsualGlueUpStrips}."
        );
        return otherwise;
    }

    private static int ReadHumidity(FileNode rules, string key, int otherwise)
    {
        var humidity = rules.Number(key, otherwise);
        if (
            humidity is >= RuleBook.LeastHumidity and <= RuleBook.MostHumidity
            && decimal.IsInteger(humidity)
        )
            return (int)humidity;
        rules.Problem(
            key,
            $"This is a whole number of per cent from {RuleBook.LeastHumidity} to {RuleBook.MostHumidity}."
        );
        return otherwise;
    }

    /// <summary>In the file a specific gravity is written as such, 0.55; it is kept in hundredths.</summary>
    private static int ReadHardGoing(FileNode rules, int otherwise)
    {
        var gravity = rules.Number(RuleBook.HardGoingKey, otherwise / 100m);
        if (gravity is > 0 and <= RuleBook.MostHardGoing / 100m && decimal.IsInteger(gravity * 100))
            return (int)(gravity * 100);
        rules.Problem(
            RuleBook.HardGoingKey,
            "This is a specific gravity from 0.01 to 1.25 with at most two decimals, such as 0.55."
        );
        return otherwise;
    }
}
