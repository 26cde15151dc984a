using System.Net;
using System.Net.Http.Json;
using ShopClass.Core.Progress;
using ShopClass.Data.Progress;
using ShopClass.Web.Features.Progress;
using ShopClass.Web.Tests.Access;

namespace ShopClass.Web.Tests.Progress;

/// <summary>Minutes said with a tick: from the step's form, from a phone's queue, from paper.</summary>
public sealed class StepMinutesTests : IAsyncLifetime
{
    private readonly Benches shop = new();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync() => ValueTask.CompletedTask;

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task A_phone_sends_minutes_with_its_tick_and_they_count_once()
    {
        var (owner, student, plan) = await shop.AtWorkAsync();
        var phone = await PhoneAsync(student.Id);
        var tick = Benches.Entry(plan, StepActionKind.Tick);
        tick.Minutes = "12";

        foreach (var _ in Enumerable.Range(0, 2))
            Assert.Equal(HttpStatusCode.OK, (await Benches.SendAsync(phone, tick)).StatusCode);

        Assert.Equal(12, (await LookAsync(plan)).Progress.Steps[0].Minutes);
        var pace = await shop.Get<PaceStore>().FindAsync(owner, student.CourseId, Cancel);
        Assert.Equal(1, Assert.Single(pace!.Course.Kinds).Factor.Steps);
        var said = await new Visitor(phone).Read($"/my/steps/{plan.Plan.Id}/1");
        Assert.Contains("It took 12 minutes.", said.Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_course_s_pace_is_on_the_instructor_s_page_of_lessons_and_on_no_student_s()
    {
        var (_, student, plan) = await shop.AtWorkAsync();
        var phone = await PhoneAsync(student.Id);
        var tick = Benches.Entry(plan, StepActionKind.Tick);
        tick.Minutes = "40";
        await Benches.SendAsync(phone, tick);
        var address = $"/courses/{student.CourseId}/lessons";

        var seen = await (await shop.Visit().OpenDemo()).Read(address);
        var own = await new Visitor(phone).Read(address);

        Assert.Contains(
            "from 1 step, still mostly the usual rate",
            seen.QuerySelector(".pace-kinds")!.TextContent,
            StringComparison.Ordinal
        );
        var (_, _, students) = await shop.DemoAsync();
        Assert.Equal(
            students.Select(s => s.Shown),
            seen.QuerySelectorAll(".pace-students tbody th").Select(h => h.TextContent.Trim())
        );
        Assert.DoesNotContain("pace", own.Body!.TextContent, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Three_first_cuts_are_asked_for_at_the_bench_and_the_room_sees_how_far_it_is()
    {
        var (owner, student, plan) = await shop.AtWorkAsync();
        var phone = await PhoneAsync(student.Id);
        var room = $"/courses/{student.CourseId}/room";
        var desk = await shop.Visit().OpenDemo();
        var cuts = plan.Progress.Steps.Where(s => plan.CutToTime(s.Step) is not null).ToList();
        Assert.Equal(3, cuts.Count);
        Assert.Contains("0 of 3 first cuts timed", await RoomAsync(), StringComparison.Ordinal);

        for (var cut = 0; cut < 3; cut++)
        {
            while ((await LookAsync(plan)).Progress.Next!.Step.Id != cuts[cut].Step.Id)
                await TickAsync((await LookAsync(plan)).Progress.Next!.Step.Number, "");
            var page = await new Visitor(phone).Read("/my/steps");
            Assert.Contains(
                $"Time this cut, {cut + 1} of 3.",
                page.QuerySelector(".first-cut")!.TextContent,
                StringComparison.Ordinal
            );
            await TickAsync(cuts[cut].Step.Number, "7");
        }

        Assert.Contains("first cuts timed", await RoomAsync(), StringComparison.Ordinal);
        Assert.DoesNotContain("of 3 first cuts timed", await RoomAsync(), StringComparison.Ordinal);
        foreach (var step in (await LookAsync(plan)).Progress.Steps.Where(s => !s.IsDone))
            Assert.Null(
                (
                    await new Visitor(phone).Read($"/my/steps/{plan.Plan.Id}/{step.Step.Number}")
                ).QuerySelector(".first-cut")
            );
        Assert.True(
            (await shop.Get<PaceStore>().FindAsync(owner, student.CourseId, Cancel))!
                .Students[student.Id.ToString()]
                .Steps >= 3
        );

        async Task<string> RoomAsync() =>
            (await desk.Read(room))
                .QuerySelectorAll("tbody tr")
                .Single(r => r.TextContent.Contains(student.Shown, StringComparison.Ordinal))
                .QuerySelector(".first-cuts")!
                .TextContent;

        async Task TickAsync(int step, string minutes)
        {
            var tick = Benches.Entry(plan, StepActionKind.Tick, step);
            tick.Minutes = minutes;
            Assert.Equal(HttpStatusCode.OK, (await Benches.SendAsync(phone, tick)).StatusCode);
        }
    }

    [Theory]
    [InlineData("a while", "no number of minutes")]
    [InlineData("0", "from 1 to 480")]
    [InlineData("999", "from 1 to 480")]
    public async Task Minutes_that_cannot_be_are_a_sentence_on_the_phone_and_nothing_is_ticked(
        string typed,
        string says
    )
    {
        var (_, student, plan) = await shop.AtWorkAsync();
        var phone = await PhoneAsync(student.Id);
        var tick = Benches.Entry(plan, StepActionKind.Tick);
        tick.Minutes = typed;

        var response = await Benches.SendAsync(phone, tick);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, response.StatusCode);
        var answered = await response.Content.ReadFromJsonAsync<Answered>(Cancel);
        Assert.Contains(says, answered!.Problem, StringComparison.Ordinal);
        Assert.Equal(0, (await LookAsync(plan)).Progress.Done);
    }

    [Fact]
    public async Task The_plain_form_says_it_at_the_field_and_keeps_what_was_typed()
    {
        var (_, student, plan) = await shop.AtWorkAsync();
        var visitor = await shop.Visit().OpenDemoAs(student.Id);
        var address = $"/my/steps/{plan.Plan.Id}/1";
        var fields = (await visitor.Read(address))
            .QuerySelectorAll("#tick input[type=hidden]")
            .OfType<AngleSharp.Html.Dom.IHtmlInputElement>()
            .ToDictionary(i => i.Name!, i => i.Value, StringComparer.Ordinal);
        fields["Entry.Minutes"] = "500";

        var page = await Visitor.Parse(await visitor.Post(address, fields));

        Assert.Contains(
            "from 1 to 480",
            page.QuerySelector(".took .problem")!.TextContent,
            StringComparison.Ordinal
        );
        Assert.Equal("500", page.QuerySelector("#took")!.GetAttribute("value"));
        Assert.Equal("tick", page.QuerySelector("#took")!.GetAttribute("form"));
        Assert.Equal(0, (await LookAsync(plan)).Progress.Done);

        fields["Entry.Minutes"] = "9";
        await visitor.Post(address, fields);
        Assert.Equal(9, (await LookAsync(plan)).Progress.Steps[0].Minutes);
    }

    [Fact]
    public async Task Minutes_from_paper_go_in_with_their_ticks_and_bad_ones_stay_at_their_line()
    {
        var (_, student, plan) = await shop.AtWorkAsync();
        var visitor = await shop.Visit().OpenDemo();
        var address = $"/courses/{student.CourseId}/paper/{plan.Plan.Id}";
        var fields = (await visitor.Read(address))
            .QuerySelectorAll(".paper-list input[type=hidden]")
            .OfType<AngleSharp.Html.Dom.IHtmlInputElement>()
            .ToDictionary(i => i.Name!, i => i.Value, StringComparer.Ordinal);
        fields[PaperList.TickName(0)] = "true";
        fields[PaperList.MinutesName(0)] = "8";
        fields[PaperList.TickName(1)] = "true";
        fields[PaperList.MinutesName(1)] = "long";
        fields[PaperList.MinutesName(2)] = "4";

        var page = await Visitor.Parse(await visitor.Post(address, fields));

        var now = await LookAsync(plan);
        Assert.Equal((1, 8), (now.Progress.Done, now.Progress.Steps[0].Minutes));
        var problems = page.QuerySelectorAll(".paper-list .problem");
        Assert.Equal(2, problems.Length);
        Assert.Contains("no number of minutes", problems[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("Tick it too", problems[1].TextContent, StringComparison.Ordinal);
        Assert.Equal(
            "long",
            page.QuerySelector($"[name='{PaperList.MinutesName(1)}']")!.GetAttribute("value")
        );
    }

    private async Task<HttpClient> PhoneAsync(Guid student)
    {
        var client = shop.CreateClient(
            new() { AllowAutoRedirect = false, BaseAddress = new("https://shop.test") }
        );
        await new Visitor(client).OpenDemoAs(student);
        return client;
    }

    private async Task<PlanInHand> LookAsync(PlanInHand plan) =>
        (
            await shop.Get<ProgressStore>()
                .FindAsync((await shop.DemoAsync()).Owner, plan.Plan.Id, Cancel)
        )!;
}
