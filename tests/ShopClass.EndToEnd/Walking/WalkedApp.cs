using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using ShopClass.Core.Lessons;
using ShopClass.Core.Orders;
using ShopClass.Core.Progress;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Joining;
using ShopClass.Data.Lessons;
using ShopClass.Data.Orders;
using ShopClass.Data.Plans;
using ShopClass.Data.Progress;
using ShopClass.Data.Projects;
using ShopClass.Data.Store;
using ShopClass.Data.Students;
using ShopClass.Data.Tests;
using ShopClass.Data.Tests.Access;
using ShopClass.Web.Features.Room;

namespace ShopClass.EndToEnd.Walking;

/// <summary>
/// The demo course in the middle of an evening: plans, a plan of lessons and an order are made, and one student has asked
/// for help and for a check and has spoiled a part, so that every page has something to show.
/// </summary>
public sealed class WalkedApp : RunningApp
{
    /// <summary>The student whose pages are walked.</summary>
    public const string StudentName = "Priya Ramanathan";

    // Classmates who are at work, too.
    private static readonly string[] Mates =
    [
        "Maren Tveit",
        "Wendell Frost",
        "Lotte Brandsma",
        "Inés Calderón",
    ];

    public InstructorViewer Instructor { get; private set; } = default!;

    public Guid Course { get; private set; }

    public Guid Project { get; private set; }

    public Guid Student { get; private set; }

    public Guid Board { get; private set; }

    public Guid Plan { get; private set; }

    public Guid LessonPlan { get; private set; }

    public Guid Seller { get; private set; }

    /// <summary>What the door opens to.</summary>
    public string Code { get; private set; } = "";

    public override async ValueTask InitializeAsync()
    {
        await base.InitializeAsync();
        await using (var shop = await The<IDbContextFactory<ShopContext>>().CreateDbContextAsync())
            Instructor = new(await shop.Users.Where(a => a.IsDemo).Select(a => a.Id).SingleAsync());
        Course = (await The<CourseStore>().ListAsync(Instructor))[0].Id;
        Project = (await The<ProjectStore>().ListAsync(Instructor, Course))
            .First(p => p.Name == "Wall shelf")
            .Id;
        Student = (await The<StudentStore>().ListAsync(Instructor, Course))
            .Single(s => s.Shown == StudentName)
            .Id;
        Board = (await The<BoardStore>().ListAsync(Instructor, Student, Project))[0].Id;
        Seller = (await The<SellerStore>().ListAsync(Instructor, Course))[0].Id;
        Code = Shop.Value(
            await The<DoorStore>().OpenAsync(Instructor, Course, 7, listedComeIn: false)
        ).Code;
        await WorkAsync();
        await ForTheClassAsync();
    }

    /// <summary>Lets somebody in as who walks.</summary>
    public async Task ComeInAsync(Person person, Walker walker)
    {
        switch (walker)
        {
            case Walker.Instructor:
                await person.OpenDemoAsInstructor();
                break;
            case Walker.Student:
                await person.OpenDemoAsStudent(StudentName);
                break;
            case Walker.Waiting:
                await person.Open($"/join?code={Code}");
                await person.Page.GetByRole(AriaRole.Button, new() { Name = "Go on" }).ClickAsync();
                await person.Page.GetByLabel("Your name").FillAsync("Late Lark");
                await person
                    .Page.GetByRole(AriaRole.Button, new() { Name = "Come in" })
                    .ClickAsync();
                await person.Page.WaitForURLAsync("**/join/waiting");
                break;
            default:
                break;
        }
    }

    private async Task WorkAsync()
    {
        var plans = The<PlanStore>();
        var request = (await plans.RequestAsync(Instructor, Student, Project))!;
        Plan = Shop.Value(
            await plans.SaveAsync(Instructor, Student, Project, CheckedPlans.For(request))
        ).Id;
        var (progress, self) = (The<ProgressStore>(), new StudentViewer(Student, Course));
        async Task Say(string step, StepActionKind kind, string text = "") =>
            Shop.Value(await progress.SayAsync(self, Plan, new(Guid.NewGuid(), step, kind, text)));
        var steps = (await progress.FindAsync(self, Plan))!.Progress.Steps;
        var (first, second) = (steps[0].Step.Id, steps[1].Step.Id);
        await Say(first, StepActionKind.Tick);
        await Say(second, StepActionKind.NeedHelp);
        await Say(second, StepActionKind.PleaseCheck);
        await Say(second, StepActionKind.Note, "The line is faint near the knot.");
        foreach (var (number, name) in Mates.Index())
            await WorkOfAsync(name, number + 1);
    }

    // Each mate has done a few steps and one was sent back; the first has spoiled a part. All are in the room.
    private async Task WorkOfAsync(string name, int done)
    {
        var (plans, progress) = (The<PlanStore>(), The<ProgressStore>());
        var student = (await The<StudentStore>().ListAsync(Instructor, Course)).Single(s =>
            s.Shown == name
        );
        var request = (await plans.RequestAsync(Instructor, student.Id, Project))!;
        var plan = Shop.Value(
            await plans.SaveAsync(Instructor, student.Id, Project, CheckedPlans.For(request))
        ).Id;
        The<Presence>().Saw(new(student.Id, Course));
        async Task Say(string step, StepActionKind kind, string text = "") =>
            Shop.Value(
                await progress.SayAsync(
                    kind is StepActionKind.SentBack or StepActionKind.Helped
                        ? Instructor
                        : new StudentViewer(student.Id, Course),
                    plan,
                    new(Guid.NewGuid(), step, kind, text)
                )
            );
        for (var i = 0; i < done; i++)
            await Say(
                (await progress.FindAsync(Instructor, plan))!.Progress.Next!.Step.Id,
                StepActionKind.Tick
            );
        var next = (await progress.FindAsync(Instructor, plan))!.Progress.Next!.Step.Id;
        await Say(next, StepActionKind.PleaseCheck);
        await Say(next, StepActionKind.SentBack, RoomWords.Faults[0]);
        if (done == 1)
            await Say(next, StepActionKind.Spoiled, "A1");
    }

    private async Task ForTheClassAsync()
    {
        var lessons = The<LessonPlanStore>();
        var basis = (await lessons.BasisAsync(Instructor, Course, Project))!.Request;
        LessonPlan = Shop.Value(
            await lessons.SaveAsync(Instructor, Course, Project, basis, LessonPlanner.Plan(basis))
        ).Id;
        var orders = The<OrderStore>();
        var choices = new OrderChoices(OrderWay.Cheapest, 1, true, null, 30, "USD");
        var ask = (await orders.AskAsync(Instructor, Project, choices))!;
        Shop.Value(await orders.SaveAsync(Instructor, Project, ClassOrders.Make(ask)));
    }

    private T The<T>()
        where T : notnull => Services.GetRequiredService<T>();
}
