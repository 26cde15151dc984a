using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Orders;
using ShopClass.Core.Progress;
using ShopClass.Data.Joining;
using ShopClass.Data.Orders;
using ShopClass.Data.Plans;
using ShopClass.Data.Progress;
using ShopClass.Data.Tests.Access;
using ShopClass.Data.Tests.Orders;
using Xunit;

namespace ShopClass.Data.Tests.Keeping;

/// <summary>
/// <em>Remove student</em>, the erasure of one person: nothing of theirs is left in any table or anything packed, and
/// classmates lose nothing, not even one whose name begins alike.
/// </summary>
public sealed partial class ErasureTests(Shop shop) : IClassFixture<Shop>, IAsyncDisposable
{
    private readonly ThrowAwayStore store = shop.Copy();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private RackStore Rack => store.Services.GetRequiredService<RackStore>();

    private OrderStore Orders => store.Services.GetRequiredService<OrderStore>();

    private KitStore Kits => store.Services.GetRequiredService<KitStore>();

    public ValueTask DisposeAsync() => store.DisposeAsync();

    [Fact]
    public async Task Nothing_of_a_student_is_left_and_classmates_lose_nothing()
    {
        Shop.Value(
            await store.Students.AddAsync(
                shop.Owner,
                shop.Course.Id,
                new("Ada Marie", "", false),
                Cancel
            )
        );
        await SayAsync(StepActionKind.Note, "hard going, says Ada");
        await store.Doors.NewStudentCodeAsync(shop.Owner, shop.Student.Id, false, Cancel);
        Shop.Value(
            await Kits.MarkAsync(
                shop.Owner,
                shop.Project.Id,
                new(shop.Student.Id, KitState.Ready),
                Cancel
            )
        );
        Shop.Value(
            await Kits.MarkAsync(
                shop.Owner,
                shop.Project.Id,
                new(shop.Classmate.StudentId, KitState.Ready),
                Cancel
            )
        );
        var pieces = await LeaveOffcutsAsync("under Ada's bench, not Ada Marie's");
        var plan = await PlanOfBoAsync();
        await FromTheRack.RemakeAsync(store, shop.Classmate, plan, pieces[0].Board.Name);
        var order = await OrderAsync();
        Assert.Equal(
            [
                "ClassOrders.Snapshot",
                "Devices.AskedName",
                "LessonPlans.Snapshot",
                "RackPieces.Place",
                "StepActions.Text",
                "Students.Name",
            ],
            (await StoredWords.WhereAsync(store, AdaAlone())).Distinct().Order()
        );
        Assert.Equal(
            ["ClassOrders.Snapshot", "RackPieces.Board", "Remakes.Option"],
            (await StoredWords.WhereAsync(store, $"Offcut of {shop.Board.Board.Name}"))
                .Distinct()
                .Order()
        );
        Assert.NotEmpty(await StoredWords.WhereAsync(store, AnyFormOf(shop.Student.Id)));

        Shop.Value(await store.Students.RemoveAsync(shop.Owner, shop.Student.Id, Cancel));

        Assert.Empty(await StoredWords.WhereAsync(store, AdaAlone()));
        Assert.Empty(await StoredWords.WhereAsync(store, $"Offcut of {shop.Board.Board.Name}"));
        var keys = await StoredWords.WhereAsync(store, AnyFormOf(shop.Student.Id));
        // What an order was for is known by a key that belongs to nobody any more.
        Assert.Equal(["ClassOrders.Snapshot"], keys.Distinct());
        var kept = (await Orders.FindAsync(shop.Owner, order.Id, Cancel))!;
        Assert.Equal(
            ["Ada Marie", "Bo", "Former student"],
            kept.Order.Ask.People.Select(p => p.Shown).Order()
        );
        Assert.Equal(
            ["Ada Marie: a side before.", "Former student: a side before."],
            kept.Order.Replaces!.Changes
        );
        Assert.Equal(order.Order.Total, kept.Order.Total);
        Assert.Equal(order.Order.Plan.Boards.Count, kept.Order.Plan.Boards.Count);
        var marks = (await Kits.FindAsync(shop.Owner, shop.Project.Id, Cancel))!.Marks;
        Assert.Equal([new(shop.Classmate.StudentId, KitState.Ready)], marks);
        var left = await Rack.ListAsync(shop.Owner, shop.Course.Id, Cancel);
        Assert.Equal(pieces.Count, left.Count);
        Assert.All(
            left,
            p =>
            {
                Assert.Equal("Offcut of a board", p.Piece.Board.Name);
                Assert.Equal("under Former student's bench, not Ada Marie's", p.Piece.Place);
            }
        );
        Assert.Equal(
            ["Ada Marie", "Bo"],
            (await store.Students.ListAsync(shop.Owner, shop.Course.Id, Cancel)).Select(s =>
                s.Shown
            )
        );
        Assert.Single(await store.Remakes.OfPlanAsync(shop.Classmate, plan.Id, Cancel));
    }

    [Fact]
    public async Task Erasing_a_student_leaves_no_row_of_theirs()
    {
        await SayAsync(StepActionKind.Note, "hard going");
        await store.Doors.NewStudentCodeAsync(shop.Owner, shop.Student.Id, false, Cancel);

        Shop.Value(await store.Students.RemoveAsync(shop.Owner, shop.Student.Id, Cancel));

        await using var context = store.Open();
        Assert.Equal(0, await context.Set<StepActionRow>().CountAsync(Cancel));
        Assert.Equal(0, await context.Set<StudentCodeRow>().CountAsync(Cancel));
        Assert.Equal(
            0,
            await context.Set<DeviceRow>().CountAsync(d => d.StudentId != null, Cancel)
        );
    }

    private async Task<IReadOnlyList<RackPiece>> LeaveOffcutsAsync(string place)
    {
        var pieces = LeftForRack.Of(shop.Plan);
        Shop.Value(
            await Rack.ReturnAsync(
                shop.Owner,
                shop.Course.Id,
                new(shop.PlanId, pieces, place, new Dictionary<string, int>()),
                Cancel
            )
        );
        return pieces;
    }

    private async Task<StoredPlan> PlanOfBoAsync()
    {
        var (bo, project) = (shop.Classmate.StudentId, shop.Project.Id);
        Shop.Value(await store.Boards.AddAsync(shop.Owner, bo, project, Wood.Pine(), Cancel));
        var request = await store.Plans.RequestAsync(shop.Owner, bo, project, Cancel);
        return Shop.Value(
            await store.Plans.SaveAsync(shop.Owner, bo, project, CheckedPlans.For(request!), Cancel)
        );
    }

    private async Task<StoredOrder> OrderAsync()
    {
        // As if nobody had a board yet.
        var students = await store.Students.ListAsync(shop.Owner, shop.Course.Id, Cancel);
        var order = await OrderSamples.MakeAsync(
            shop,
            store,
            [.. students.Select(s => new OrderPerson(s.Id.ToString("N"), s.Shown))]
        );
        return Shop.Value(
            await Orders.SaveAsync(
                shop.Owner,
                shop.Project.Id,
                order with
                {
                    Replaces = new(
                        1,
                        [
                            .. order
                                .Ask.People.Select(p => p.Shown)
                                .Where(n => n.StartsWith("Ada", StringComparison.Ordinal))
                                .Order()
                                .Reverse()
                                .Select(n => $"{n}: a side before."),
                        ]
                    ),
                },
                Cancel
            )
        );
    }

    private async Task SayAsync(StepActionKind kind, string text)
    {
        var work = await store.Progress.FindAsync(shop.Self, shop.PlanId, Cancel);
        var said = await store.Progress.SayAsync(
            shop.Self,
            shop.PlanId,
            new(Guid.NewGuid(), work!.Progress.Steps[0].Step.Id, kind, text),
            null,
            Cancel
        );
        Assert.True(said.IsSaved);
    }

    private static Regex AnyFormOf(Guid id) => new($"{id:D}|{id:N}", RegexOptions.IgnoreCase);

    [GeneratedRegex(@"(?<!\w)Ada(?! Marie)(?!\w)")]
    private static partial Regex AdaAlone();
}
