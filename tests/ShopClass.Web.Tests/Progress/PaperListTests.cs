using System.Net;
using ShopClass.Core.Progress;
using ShopClass.Data.Progress;
using ShopClass.Web.Features.Progress;
using ShopClass.Web.Tests.Access;

namespace ShopClass.Web.Tests.Progress;

/// <summary>A checklist kept on paper and keyed in afterwards.</summary>
public sealed class PaperListTests : IAsyncLifetime
{
    private readonly Benches shop = new();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync() => ValueTask.CompletedTask;

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Many_ticks_and_a_size_go_in_together_and_count_once_however_often_sent(
        bool byInstructor
    )
    {
        var (_, student, plan) = await shop.AtWorkAsync();
        var visitor = shop.Visit();
        await (byInstructor ? visitor.OpenDemo() : visitor.OpenDemoAs(student.Id));
        var address = byInstructor
            ? $"/courses/{student.CourseId}/paper/{plan.Plan.Id}"
            : $"/my/steps/{plan.Plan.Id}/paper";
        var fields = Fields(await visitor.Read(address));
        const int many = 6;
        for (var i = 0; i < many; i++)
            fields[PaperList.TickName(i)] = "true";
        var sized = plan
            .Progress.Steps.ToList()
            .FindIndex(s => MeasuredSize.AskedOf(s.Step).Count > 0);
        var asked = MeasuredSize.AskedOf(plan.Progress.Steps[sized].Step)[0];
        fields[PaperList.SizeName(sized, 0)] = Core.Measure.LengthWriter.WriteExactWithUnit(
            asked.Planned,
            plan.Plan.Checked.Request.Rules.Unit
        );

        var first = await visitor.Post(address, fields);
        var again = await visitor.Post(address, fields);

        Assert.EndsWith(
            $"taken={many + 1}",
            first.Headers.Location!.OriginalString,
            StringComparison.Ordinal
        );
        Assert.Equal(HttpStatusCode.Redirect, again.StatusCode);
        var now = await LookAsync(plan);
        Assert.Equal(many, now.Progress.Done);
        Assert.Equal(asked.Planned, Assert.Single(now.Progress.Steps[sized].Sizes).Size);
        Assert.Equal(many + 1, await CountAsync(plan));
    }

    [Fact]
    public async Task What_cannot_be_taken_is_said_at_its_line_and_stays_and_the_rest_is_kept()
    {
        var (_, student, plan) = await shop.AtWorkAsync();
        var visitor = await shop.Visit().OpenDemoAs(student.Id);
        var address = $"/my/steps/{plan.Plan.Id}/paper";
        var fields = Fields(await visitor.Read(address));
        var last = plan.Progress.Steps.Count - 1;
        var sized = plan
            .Progress.Steps.ToList()
            .FindIndex(s => MeasuredSize.AskedOf(s.Step).Count > 0);
        fields[PaperList.TickName(0)] = "true";
        fields[PaperList.TickName(last)] = "true";
        fields[PaperList.SizeName(sized, 0)] = "about so";

        var page = await Visitor.Parse(await visitor.Post(address, fields));

        Assert.Equal(1, (await LookAsync(plan)).Progress.Done);
        Assert.Equal(2, page.QuerySelectorAll(".paper-list .problem").Length);
        Assert.Equal(
            "about so",
            page.QuerySelector($"[name='{PaperList.SizeName(sized, 0)}']")!.GetAttribute("value")
        );
        Assert.NotNull(page.QuerySelector($"[name='{PaperList.TickName(last)}'][checked]"));
        Assert.Null(page.QuerySelector($"[name='{PaperList.TickName(0)}']"));
        Assert.Equal(
            fields[PaperList.MarkName(last)],
            page.QuerySelector($"[name='{PaperList.MarkName(last)}']")!.GetAttribute("value")
        );
    }

    [Fact]
    public async Task Ticks_crossed_out_on_paper_are_taken_back_together_whatever_builds_on_them()
    {
        var (owner, student, plan) = await shop.AtWorkAsync();
        var visitor = await shop.Visit().OpenDemoAs(student.Id);
        var address = $"/my/steps/{plan.Plan.Id}/paper";
        var fields = Fields(await visitor.Read(address));
        const int many = 4;
        for (var i = 0; i < many; i++)
            fields[PaperList.TickName(i)] = "true";
        await visitor.Post(address, fields);
        var steps = (await LookAsync(plan)).Progress.Steps;
        var under = steps
            .Take(many)
            .ToList()
            .FindIndex(s =>
                steps.Take(many).Any(later => later.Step.After.Contains(s.Step.Number))
            );
        var over = steps
            .Take(many)
            .ToList()
            .FindIndex(s => s.Step.After.Contains(steps[under].Step.Number));
        var page = await visitor.Read(address);
        Assert.Equal(many, page.QuerySelectorAll(".paper-back input").Length);

        // The one below alone is refused, and the page says why at its line.
        fields = Fields(page);
        fields[PaperList.BackName(under)] = "true";
        page = await Visitor.Parse(await visitor.Post(address, fields));
        Assert.Single(page.QuerySelectorAll(".paper-list .problem"));
        Assert.NotNull(page.QuerySelector($"[name='{PaperList.BackName(under)}'][checked]"));
        Assert.Equal(many, (await LookAsync(plan)).Progress.Done);

        fields = Fields(page);
        foreach (
            var line in steps
                .Take(many)
                .Index()
                .Select(s => s.Index)
                .Where(i => i == under || Above(i))
        )
            fields[PaperList.BackName(line)] = "true";
        var taken = fields.Keys.Count(k => k.StartsWith("Entry.b", StringComparison.Ordinal));
        await visitor.Post(address, fields);
        await visitor.Post(address, fields);

        var now = await LookAsync(plan);
        Assert.False(now.Progress.Steps[under].IsDone);
        Assert.False(now.Progress.Steps[over].IsDone);
        Assert.Equal(many - taken, now.Progress.Done);
        Assert.Equal(many + taken, await CountAsync(plan));

        bool Above(int line) =>
            steps[line].Step.After.Any(n => n - 1 == under || (n - 1 < line && Above(n - 1)));
    }

    private async Task<PlanInHand> LookAsync(PlanInHand plan) =>
        (
            await shop.Get<ProgressStore>()
                .FindAsync((await shop.DemoAsync()).Owner, plan.Plan.Id, Cancel)
        )!;

    private async Task<int> CountAsync(PlanInHand plan)
    {
        await using var store =
            await shop.Get<Microsoft.EntityFrameworkCore.IDbContextFactory<Data.Store.ShopContext>>()
                .CreateDbContextAsync(Cancel);
        return store.Set<StepActionRow>().Count(a => a.PlanId == plan.Plan.Id);
    }

    private static Dictionary<string, string> Fields(AngleSharp.Html.Dom.IHtmlDocument page) =>
        page.QuerySelectorAll(".paper-list input[type=hidden]")
            .OfType<AngleSharp.Html.Dom.IHtmlInputElement>()
            .ToDictionary(i => i.Name!, i => i.Value, StringComparer.Ordinal);
}
