using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Planning;
using ShopClass.Core.Remakes;
using ShopClass.Data.Access;
using ShopClass.Data.Plans;
using ShopClass.Data.Remakes;
using ShopClass.Data.Tests.Access;
using Xunit;

namespace ShopClass.Data.Tests.Remakes;

public class RemakeStoreTests(Shop shop) : IClassFixture<Shop>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private Mishap Spoiled => shop.Spoiled;

    private RemakeOption Option => shop.Remade;

    [Fact]
    public async Task A_remake_is_there_after_a_restart_and_the_plan_is_as_it_was()
    {
        await using var store = shop.Copy();
        var id = Guid.NewGuid();
        Shop.Value(
            await store.Remakes.SaveAsync(shop.Self, id, shop.PlanId, Spoiled, Option, Cancel)
        );

        await using var restarted = store.Restarted();
        var remakes = restarted.GetRequiredService<RemakeStore>();
        var remake = (await remakes.OfPlanAsync(shop.Owner, shop.PlanId, Cancel))[^1];

        Assert.Equal((id, 2, new BlankKey("A", 1)), (remake.Id, remake.Number, remake.Spoiled));
        Assert.Equal(
            PlanSnapshot.Fingerprint(Option.Plan!),
            PlanSnapshot.Fingerprint(remake.Option.Plan!)
        );
        var plan = await restarted
            .GetRequiredService<PlanStore>()
            .FindAsync(shop.Self, shop.PlanId, Cancel);
        Assert.Equal(PlanSnapshot.Fingerprint(shop.Plan), PlanSnapshot.Fingerprint(plan!.Checked));
        Assert.False(plan.IsOutOfDate);
    }

    [Fact]
    public async Task The_same_choice_sent_twice_is_stored_once()
    {
        await using var store = shop.Copy();
        var id = Guid.NewGuid();
        for (var time = 0; time < 2; time++)
        {
            Shop.Value(
                await store.Remakes.SaveAsync(shop.Self, id, shop.PlanId, Spoiled, Option, Cancel)
            );
        }

        var kept = await store.Remakes.OfPlanAsync(shop.Self, shop.PlanId, Cancel);
        Assert.Single(kept, r => r.Id == id);
    }

    [Fact]
    public async Task A_way_that_makes_something_else_or_that_no_rehearsal_passed_is_refused()
    {
        await using var store = shop.Copy();
        var other = Option with { Blanks = [new(new("B", 1), new("B", 1))] };
        var unrehearsed = Option with
        {
            Plan = Option.Plan! with { Plan = Option.Plan.Plan with { Missing = [new("A", 1)] } },
        };

        foreach (var option in new[] { other, unrehearsed })
        {
            var outcome = await store.Remakes.SaveAsync(
                shop.Self,
                Guid.NewGuid(),
                shop.PlanId,
                Spoiled,
                option,
                Cancel
            );
            Assert.Equal(OutcomeKind.Refused, outcome.Kind);
        }

        Assert.Single(await store.Remakes.OfPlanAsync(shop.Self, shop.PlanId, Cancel));
    }

    [Fact]
    public async Task A_mishap_of_another_plan_is_refused()
    {
        await using var store = shop.Copy();
        var another = shop.Plan with { Plan = shop.Plan.Plan with { StepsTaken = 1_234_567 } };

        var outcome = await store.Remakes.SaveAsync(
            shop.Self,
            Guid.NewGuid(),
            shop.PlanId,
            Spoiled with
            {
                Plan = another,
            },
            Option,
            Cancel
        );

        Assert.Equal("Plan", Assert.Single(outcome.Problems).Field);
    }
}
