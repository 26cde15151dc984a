using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Progress;
using ShopClass.Web.Features.Shell;

namespace ShopClass.Web.Features.Room;

/// <summary>A step of a student that waits for the instructor.</summary>
/// <param name="Who">Whose.</param>
/// <param name="What">The step, since when.</param>
public sealed record Call(StudentAtWork Who, StepWaiting What)
{
    public string Key => $"{Who.InHand!.Plan.Id:N}-{What.State.Step.Number}";
}

/// <summary>Who works at one sort of station now.</summary>
public sealed record AtStation(Station Station, IReadOnlyList<string> Names);

/// <summary>Everything the room shows, put in order.</summary>
/// <param name="Students">All students, by shown name.</param>
/// <param name="Here">Who is here.</param>
/// <param name="Now">When it was read.</param>
public sealed record RoomBoard(
    IReadOnlyList<StudentAtWork> Students,
    IReadOnlySet<Guid> Here,
    DateTime Now
)
{
    private static readonly TimeSpan Evening = TimeSpan.FromHours(5);

    /// <summary>Calls for help, the longest waiting first.</summary>
    public IReadOnlyList<Call> Help => Calls(s => s.Help);

    /// <summary>Steps to look at, the longest waiting first.</summary>
    public IReadOnlyList<Call> Checks => Calls(s => s.Checks);

    /// <summary>Steps with a spoiled piece, the longest waiting first.</summary>
    public IReadOnlyList<Call> Spoiled => Calls(s => s.Spoiled);

    /// <summary>Stations with whoever is here and has work there next, in the order of the shop.</summary>
    public IReadOnlyList<AtStation> Stations =>
        [
            .. from student in Students
            where Here.Contains(student.StudentId)
            let next = student.InHand?.Progress.Next
            where next is not null
            group student.Shown by next.Step.Station into names
            orderby names.Key
            select new AtStation(names.Key, [.. names]),
        ];

    /// <summary>
    /// The fault most students had this evening, as a sentence; null unless at least three had it and they are a quarter
    /// of those who had anything checked or sent back at all.
    /// </summary>
    public string? CommonFault
    {
        get
        {
            var faults = (
                from student in Students
                from fault in student.Faults
                where Now - fault.AtUtc < Evening
                select (student.StudentId, fault.Fault)
            )
                .Distinct()
                .ToList();
            var worst = faults
                .GroupBy(f => f.Fault, StringComparer.OrdinalIgnoreCase)
                .OrderByDescending(g => g.Count())
                .ThenBy(g => g.Key, StringComparer.Ordinal)
                .FirstOrDefault();
            var working = Students.Count(s => s.LastUtc is { } last && Now - last < Evening);
            return worst is null || worst.Count() < 3 || 4 * worst.Count() < working
                ? null
                : $"{worst.Count()} of {working.Count("student")} this evening: {worst.Key}. Show it once more to everybody.";
        }
    }

    private IReadOnlyList<Call> Calls(Func<StudentAtWork, IReadOnlyList<StepWaiting>> of) =>
        [
            .. from student in Students
            from waiting in of(student)
            orderby waiting.SinceUtc, student.Shown
            select new Call(student, waiting),
        ];
}
