using System.Text;
using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Progress;
using ShopClass.Data.Access;
using ShopClass.Data.Progress;
using ShopClass.Data.Store;
using Xunit;

namespace ShopClass.Data.Tests.Access;

/// <summary>Every store method, asked by everybody about Ada, her course, its project and her board.</summary>
public partial class WhoMayTests(Shop shop) : IClassFixture<Shop>
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
                "BoardEntries",
                "Plans",
                "Doors",
                "Devices",
                "StudentCodes",
                "StepActions",
                "AspNetUsers",
            }
        )
        {
            await context.Database.OpenConnectionAsync();
            await using var command = context.Database.GetDbConnection().CreateCommand();
            command.CommandText = $"SELECT * FROM {table} ORDER BY 1";
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
        /// <summary>Says something about the first step of Ada's plan.</summary>
        public async Task<Outcome<PlanInHand>> SayAsync(StepActionKind kind)
        {
            var plan = await Store.Progress.FindAsync(Shop.Owner, Shop.PlanId);
            return await Store.Progress.SayAsync(
                By,
                Shop.PlanId,
                new(Guid.NewGuid(), plan!.Progress.Steps[0].Step.Id, kind)
            );
        }

        public MemoryStream ProjectFile() => new(Encoding.UTF8.GetBytes(Shop.ProjectFile));
    }
}
