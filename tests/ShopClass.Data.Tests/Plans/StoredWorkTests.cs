using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Plans;
using ShopClass.Data.Store;
using ShopClass.Data.Tests.Access;
using Xunit;

namespace ShopClass.Data.Tests.Plans;

public class StoredWorkTests(Shop shop) : IClassFixture<Shop>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public void Steps_come_out_of_the_store_as_they_went_in()
    {
        var work = WorkWriter.Write(shop.Plan, Hand.Left);

        var again = PlanSnapshot.UnpackWork(PlanSnapshot.Pack(work));

        Assert.Equal(Json(work), Json(again));
        Assert.NotEmpty(again.Steps);
    }

    [Fact]
    public async Task A_plan_is_stored_with_its_steps()
    {
        await using var store = shop.Copy();

        var stored = await store.Plans.FindAsync(shop.Self, shop.PlanId, Cancel);

        Assert.Equal(Json(WorkWriter.Write(shop.Plan, Hand.Right)), Json(stored!.Work));
    }

    [Fact]
    public async Task A_plan_stored_before_steps_were_gets_them_when_it_is_read()
    {
        await using var store = shop.Copy();
        await using (var context = store.Open())
        {
            await context.Plans.ExecuteUpdateAsync(
                p => p.SetProperty(x => x.Work, (byte[]?)null),
                Cancel
            );
        }

        var stored = await store.Plans.FindAsync(shop.Self, shop.PlanId, Cancel);

        Assert.Equal(Json(WorkWriter.Write(shop.Plan, Hand.Right)), Json(stored!.Work));
    }

    [Fact]
    public async Task A_student_who_turns_out_left_handed_gets_a_new_version_and_the_old_one_stays()
    {
        await using var store = shop.Copy();
        var student = (await store.Students.FindAsync(shop.Self, shop.Student.Id, Cancel))!;
        Shop.Value(
            await store.Students.SaveAsync(
                shop.Owner,
                student.Id,
                student.Card with
                {
                    IsLeftHanded = true,
                },
                student.Version,
                Cancel
            )
        );

        var saved = Shop.Value(
            await store.Plans.SaveAsync(
                shop.Self,
                shop.Student.Id,
                shop.Project.Id,
                shop.Plan,
                Cancel
            )
        );

        Assert.Equal((2, Hand.Left), (saved.Number, saved.Work.Hand));
        var old = await store.Plans.FindAsync(shop.Self, shop.PlanId, Cancel);
        Assert.Equal(Hand.Right, old!.Work.Hand);
    }

    private static string Json(WorkSequence work) =>
        JsonSerializer.Serialize(work, ShopJson.Options);
}
