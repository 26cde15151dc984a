using System.Net;
using System.Text;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using ShopClass.Core.Progress;
using ShopClass.Data.Joining;
using ShopClass.Data.Progress;
using ShopClass.Data.Store;
using ShopClass.Data.Students;
using ShopClass.Web.Features.Joining;
using ShopClass.Web.Features.Logging;
using ShopClass.Web.Features.Progress;
using ShopClass.Web.Tests.Access;
using ShopClass.Web.Tests.Joining;
using ShopClass.Web.Tests.Logging;
using ShopClass.Web.Tests.Progress;

namespace ShopClass.Web.Tests.Privacy;

/// <summary>An evening with everything that may go wrong in it, and then the log of it is read.</summary>
public sealed class LogsHoldNothingPersonalTests : IAsyncLifetime
{
    private const string BoardName = "Quillfeather plank";
    private const string Note = "my knee hurts wobblestone";
    private const string HelpText = "splinter in thumb grizzlemoor";

    private readonly LoggedShop shop = new();
    private readonly HashSet<string> secrets = new(StringComparer.Ordinal)
    {
        "Maren",
        "Tveit",
        "Comer",
        "Quillfeather",
        "wobblestone",
        "grizzlemoor",
    };

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync() =>
        new(ShopStartup.PrepareAsync(shop.Services, demo: true, Cancel));

    public ValueTask DisposeAsync() => shop.DisposeAsync();

    [Fact]
    public async Task No_name_board_note_code_or_token_is_in_any_line()
    {
        var (owner, student, plan) = await shop.AtWorkAsync();
        var door = (
            await shop.Get<DoorStore>().OpenAsync(owner, student.CourseId, 7, true, Cancel)
        ).Value!;
        var oneTime = (
            await shop.Get<DoorStore>().NewStudentCodeAsync(owner, student.Id, false, Cancel)
        ).Value!;
        foreach (var code in (string[])[door.Code, oneTime, "CDFGHJKM"])
            secrets.UnionWith([code, JoinCode.Write(code)]);
        var phone = Phone();
        var visitor = new Visitor(phone);

        await StrangersAsync(door.Code);
        await JoinAsync(visitor, oneTime);
        await visitor.AnswerAllAsync(plan.Plan.ProjectId);
        await visitor.AnswerAsync(
            plan.Plan.ProjectId,
            EntryScreen.Log,
            ("Entry.Text", BoardName),
            ("Entry.Go", "log")
        );
        Assert.Contains(
            BoardName,
            (await visitor.Read($"/my/board?project={plan.Plan.ProjectId}")).Body!.TextContent,
            StringComparison.Ordinal
        );
        await SayAsync(phone, plan, StepActionKind.Note, Note, HttpStatusCode.OK);
        await SayAsync(phone, plan, StepActionKind.NeedHelp, HelpText, HttpStatusCode.OK);
        await SayAsync(phone, plan, StepActionKind.Tick, "", HttpStatusCode.OK);
        await RefusedAsync(phone, visitor);
        await BreakTheStoreAsync();
        await SayAsync(
            phone,
            plan,
            StepActionKind.Note,
            Note,
            HttpStatusCode.InternalServerError,
            step: 2
        );

        // The failure was logged with its exception, so there is something to read.
        Assert.Contains(
            shop.Log.Lines,
            l =>
                l.StartsWith("Error", StringComparison.Ordinal)
                && l.Contains("SqliteException", StringComparison.Ordinal)
        );
        Assert.Empty(LinesThatTell());
        // And a line that tells would have been found.
        shop.Get<ILoggerFactory>().CreateLogger("ShopClass").LogInformation("{Who}", "Tveit");
        Assert.Single(LinesThatTell());
    }

    private IEnumerable<string> LinesThatTell() =>
        shop.Log.Lines.Where(l =>
            secrets.Any(s => l.Contains(s, StringComparison.OrdinalIgnoreCase))
        );

    private HttpClient Phone() =>
        shop.CreateClient(
            new() { AllowAutoRedirect = false, BaseAddress = new("https://shop.test") }
        );

    // A wrong code, somebody who is not on the list, and a form that is not ours.
    private async Task StrangersAsync(string doorCode)
    {
        var stranger = shop.Visit();
        // A scanned label carries the class code in the address of the door.
        await stranger.Read($"/join?code={doorCode}");
        await stranger.Submit("/join", "Go on", ("code", "CDFGHJKM"));
        var fields = Visitor.Hidden(
            await Visitor.Parse(await stranger.Submit("/join", "Go on", ("code", doorCode)))
        );
        fields["Entry.Name"] = "Late Comer";
        var waiting = await stranger.Post("/join", fields);
        Assert.Equal("/join/waiting", waiting.Headers.Location!.AbsolutePath());
        fields["__RequestVerificationToken"] = "Maren";
        Assert.Equal(HttpStatusCode.BadRequest, (await stranger.Post("/join", fields)).StatusCode);
    }

    private async Task JoinAsync(Visitor visitor, string oneTime)
    {
        var asked = await Visitor.Parse(await visitor.Submit("/join", "Go on", ("code", oneTime)));
        var arrived = await visitor.Post("/join", Visitor.Hidden(asked));
        Assert.Equal("/my/steps", arrived.Headers.Location!.AbsolutePath());
        var cookie = arrived
            .Headers.GetValues("Set-Cookie")
            .Single(c => c.StartsWith(DeviceSession.CookieName, StringComparison.Ordinal));
        secrets.Add(cookie.Split('=', ';')[1]);
    }

    private static async Task SayAsync(
        HttpClient phone,
        PlanInHand plan,
        StepActionKind kind,
        string text,
        HttpStatusCode answer,
        int step = 1
    )
    {
        var entry = Benches.Entry(plan, kind, step);
        entry.Text = text;
        Assert.Equal(answer, (await Benches.SendAsync(phone, entry)).StatusCode);
    }

    // What cannot be read, a page that is not there, a wrong password.
    private async Task RefusedAsync(HttpClient phone, Visitor visitor)
    {
        using var unreadable = new HttpRequestMessage(HttpMethod.Post, ProgressRoutes.Address)
        {
            Content = new StringContent(
                $"{{\"text\": \"{Note}\", Maren",
                Encoding.UTF8,
                "application/json"
            ),
        };
        unreadable.Headers.Add(ProgressRoutes.Header, "steps");
        Assert.Equal(
            HttpStatusCode.BadRequest,
            (await phone.SendAsync(unreadable, Cancel)).StatusCode
        );
        Assert.Equal(HttpStatusCode.NotFound, (await visitor.Get("/my/nowhere")).StatusCode);
        await shop.Visit().TrySignIn("Maren Tveit", "not the password");
    }

    private async Task BreakTheStoreAsync()
    {
        await using var store = new SqliteConnection(shop.StoreAddress);
        await store.OpenAsync(Cancel);
        await using var drop = store.CreateCommand();
        drop.CommandText = "DROP TABLE StepActions";
        await drop.ExecuteNonQueryAsync(Cancel);
    }
}
