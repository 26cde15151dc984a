using ShopClass.Core.Remakes;
using ShopClass.Data.Access;
using ShopClass.Data.Plans;
using ShopClass.Data.Tests.Access;
using Xunit;

namespace ShopClass.Data.Tests.Keeping;

/// <summary>A part of a plan, made again from a piece that lies on the rack.</summary>
internal static class FromTheRack
{
    public static async Task RemakeAsync(
        ThrowAwayStore store,
        Viewer by,
        StoredPlan plan,
        string piece
    )
    {
        var mishap = new Mishap
        {
            Plan = plan.Checked,
            CutsMade = plan.Checked.Sequence.Cuts.Count,
            Spoiled = new("A", 1),
        };
        var option = Remaker
            .Options(mishap, new() { Rack = [Wood.Pine() with { Id = "rack 1", Name = piece }] })
            .Options.First(o => o.Way is RemakeWay.Rack);
        Shop.Value(
            await store.Remakes.SaveAsync(
                by,
                Guid.NewGuid(),
                plan.Id,
                mishap,
                option,
                TestContext.Current.CancellationToken
            )
        );
    }
}
