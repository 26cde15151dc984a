using System.Globalization;
using ShopClass.Core.Lessons;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>What the sheets of a plan of lessons say.</summary>
/// <param name="CourseName">The course.</param>
/// <param name="ProjectName">What the class builds.</param>
/// <param name="Request">What the plan was made for.</param>
/// <param name="Plan">The plan.</param>
/// <param name="PlanNumber">Its version.</param>
/// <param name="MadeUtc">When it was made.</param>
/// <param name="PrintedOn">The date printed on the sheet.</param>
/// <param name="IsOutOfDate">Whether lessons, stations or steps have changed since; the sheets then say so.</param>
public sealed record LessonSheetContent(
    string CourseName,
    string ProjectName,
    LessonRequest Request,
    LessonPlan Plan,
    int PlanNumber,
    DateTime MadeUtc,
    DateOnly PrintedOn,
    bool IsOutOfDate
)
{
    /// <summary>Ids of the steps ticked so far, by student; for the sheet on the wall.</summary>
    public IReadOnlyDictionary<string, IReadOnlySet<string>> Ticked { get; init; } =
        new Dictionary<string, IReadOnlySet<string>>(StringComparer.Ordinal);

    internal string Line =>
        $"{CourseName}, {ProjectName}. Plan of lessons {PlanNumber}, made {Date(DateOnly.FromDateTime(MadeUtc))}, printed {Date(PrintedOn)}.";

    internal string LessonLine(int lesson) =>
        $"{lesson + 1}. {Request.Lessons[lesson].Title}, {Date(Request.Lessons[lesson].Date)}{Hour(Request.Lessons[lesson])}";

    private static string Hour(Lesson lesson) =>
        lesson.Start is { } start ? start.ToString(", H:mm", CultureInfo.InvariantCulture) : "";

    internal PageFrame Frame(string title, Paper paper) =>
        new(
            paper,
            title,
            title,
            $"{CourseName}, plan of lessons {PlanNumber} of {Date(DateOnly.FromDateTime(MadeUtc))}, printed {Date(PrintedOn)}"
        );

    internal void WriteWarning(Sheet sheet)
    {
        if (IsOutOfDate)
            sheet.Warning(
                "Out of date: lessons, stations or students' plans have changed since this was made. Ask for a new one."
            );
    }

    internal static string Date(DateOnly date) =>
        date.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);
}
