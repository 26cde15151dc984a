using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Measure;
using ShopClass.Core.Progress;
using ShopClass.Data.Access;
using ShopClass.Data.Progress;
using ShopClass.Data.Tests.Access;
using Xunit;

namespace ShopClass.Data.Tests.Progress;

public sealed class ProgressStoreTests(Shop shop) : IClassFixture<Shop>, IAsyncDisposable
{
    private readonly ThrowAwayStore store = shop.Copy();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private ProgressStore Progress => store.Services.GetRequiredService<ProgressStore>();

    public ValueTask DisposeAsync() => store.DisposeAsync();

    [Fact]
    public async Task A_tick_is_there_after_a_restart()
    {
        var first = await FirstStepAsync();
        Assert.True((await SayAsync(Tick(first))).IsSaved);

        await using var restarted = store.Restarted();
        var later = await restarted
            .GetRequiredService<ProgressStore>()
            .FindAsync(shop.Self, shop.PlanId, Cancel);

        Assert.True(later!.Progress.Steps[0].IsDone);
    }

    [Fact]
    public async Task The_same_action_sent_again_and_again_counts_once()
    {
        var note = new StepAction(
            Guid.NewGuid(),
            await FirstStepAsync(),
            StepActionKind.Note,
            "dull saw"
        );

        var outcomes = await Task.WhenAll(
            Enumerable.Range(0, 12).Select(_ => Task.Run(() => SayAsync(note), Cancel))
        );

        Assert.All(outcomes, o => Assert.True(o.IsSaved, string.Join(' ', o.Problems)));
        var now = await Progress.FindAsync(shop.Self, shop.PlanId, Cancel);
        Assert.Equal(["dull saw"], now!.Progress.Steps[0].Notes);
        Assert.Equal(1, await CountAsync());
    }

    [Fact]
    public async Task Two_phones_of_one_student_lose_and_double_nothing()
    {
        var first = await FirstStepAsync();
        var notes = Enumerable
            .Range(0, 20)
            .Select(i => new StepAction(Guid.NewGuid(), first, StepActionKind.Note, $"note {i}"))
            .ToList();

        // Both phones send all of them, one in the other order.
        var one = Task.Run(() => SendAllAsync(notes), Cancel);
        var two = Task.Run(() => SendAllAsync(Enumerable.Reverse(notes)), Cancel);
        await Task.WhenAll(one, two);

        var now = await Progress.FindAsync(shop.Self, shop.PlanId, Cancel);
        Assert.Equal(notes.Select(n => n.Text).Order(), now!.Progress.Steps[0].Notes.Order());
    }

    [Fact]
    public async Task An_id_that_said_something_else_before_is_refused()
    {
        var first = await FirstStepAsync();
        var tick = Tick(first);
        await SayAsync(tick);

        var other = await SayAsync(tick with { Kind = StepActionKind.NeedHelp });

        Assert.Equal(OutcomeKind.Refused, other.Kind);
    }

    [Fact]
    public async Task A_step_whose_needs_are_open_is_refused_and_nothing_is_stored()
    {
        var plan = (await Progress.FindAsync(shop.Self, shop.PlanId, Cancel))!;
        var later = plan.Progress.Steps.First(s => s.Step.After.Count > 0).Step;

        var outcome = await SayAsync(Tick(later.Id));

        Assert.Contains(
            "first",
            Assert.Single(outcome.Problems).Sentence,
            StringComparison.Ordinal
        );
        Assert.Equal(0, await CountAsync());
    }

    [Theory]
    [InlineData(StepActionKind.CheckedOff)]
    [InlineData(StepActionKind.SentBack)]
    [InlineData(StepActionKind.Helped)]
    [InlineData(StepActionKind.Settled)]
    public async Task A_student_cannot_check_off_their_own_step(StepActionKind kind)
    {
        var outcome = await SayAsync(new(Guid.NewGuid(), await FirstStepAsync(), kind));

        Assert.Equal(OutcomeKind.Refused, outcome.Kind);
        Assert.Equal(0, await CountAsync());
    }

    [Fact]
    public async Task A_note_of_600_characters_is_refused_and_a_script_in_one_is_text()
    {
        var first = await FirstStepAsync();
        var tooLong = await SayAsync(
            new(Guid.NewGuid(), first, StepActionKind.Note, new string('x', 600))
        );
        Assert.Contains("600", Assert.Single(tooLong.Problems).Sentence, StringComparison.Ordinal);

        await SayAsync(
            new(Guid.NewGuid(), first, StepActionKind.Note, "<script>alert(1)</script>")
        );
        var now = await Progress.FindAsync(shop.Self, shop.PlanId, Cancel);
        Assert.Equal(["<script>alert(1)</script>"], now!.Progress.Steps[0].Notes);
    }

    [Fact]
    public async Task The_room_knows_who_waits_since_when_and_is_told_at_once()
    {
        List<News> told = [];
        using var listening = store.Services.GetRequiredService<ClassNews>().Listen(told.Add);
        var first = await FirstStepAsync();
        await SayAsync(new(Guid.NewGuid(), first, StepActionKind.NeedHelp));
        await SayAsync(new(Guid.NewGuid(), first, StepActionKind.PleaseCheck));

        var room = await Progress.RoomAsync(shop.Owner, shop.Course.Id, Cancel);

        var ada = room.Single(s => s.Shown == "Ada");
        Assert.Equal(first, Assert.Single(ada.Help).State.Step.Id);
        Assert.Equal(first, Assert.Single(ada.Checks).State.Step.Id);
        Assert.Null(room.Single(s => s.Shown == "Bo").InHand);
        Assert.Equal(
            2,
            told.Count(n => n.Kind is NewsKind.Progress && n.StudentId == shop.Student.Id)
        );
    }

    [Fact]
    public async Task What_is_ticked_is_there_for_the_wall_and_for_the_instructor_alone()
    {
        // Ada's remake makes some steps of the first side needless; nothing is ticked yet.
        var needless = Assert.Single(await Ticked(shop.Owner)).Value;
        var first = await FirstStepAsync();
        Assert.DoesNotContain(first, needless);
        await SayAsync(Tick(first));

        Assert.Equal(
            [first, .. needless],
            Assert.Single(await Ticked(shop.Owner)).Value.OrderBy(id => id != first)
        );
        Assert.Empty(await Ticked(shop.Self));
        Assert.Empty(
            await TickedSteps.OfAsync(Progress, shop.Owner, shop.Course.Id, Guid.NewGuid(), Cancel)
        );

        Task<IReadOnlyDictionary<string, IReadOnlySet<string>>> Ticked(Viewer viewer) =>
            TickedSteps.OfAsync(Progress, viewer, shop.Course.Id, shop.Project.Id, Cancel);
    }

    [Fact]
    public async Task Work_begun_on_a_plan_stays_in_hand_when_a_newer_one_is_made()
    {
        await SayAsync(Tick(await FirstStepAsync()));
        var board = Wood.Pine("Another", 120);
        await store.Boards.AddAsync(shop.Self, shop.Student.Id, shop.Project.Id, board, Cancel);
        var request = await store.Plans.RequestAsync(
            shop.Self,
            shop.Student.Id,
            shop.Project.Id,
            Cancel
        );
        var newer = await store.Plans.SaveAsync(
            shop.Self,
            shop.Student.Id,
            shop.Project.Id,
            CheckedPlans.For(request!),
            Cancel
        );
        Assert.Equal(2, newer.Value!.Number);

        var current = await Progress.CurrentAsync(shop.Self, shop.Student.Id, null, Cancel);

        Assert.Equal(shop.PlanId, current!.Plan.Id);
    }

    [Fact]
    public async Task A_size_is_stored_exactly_and_one_in_the_wrong_unit_is_asked_about()
    {
        var plan = (await Progress.FindAsync(shop.Self, shop.PlanId, Cancel))!;
        var (step, asked) = plan
            .Progress.Steps.SelectMany(s => MeasuredSize.AskedOf(s.Step).Select(a => (s.Step, a)))
            .First();
        StepAction Measured(Length size) =>
            new(Guid.NewGuid(), step.Id, StepActionKind.Measured, asked.Piece, size);

        Assert.True((await SayAsync(Measured(asked.Planned))).IsSaved);
        var wrong = await SayAsync(Measured(25 * asked.Planned));

        Assert.Equal("Size", Assert.Single(wrong.Problems).Field);
        var now = await Progress.FindAsync(shop.Self, shop.PlanId, Cancel);
        Assert.Equal(
            [new SizeLogged(asked.Piece, asked.Planned)],
            now!.Progress.Find(step.Id)!.Sizes
        );
    }

    private async Task SendAllAsync(IEnumerable<StepAction> actions)
    {
        foreach (var action in actions)
            Assert.True((await SayAsync(action)).IsSaved);
    }

    private Task<Outcome<PlanInHand>> SayAsync(StepAction action) =>
        Progress.SayAsync(shop.Self, shop.PlanId, action, null, Cancel);

    private static StepAction Tick(string step) => new(Guid.NewGuid(), step, StepActionKind.Tick);

    private async Task<string> FirstStepAsync() =>
        (await Progress.FindAsync(shop.Self, shop.PlanId, Cancel))!.Progress.Steps[0].Step.Id;

    private async Task<int> CountAsync()
    {
        await using var context = store.Open();
        return await context.Set<StepActionRow>().CountAsync(Cancel);
    }
}
