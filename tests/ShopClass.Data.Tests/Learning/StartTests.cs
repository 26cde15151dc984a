using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Lessons;
using ShopClass.Core.Paces;
using ShopClass.Core.Progress;
using ShopClass.Data.Access;
using ShopClass.Data.Learning;
using ShopClass.Data.Progress;
using ShopClass.Data.Tests.Access;
using ShopClass.Data.Tests.CourseFiles;
using Xunit;

namespace ShopClass.Data.Tests.Learning;

/// <summary>The next course of a project starts from what the last one learned, over a real store.</summary>
public sealed class StartTests(Shop shop) : IClassFixture<Shop>, IAsyncDisposable
{
    private readonly ThrowAwayStore store = shop.Copy();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public ValueTask DisposeAsync() => store.DisposeAsync();

    [Fact]
    public async Task The_next_course_of_the_project_starts_from_the_last_ones_pace_waste_and_spoilage()
    {
        await LearnAsync();
        var next = await NextCourseAsync();
        var usual = Seconds(await BasisAsync(next));

        var offered = (await store.Starts.FindAsync(shop.Owner, next.CourseId, Cancel))!;

        var offer = Assert.Single(offered.Offers);
        Assert.Null(offered.Taken);
        Assert.Equal((shop.Course.Id, "Evenings"), (offer.FromCourse!.Value, offer.Source));
        Assert.NotEmpty(offer.Figures.Pace.Kinds);
        Assert.All(
            offer.Figures.Pace.Kinds,
            k => Assert.True(k.Factor is { Hundredths: > 100, Steps: > 0 })
        );
        var figures = offer.Figures.Find("SHELF")!;
        Assert.Equal(1, figures.Waste!.Plans);
        Assert.InRange(figures.Waste.Percent, 1, 60);
        // All was made, B1 was spoiled, and A1 is made again by the remake of this shop.
        Assert.Equal([new("A", 0, 3), new("B", 1, 2)], figures.Spoiled);
        Assert.Equal(usual, Seconds(await BasisAsync(next)));

        Shop.Value(
            await store.Starts.TakeAsync(shop.Owner, next.CourseId, offer.FromCourse, Cancel)
        );

        Assert.True(Seconds(await BasisAsync(next)) > usual, "the forecast is as before");
        await using var restarted = store.Restarted();
        var again = await restarted
            .GetRequiredService<StartStore>()
            .FindAsync(shop.Owner, next.CourseId, Cancel);
        Assert.Equal(offer.Figures.Pace.Kinds, again!.Taken!.Figures.Pace.Kinds);
        var pace = await restarted
            .GetRequiredService<PaceStore>()
            .FindAsync(shop.Owner, next.CourseId, Cancel);
        Assert.All(
            pace!.Course.Kinds,
            k =>
            {
                Assert.Equal(0, k.Factor.Steps);
                Assert.Contains(
                    "the last course's rate, from",
                    k.Factor.HowSure,
                    StringComparison.Ordinal
                );
            }
        );

        var left = Shop.Value(await store.Starts.LeaveAsync(shop.Owner, next.CourseId, Cancel));

        Assert.Null(left.Taken);
        Assert.Equal(StartChoice.Left, left.Choice);
        Assert.Equal(usual, Seconds(await BasisAsync(next)));
        Assert.Single(left.Offers);
    }

    [Fact]
    public async Task A_plan_only_begun_says_nothing_of_waste_or_spoilage()
    {
        var first = (await store.Progress.FindAsync(shop.Self, shop.PlanId, Cancel))!
            .Progress
            .Next!
            .Step;
        await SayAsync(
            new(Guid.NewGuid(), first.Id, StepActionKind.Tick)
            {
                Minutes = 3 * TurnMaker.MinutesOf(first.Time.Busy),
            }
        );
        var next = await NextCourseAsync();

        var offer = Assert.Single(
            (await store.Starts.FindAsync(shop.Owner, next.CourseId, Cancel))!.Offers
        );

        Assert.NotEmpty(offer.Figures.Pace.Kinds);
        Assert.Empty(offer.Figures.Projects);
    }

    [Fact]
    public async Task A_course_of_another_project_or_that_learned_nothing_is_not_offered()
    {
        var next = await NextCourseAsync();
        Assert.Empty((await store.Starts.FindAsync(shop.Owner, next.CourseId, Cancel))!.Offers);
        await LearnAsync();
        var other = Shop.Value(
            await store.Courses.CreateAsync(
                shop.Owner,
                "Stools",
                Core.Measure.UnitSystem.Inch,
                Cancel
            )
        );
        Shop.Value(await store.Projects.CreateAsync(shop.Owner, other.Id, "Stool", Cancel));

        Assert.Empty((await store.Starts.FindAsync(shop.Owner, other.Id, Cancel))!.Offers);
        Assert.Single((await store.Starts.FindAsync(shop.Owner, next.CourseId, Cancel))!.Offers);
    }

    [Fact]
    public async Task The_course_file_carries_the_figures_and_no_name_and_the_copy_is_asked_before_it_uses_them()
    {
        await LearnAsync();
        var file = (await store.Files.ExportCourseAsync(shop.Owner, shop.Course.Id, Cancel))!;
        var learned = file[file.IndexOf("\"learned\"", StringComparison.Ordinal)..];
        Assert.Contains("\"percent\"", learned);
        Assert.Contains("\"spoiled\": 1", learned);
        foreach (
            var name in new[] { "Ada", "Bo", shop.Student.Id.ToString(), shop.Board.Board.Name }
        )
            Assert.DoesNotContain($"\"{name}\"", learned);

        // Somebody else's: they see nothing of the course itself.
        var outcome = await store.ImportAsync(shop.OtherInstructor, file);
        Assert.Empty(outcome.Problems);
        var copy = outcome.CourseId!.Value;
        var pace = (await store.Paces.FindAsync(shop.OtherInstructor, copy, Cancel))!;
        Assert.True(pace.IsUsual);
        Assert.Equal(file, await store.Files.ExportCourseAsync(shop.OtherInstructor, copy, Cancel));

        var offer = Assert.Single(
            (await store.Starts.FindAsync(shop.OtherInstructor, copy, Cancel))!.Offers
        );
        Assert.Equal((null, ""), (offer.FromCourse, offer.Source));
        Shop.Value(await store.Starts.TakeAsync(shop.OtherInstructor, copy, null, Cancel));

        pace = (await store.Paces.FindAsync(shop.OtherInstructor, copy, Cancel))!;
        Assert.Equal(
            (await store.Paces.FindAsync(shop.Owner, shop.Course.Id, Cancel))!.Course.Kinds.Select(
                k => k.Factor.Hundredths
            ),
            pace.Course.Kinds.Select(k => k.Factor.Hundredths)
        );
        Assert.Equal(file, await store.Files.ExportCourseAsync(shop.OtherInstructor, copy, Cancel));
    }

    [Fact]
    public async Task Nobody_takes_figures_from_a_course_of_somebody_else()
    {
        await LearnAsync();

        var taken = await store.Starts.TakeAsync(
            shop.OtherInstructor,
            shop.OtherCourse.Id,
            shop.Course.Id,
            Cancel
        );

        Assert.Equal(OutcomeKind.Refused, taken.Kind);
        var view = (
            await store.Starts.FindAsync(shop.OtherInstructor, shop.OtherCourse.Id, Cancel)
        )!;
        Assert.Null(view.Taken);
        Assert.Empty(view.Offers);
    }

    [Fact]
    public async Task An_archived_course_is_not_changed()
    {
        await LearnAsync();
        var next = await NextCourseAsync();
        var course = (await store.Courses.FindAsync(shop.Owner, next.CourseId, Cancel))!;
        Shop.Value(
            await store.Courses.ArchiveAsync(
                shop.Owner,
                next.CourseId,
                true,
                course.Version,
                Cancel
            )
        );

        Assert.Equal(
            OutcomeKind.Refused,
            (await store.Starts.TakeAsync(shop.Owner, next.CourseId, shop.Course.Id, Cancel)).Kind
        );
    }

    // Ada does all steps, each in twice its minutes, and spoils a part on the way.
    private async Task LearnAsync()
    {
        var spoiled = false;
        while (
            (await store.Progress.FindAsync(shop.Self, shop.PlanId, Cancel))!.Progress.Next
                is { Step: var step }
        )
        {
            if (!spoiled && step.Pieces.Contains("B1"))
            {
                spoiled = true;
                await SayAsync(new(Guid.NewGuid(), step.Id, StepActionKind.Spoiled, "B1"));
            }

            await SayAsync(
                new(Guid.NewGuid(), step.Id, StepActionKind.Tick)
                {
                    Minutes = step.Time.Busy > 0 ? 2 * TurnMaker.MinutesOf(step.Time.Busy) : null,
                }
            );
        }
    }

    private async Task SayAsync(StepAction action) =>
        Shop.Value(await store.Progress.SayAsync(shop.Self, shop.PlanId, action, cancel: Cancel));

    // Another course of the same project, with somebody in it who has a board and a plan.
    private async Task<(Guid CourseId, Guid ProjectId)> NextCourseAsync()
    {
        var next = Shop.Value(
            await store.Courses.CreateAsync(
                shop.Owner,
                "Evenings again",
                Core.Measure.UnitSystem.Inch,
                Cancel
            )
        );
        var brought = await store.ImportAsync(shop.Owner, shop.ProjectFile, next.Id);
        var project = brought.ProjectId!.Value;
        var student = Shop.Value(
            await store.Students.AddAsync(shop.Owner, next.Id, new("Dov", "", false), Cancel)
        );
        Shop.Value(
            await store.Boards.AddAsync(shop.Owner, student.Id, project, Wood.Pine(), Cancel)
        );
        var request = await store.Plans.RequestAsync(shop.Owner, student.Id, project, Cancel);
        Shop.Value(
            await store.Plans.SaveAsync(
                shop.Owner,
                student.Id,
                project,
                CheckedPlans.For(request!),
                Cancel
            )
        );
        return (next.Id, project);
    }

    private async Task<LessonRequest> BasisAsync((Guid CourseId, Guid ProjectId) course) =>
        (
            await store.LessonPlans.BasisAsync(
                shop.Owner,
                course.CourseId,
                course.ProjectId,
                Cancel
            )
        )!.Request;

    private static long Seconds(LessonRequest request) =>
        request.Students.Sum(s => s.Work?.Steps.Sum(x => (long)x.Time.Busy) ?? 0);
}
