using System.IO.Compression;
using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Lessons;
using ShopClass.Data.Access;
using ShopClass.Data.Lessons;
using ShopClass.Data.Tests.Access;
using Xunit;

namespace ShopClass.Data.Tests.Lessons;

public class LessonPlanStoreTests(Shop shop) : IClassFixture<Shop>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Ada_has_steps_and_Bo_who_has_no_board_has_a_sentence()
    {
        await using var store = shop.Copy();

        var basis = await BasisAsync(store);

        Assert.Equal(["Ada", "Bo"], basis.Request.Students.Select(s => s.Name));
        Assert.NotEmpty(basis.Request.Students[0].Work!.Steps);
        Assert.Equal(
            ["Bo has no board for this project yet."],
            LessonChecks.Obstacles(basis.Request)
        );
    }

    [Fact]
    public async Task A_plan_of_lessons_comes_back_as_it_was_saved()
    {
        await using var store = shop.Copy();
        var saved = await MakeAsync(store);

        var found = await store.LessonPlans.NewestAsync(
            shop.Owner,
            shop.Course.Id,
            shop.Project.Id,
            Cancel
        );

        Assert.Equivalent(saved, found, strict: true);
        Assert.Equal((1, false), (found!.Number, found.IsOutOfDate));
        Assert.NotEmpty(found.Plan.Lessons[0].Turns);
        Assert.Equal([], LessonReview.Findings(found.Request, found.Plan));
    }

    [Fact]
    public async Task The_same_plan_again_is_the_version_that_is_there()
    {
        await using var store = shop.Copy();
        var first = await MakeAsync(store);
        var again = await MakeAsync(store);

        Assert.Equal((first.Id, 1), (again.Id, again.Number));
    }

    [Fact]
    public async Task A_changed_lesson_makes_it_out_of_date_and_changes_nothing_in_it()
    {
        await using var store = shop.Copy();
        var saved = await MakeAsync(store);
        var lesson = (await store.Lessons.FindAsync(shop.Owner, shop.Course.Id, Cancel))!.Lessons[
            0
        ];
        Shop.Value(
            await store.Lessons.SaveAsync(
                shop.Owner,
                shop.Course.Id,
                lesson.Id,
                lesson.Lesson with
                {
                    Minutes = 60,
                },
                lesson.Version,
                Cancel
            )
        );

        var found = (await store.LessonPlans.FindAsync(shop.Owner, saved.Id, Cancel))!;

        Assert.True(found.IsOutOfDate);
        Assert.Equal(120, found.Request.Lessons[0].Minutes);
    }

    [Fact]
    public async Task A_student_of_another_name_leaves_it_as_it_is_and_one_removed_does_not()
    {
        await using var store = shop.Copy();
        var saved = await MakeAsync(store);
        Shop.Value(
            await store.Students.SaveAsync(
                shop.Owner,
                shop.Student.Id,
                shop.Student.Card with
                {
                    Alias = "Zed",
                },
                shop.Student.Version,
                Cancel
            )
        );
        Assert.False(
            (await store.LessonPlans.FindAsync(shop.Owner, saved.Id, Cancel))!.IsOutOfDate
        );

        Shop.Value(await store.Students.RemoveAsync(shop.Owner, shop.Student.Id, Cancel));
        Assert.True((await store.LessonPlans.FindAsync(shop.Owner, saved.Id, Cancel))!.IsOutOfDate);
    }

    [Fact]
    public async Task A_new_alias_stands_in_old_plans_and_a_removed_student_is_in_none()
    {
        await using var store = shop.Copy();
        var saved = await MakeAsync(store);
        Shop.Value(
            await store.Students.SaveAsync(
                shop.Owner,
                shop.Student.Id,
                shop.Student.Card with
                {
                    Alias = "Heron",
                },
                shop.Student.Version,
                Cancel
            )
        );
        var named = (await store.LessonPlans.FindAsync(shop.Owner, saved.Id, Cancel))!;
        Assert.Equal(["Heron", "Bo"], named.Request.Students.Select(s => s.Name));

        Shop.Value(await store.Students.RemoveAsync(shop.Owner, shop.Student.Id, Cancel));

        await using var context = store.Open();
        var row = await context.LessonPlans.SingleAsync(p => p.Id == saved.Id, Cancel);
        await using var gzip = new GZipStream(
            new MemoryStream(row.Snapshot),
            CompressionMode.Decompress
        );
        var text = await new StreamReader(gzip).ReadToEndAsync(Cancel);
        Assert.Contains("Bo", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Ada", text, StringComparison.Ordinal);
        Assert.DoesNotContain(shop.Student.Id.ToString(), text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_the_review_finds_fault_with_is_not_stored()
    {
        await using var store = shop.Copy();
        var basis = await BasisAsync(store);
        var plan = LessonPlanner.Plan(basis.Request, progress: null, Cancel);
        var spoiled = plan with { Lessons = [plan.Lessons[0] with { Showings = [] }] };

        var outcome = await store.LessonPlans.SaveAsync(
            shop.Owner,
            shop.Course.Id,
            shop.Project.Id,
            basis.Request,
            spoiled,
            Cancel
        );

        Assert.Equal("Review", Assert.Single(outcome.Problems).Field);
    }

    [Fact]
    public async Task A_student_gets_their_own_part_and_nobody_elses()
    {
        await using var store = shop.Copy();
        var saved = await MakeAsync(store);

        var own = (await store.LessonPlans.FindAsync(shop.Self, saved.Id, Cancel))!;
        var mates = (await store.LessonPlans.FindAsync(shop.Classmate, saved.Id, Cancel))!;

        Assert.Equal(["Ada"], own.Request.Students.Select(s => s.Name));
        Assert.NotEmpty(own.Plan.Lessons[0].Turns);
        Assert.Equal(["Bo"], mates.Request.Students.Select(s => s.Name));
        Assert.Empty(mates.Plan.Lessons[0].Turns);
    }

    private async Task<StoredLessonPlan> MakeAsync(ThrowAwayStore store)
    {
        var basis = await BasisAsync(store);
        var plan = LessonPlanner.Plan(basis.Request, progress: null, Cancel);
        return Shop.Value(
            await store.LessonPlans.SaveAsync(
                shop.Owner,
                shop.Course.Id,
                shop.Project.Id,
                basis.Request,
                plan,
                Cancel
            )
        );
    }

    private async Task<LessonBasis> BasisAsync(ThrowAwayStore store) =>
        (await store.LessonPlans.BasisAsync(shop.Owner, shop.Course.Id, shop.Project.Id, Cancel))!;
}
