using System.Text;
using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Data.Access;
using ShopClass.Data.Store;
using Xunit;

namespace ShopClass.Data.Tests.Access;

/// <summary>Every store method, asked by everybody about Ada, her course, its project and her board.</summary>
public class WhoMayTests(Shop shop) : IClassFixture<Shop>
{
    private static readonly string[] Everybody =
    [
        "owner",
        "other instructor",
        "self",
        "classmate",
        "outsider",
        "impostor",
    ];

    // What is asked; who gets it; and what it is. Whoever is not named must be told that it is not there.
    private static readonly (string What, string[] Who, Func<Asking, Task<bool>> Ask)[] Table =
    [
        (
            "list courses",
            ["owner", "self", "classmate"],
            async a => (await a.Store.Courses.ListAsync(a.By)).Any(c => c.Id == a.Shop.Course.Id)
        ),
        (
            "see the course",
            ["owner", "self", "classmate"],
            async a => await a.Store.Courses.FindAsync(a.By, a.Shop.Course.Id) is not null
        ),
        (
            "rename the course",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Courses.RenameAsync(
                        a.By,
                        a.Shop.Course.Id,
                        "New",
                        a.Shop.Course.Version
                    )
                )
        ),
        (
            "archive the course",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Courses.ArchiveAsync(
                        a.By,
                        a.Shop.Course.Id,
                        true,
                        a.Shop.Course.Version
                    )
                )
        ),
        (
            "change the settings",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Courses.SaveRulesAsync(
                        a.By,
                        a.Shop.Course.Id,
                        CourseRules.DefaultsFor(UnitSystem.Metric),
                        a.Shop.Course.Version
                    )
                )
        ),
        (
            "list projects",
            ["owner", "self", "classmate"],
            async a => (await a.Store.Projects.ListAsync(a.By, a.Shop.Course.Id)).Count > 0
        ),
        (
            "see the project",
            ["owner", "self", "classmate"],
            async a => await a.Store.Projects.FindAsync(a.By, a.Shop.Project.Id) is not null
        ),
        (
            "add a project",
            ["owner"],
            async a => Done(await a.Store.Projects.CreateAsync(a.By, a.Shop.Course.Id, "Box"))
        ),
        (
            "change the project",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Projects.SaveAsync(
                        a.By,
                        a.Shop.Project.Id,
                        "Box",
                        "",
                        a.Shop.Project.Version
                    )
                )
        ),
        (
            "remove the project",
            ["owner"],
            async a => Done(await a.Store.Projects.RemoveAsync(a.By, a.Shop.Project.Id))
        ),
        (
            "add parts",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Projects.AddPartsAsync(a.By, a.Shop.Project.Id, [Wood.Side("C")])
                )
        ),
        (
            "change a part",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Projects.SavePartAsync(
                        a.By,
                        a.Shop.Project.Id,
                        a.Shop.Project.Parts[0].Id,
                        Wood.Side("D"),
                        a.Shop.Project.Parts[0].Version
                    )
                )
        ),
        (
            "remove a part",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Projects.RemovePartAsync(
                        a.By,
                        a.Shop.Project.Id,
                        a.Shop.Project.Parts[0].Id
                    )
                )
        ),
        (
            "move a part",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Projects.MovePartAsync(
                        a.By,
                        a.Shop.Project.Id,
                        a.Shop.Project.Parts[0].Id,
                        1
                    )
                )
        ),
        (
            "see Ada in a list",
            ["owner", "self"],
            async a =>
                (await a.Store.Students.ListAsync(a.By, a.Shop.Course.Id)).Any(s =>
                    s.Id == a.Shop.Student.Id
                )
        ),
        (
            "see Ada",
            ["owner", "self"],
            async a => await a.Store.Students.FindAsync(a.By, a.Shop.Student.Id) is not null
        ),
        (
            "add a student",
            ["owner"],
            async a =>
                Done(await a.Store.Students.AddAsync(a.By, a.Shop.Course.Id, new("Dov", "", false)))
        ),
        (
            "change Ada",
            ["owner"],
            async a =>
                Done(
                    await a.Store.Students.SaveAsync(
                        a.By,
                        a.Shop.Student.Id,
                        new("Eve", "", true),
                        a.Shop.Student.Version
                    )
                )
        ),
        (
            "remove Ada",
            ["owner"],
            async a => Done(await a.Store.Students.RemoveAsync(a.By, a.Shop.Student.Id))
        ),
        (
            "list Ada's boards",
            ["owner", "self"],
            async a =>
                (await a.Store.Boards.ListAsync(a.By, a.Shop.Student.Id, a.Shop.Project.Id)).Count
                > 0
        ),
        (
            "see Ada's board",
            ["owner", "self"],
            async a => await a.Store.Boards.FindAsync(a.By, a.Shop.Board.Id) is not null
        ),
        (
            "log a board for Ada",
            ["owner", "self"],
            async a =>
                Done(
                    await a.Store.Boards.AddAsync(
                        a.By,
                        a.Shop.Student.Id,
                        a.Shop.Project.Id,
                        Wood.Pine()
                    )
                )
        ),
        (
            "change Ada's board",
            ["owner", "self"],
            async a =>
                Done(
                    await a.Store.Boards.SaveAsync(
                        a.By,
                        a.Shop.Board.Id,
                        Wood.Pine("Fir"),
                        a.Shop.Board.Version
                    )
                )
        ),
        (
            "remove Ada's board",
            ["owner", "self"],
            async a => Done(await a.Store.Boards.RemoveAsync(a.By, a.Shop.Board.Id))
        ),
        (
            "ask for Ada's plan",
            ["owner", "self"],
            async a =>
                await a.Store.Plans.RequestAsync(a.By, a.Shop.Student.Id, a.Shop.Project.Id)
                    is not null
        ),
        (
            "see Ada's newest plan",
            ["owner", "self"],
            async a =>
                await a.Store.Plans.NewestAsync(a.By, a.Shop.Student.Id, a.Shop.Project.Id)
                    is not null
        ),
        (
            "see one of Ada's plans",
            ["owner", "self"],
            async a => await a.Store.Plans.FindAsync(a.By, a.Shop.PlanId) is not null
        ),
        (
            "store a plan for Ada",
            ["owner", "self"],
            async a =>
                Done(
                    await a.Store.Plans.SaveAsync(
                        a.By,
                        a.Shop.Student.Id,
                        a.Shop.Project.Id,
                        a.Shop.Plan
                    )
                )
        ),
        (
            "see where Ada stands",
            ["owner", "self"],
            async a =>
                (await a.Store.Plans.StatesAsync(a.By, a.Shop.Course.Id)).Any(s =>
                    s.StudentId == a.Shop.Student.Id
                )
        ),
        (
            "export the course",
            ["owner"],
            async a => await a.Store.Files.ExportCourseAsync(a.By, a.Shop.Course.Id) is not null
        ),
        (
            "export the project",
            ["owner"],
            async a => await a.Store.Files.ExportProjectAsync(a.By, a.Shop.Project.Id) is not null
        ),
        (
            "import a project",
            ["owner"],
            async a =>
                (
                    await a.Store.Files.ImportAsync(a.By, a.ProjectFile(), a.Shop.Course.Id)
                ).IsImported
        ),
        (
            "make a course of their own",
            ["owner", "other instructor"],
            async a => Done(await a.Store.Courses.CreateAsync(a.By, "Mine", UnitSystem.Inch))
        ),
    ];

    public static TheoryData<string> Questions => [.. Table.Select(t => t.What)];

    [Theory]
    [MemberData(nameof(Questions))]
    public async Task Only_those_who_may(string what)
    {
        var (_, who, ask) = Table.Single(t => t.What == what);
        var store = shop.Copy();
        var before = await EverythingAsync(store);
        // First those who may not, all on one copy: it must stay as it was. Each of the others gets a fresh one.
        foreach (var asker in Everybody.OrderBy(who.Contains))
        {
            var got = await ask(new(store, shop, shop.As(asker)));

            Assert.True(got == who.Contains(asker), $"{what}, asked by {asker}: {got}");
            var after = await EverythingAsync(store);
            if (!got)
            {
                Assert.Equal(before, after);
            }
            else if (after != before)
            {
                await store.DisposeAsync();
                store = shop.Copy();
            }
        }

        await store.DisposeAsync();
    }

    [Fact]
    public async Task A_student_sees_nobody_else_of_their_class()
    {
        await using var store = shop.Copy();
        var cancel = TestContext.Current.CancellationToken;

        var seen = await store.Students.ListAsync(shop.Self, shop.Course.Id, cancel);
        var states = await store.Plans.StatesAsync(shop.Self, shop.Course.Id, cancel);

        Assert.Equal(["Ada"], seen.Select(s => s.Shown));
        Assert.All(states, s => Assert.Equal(shop.Student.Id, s.StudentId));
    }

    [Fact]
    public async Task An_instructor_whose_account_is_gone_makes_nothing()
    {
        await using var store = shop.Copy();
        var cancel = TestContext.Current.CancellationToken;
        var ghost = new InstructorViewer("no such account");
        using var file = new MemoryStream(Encoding.UTF8.GetBytes(shop.ProjectFile));

        Assert.Equal(
            OutcomeKind.NotFound,
            (await store.Courses.CreateAsync(ghost, "Mine", UnitSystem.Inch, cancel)).Kind
        );
        Assert.False(
            (await store.Files.ImportAsync(ghost, file, shop.Course.Id, cancel)).IsImported
        );
    }

    [Fact]
    public async Task A_board_cannot_be_logged_for_a_project_of_another_course()
    {
        await using var store = shop.Copy();
        var cancel = TestContext.Current.CancellationToken;
        var elsewhere = Shop.Value(
            await store.Projects.CreateAsync(
                shop.OtherInstructor,
                shop.OtherCourse.Id,
                "Box",
                cancel
            )
        );

        var outcome = await store.Boards.AddAsync(
            shop.Owner,
            shop.Student.Id,
            elsewhere.Id,
            Wood.Pine(),
            cancel
        );

        Assert.Equal(OutcomeKind.NotFound, outcome.Kind);
    }

    private static bool Done<T>(Outcome<T> outcome)
    {
        Assert.True(
            outcome.Kind is OutcomeKind.Saved or OutcomeKind.NotFound,
            $"{outcome.Kind}: {string.Join(" ", outcome.Problems)}"
        );
        return outcome.IsSaved;
    }

    /// <summary>Every row of every table, as text.</summary>
    private static async Task<string> EverythingAsync(ThrowAwayStore store)
    {
        await using var context = store.Open();
        var all = new StringBuilder();
        foreach (
            var table in new[]
            {
                "Courses",
                "Projects",
                "Parts",
                "Students",
                "Boards",
                "Plans",
                "AspNetUsers",
            }
        )
        {
            await context.Database.OpenConnectionAsync();
            await using var command = context.Database.GetDbConnection().CreateCommand();
            command.CommandText = $"SELECT * FROM {table} ORDER BY Id";
            await using var reader = await command.ExecuteReaderAsync();
            while (await reader.ReadAsync())
            {
                var values = new object[reader.FieldCount];
                reader.GetValues(values);
                all.AppendLine(
                    string.Join('|', values.Select(v => v is byte[] b ? Convert.ToHexString(b) : v))
                );
            }
        }

        return all.ToString();
    }

    private sealed record Asking(ThrowAwayStore Store, Shop Shop, Viewer By)
    {
        public MemoryStream ProjectFile() => new(Encoding.UTF8.GetBytes(Shop.ProjectFile));
    }
}
