using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Planning;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Joining;
using ShopClass.Data.Plans;
using ShopClass.Data.Projects;
using ShopClass.Data.Store;
using ShopClass.Data.Students;

namespace ShopClass.Bench.Ticks;

/// <summary>A student of the bench's class: the token of their phone, their plan and its steps in order.</summary>
internal sealed record TickStudent(string Token, Guid Plan, IReadOnlyList<string> Steps);

/// <summary>A class in a store of its own: everybody has the same board, a plan and a phone that is let in.</summary>
internal static class TickClass
{
    public static string Store(string folder) =>
        $"Data Source={Path.Combine(folder, "shopclass.db")}";

    public static async Task<IReadOnlyList<TickStudent>> MakeAsync(string folder, int students)
    {
        var services = new ServiceCollection().AddLogging();
        services.AddShopStore(Store(folder));
        List<TickStudent> all = [];
        await using (var shop = services.BuildServiceProvider())
        {
            await ShopStartup.PrepareAsync(shop, demo: true);
            var owner = new InstructorViewer(
                (await shop.GetRequiredService<InstructorAccounts>().DemoAsync())!
            );
            var course = (await shop.GetRequiredService<CourseStore>().ListAsync(owner))[0].Id;
            var project = (await shop.GetRequiredService<ProjectStore>().ListAsync(owner, course))[
                0
            ].Id;
            var like = (
                await shop.GetRequiredService<StudentStore>().ListAsync(owner, course)
            ).Single(s => s.Shown == "Maren Tveit");
            var boards = await shop.GetRequiredService<BoardStore>()
                .ListAsync(owner, like.Id, project);
            for (var i = 1; i <= students; i++)
                all.Add(await AddAsync(shop, owner, course, project, boards, i));
        }

        SqliteConnection.ClearAllPools();
        return all;
    }

    private static async Task<TickStudent> AddAsync(
        IServiceProvider shop,
        InstructorViewer owner,
        Guid course,
        Guid project,
        IReadOnlyList<BoardView> boards,
        int number
    )
    {
        var students = shop.GetRequiredService<StudentStore>();
        var student = (await students.AddAsync(owner, course, new($"Student {number}", "", false)))
            .Value!
            .Id;
        foreach (var board in boards)
            await shop.GetRequiredService<BoardStore>()
                .AddAsync(owner, student, project, board.Board);
        var plans = shop.GetRequiredService<PlanStore>();
        var request = (await plans.RequestAsync(owner, student, project))!;
        var plan = (
            await plans.SaveAsync(owner, student, project, CheckedPlan.Make(request))
        ).Value!;
        var code = await shop.GetRequiredService<DoorStore>()
            .NewStudentCodeAsync(owner, student, false);
        var arrival = await shop.GetRequiredService<JoinDesk>()
            .UseStudentCodeAsync(code.Value!, "Bench");
        return new(arrival.Value!.Token, plan.Id, [.. plan.Work.Steps.Select(s => s.Id)]);
    }
}
