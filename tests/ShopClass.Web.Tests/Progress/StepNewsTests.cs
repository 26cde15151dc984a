using System.Net;
using ShopClass.Core.Progress;
using ShopClass.Data.Access;
using ShopClass.Data.Joining;
using ShopClass.Data.Progress;
using ShopClass.Web.Features.Joining;
using ShopClass.Web.Features.Progress;
using ShopClass.Web.Tests.Access;

namespace ShopClass.Web.Tests.Progress;

/// <summary>What an open page of a student hears, and who hears nothing.</summary>
public sealed class StepNewsTests(Benches shop) : IClassFixture<Benches>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_students_page_hears_of_its_own_steps_and_of_its_end_and_of_nobody_elses()
    {
        var (owner, student, plan) = await shop.AtWorkAsync();
        var (_, mate, matesPlan) = await shop.AtWorkAsync("Wendell Frost");
        var (phone, device) = await PhoneOfAsync(owner, student.Id);
        var (matesPhone, _) = await PhoneOfAsync(owner, mate.Id);
        using var heard = await ListenAsync(phone);
        using var matesHeard = await ListenAsync(matesPhone);
        Assert.Equal("here", await NextAsync(heard));
        Assert.Equal("here", await NextAsync(matesHeard));

        var progress = shop.Get<ProgressStore>();
        await SayAsync(progress, owner, matesPlan, StepActionKind.CheckedOff);
        Assert.Equal(StepNews.Said, await NextAsync(matesHeard));
        await SayAsync(progress, owner, plan, StepActionKind.CheckedOff);
        Assert.Equal(StepNews.Said, await NextAsync(heard));

        await shop.Get<DoorStore>().EndAsync(owner, device, Cancel);
        Assert.Equal(StepNews.Ended, await NextAsync(heard));
        Assert.Null(await heard.ReadLineAsync(Cancel));
        await SayAsync(progress, owner, matesPlan, StepActionKind.PleaseCheck, step: 2);
        Assert.Equal(StepNews.Said, await NextAsync(matesHeard));
    }

    [Fact]
    public async Task Nobody_but_a_student_listens()
    {
        var somebody = shop.CreateClient(
            new() { AllowAutoRedirect = false, BaseAddress = new("https://shop.test") }
        );
        var sent = await somebody.GetAsync(new Uri(StepNews.Address, UriKind.Relative), Cancel);
        Assert.Equal(HttpStatusCode.Unauthorized, sent.StatusCode);
        await new Visitor(somebody).OpenDemo();
        sent = await somebody.GetAsync(new Uri(StepNews.Address, UriKind.Relative), Cancel);
        Assert.Equal(HttpStatusCode.NotFound, sent.StatusCode);
    }

    private static async Task SayAsync(
        ProgressStore progress,
        InstructorViewer owner,
        PlanInHand plan,
        StepActionKind kind,
        int step = 1
    )
    {
        var said = await progress.SayAsync(
            owner,
            plan.Plan.Id,
            new(Guid.NewGuid(), plan.Progress.Steps[step - 1].Step.Id, kind),
            null,
            Cancel
        );
        Assert.True(said.IsSaved, string.Join(' ', said.Problems.Select(p => p.Sentence)));
    }

    private async Task<(HttpClient Phone, Guid Device)> PhoneOfAsync(
        InstructorViewer owner,
        Guid student
    )
    {
        var phone = shop.CreateClient(
            new() { AllowAutoRedirect = false, BaseAddress = new("https://shop.test") }
        );
        var code = await shop.Get<DoorStore>().NewStudentCodeAsync(owner, student, false, Cancel);
        var token = (await shop.Get<JoinDesk>().UseStudentCodeAsync(code.Value!, "x", Cancel))
            .Value!
            .Token;
        phone.DefaultRequestHeaders.Add("Cookie", $"{DeviceSession.CookieName}={token}");
        var device = await shop.Get<JoinDesk>().FindAsync(token, Cancel);
        return (phone, device!.DeviceId);
    }

    private static async Task<StreamReader> ListenAsync(HttpClient phone)
    {
        var answer = await phone.GetAsync(
            new Uri(StepNews.Address, UriKind.Relative),
            HttpCompletionOption.ResponseHeadersRead,
            Cancel
        );
        Assert.Equal("text/event-stream", answer.Content.Headers.ContentType?.MediaType);
        Assert.Contains("no-store", answer.Headers.CacheControl?.ToString() ?? "");
        return new(await answer.Content.ReadAsStreamAsync(Cancel));
    }

    // The next word; nothing but words is ever in the stream.
    private static async Task<string?> NextAsync(StreamReader heard)
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(Cancel);
        patience.CancelAfter(TimeSpan.FromSeconds(20));
        string? word = null;
        while (await heard.ReadLineAsync(patience.Token) is { } line)
        {
            if (line.StartsWith("event: ", StringComparison.Ordinal))
                word = line["event: ".Length..];
            else if (line.Length == 0 && word is not null)
                return word;
            else
                Assert.Equal("data: ", line);
        }

        return word;
    }
}
