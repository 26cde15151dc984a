using ShopClass.Core.Planning;
using ShopClass.Core.Progress;
using ShopClass.Core.Remakes;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Access;
using ShopClass.Data.Progress;
using ShopClass.Data.Tests.Access;
using Xunit;

namespace ShopClass.Data.Tests.Remakes;

/// <summary>Once a remake is chosen, its steps are among the student's.</summary>
public sealed class RemadeStepsTests(Shop shop) : IClassFixture<Shop>, IAsyncDisposable
{
    private static readonly BlankKey Side = new("B", 1);

    private readonly ThrowAwayStore store = shop.Copy();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public ValueTask DisposeAsync() => store.DisposeAsync();

    [Fact]
    public async Task The_steps_of_the_remake_and_its_joints_are_to_do_and_can_be_ticked()
    {
        await WorkAsync();
        var before = await LookAsync();
        Assert.Null(before.Progress.Next);
        var joint = before.Progress.Steps.First(s =>
            s.Step.Kind is StepKind.Fit or StepKind.Assemble && s.Step.Pieces.Contains("B1")
        );
        Assert.True((await SayAsync(joint.Step.Id, StepActionKind.Spoiled, "B1")).IsSaved);
        Assert.NotEmpty((await LookAsync()).Progress.Find(joint.Step.Id)!.Spoiled);

        var option = await ChooseAsync(
            Mishaps.Now(shop.Plan, await MadeAsync(), Side, shop.Plan.Sequence.Cuts.Count)
        );

        var now = await LookAsync();
        Assert.Empty(now.Progress.Find(joint.Step.Id)!.Spoiled);
        var added = now
            .Progress.Steps.Where(s => s.Step.Id.StartsWith("remake2/", StringComparison.Ordinal))
            .ToList();
        Assert.Equal(option.Plan!.Sequence.Cuts.Count, added.Count(s => s.Step.Cut is not null));
        Assert.Contains(added, s => s.Step.Id == $"remake2/{joint.Step.Id}");
        Assert.All(added, s => Assert.False(s.IsDone));
        Assert.StartsWith("remake2/", now.Progress.Next!.Step.Id, StringComparison.Ordinal);
        Assert.Same(now.Remade!.Plans[added[0].Step.Id], now.PlanOf(added[0].Step));
        Assert.Same(now.Plan.Checked, now.PlanOf(now.Progress.Steps[0].Step));

        await WorkAsync();
        Assert.Null((await LookAsync()).Progress.Next);
        var room = await store.Progress.RoomAsync(shop.Owner, shop.Course.Id, Cancel);
        var ada = room.Single(s => s.StudentId == shop.Student.Id);
        Assert.Equal((await LookAsync()).Progress.Steps.Count, ada.InHand!.Progress.Done);
    }

    [Fact]
    public async Task A_remade_part_spoiled_again_is_made_from_what_the_remake_left()
    {
        await ChooseAsync(
            Mishaps.Now(shop.Plan, await MadeAsync(), Side, shop.Plan.Sequence.Cuts.Count)
        );
        var made = await MadeAsync();
        var again = Mishaps.Now(shop.Plan, made, Side, made[^1].Plan!.Sequence.Cuts.Count);
        Assert.NotNull(again.First);

        var option = await ChooseAsync(again);

        var used = made.SelectMany(m => m.Option.Plan!.Plan.Boards).Select(b => b.BoardId);
        Assert.DoesNotContain(option.Plan!.Plan.Boards, b => used.Contains(b.BoardId));
        var now = await LookAsync();
        Assert.Contains(
            now.Progress.Steps,
            s => s.Step.Id.StartsWith("remake3/", StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task A_remakes_steps_say_how_in_the_instructors_own_words_as_the_others_do()
    {
        const string words = "Our own way to saw across: long strokes, and look at both faces.";
        await ChooseAsync(
            Mishaps.Now(shop.Plan, await MadeAsync(), Side, shop.Plan.Sequence.Cuts.Count)
        );
        var before = await LookAsync();
        Assert.DoesNotContain(before.Progress.Steps, s => s.Step.Technique.Contains(words));
        var key = TechniqueNotes.InOrderOfWork.First(k =>
            before.Progress.Steps.Any(s =>
                s.Step.Id.StartsWith("remake2/", StringComparison.Ordinal)
                && s.Step.Technique.Contains(Techniques.Usual[k])
            )
        );

        Shop.Value(
            await store.Courses.SaveTechniqueAsync(
                shop.Owner,
                shop.Course.Id,
                key,
                was: "",
                words,
                Cancel
            )
        );

        var room = await store.Progress.RoomAsync(shop.Owner, shop.Course.Id, Cancel);
        foreach (
            var steps in new[]
            {
                (await LookAsync()).Progress.Steps,
                room.Single(s => s.StudentId == shop.Student.Id).InHand!.Progress.Steps,
            }
        )
        {
            Assert.DoesNotContain(steps, s => s.Step.Technique.Contains(Techniques.Usual[key]));
            Assert.Contains(
                steps,
                s =>
                    s.Step.Id.StartsWith("remake2/", StringComparison.Ordinal)
                    && s.Step.Technique.Contains(words)
            );
        }
    }

    private async Task<List<RemakeMade>> MadeAsync() =>
        [
            .. (await store.Remakes.OfPlanAsync(shop.Owner, shop.PlanId, Cancel)).Select(r =>
                r.ToMade()
            ),
        ];

    private async Task<RemakeOption> ChooseAsync(Mishap mishap)
    {
        var rack = shop.Plan.Request.Boards[0] with { Id = "rack 1", Name = "from the rack" };
        var option = Remaker
            .Options(mishap, new() { Rack = [rack] })
            .Options.First(o => o.Plan is not null);
        Shop.Value(
            await store.Remakes.SaveAsync(
                shop.Self,
                Guid.NewGuid(),
                shop.PlanId,
                mishap,
                option,
                Cancel
            )
        );
        return option;
    }

    // Ticks whatever is next until nothing is.
    private async Task WorkAsync()
    {
        while ((await LookAsync()).Progress.Next is { } next)
            Assert.True((await SayAsync(next.Step.Id, StepActionKind.Tick)).IsSaved);
    }

    private async Task<PlanInHand> LookAsync() =>
        (await store.Progress.FindAsync(shop.Self, shop.PlanId, Cancel))!;

    private Task<Outcome<PlanInHand>> SayAsync(
        string step,
        StepActionKind kind,
        string text = ""
    ) =>
        store.Progress.SayAsync(
            shop.Self,
            shop.PlanId,
            new(Guid.NewGuid(), step, kind, text),
            null,
            Cancel
        );
}
