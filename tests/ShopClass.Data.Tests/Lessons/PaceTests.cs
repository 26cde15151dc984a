using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Lessons;
using ShopClass.Core.Progress;
using ShopClass.Data.Access;
using ShopClass.Data.Lessons;
using ShopClass.Data.Progress;
using ShopClass.Data.Tests.Access;
using Xunit;

namespace ShopClass.Data.Tests.Lessons;

/// <summary>Minutes said with ticks, over a real store, into the plan of lessons.</summary>
public sealed class PaceTests(Shop shop) : IClassFixture<Shop>, IAsyncDisposable
{
    private readonly ThrowAwayStore store = shop.Copy();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public ValueTask DisposeAsync() => store.DisposeAsync();

    [Fact]
    public async Task Logged_minutes_change_the_minutes_lessons_are_planned_with()
    {
        var before = await BasisAsync();
        Assert.Null(before.Pace);
        await TickAsync(6, times: 3);

        var after = await BasisAsync();

        Assert.True(
            Seconds(after) > Seconds(before),
            "the steps are planned no longer than before"
        );
        Assert.True(
            TurnMaker.Of(after.Students).Sum(t => t.Turn.Minutes)
                > TurnMaker.Of(before.Students).Sum(t => t.Turn.Minutes)
        );
        var pace = (await store.Paces.FindAsync(shop.Owner, shop.Course.Id, Cancel))!;
        Assert.Equal(6, pace.Course.Kinds.Sum(k => k.Factor.Steps));
        Assert.All(pace.Course.Kinds, k => Assert.True(k.Factor.Hundredths > 100));
        var own = Assert.Single(pace.Students);
        Assert.Equal((shop.Student.Id.ToString(), 6), (own.Key, own.Value.Steps));
        // A step of a timed kind takes its kind's factor times the student's, up to the next ten seconds.
        var (was, now) = Ada(before)
            .Work!.Steps.Zip(Ada(after).Work!.Steps)
            .First(s =>
                s.First.Time.Work > 0 && pace.Course.Kinds.Any(k => k.Kind == s.First.Kind)
            );
        var factor =
            pace.Course.Kinds.Single(k => k.Kind == was.Kind).Factor.Hundredths
            / 100m
            * (own.Value.Hundredths / 100m);
        Assert.InRange(now.Time.Work, was.Time.Work * factor - 10, was.Time.Work * factor + 20);
    }

    [Fact]
    public async Task A_plan_made_by_the_pace_passes_the_review_and_comes_back_after_a_restart()
    {
        await TickAsync(3, times: 3);
        var request = await BasisAsync();
        var saved = Shop.Value(
            await store.LessonPlans.SaveAsync(
                shop.Owner,
                shop.Course.Id,
                shop.Project.Id,
                request,
                LessonPlanner.Plan(request, progress: null, Cancel),
                Cancel
            )
        );

        await using var restarted = store.Restarted();
        var found = (
            await restarted
                .GetRequiredService<LessonPlanStore>()
                .FindAsync(shop.Owner, saved.Id, Cancel)
        )!;

        Assert.Equal(request.Pace!.Kinds, found.Request.Pace!.Kinds);
        Assert.Equal(Seconds(request), Seconds(found.Request));
        Assert.False(found.IsOutOfDate);
    }

    [Fact]
    public async Task A_step_timed_since_leaves_a_plan_in_date_and_the_next_one_uses_it()
    {
        await TickAsync(2, times: 3);

        var old = (await store.LessonPlans.FindAsync(shop.Owner, shop.LessonPlan.Id, Cancel))!;
        var next = await BasisAsync();

        Assert.False(old.IsOutOfDate);
        Assert.Null(old.Request.Pace);
        Assert.NotNull(next.Pace);
    }

    [Fact]
    public async Task Minutes_are_counted_once_and_a_tick_taken_back_takes_them_with_it()
    {
        var work = (await store.Progress.CurrentAsync(shop.Self, shop.Student.Id, null, Cancel))!;
        var step = work.Progress.Next!.Step.Id;
        var tick = new StepAction(Guid.NewGuid(), step, StepActionKind.Tick) { Minutes = 20 };
        await SayAsync(tick);
        await SayAsync(tick);
        Assert.Equal(1, await StepsTimedAsync());

        await SayAsync(new(Guid.NewGuid(), step, StepActionKind.Untick));
        Assert.Equal(0, await StepsTimedAsync());

        await SayAsync(tick with { Id = Guid.NewGuid(), Minutes = 7 });
        Assert.Equal(1, await StepsTimedAsync());
        var now = await store.Progress.CurrentAsync(shop.Self, shop.Student.Id, null, Cancel);
        Assert.Equal(7, now!.Progress.Find(step)!.Minutes);
    }

    [Theory]
    [InlineData(StepActionKind.Tick, 0)]
    [InlineData(StepActionKind.Tick, -5)]
    [InlineData(StepActionKind.Tick, 481)]
    [InlineData(StepActionKind.Note, 5)]
    public async Task Minutes_that_cannot_be_are_refused_at_their_field(
        StepActionKind kind,
        int minutes
    )
    {
        var work = (await store.Progress.CurrentAsync(shop.Self, shop.Student.Id, null, Cancel))!;

        var outcome = await SayAsync(
            new(Guid.NewGuid(), work.Progress.Next!.Step.Id, kind, "words") { Minutes = minutes }
        );

        Assert.Equal("Minutes", Assert.Single(outcome.Problems).Field);
        await using var context = store.Open();
        Assert.Equal(0, await context.Set<StepActionRow>().CountAsync(Cancel));
    }

    [Fact]
    public async Task No_student_and_no_other_instructor_sees_a_pace()
    {
        await TickAsync(2, times: 3);

        foreach (var viewer in new Viewer[] { shop.Self, shop.Classmate, shop.OtherInstructor })
            Assert.Null(await store.Paces.FindAsync(viewer, shop.Course.Id, Cancel));
        var request = await BasisAsync();
        var plan = LessonPlanner.Plan(request, progress: null, Cancel);
        var saved = Shop.Value(
            await store.LessonPlans.SaveAsync(
                shop.Owner,
                shop.Course.Id,
                shop.Project.Id,
                request,
                plan,
                Cancel
            )
        );
        var own = (await store.LessonPlans.FindAsync(shop.Self, saved.Id, Cancel))!;
        Assert.Null(own.Request.Pace);
        Assert.Null(Assert.Single(own.Request.Students).Pace);
    }

    [Fact]
    public async Task The_room_and_the_steps_of_a_plan_go_by_the_learned_pace_and_say_from_what()
    {
        await TickAsync(4, times: 3);
        var table = (await store.Plans.FindAsync(shop.Owner, shop.PlanId, Cancel))!.Work.Steps;

        var room = await store.Progress.RoomAsync(shop.Owner, shop.Course.Id, Cancel);
        var mine = (await store.Paces.PacedAsync(shop.Self, shop.PlanId, Cancel))!;
        var owners = (await store.Paces.PacedAsync(shop.Owner, shop.PlanId, Cancel))!;

        var inHand = room.Single(s => s.StudentId == shop.Student.Id).InHand!;
        var kinds = inHand.Pace.Course.Kinds.Select(k => k.Kind).ToHashSet();
        var timed = table.Where(s => kinds.Contains(s.Kind) && s.Time.Busy > 0).ToList();
        Assert.NotEmpty(timed);
        foreach (var step in table)
        {
            var paced = owners.Work.Steps.Single(s => s.Id == step.Id);
            // Where no kind was timed, the student's own pace against the course still counts.
            Assert.Equal(step.Time.Busy > 0, paced.Time.Busy > step.Time.Busy);
            Assert.Equal(paced.Time, inHand.Paced(inHand.Progress.Find(step.Id)!.Step).Time);
        }

        Assert.Equal(owners.Work.Steps.Select(s => s.Time), mine.Work.Steps.Select(s => s.Time));
        Assert.Contains("4 timed steps", owners.Basis, StringComparison.Ordinal);
        Assert.Equal(owners.Basis, inHand.Pace.Basis);
        // What is timed next is measured against the table all the same.
        await TickAsync(1, times: 3);
        await using var context = store.Open();
        var last = await context
            .Set<StepActionRow>()
            .Where(a => a.PlannedMinutes != null)
            .OrderBy(a => a.Number)
            .LastAsync(Cancel);
        Assert.Equal(
            TurnMaker.MinutesOf(table.Single(s => s.Id == last.StepId).Time.Busy),
            last.PlannedMinutes
        );
        Assert.Null(await store.Paces.PacedAsync(shop.Classmate, shop.PlanId, Cancel));
        Assert.Null(await store.Paces.PacedAsync(shop.OtherInstructor, shop.PlanId, Cancel));
    }

    [Fact]
    public async Task The_first_cuts_are_asked_for_unless_the_course_leaves_them()
    {
        Assert.True(await store.Paces.AreFirstCutsTimedAsync(shop.Owner, shop.Course.Id, Cancel));
        Assert.Equal([1, 2, 3], await AskedAsync());

        Shop.Value(await store.Paces.TimeFirstCutsAsync(shop.Owner, shop.Course.Id, false, Cancel));

        Assert.Empty(await AskedAsync());
        await using var restarted = store.Restarted();
        Assert.False(
            await restarted
                .GetRequiredService<PaceStore>()
                .AreFirstCutsTimedAsync(shop.Owner, shop.Course.Id, Cancel)
        );
        Assert.Equal(
            OutcomeKind.NotFound,
            (await store.Paces.TimeFirstCutsAsync(shop.Self, shop.Course.Id, true, Cancel)).Kind
        );
    }

    private async Task<IReadOnlyList<int>> AskedAsync()
    {
        var work = (await store.Progress.CurrentAsync(shop.Self, shop.Student.Id, null, Cancel))!;
        return [.. work.Progress.Steps.Select(s => work.CutToTime(s.Step)).OfType<int>()];
    }

    private static StudentWork Ada(LessonRequest request) =>
        request.Students.Single(s => s.Name == "Ada");

    private static long Seconds(LessonRequest request) =>
        Ada(request).Work!.Steps.Sum(s => (long)s.Time.Busy);

    private async Task<LessonRequest> BasisAsync() =>
        (
            await store.LessonPlans.BasisAsync(shop.Owner, shop.Course.Id, shop.Project.Id, Cancel)
        )!.Request;

    private async Task<int> StepsTimedAsync() =>
        (await store.Paces.FindAsync(shop.Owner, shop.Course.Id, Cancel))!.Course.Kinds.Sum(k =>
            k.Factor.Steps
        );

    private async Task TickAsync(int steps, int times)
    {
        for (var done = 0; done < steps; )
        {
            var work = await store.Progress.CurrentAsync(shop.Self, shop.Student.Id, null, Cancel);
            var step = work!.Progress.Next!.Step;
            var isTimed = step.Time.Busy > 0;
            var outcome = await SayAsync(
                new(Guid.NewGuid(), step.Id, StepActionKind.Tick)
                {
                    Minutes = isTimed ? times * TurnMaker.MinutesOf(step.Time.Busy) : null,
                }
            );
            Assert.True(outcome.IsSaved, string.Join(' ', outcome.Problems));
            done += isTimed ? 1 : 0;
        }
    }

    private Task<Outcome<PlanInHand>> SayAsync(StepAction action) =>
        store.Progress.SayAsync(shop.Self, shop.PlanId, action, cancel: Cancel);
}
