using ShopClass.Core.Progress;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Lessons;
using ShopClass.Data.Plans;
using ShopClass.Data.Progress;
using ShopClass.Web.Features.Room;

namespace ShopClass.Web.Tests.Room;

public sealed class RoomBoardTests
{
    private static readonly DateTime Now = new(2030, 3, 4, 20, 0, 0, DateTimeKind.Utc);

    [Theory]
    [InlineData(3, 12, true)]
    [InlineData(2, 4, false)] // two may be chance
    [InlineData(3, 13, false)] // less than a quarter of the class
    public void A_fault_of_many_this_evening_is_worth_showing_again(int had, int working, bool said)
    {
        var room = Room([
            .. Enumerable
                .Range(0, working)
                .Select(i => At(i, i < had ? [Fault("out of square", 1)] : [])),
        ]);

        Assert.Equal(
            said
                ? $"{had} of {working} students this evening: out of square. Show it once more to everybody."
                : null,
            room.CommonFault
        );
    }

    [Fact]
    public void One_student_s_fault_counts_once_and_last_week_s_not_at_all()
    {
        var room = Room([
            At(0, [Fault("too short", 1), Fault("too short", 2), Fault("too short", 3)]),
            At(1, [Fault("too short", 24 * 7)]),
            At(2, [Fault("too short", 24 * 7)]),
        ]);

        Assert.Null(room.CommonFault);
    }

    [Fact]
    public void Whoever_came_first_has_the_place_and_the_others_wait()
    {
        var early = AtTheSaw("Early", minutesAgo: 30);
        var late = AtTheSaw("Late", minutesAgo: 5);
        var gone = AtTheSaw("Gone", minutesAgo: 60);
        var room = new RoomBoard(
            [late, early, gone],
            new HashSet<Guid> { late.StudentId, early.StudentId },
            Now,
            new(
                new Dictionary<Guid, StoredLessonPlan>(),
                new(ShopView.Usual with { Stations = new(1, 9, 9, 9) }, []),
                DateOnly.FromDateTime(Now)
            )
        );

        var at = Assert.Single(room.Stations);

        Assert.Equal((Station.SawBench, 1), (at.Station, at.Places));
        Assert.Equal(["Early"], at.Names);
        Assert.Equal(["Late"], at.Waiting);
    }

    private static StudentAtWork AtTheSaw(string name, int minutesAgo)
    {
        var step = new Step
        {
            Id = "rip:1",
            Number = 1,
            Kind = StepKind.Rip,
            Skill = Skill.Ripping,
            Station = Station.SawBench,
            Title = "Rip A1",
            Pieces = ["A1"],
            Reason = "made up",
            Time = new(0, 300, 0, "made up"),
        };
        var student = Guid.NewGuid();
        var plan = new StoredPlan(
            Guid.NewGuid(),
            student,
            Guid.NewGuid(),
            1,
            Now,
            null!,
            new WorkSequence([step]),
            false
        );
        return new(
            student,
            name,
            new(plan, Guid.NewGuid(), WorkProgress.Of([step], [])),
            Now.AddMinutes(-minutesAgo),
            [],
            [],
            [],
            []
        );
    }

    private static RoomBoard Room(IReadOnlyList<StudentAtWork> students) =>
        new(students, new HashSet<Guid>(), Now);

    private static FaultSaid Fault(string fault, int hoursAgo) =>
        new(fault, Now.AddHours(-hoursAgo));

    private static StudentAtWork At(int number, IReadOnlyList<FaultSaid> faults) =>
        new(Guid.NewGuid(), $"Student {number}", null, Now.AddHours(-1), [], [], [], faults);
}
