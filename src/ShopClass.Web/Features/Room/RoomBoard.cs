using ShopClass.Core.Lessons;
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

/// <summary>Who works at one sort of station now, and who waits for a place there.</summary>
/// <param name="Station">The station.</param>
/// <param name="Places">How many places it has; null where they are not counted.</param>
/// <param name="Names">Who is there, the longest first: as many as there are places.</param>
/// <param name="Waiting">Who waits for a place, in the order they came.</param>
public sealed record AtStation(
    Station Station,
    int? Places,
    IReadOnlyList<string> Names,
    IReadOnlyList<string> Waiting
);

/// <summary>Everything the room shows, put in order.</summary>
/// <param name="Students">All students, by shown name.</param>
/// <param name="Here">Who is here.</param>
/// <param name="Now">When it was read.</param>
/// <param name="Plans">The plans of lessons of the day; null where none were read.</param>
public sealed record RoomBoard(
    IReadOnlyList<StudentAtWork> Students,
    IReadOnlySet<Guid> Here,
    DateTime Now,
    ClassPlans? Plans = null
)
{
    private static readonly TimeSpan Evening = TimeSpan.FromHours(5);

    /// <summary>Calls for help, the longest waiting first.</summary>
    public IReadOnlyList<Call> Help => Calls(s => s.Help);

    /// <summary>Steps to look at, the longest waiting first.</summary>
    public IReadOnlyList<Call> Checks => Calls(s => s.Checks);

    /// <summary>Steps with a spoiled piece, the longest waiting first.</summary>
    public IReadOnlyList<Call> Spoiled => Calls(s => s.Spoiled);

    /// <summary>
    /// Stations with whoever is here and has work there next, in the order of the shop. Whoever came to that step first
    /// has a place, the others wait.
    /// </summary>
    public IReadOnlyList<AtStation> Stations =>
        [
            .. from student in Students
            where Here.Contains(student.StudentId)
            let next = student.InHand?.Progress.Next
            where next is not null
            group student by next.Step.Station into there
            orderby there.Key
            let names = there
                .OrderBy(s => s.LastUtc ?? DateTime.MinValue)
                .ThenBy(s => s.Shown, StringComparer.Ordinal)
                .Select(s => s.Shown)
                .ToList()
            let places = Plans?.Stations?.PlacesAt(there.Key)
            select new AtStation(
                there.Key,
                places,
                [.. names.Take(places ?? names.Count)],
                [.. names.Skip(places ?? names.Count)]
            ),
        ];

    /// <summary>Where a student stands against the plan of lessons; null where there is none.</summary>
    public PlanStanding? StandingOf(StudentAtWork who) => Plans?.Of(who);

    /// <summary>How many are behind the plan.</summary>
    public int Behind => Students.Count(s => StandingOf(s) is { Behind: > 0 });

    /// <summary>How many are ahead of it, with nothing overdue.</summary>
    public int Ahead => Students.Count(s => StandingOf(s) is { Behind: 0, Ahead: > 0 });

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
