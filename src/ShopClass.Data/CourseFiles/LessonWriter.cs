using System.Globalization;
using Newtonsoft.Json.Linq;
using ShopClass.Core.Lessons;
using ShopClass.Data.Courses;
using ShopClass.Data.Students;

namespace ShopClass.Data.CourseFiles;

/// <summary>Writes stations, demonstrations and lessons; a course without any writes nothing.</summary>
internal static class LessonWriter
{
    /// <summary>Adds them to a course.</summary>
    /// <param name="course">The course.</param>
    /// <param name="students">Its students in the order of the file.</param>
    /// <param name="all">The course as written so far.</param>
    public static void Add(CourseRow course, IReadOnlyList<StudentRow> students, JObject all)
    {
        if (course.Shop?.ToView() is { } shop)
        {
            all["stations"] = Stations(shop.Stations);
            if (shop.Demonstrations.Count > 0)
                all["demonstrations"] = new JArray(
                    shop.Demonstrations.Select(d => new JObject
                    {
                        ["skill"] = FileWords.Skills.For(d.Skill),
                        ["minutes"] = d.Minutes,
                    })
                );
        }

        if (course.Lessons.Count > 0)
            all["lessons"] = new JArray(
                course
                    .Lessons.OrderBy(l => l.Date)
                    .ThenBy(l => l.Start)
                    .ThenBy(l => l.Title, Access.Ordering.OfNames)
                    .ThenBy(l => l.Id)
                    .Select(l => LessonOf(l.ToLesson(), students))
            );
    }

    private static JObject LessonOf(Lesson lesson, IReadOnlyList<StudentRow> students)
    {
        var all = new JObject
        {
            ["title"] = lesson.Title,
            ["date"] = lesson.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        };
        if (lesson.Start is { } start)
            all["start"] = start.ToString("HH:mm", CultureInfo.InvariantCulture);
        all["minutes"] = lesson.Minutes;
        if (lesson.Stations is { } stations)
            all["stations"] = Stations(stations);
        if (lesson.Shows.Count > 0)
            all["shows"] = new JArray(lesson.Shows.Select(FileWords.Skills.For));
        var absent = students
            .Index()
            .Where(s => lesson.Absent.Contains(s.Item.Id.ToString()))
            .Select(s => Reference(s.Index, students))
            .ToList();
        if (absent.Count > 0)
            all["absent"] = new JArray(absent);
        return all;
    }

    private static JToken Reference(int index, IReadOnlyList<StudentRow> students) =>
        students.Count(s => s.Name == students[index].Name) == 1 ? students[index].Name : index + 1;

    private static JObject Stations(StationCounts stations) =>
        new()
        {
            ["sawBenches"] = stations.SawBenches,
            ["vises"] = stations.Vises,
            ["benchHooks"] = stations.BenchHooks,
            ["sharpening"] = stations.Sharpening,
        };
}
