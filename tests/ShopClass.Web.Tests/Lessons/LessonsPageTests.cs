using AngleSharp.Dom;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Lessons;
using ShopClass.Data.Access;
using ShopClass.Data.Lessons;
using ShopClass.Data.Plans;
using ShopClass.Web.Features.Lessons;

namespace ShopClass.Web.Tests.Lessons;

public sealed class LessonsPageTests : IAsyncLifetime
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private Classroom _room = default!;

    private static CancellationToken Cancel => Xunit.TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        _room = await Classroom.OpenAsync();
        var services = _room.Page.Services;
        services.AddSingleton(_room.Store.Lessons);
        services.AddSingleton(_room.Store.LessonPlans);
        services.AddSingleton(
            _room.Store.Services.GetRequiredService<ShopClass.Data.Progress.ProgressStore>()
        );
        services.AddSingleton(
            _room.Store.Services.GetRequiredService<ShopClass.Data.Progress.PaceStore>()
        );
        services.AddSingleton(TimeProvider.System);
        services.AddLessonPages();
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    [Fact]
    public async Task A_lesson_is_added_changed_and_removed()
    {
        var page = Open();
        await Press(page, "Add a lesson");
        await page.Find("#lesson-title").ChangeAsync(new() { Value = "First evening" });
        await page.Find("#lesson-date").ChangeAsync(new() { Value = "2027-01-12" });
        await page.Find("#lesson-start").ChangeAsync(new() { Value = "half past" });
        await page.Find(".lesson-form").SubmitAsync();
        Assert.Contains(
            "“half past” is no time of day",
            page.Find("#lesson-start-problem").TextContent,
            StringComparison.Ordinal
        );
        await page.Find("#lesson-start").ChangeAsync(new() { Value = "18:30" });
        await page.Find(".lesson-form").SubmitAsync();
        Assert.Contains(
            "12 Jan 2027, 18:30",
            page.Find(".lesson-list").TextContent,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "First evening",
            page.Find(".lesson-list").TextContent,
            StringComparison.Ordinal
        );

        await page.Find("button[aria-label='Change First evening']").ClickAsync(new());
        await page.Find("#lesson-minutes").ChangeAsync(new() { Value = "90" });
        await page.Find(".lesson-form").SubmitAsync();
        Assert.Equal(90, Assert.Single(await LessonsAsync()).Lesson.Minutes);

        await page.Find("button[aria-label='Remove First evening']").ClickAsync(new());
        await page.Find(".confirm button").ClickAsync(new());
        Assert.Empty(await LessonsAsync());
    }

    [Theory]
    [InlineData("0", "this one has 0")]
    [InlineData("two hours", "“two hours” is no number of minutes")]
    public async Task A_lesson_without_usable_minutes_is_a_sentence_at_the_field_and_keeps_what_was_typed(
        string typed,
        string says
    )
    {
        var page = Open();
        await Press(page, "Add a lesson");
        await page.Find("#lesson-minutes").ChangeAsync(new() { Value = typed });

        await page.Find(".lesson-form").SubmitAsync();

        Assert.Contains(
            says,
            page.Find("#lesson-minutes-problem").TextContent,
            StringComparison.Ordinal
        );
        Assert.Equal(typed, page.Find("#lesson-minutes").GetAttribute("value"));
        Assert.Empty(await LessonsAsync());
    }

    [Fact]
    public async Task Stations_are_saved_and_no_count_is_a_sentence_at_its_field()
    {
        var page = Open();
        await page.Find("#shop-SawBench").ChangeAsync(new() { Value = "some" });
        await Press(page, "Save the stations");
        Assert.Contains(
            "“some” is no count",
            page.Find("#shop-SawBench-problem").TextContent,
            StringComparison.Ordinal
        );

        await page.Find("#shop-SawBench").ChangeAsync(new() { Value = "2" });
        await page.Find("#show-Ripping").ChangeAsync(new() { Value = "20" });
        await Press(page, "Save the stations");

        var shop = (
            await _room.Store.Lessons.FindAsync(_room.Instructor, _room.Course.Id, Cancel)
        )!.Shop;
        Assert.Equal(
            (2, 20),
            (shop.Stations.SawBenches, Assert.Single(shop.Demonstrations).Minutes)
        );
    }

    [Fact]
    public void A_student_with_no_board_and_a_course_with_no_lesson_are_told_in_sentences()
    {
        var page = Open();

        Assert.Contains("There are no lessons yet", page.Markup, StringComparison.Ordinal);
        Assert.Contains(
            "Juno Alder has no board for this project yet.",
            page.Markup,
            StringComparison.Ordinal
        );
        Assert.True(Button(page, "Make the plan of lessons").HasAttribute("disabled"));
        Assert.Equal(
            $"/courses/{_room.Course.Id}?project={_room.Project.Id}",
            page.FindAll("a").Single(a => a.TextContent == "Plan everyone").GetAttribute("href")
        );
    }

    [Fact]
    public async Task Many_students_without_a_board_are_one_line_that_opens()
    {
        for (var n = 0; n < 6; n++)
            await _room.Store.Students.AddAsync(
                _room.Instructor,
                _room.Course.Id,
                new($"Student {n}", "", false),
                Cancel
            );

        var page = Open();

        var folded = page.FindAll("details")
            .Single(d => d.TextContent.Contains("notes on the way", StringComparison.Ordinal));
        Assert.False(folded.HasAttribute("open"));
        Assert.Contains("Student 5 has no board", folded.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_a_saw_bench_what_falls_off_is_told_and_what_brings_it_back()
    {
        await PrepareAsync(new(0, 2, 2, 1));
        var page = Open();

        await Press(page, "Make the plan of lessons");

        page.WaitForAssertion(
            () => Assert.Contains("One more saw bench", page.Markup, StringComparison.Ordinal),
            Patience
        );
        Assert.Contains("There is no saw bench in the shop", page.Markup, StringComparison.Ordinal);
        Assert.Contains("What falls off the end", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_plan_is_made_stored_and_shown_lesson_by_lesson_and_for_the_student()
    {
        await PrepareAsync(new(1, 2, 2, 1));
        var page = Open();
        await Press(page, "Make the plan of lessons");
        page.WaitForAssertion(
            () => Assert.Contains("Plan of lessons 1", page.Markup, StringComparison.Ordinal),
            Patience
        );

        var stored = (
            await _room.Store.LessonPlans.NewestAsync(
                _room.Instructor,
                _room.Course.Id,
                _room.Project.Id,
                Cancel
            )
        )!;
        var lesson = _room.Open<LessonPage>(p =>
            p.Add(x => x.CourseId, _room.Course.Id)
                .Add(x => x.PlanId, stored.Id)
                .Add(x => x.Number, 1)
        );
        Assert.Equal(2, lesson.FindAll("svg").Count);
        Assert.Contains("Marking out", lesson.Markup, StringComparison.Ordinal);
        Assert.Contains(
            $"/sheets/lessons/{stored.Id}/wall/1?paper=letter",
            lesson.Markup,
            StringComparison.Ordinal
        );

        var mine = Open(new StudentViewer(_room.Student.Id, _room.Course.Id));
        var expected = Checklists
            .For(stored.Request, stored.Plan, stored.Request.Students[0])
            .SelectMany(l => l.Lines)
            .Select(l => $"{l.Number}. {l.Title}");
        Assert.Equal(expected, mine.FindAll(".check-what strong").Select(s => s.TextContent));
        Assert.Empty(mine.FindAll("form, input"));
    }

    [Fact]
    public async Task A_lesson_changed_after_the_plan_marks_it_out_of_date()
    {
        await PrepareAsync(new(1, 2, 2, 1));
        var page = Open();
        await Press(page, "Make the plan of lessons");
        page.WaitForAssertion(
            () => Assert.Contains("Plan of lessons 1", page.Markup, StringComparison.Ordinal),
            Patience
        );
        Assert.DoesNotContain("Out of date", page.Markup, StringComparison.Ordinal);

        await page.Find("button[aria-label='Change Evening 1']").ClickAsync(new());
        await page.Find("#lesson-minutes").ChangeAsync(new() { Value = "100" });
        await page.Find(".lesson-form").SubmitAsync();

        Assert.Contains("Out of date", page.Markup, StringComparison.Ordinal);
    }

    private IRenderedComponent<LessonsPage> Open(Viewer? viewer = null) =>
        _room.Open<LessonsPage>(p => p.Add(x => x.CourseId, _room.Course.Id), viewer);

    private static IElement Button(IRenderedComponent<LessonsPage> page, string label) =>
        page.FindAll("button").Single(b => b.TextContent.Trim() == label);

    private static Task Press(IRenderedComponent<LessonsPage> page, string label) =>
        Button(page, label).ClickAsync(new());

    private async Task<IReadOnlyList<LessonView>> LessonsAsync() =>
        (await _room.Store.Lessons.FindAsync(_room.Instructor, _room.Course.Id, Cancel))!.Lessons;

    private async Task PrepareAsync(StationCounts shop)
    {
        await _room.LogAsync(Classroom.Pine);
        var (store, me) = (_room.Store, _room.Instructor);
        PlanStore plans = store.Plans;
        var request = (await plans.RequestAsync(me, _room.Student.Id, _room.Project.Id, Cancel))!;
        var plan = ShopClass.Core.Planning.CheckedPlan.Make(request, progress: null, Cancel);
        Assert.True(
            (await plans.SaveAsync(me, _room.Student.Id, _room.Project.Id, plan, Cancel)).IsSaved
        );
        await store.Lessons.SaveShopAsync(me, _room.Course.Id, shop, [], null, Cancel);
        for (var l = 0; l < 4; l++)
            await store.Lessons.AddAsync(
                me,
                _room.Course.Id,
                new()
                {
                    Title = $"Evening {l + 1}",
                    Date = new DateOnly(2027, 1, 12).AddDays(7 * l),
                    Minutes = 120,
                },
                Cancel
            );
    }
}
