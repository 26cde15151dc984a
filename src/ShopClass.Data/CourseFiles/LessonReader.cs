using System.Globalization;
using Newtonsoft.Json.Linq;
using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Access;
using ShopClass.Data.Lessons;

namespace ShopClass.Data.CourseFiles;

/// <summary>A course's lessons as a file tells them.</summary>
/// <param name="Stations">The shop's stations; null where the file has none.</param>
/// <param name="Demonstrations">How long demonstrations take, where not as usual.</param>
/// <param name="Lessons">The lessons, each with the places of absent students in the file's list, from 0.</param>
internal sealed record LessonsDraft(
    StationCounts? Stations,
    IReadOnlyList<SkillMinutes> Demonstrations,
    IReadOnlyList<(Lesson Lesson, IReadOnlyList<int> Absent)> Lessons
)
{
    public static LessonsDraft None { get; } = new(null, [], []);
}

/// <summary>Reads stations, demonstrations and lessons.</summary>
internal static class LessonReader
{
    public static LessonsDraft Read(
        FileNode course,
        IReadOnlyList<StudentDraft> students,
        FileFindings findings
    )
    {
        var demonstrations = course
            .Items("demonstrations", SkillBook.Entries.Count, "demonstrations")
            .Select(item => ReadDemonstration(item, findings))
            .OfType<SkillMinutes>()
            .DistinctBy(d => d.Skill)
            .OrderBy(d => d.Skill)
            .ToList();
        var lessons = course
            .Items("lessons", StoreLimits.LessonsInACourse, "lessons")
            .TakeWhile(_ => !findings.IsFull)
            .Select(item => ReadLesson(item, students, findings))
            .OfType<(Lesson, IReadOnlyList<int>)>()
            .ToList();
        return new(ReadStations(course), demonstrations, lessons);
    }

    private static StationCounts? ReadStations(FileNode holder)
    {
        if (
            !holder.Has("stations")
            || holder.Child("stations", "the stations", FileFields.Stations) is not { } node
        )
            return null;
        var stations = new StationCounts(
            node.Whole("sawBenches", 0),
            node.Whole("vises", 0),
            node.Whole("benchHooks", 0),
            node.Whole("sharpening", 0)
        );
        foreach (var (field, sentence) in LessonChecks.ProblemsIn(stations))
            node.Problem(PartReader.FileFieldOf(field), sentence);
        return stations;
    }

    private static SkillMinutes? ReadDemonstration(JToken token, FileFindings findings)
    {
        if (
            FileNode.Open(token, "a demonstration", findings, FileFields.Demonstration)
            is not { } node
        )
            return null;
        if (node.Choice("skill", FileWords.Skills) is not { } skill)
            return null;
        var demonstration = new SkillMinutes(skill, node.Whole("minutes", 0));
        foreach (var (_, sentence) in LessonChecks.ProblemsIn([demonstration]))
            node.Problem("minutes", sentence);
        return demonstration;
    }

    private static (Lesson, IReadOnlyList<int>)? ReadLesson(
        JToken token,
        IReadOnlyList<StudentDraft> students,
        FileFindings findings
    )
    {
        if (FileNode.Open(token, "a lesson", findings, FileFields.Lesson) is not { } node)
            return null;
        var lesson = new Lesson
        {
            Title = Wording.Tidy(node.Text("title")),
            Date = ReadDate(node),
            Start = ReadStart(node),
            Minutes = node.Whole("minutes", Lesson.FewestMinutes),
            Stations = ReadStations(node),
            Shows =
            [
                .. node.Items("shows", SkillBook.Entries.Count, "skills")
                    .Select(s => ReadSkill(s, node))
                    .OfType<Skill>()
                    .Distinct(),
            ],
        };
        foreach (var problem in LessonStore.ProblemsIn(lesson))
            node.Problem(PartReader.FileFieldOf(problem.Field), problem.Sentence);
        int[] absent =
        [
            .. node.Items("absent", StoreLimits.StudentsInACourse, "students")
                .Select(s => ReadStudent(s, students, node))
                .OfType<int>()
                .Distinct(),
        ];
        return (lesson, absent);
    }

    private static DateOnly ReadDate(FileNode node)
    {
        var text = node.Text("date");
        if (
            DateOnly.TryParseExact(
                text,
                "yyyy-MM-dd",
                CultureInfo.InvariantCulture,
                DateTimeStyles.None,
                out var date
            )
        )
            return date;
        node.Problem(
            "date",
            "“date” is a day written as year, month and day, such as \"2027-01-12\"."
        );
        return new(2000, 1, 1);
    }

    private static TimeOnly? ReadStart(FileNode node)
    {
        if (!node.Has("start"))
            return null;
        if (
            TimeOnly.TryParseExact(
                node.Text("start"),
                "HH:mm",
                CultureInfo.InvariantCulture,
                DateTimeStyles.None,
                out var start
            )
        )
            return start;
        node.Problem("start", "“start” is an hour of the day, such as \"18:30\".");
        return null;
    }

    private static Skill? ReadSkill(JToken token, FileNode lesson)
    {
        if (
            token is JValue { Type: JTokenType.String, Value: string word }
            && FileWords.Skills.Find(word) is { } skill
        )
            return skill;
        lesson.Problem(
            "shows",
            $"“shows” is a list of skills: {string.Join(", ", FileWords.Skills.Words.Select(w => $"“{w}”"))}."
        );
        return null;
    }

    // By name; by number in the list, from 1, where two have the same name.
    private static int? ReadStudent(
        JToken token,
        IReadOnlyList<StudentDraft> students,
        FileNode lesson
    )
    {
        if (token is JValue { Value: long number } && number >= 1 && number <= students.Count)
            return (int)number - 1;
        if (token is JValue { Value: string name })
        {
            int[] named =
            [
                .. students.Index().Where(s => s.Item.Card.Name == name).Select(s => s.Index),
            ];
            if (named.Length == 1)
                return named[0];
        }

        lesson.Problem(
            "absent",
            "“absent” is a list of students, each by the name in this file; by the number in its list, from 1, where two have one name."
        );
        return null;
    }
}
