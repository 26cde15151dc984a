using System.Net;
using System.Net.Http.Json;
using ShopClass.Core.Progress;
using ShopClass.Data.Progress;
using ShopClass.Web.Features.Progress;
using ShopClass.Web.Tests.Access;
using ShopClass.Web.Tests.Joining;

namespace ShopClass.Web.Tests.Progress;

public sealed class StepsOverHttpTests : IAsyncLifetime
{
    private readonly Benches shop = new();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync() => ValueTask.CompletedTask;

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task Without_script_a_student_ticks_a_step_and_comes_to_the_next()
    {
        var (owner, student, plan) = await shop.AtWorkAsync();
        var visitor = await shop.Visit().OpenDemoAs(student.Id);
        var first = await visitor.Read("/my/steps");
        Assert.Equal(plan.Progress.Steps[0].Step.Title, first.QuerySelector("h1")!.TextContent);

        var said = await visitor.Submit("/my/steps", "Done");

        Assert.Equal($"/my/steps/{plan.Plan.Id}/2", said.Headers.Location!.AbsolutePath());
        var now = await shop.Get<ProgressStore>().FindAsync(owner, plan.Plan.Id, Cancel);
        Assert.True(now!.Progress.Steps[0].IsDone);
        var list = await visitor.Read($"/my/steps/{plan.Plan.Id}/all");
        Assert.Equal(plan.Progress.Steps.Count, list.QuerySelectorAll(".step-list li").Length);
        Assert.Single(list.QuerySelectorAll(".step-list .is-done"));
    }

    [Fact]
    public async Task The_same_form_sent_twice_counts_once_and_comes_to_the_same_place()
    {
        var (owner, student, plan) = await shop.AtWorkAsync();
        var visitor = await shop.Visit().OpenDemoAs(student.Id);
        var page = await visitor.Read($"/my/steps/{plan.Plan.Id}/1");
        var fields = Fields(page, "Note");
        fields["Entry.Text"] = "dull saw <script>alert(1)</script>";

        var first = await visitor.Post($"/my/steps/{plan.Plan.Id}/1", fields);
        var second = await visitor.Post($"/my/steps/{plan.Plan.Id}/1", fields);

        Assert.Equal(HttpStatusCode.Redirect, first.StatusCode);
        Assert.Equal(first.Headers.Location, second.Headers.Location);
        var now = await shop.Get<ProgressStore>().FindAsync(owner, plan.Plan.Id, Cancel);
        Assert.Single(now!.Progress.Steps[0].Notes);
        var shown = await visitor.Read($"/my/steps/{plan.Plan.Id}/1");
        Assert.Empty(shown.QuerySelectorAll("main script"));
        Assert.Contains(
            "<script>",
            shown.QuerySelector(".step-note")!.TextContent,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_size_that_cannot_be_read_is_explained_at_the_field_and_stays_as_typed()
    {
        var (_, student, plan) = await shop.AtWorkAsync();
        var visitor = await shop.Visit().OpenDemoAs(student.Id);
        var number =
            1 + plan.Progress.Steps.ToList().FindIndex(s => MeasuredSize.AskedOf(s.Step).Count > 0);
        var address = $"/my/steps/{plan.Plan.Id}/{number}";
        var fields = Fields(await visitor.Read(address), "Measured");
        fields["Entry.Text"] = MeasuredSize.AskedOf(plan.Progress.Steps[number - 1].Step)[0].Piece;
        fields["Entry.Size"] = "about so";

        var page = await Visitor.Parse(await visitor.Post(address, fields));

        Assert.NotEmpty(page.QuerySelector(".problem")!.TextContent);
        Assert.Equal("about so", page.QuerySelector("#size")!.GetAttribute("value"));
    }

    [Fact]
    public async Task A_queued_action_is_taken_once_and_says_what_is_next()
    {
        var (_, student, plan) = await shop.AtWorkAsync();
        var phone = await PhoneAsync(student.Id);
        var tick = Benches.Entry(plan, StepActionKind.Tick);

        foreach (var _ in Enumerable.Range(0, 3))
        {
            var response = await Benches.SendAsync(phone, tick);
            Assert.Equal(HttpStatusCode.OK, response.StatusCode);
            var answered = await response.Content.ReadFromJsonAsync<Answered>(Cancel);
            Assert.Equal((1, 2), (answered!.Done, answered.Next));
        }
    }

    [Fact]
    public async Task A_tick_whose_turn_has_not_come_is_refused_with_a_sentence()
    {
        var (_, student, plan) = await shop.AtWorkAsync();
        var phone = await PhoneAsync(student.Id);
        var later = plan.Progress.Steps.First(s => s.Step.After.Count > 0).Step.Number;

        var response = await Benches.SendAsync(
            phone,
            Benches.Entry(plan, StepActionKind.Tick, later)
        );

        Assert.Equal(HttpStatusCode.UnprocessableEntity, response.StatusCode);
        var answered = await response.Content.ReadFromJsonAsync<Answered>(Cancel);
        Assert.Contains("Do that one first", answered!.Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false, null)]
    [InlineData(true, "cross-site")]
    [InlineData(true, "same-site")]
    public async Task What_another_site_s_page_could_send_is_refused(bool fromUs, string? site)
    {
        var (owner, student, plan) = await shop.AtWorkAsync();
        var phone = await PhoneAsync(student.Id);

        var response = await Benches.SendAsync(
            phone,
            Benches.Entry(plan, StepActionKind.Tick),
            fromUs,
            site
        );

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
        var now = await shop.Get<ProgressStore>().FindAsync(owner, plan.Plan.Id, Cancel);
        Assert.Equal(0, now!.Progress.Done);
    }

    [Fact]
    public async Task Every_step_page_is_light_private_and_for_one_thumb()
    {
        foreach (var name in (string[])["Maren Tveit", "Priya Ramanathan", "Inés Calderón"])
        {
            var (_, student, plan) = await shop.AtWorkAsync(name);
            var phone = await PhoneAsync(student.Id);
            phone.DefaultRequestHeaders.AcceptEncoding.ParseAdd("br");
            foreach (var number in Enumerable.Range(1, plan.Progress.Steps.Count))
            {
                var response = await phone.GetAsync(
                    new Uri($"/my/steps/{plan.Plan.Id}/{number}", UriKind.Relative),
                    Cancel
                );
                var bytes = await response.Content.ReadAsByteArrayAsync(Cancel);
                Assert.True(
                    bytes.Length <= 25 * 1024,
                    $"{name}, step {number}: {bytes.Length} bytes"
                );
                Assert.True(response.Headers.CacheControl!.NoStore);
            }
        }
    }

    [Fact]
    public async Task A_first_visit_fetches_at_most_180_kilobytes()
    {
        var (_, student, _) = await shop.AtWorkAsync("Priya Ramanathan");
        var phone = await PhoneAsync(student.Id);
        var html = await phone.GetStringAsync(new Uri("/my/steps", UriKind.Relative), Cancel);
        var page = await new AngleSharp.Html.Parser.HtmlParser().ParseDocumentAsync(html, Cancel);
        var parts = page.QuerySelectorAll("link[rel=stylesheet]")
            .Select(l => l.GetAttribute("href")!)
            .Concat(page.QuerySelectorAll("script[src]").Select(s => s.GetAttribute("src")!))
            .Concat([
                "fonts/Bench_400.woff2",
                "fonts/Bench_600.woff2",
                "fonts/BenchHeading_600.woff2",
            ]);
        var total = System.Text.Encoding.UTF8.GetByteCount(html);
        phone.DefaultRequestHeaders.AcceptEncoding.ParseAdd("br");
        foreach (var part in parts)
        {
            var bytes = await phone.GetByteArrayAsync(
                new Uri("/" + part.TrimStart('/'), UriKind.Relative),
                Cancel
            );
            total += bytes.Length;
        }

        Assert.InRange(total, 30_000, 180 * 1024);
    }

    private async Task<HttpClient> PhoneAsync(Guid student)
    {
        var client = shop.CreateClient(
            new() { AllowAutoRedirect = false, BaseAddress = new("https://shop.test") }
        );
        await new Visitor(client).OpenDemoAs(student);
        return client;
    }

    private static Dictionary<string, string> Fields(
        AngleSharp.Html.Dom.IHtmlDocument page,
        string kind
    ) =>
        page.QuerySelectorAll("form[data-say]")
            .Single(f => f.QuerySelector($"input[value={kind}]") is not null)
            .QuerySelectorAll("input[type=hidden]")
            .OfType<AngleSharp.Html.Dom.IHtmlInputElement>()
            .GroupBy(i => i.Name!, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.First().Value, StringComparer.Ordinal);
}
