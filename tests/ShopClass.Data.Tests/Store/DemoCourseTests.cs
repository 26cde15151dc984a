using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Lumber;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Store;
using Xunit;

namespace ShopClass.Data.Tests.Store;

public class DemoCourseTests
{
    // Whose boards cannot yield the wall shelf, on purpose: 46 in of usable board for 73 in of blanks.
    private static readonly string[] TooSmall = ["Emeka Nwosu"];

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Everybody_with_wood_enough_gets_a_complete_plan_that_passes_rehearsal()
    {
        await using var store = await ThrowAwayStore.MakeAsync(demo: true);
        var plans = await PlansAsync(store);

        Assert.All(plans, p => Assert.True(p.Plan.Rehearsal.Passed, p.Student));
        Assert.Equal(TooSmall, plans.Where(p => !p.Plan.Plan.IsComplete).Select(p => p.Student));
    }

    [Fact]
    public async Task Every_students_whole_work_passes_the_rehearsal_of_steps_for_either_hand()
    {
        await using var store = await ThrowAwayStore.MakeAsync(demo: true);

        foreach (var (student, plan) in await PlansAsync(store))
        foreach (var hand in Enum.GetValues<Hand>())
        {
            var work = WorkWriter.Write(plan, hand);
            Assert.All(
                StepRehearsal.Replay(plan, work).Findings,
                f => Assert.Fail($"{student}: {f.Sentence}")
            );
            Assert.Equal(
                plan.Plan.IsComplete,
                work.Steps.Any(step => step.Kind is StepKind.Finish)
            );
        }
    }

    [Fact]
    public async Task The_boards_show_every_verdict_the_nominal_question_and_the_warning_about_hard_wood()
    {
        await using var store = await ThrowAwayStore.MakeAsync(demo: true);
        var plans = await PlansAsync(store);
        var boards = plans.SelectMany(p => p.Plan.Request.Boards.Select(b => (Board: b, p.Plan)));

        Assert.Equal(
            [VerdictKind.Fits, VerdictKind.FitsByRoute, VerdictKind.TooSmall],
            plans.Select(p => p.Plan.Verdict.Kind).Distinct().Order()
        );
        Assert.Contains(plans, p => p.Plan.Plan.GlueUps.Count > 0);
        Assert.Contains(
            plans,
            p =>
                p.Plan.Verdict.Cautions.Any(c => c.Contains("hard going", StringComparison.Ordinal))
        );
        var asked = boards.Where(b =>
            BoardChecks.NominalQuestion(b.Board, b.Plan.Request.Rules) is not null
        );
        Assert.Equal("Written down as 1 x 10", Assert.Single(asked).Board.Name);
    }

    [Fact]
    public async Task The_class_is_a_dozen_with_at_least_three_projects_and_a_board_for_everyone()
    {
        await using var store = await ThrowAwayStore.MakeAsync(demo: true);
        var (viewer, course) = await DemoAsync(store);
        var students = await store.Students.ListAsync(viewer, course.Id, Cancel);
        var states = await store.Plans.StatesAsync(viewer, course.Id, Cancel);

        Assert.Equal(12, students.Count);
        Assert.Contains(students, s => s.Card.IsLeftHanded);
        Assert.True(course.Projects >= 3);
        Assert.All(
            students,
            s => Assert.Contains(states, x => x.StudentId == s.Id && x.Boards > 0)
        );
    }

    [Fact]
    public async Task It_is_loaded_once_and_not_put_back_after_it_was_changed()
    {
        await using var store = await ThrowAwayStore.MakeAsync(demo: true);
        var (viewer, course) = await DemoAsync(store);
        var found = await store.Courses.FindAsync(viewer, course.Id, Cancel);
        await store.Courses.RenameAsync(viewer, course.Id, "Another name", found!.Version, Cancel);

        await ShopStartup.PrepareAsync(store.Services, demo: true, Cancel);

        Assert.Equal("Another name", (await DemoAsync(store)).Course.Name);
    }

    [Fact]
    public async Task Its_owner_has_no_password_and_does_not_count_as_an_instructor()
    {
        await using var store = await ThrowAwayStore.MakeAsync(demo: true);
        await using var shop = store.Open();
        var owner = await shop.Users.SingleAsync(Cancel);

        Assert.Null(owner.PasswordHash);
        Assert.False(
            await store.Services.GetRequiredService<InstructorAccounts>().AnyAsync(Cancel)
        );
    }

    [Fact]
    public async Task Without_being_asked_for_it_is_not_there()
    {
        await using var store = await ThrowAwayStore.MakeAsync(demo: false);

        Assert.Null(
            await store.Services.GetRequiredService<InstructorAccounts>().DemoAsync(Cancel)
        );
        await using var shop = store.Open();
        Assert.False(await shop.Courses.AnyAsync(Cancel));
    }

    private static async Task<List<(string Student, CheckedPlan Plan)>> PlansAsync(
        ThrowAwayStore store
    )
    {
        var (viewer, course) = await DemoAsync(store);
        var students = await store.Students.ListAsync(viewer, course.Id, Cancel);
        var plans = new List<(string, CheckedPlan)>();
        foreach (var state in await store.Plans.StatesAsync(viewer, course.Id, Cancel))
        {
            if (state.Boards == 0)
                continue;
            var name = students.Single(s => s.Id == state.StudentId).Card.Name;
            var request = await store.Plans.RequestAsync(
                viewer,
                state.StudentId,
                state.ProjectId,
                Cancel
            );
            plans.Add((name, CheckedPlans.For(request!)));
        }

        return plans;
    }

    private static async Task<(InstructorViewer Viewer, CourseSummary Course)> DemoAsync(
        ThrowAwayStore store
    )
    {
        var owner = await store.Services.GetRequiredService<InstructorAccounts>().DemoAsync(Cancel);
        var viewer = new InstructorViewer(owner!);
        return (viewer, Assert.Single(await store.Courses.ListAsync(viewer, Cancel)));
    }
}
