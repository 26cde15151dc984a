using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Lessons;
using ShopClass.Core.Orders;
using ShopClass.Core.Progress;
using ShopClass.Data.Access;
using ShopClass.Data.Joining;
using ShopClass.Data.Keeping;
using ShopClass.Data.Orders;
using ShopClass.Data.Progress;
using ShopClass.Data.Store;
using ShopClass.Data.Tests.Access;
using ShopClass.Data.Tests.Orders;
using Xunit;

namespace ShopClass.Data.Tests.Keeping;

public sealed class KeepingTests(Shop shop) : IClassFixture<Shop>, IAsyncDisposable
{
    // The fixture's store was filled by the real clock; only days matter here.
    private readonly StoppedClock clock = new();
    private readonly ThrowAwayStore store = shop.Copy();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private KeepingStore Keeping =>
        new(
            store.Services.GetRequiredService<IDbContextFactory<ShopContext>>(),
            clock,
            store.Services.GetRequiredService<ClassNews>()
        );

    private StudentExport Export => store.Services.GetRequiredService<StudentExport>();

    public ValueTask DisposeAsync() => store.DisposeAsync();

    [Fact]
    public async Task Names_notes_and_devices_go_ninety_days_after_the_end_and_figures_stay()
    {
        var first = await SayAsync(StepActionKind.Note, "Ada's own words");
        await SayAsync(StepActionKind.Tick, "");
        var today = DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime);
        await Keeping.SaveAsync(shop.Owner, shop.Course.Id, today, Cancel);

        clock.Advance(TimeSpan.FromDays(90));
        Assert.Equal(0, await Keeping.ForgetDueAsync(Cancel));
        clock.Advance(TimeSpan.FromDays(1));
        Assert.Equal(1, await Keeping.ForgetDueAsync(Cancel));
        Assert.Equal(0, await Keeping.ForgetDueAsync(Cancel));

        var students = await store.Students.ListAsync(shop.Owner, shop.Course.Id, Cancel);
        Assert.Equal(["Student 1", "Student 2"], students.Select(s => s.Card.Name).Order());
        Assert.All(students, s => Assert.Empty(s.Card.Alias));
        Assert.Empty(await store.Doors.DevicesAsync(shop.Owner, shop.Course.Id, Cancel));
        var work = await store.Progress.FindAsync(shop.Owner, shop.PlanId, Cancel);
        Assert.True(work!.Progress.Find(first)!.IsDone);
        Assert.Empty(work.Progress.Find(first)!.Notes);
        var others = await store.Students.ListAsync(
            shop.OtherInstructor,
            shop.OtherCourse.Id,
            Cancel
        );
        Assert.Equal("Cleo", Assert.Single(others).Shown);
    }

    [Fact]
    public async Task No_name_of_a_student_or_of_their_boards_is_left_in_any_table_or_anything_packed()
    {
        // So long that what is left of it is called by a part of the name alone.
        const string own = "Grandma Ida's plank, from the barn that Bo and I took down";
        await store.Boards.SaveAsync(
            shop.Owner,
            shop.Board.Id,
            shop.Board.Board with
            {
                Name = own,
            },
            shop.Board.Version,
            Cancel
        );
        var request = await store.Plans.RequestAsync(
            shop.Owner,
            shop.Student.Id,
            shop.Project.Id,
            Cancel
        );
        var plan = Shop.Value(
            await store.Plans.SaveAsync(
                shop.Self,
                shop.Student.Id,
                shop.Project.Id,
                CheckedPlans.For(request!),
                Cancel
            )
        );
        var basis = (
            await store.LessonPlans.BasisAsync(shop.Owner, shop.Course.Id, shop.Project.Id, Cancel)
        )!;
        Shop.Value(
            await store.LessonPlans.SaveAsync(
                shop.Owner,
                shop.Course.Id,
                shop.Project.Id,
                basis.Request,
                LessonPlanner.Plan(basis.Request, progress: null, Cancel),
                Cancel
            )
        );
        var rack = store.Services.GetRequiredService<RackStore>();
        var pieces = LeftForRack.Of(plan.Checked);
        Shop.Value(
            await rack.ReturnAsync(
                shop.Owner,
                shop.Course.Id,
                new(plan.Id, pieces, "under Ada's bench", new Dictionary<string, int>()),
                Cancel
            )
        );
        await FromTheRack.RemakeAsync(store, shop.Self, plan, pieces[0].Board.Name);
        var order = await OrderSamples.MakeAsync(shop, store);
        var orders = store.Services.GetRequiredService<OrderStore>();
        Shop.Value(await orders.SaveAsync(shop.Owner, shop.Project.Id, order, Cancel));
        // Somebody looks at the room, so that it is all in memory.
        var inHand = await store.Progress.FindAsync(shop.Owner, plan.Id, Cancel);
        Assert.Equal(own, inHand!.Plan.Checked.Request.Boards[0].Name);
        Assert.NotEmpty(await WhereAsync(own));
        Assert.NotEmpty(await WhereAsync("Ada"));
        Assert.NotEmpty(await WhereAsync("Bo"));
        Assert.Contains("RackPieces.Board", string.Join(' ', await WhereAsync("Grandma")));
        Assert.Contains("Remakes.Option", await WhereAsync("Offcut of Grandma"));
        Assert.Contains("ClassOrders.Snapshot", await WhereAsync("Offcut of Grandma"));
        var today = DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime);
        await Keeping.SaveAsync(shop.Owner, shop.Course.Id, today, Cancel);

        clock.Advance(TimeSpan.FromDays(91));
        Assert.Equal(1, await Keeping.ForgetDueAsync(Cancel));

        Assert.Empty(await WhereAsync(own));
        Assert.Empty(await WhereAsync("Grandma"));
        Assert.Empty(await WhereAsync("Ada"));
        Assert.Empty(await WhereAsync("Bo"));
        var kept = (await store.Plans.FindAsync(shop.Owner, plan.Id, Cancel))!;
        Assert.Equal(plan.Work.Steps.Select(s => s.Id), kept.Work.Steps.Select(s => s.Id));
        Assert.Equal(
            plan.Checked.Plan.Boards.SelectMany(b => b.Sections).Count(),
            kept.Checked.Plan.Boards.SelectMany(b => b.Sections).Count()
        );
        Assert.Equal("Board 1", kept.Checked.Request.Boards[0].Name);
        inHand = await store.Progress.FindAsync(shop.Owner, plan.Id, Cancel);
        Assert.Equal("Board 1", inHand!.Plan.Checked.Request.Boards[0].Name);
        Assert.False(kept.IsOutOfDate);
        var left = await rack.ListAsync(shop.Owner, shop.Course.Id, Cancel);
        Assert.NotEmpty(left);
        Assert.All(left, p => Assert.Equal("Offcut of Board 1", p.Piece.Board.Name));
        Assert.Equal(
            pieces.Select(p => (p.Board.Length, p.Board.SmallestWidth, p.Count)).Order(),
            left.Select(p => (p.Piece.Board.Length, p.Piece.Board.SmallestWidth, p.Piece.Count))
                .Order()
        );
    }

    private Task<IReadOnlyList<string>> WhereAsync(string words) =>
        StoredWords.WhereAsync(store, words);

    [Fact]
    public async Task A_course_nobody_gave_an_end_keeps_its_names()
    {
        clock.Advance(TimeSpan.FromDays(4000));
        Assert.Equal(0, await Keeping.ForgetDueAsync(Cancel));
    }

    [Fact]
    public async Task Only_the_instructor_says_when_a_course_ends()
    {
        foreach (var who in (string[])["other instructor", "self", "classmate", "outsider"])
        {
            var outcome = await Keeping.SaveAsync(
                shop.As(who),
                shop.Course.Id,
                new(2030, 1, 1),
                Cancel
            );
            Assert.Equal(OutcomeKind.NotFound, outcome.Kind);
            Assert.Null(await Keeping.FindAsync(shop.As(who), shop.Course.Id, Cancel));
        }
    }

    [Fact]
    public async Task An_export_holds_everything_kept_about_one_student_and_nobody_else()
    {
        await SayAsync(StepActionKind.Note, "hard going");

        var text = (await Export.WriteAsync(shop.Owner, shop.Student.Id, Cancel))!;

        using var file = JsonDocument.Parse(text);
        Assert.Equal("Ada", file.RootElement.GetProperty("name").GetString());
        Assert.Equal(1, file.RootElement.GetProperty("boards").GetArrayLength());
        Assert.Equal(1, file.RootElement.GetProperty("plans").GetArrayLength());
        Assert.Equal(1, file.RootElement.GetProperty("devices").GetArrayLength());
        Assert.Contains("hard going", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Bo", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("owner", true)]
    [InlineData("self", true)]
    [InlineData("classmate", false)]
    [InlineData("outsider", false)]
    [InlineData("other instructor", false)]
    [InlineData("impostor", false)]
    public async Task An_export_is_for_the_student_and_their_instructor(string who, bool may) =>
        Assert.Equal(
            may,
            await Export.WriteAsync(shop.As(who), shop.Student.Id, Cancel) is not null
        );

    private async Task<string> SayAsync(StepActionKind kind, string text)
    {
        var work = await store.Progress.FindAsync(shop.Self, shop.PlanId, Cancel);
        var step = work!.Progress.Steps[0].Step.Id;
        var said = await store.Progress.SayAsync(
            shop.Self,
            shop.PlanId,
            new(Guid.NewGuid(), step, kind, text),
            null,
            Cancel
        );
        Assert.True(said.IsSaved);
        return step;
    }
}
