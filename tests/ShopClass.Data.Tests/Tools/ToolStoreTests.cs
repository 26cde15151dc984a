using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Progress;
using ShopClass.Core.Tools;
using ShopClass.Data.Access;
using ShopClass.Data.Tests.Access;
using ShopClass.Data.Tools;
using Xunit;

namespace ShopClass.Data.Tests.Tools;

public sealed class ToolStoreTests(Shop shop) : IClassFixture<Shop>, IAsyncDisposable
{
    private static readonly ToolChest Chest = new(
        [new("Panel saw", "hand crosscut saw", 3), new("rip saw", "hand rip saw", 2)],
        [new("Marking set", [new("square", 1), new("pencil", 2)])],
        120
    );

    private readonly ThrowAwayStore _store = shop.Copy();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private ToolStore Tools => _store.Services.GetRequiredService<ToolStore>();

    public ValueTask DisposeAsync() => _store.DisposeAsync();

    [Fact]
    public async Task Tools_come_back_as_they_were_saved()
    {
        var saved = await SaveAsync(Chest);

        var found = await Tools.FindAsync(shop.Owner, shop.Course.Id, Cancel);

        Assert.Equivalent(saved, found, strict: true);
        Assert.Equal("square, 2 × pencil", found!.Chest.Sets[0].Words);
    }

    [Theory]
    [InlineData("other instructor")]
    [InlineData("self")]
    [InlineData("classmate")]
    [InlineData("outsider")]
    [InlineData("impostor")]
    public async Task Only_the_courses_instructor_sees_or_changes_them(string who)
    {
        var viewer = shop.As(who);
        var saved = await SaveAsync(Chest);

        Assert.Null(await Tools.FindAsync(viewer, shop.Course.Id, Cancel));
        Assert.Null(await Tools.LogAsync(viewer, shop.Course.Id, Cancel));
        Assert.Equal(OutcomeKind.NotFound, (await Tools.SaveAsync(viewer, saved, Cancel)).Kind);
        Assert.Equal(
            OutcomeKind.NotFound,
            (
                await Tools.SharpenedAsync(
                    viewer,
                    shop.Course.Id,
                    "Panel saw",
                    saved.Version,
                    Cancel
                )
            ).Kind
        );
    }

    [Fact]
    public async Task Who_saves_an_older_state_is_shown_the_newer_one()
    {
        var first = await SaveAsync(Chest);
        var second = Shop.Value(
            await Tools.SaveAsync(
                shop.Owner,
                first with
                {
                    Chest = Chest with { SharpenAfter = 60 },
                },
                Cancel
            )
        );

        var late = await Tools.SaveAsync(shop.Owner, first, Cancel);

        Assert.Equal(OutcomeKind.ChangedMeanwhile, late.Kind);
        Assert.Equal(second.Version, late.Value!.Version);
    }

    [Fact]
    public async Task A_ticked_saw_cut_counts_once_until_the_saw_is_sharpened()
    {
        var saved = await SaveAsync(Chest);
        var plan = (await _store.Plans.FindAsync(shop.Owner, shop.PlanId, Cancel))!;
        var step = plan.Work.Steps.First(s => s.Saw is not null && s.After.Count < 9);
        foreach (var before in plan.Work.Steps.TakeWhile(s => s.Id != step.Id))
            await SayAsync(before.Id, StepActionKind.Tick);
        await SayAsync(step.Id, StepActionKind.Tick);
        await SayAsync(step.Id, StepActionKind.Untick);
        await SayAsync(step.Id, StepActionKind.Tick);

        var log = (await Tools.LogAsync(shop.Owner, shop.Course.Id, Cancel))!;

        Assert.Equal(step.Time.Work, Assert.Single(log.Steps).Seconds);
        Assert.Contains((shop.Student.Id.ToString(), step.Id), log.Done);

        var sharp = Shop.Value(
            await Tools.SharpenedAsync(
                shop.Owner,
                shop.Course.Id,
                "Panel saw",
                saved.Version,
                Cancel
            )
        );
        Assert.True(sharp.Chest.Tools[0].SharpenedUtc >= log.Steps[0].DoneUtc);
        Assert.Null(sharp.Chest.Tools[1].SharpenedUtc);

        await SayAsync(step.Id, StepActionKind.Untick);
        Assert.Empty((await Tools.LogAsync(shop.Owner, shop.Course.Id, Cancel))!.Steps);
    }

    private async Task SayAsync(string step, StepActionKind kind) =>
        Shop.Value(
            await _store.Progress.SayAsync(
                shop.Owner,
                shop.PlanId,
                new(Guid.NewGuid(), step, kind),
                cancel: Cancel
            )
        );

    private async Task<ToolsView> SaveAsync(ToolChest chest) =>
        Shop.Value(
            await Tools.SaveAsync(shop.Owner, new(shop.Course.Id, chest, Guid.Empty), Cancel)
        );
}
