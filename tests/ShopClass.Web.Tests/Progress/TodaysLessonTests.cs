using ShopClass.Core.Lessons;
using ShopClass.Data.Access;
using ShopClass.Data.Lessons;
using ShopClass.Data.Progress;
using ShopClass.Data.Students;
using ShopClass.Web.Tests.Access;

namespace ShopClass.Web.Tests.Progress;

/// <summary>On the day of a lesson its steps come before the others.</summary>
public sealed class TodaysLessonTests : IAsyncLifetime
{
    private readonly Benches shop = new();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync() => ValueTask.CompletedTask;

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task The_list_begins_with_todays_lesson_and_the_next_step_is_one_of_it()
    {
        var (owner, student, plan) = await shop.AtWorkAsync();
        await PlanLessonsAsync(owner, plan);
        var me = new StudentViewer(student.Id, student.CourseId);
        var today = await FindAsync(me, student, plan);
        Assert.NotNull(today);

        var visitor = await shop.Visit().OpenDemoAs(student.Id);
        var list = await visitor.Read($"/my/steps/{plan.Plan.Id}/all");

        Assert.Equal(
            ["Today: First evening", "The rest"],
            list.QuerySelectorAll("main h2").Select(h => h.TextContent)
        );
        Assert.Equal(
            today.StepIds.Order(),
            list.QuerySelector(".step-list")!
                .QuerySelectorAll("li")
                .Select(li => li.GetAttribute("data-step")!)
                .Order()
        );
        Assert.Equal(plan.Progress.Steps.Count, list.QuerySelectorAll(".step-list li").Length);
        var next = await visitor.Read("/my/steps");
        Assert.Contains(
            next.QuerySelector("[data-step]")!.GetAttribute("data-step")!,
            today.StepIds
        );
        Assert.Contains(
            "Today: First evening",
            next.QuerySelector(".today")!.TextContent,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task On_another_day_and_for_anybody_else_there_is_none()
    {
        var (owner, student, plan) = await shop.AtWorkAsync();
        await PlanLessonsAsync(owner, plan);
        var other = new StudentViewer(Guid.NewGuid(), student.CourseId);

        Assert.Null(await FindAsync(other, student, plan));
        shop.Clock.Advance(TimeSpan.FromDays(1));
        Assert.Null(await FindAsync(owner, student, plan));
    }

    private Task<TodaysLesson?> FindAsync(Viewer viewer, StudentView student, PlanInHand plan) =>
        shop.Get<TodayStore>()
            .FindAsync(viewer, student.Id, student.CourseId, plan.Plan.ProjectId, Cancel);

    // A first lesson today, too short for everything, and one a week later.
    private async Task PlanLessonsAsync(InstructorViewer owner, PlanInHand plan)
    {
        var lessons = shop.Get<LessonStore>();
        foreach (var old in (await lessons.FindAsync(owner, plan.CourseId, Cancel))!.Lessons)
            await lessons.RemoveAsync(owner, plan.CourseId, old.Id, Cancel);
        var today = DateOnly.FromDateTime(shop.Clock.GetLocalNow().DateTime);
        foreach (
            var (title, date) in (IEnumerable<(string, DateOnly)>)
                [("First evening", today), ("Second evening", today.AddDays(7))]
        )
            Assert.True(
                (
                    await lessons.AddAsync(
                        owner,
                        plan.CourseId,
                        new()
                        {
                            Title = title,
                            Date = date,
                            Minutes = 90,
                        },
                        Cancel
                    )
                ).IsSaved
            );
        var store = shop.Get<LessonPlanStore>();
        var basis = await store.BasisAsync(owner, plan.CourseId, plan.Plan.ProjectId, Cancel);
        var saved = await store.SaveAsync(
            owner,
            plan.CourseId,
            plan.Plan.ProjectId,
            basis!.Request,
            LessonPlanner.Plan(basis.Request),
            Cancel
        );
        Assert.True(saved.IsSaved);
    }
}
