using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Courses;
using ShopClass.Data.Courses;
using ShopClass.Data.Plans;
using ShopClass.Data.Projects;
using ShopClass.Data.Store;
using ShopClass.Data.Students;
using ShopClass.Data.Tests.Access;
using Xunit;

namespace ShopClass.Data.Tests.Store;

public class DurabilityTests(Shop shop) : IClassFixture<Shop>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Everything_is_as_it_was_after_a_restart()
    {
        await using var store = shop.Copy();
        await using var again = store.Restarted();
        await ShopStartup.PrepareAsync(again, demo: false, Cancel);

        var course = await again
            .GetRequiredService<CourseStore>()
            .FindAsync(shop.Owner, shop.Course.Id, Cancel);
        var project = await again
            .GetRequiredService<ProjectStore>()
            .FindAsync(shop.Owner, shop.Project.Id, Cancel);
        var student = await again
            .GetRequiredService<StudentStore>()
            .FindAsync(shop.Owner, shop.Student.Id, Cancel);
        var board = await again
            .GetRequiredService<BoardStore>()
            .FindAsync(shop.Owner, shop.Board.Id, Cancel);
        var plan = await again
            .GetRequiredService<PlanStore>()
            .FindAsync(shop.Owner, shop.PlanId, Cancel);

        Assert.Equal(shop.Course, course);
        Assert.Equal(shop.Student, student);
        Assert.Equivalent(shop.Project, project, strict: true);
        Assert.Equivalent(shop.Board, board, strict: true);
        Assert.Equal(PlanSnapshot.Fingerprint(shop.Plan), PlanSnapshot.Fingerprint(plan!.Checked));
        Assert.Equal(DateTimeKind.Utc, plan.MadeUtc.Kind);
    }

    [Fact]
    public async Task Every_setting_is_kept_each_in_its_own_place()
    {
        await using var store = shop.Copy();
        var rules = shop.Course.Rules with
        {
            PlaningTaught = false,
            EdgeGluingTaught = false,
            HardGoingAbove = 61,
            ShopHumidity = 44,
            RoomHumidity = 61,
        };
        // Every length gets a figure of its own, so that two that change places are found out.
        foreach (var (index, rule) in RuleBook.Lengths.Index())
        {
            rules = rule.With(
                rules,
                rule.Get(rules) + Core.Measure.Length.FromTicks(127 * (index + 1))
            );
        }

        var saved = await store.Courses.SaveRulesAsync(
            shop.Owner,
            shop.Course.Id,
            rules,
            shop.Course.Version,
            Cancel
        );
        var found = await store.Courses.FindAsync(shop.Owner, shop.Course.Id, Cancel);

        Assert.Equal(rules, Shop.Value(saved).Rules);
        Assert.Equal(rules, found?.Rules);
    }

    [Fact]
    public async Task A_student_takes_their_boards_and_plans_along()
    {
        await using var store = shop.Copy();

        Shop.Value(await store.Students.RemoveAsync(shop.Owner, shop.Student.Id, Cancel));

        await using var context = store.Open();
        Assert.Equal(
            (0, 0),
            (await context.Boards.CountAsync(Cancel), await context.Plans.CountAsync(Cancel))
        );
        Assert.Equal(1, await context.Projects.CountAsync(Cancel));
    }

    [Fact]
    public async Task A_project_takes_its_parts_boards_and_plans_along()
    {
        await using var store = shop.Copy();

        Shop.Value(await store.Projects.RemoveAsync(shop.Owner, shop.Project.Id, Cancel));

        await using var context = store.Open();
        Assert.Equal(
            (0, 0, 0),
            (
                await context.Parts.CountAsync(Cancel),
                await context.Boards.CountAsync(Cancel),
                await context.Plans.CountAsync(Cancel)
            )
        );
        Assert.Equal(3, await context.Students.CountAsync(Cancel));
    }

    [Fact]
    public async Task An_account_takes_its_courses_along_and_nobody_elses()
    {
        await using var store = shop.Copy();
        await using (var context = store.Open())
        {
            await context.Users.Where(u => u.Id == shop.Owner.UserId).ExecuteDeleteAsync(Cancel);
        }

        await using var after = store.Open();
        Assert.Equal(
            [shop.OtherCourse.Id],
            await after.Courses.Select(c => c.Id).ToListAsync(Cancel)
        );
        Assert.Equal(0, await after.Plans.CountAsync(Cancel));
    }

    [Fact]
    public async Task The_database_itself_keeps_letters_and_plan_numbers_unique()
    {
        await using var store = shop.Copy();
        await using var context = store.Open();
        var part = await context.Parts.AsNoTracking().FirstAsync(Cancel);
        part.Id = Guid.NewGuid();
        context.Parts.Add(part);

        await Assert.ThrowsAsync<DbUpdateException>(() => context.SaveChangesAsync(Cancel));
    }

    [Fact]
    public async Task Lengths_are_whole_ticks_that_the_database_can_add()
    {
        await using var store = shop.Copy();
        await using var context = store.Open();
        var total = await context
            .Database.SqlQuery<long>($"SELECT SUM(Length) AS Value FROM Parts")
            .SingleAsync(Cancel);

        Assert.Equal(2 * Core.Measure.Length.FromInches(14).Ticks, total);
    }
}
