using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Data.Access;
using ShopClass.Data.Joining;
using ShopClass.Data.Tests.Access;
using ShopClass.Web.Features.Joining;
using ShopClass.Web.Features.Printing;
using Instructor = ShopClass.Data.Store.Account;

namespace ShopClass.Web.Tests.Access;

/// <summary>The app over a store with one of everything in it and with instructors of every role.</summary>
public sealed class StaffedShop : OpenShop, IAsyncLifetime
{
    private readonly Dictionary<string, HttpClient> clients = new(StringComparer.Ordinal);

    public static IReadOnlyList<string> Visitors { get; } =
    [
        "nobody",
        "owner",
        "helper",
        "stand-in",
        "stand-in of another day",
        "helper elsewhere",
        "other instructor",
        "self",
        "classmate",
        "outsider",
    ];

    public Staff Staff { get; } = new();

    public Guid PrintSet { get; private set; }

    public async ValueTask InitializeAsync()
    {
        await Staff.InitializeAsync();
        File.Copy(Staff.BackupPath, Path.Combine(Folder, "shopclass.db"), overwrite: true);
        foreach (var visitor in Visitors)
            clients[visitor] = await ComeAsync(visitor);
        var laid = Get<PrintTray>().Lay(Staff.Shop.Owner, [1]);
        PrintSet = Guid.Parse(laid.Split('/')[^1]);
    }

    /// <summary>A browser in which this visitor is signed in.</summary>
    public HttpClient Of(string visitor) => clients[visitor];

    /// <summary>The viewer the app sees in them; null for nobody.</summary>
    public Viewer? ViewerOf(string visitor) => visitor == "nobody" ? null : Staff.As(visitor);

    /// <summary>An address with its places filled by the keys of Ada's course.</summary>
    public string Fill(string pattern)
    {
        var ofLessons = pattern.Contains("/lessons/", StringComparison.OrdinalIgnoreCase);
        return System.Text.RegularExpressions.Regex.Replace(
            pattern,
            @"\{(\w+)[^}]*\}",
            m => ValueOf(m.Groups[1].Value, pattern, ofLessons).ToString()!
        );
    }

    public object ValueOf(string place, string pattern, bool ofLessons) =>
        place.ToUpperInvariant() switch
        {
            "NUMBER" => 1,
            "SLUG" => "length",
            "PLANID" when ofLessons => Staff.Keys["lessonPlanId"],
            "ID" when pattern.Contains("project", StringComparison.Ordinal) => Staff.Keys[
                "projectId"
            ],
            "ID" when pattern.Contains("print", StringComparison.Ordinal) => PrintSet,
            "ID" => Staff.Keys["courseId"],
            _ => Staff.Keys[char.ToLowerInvariant(place[0]) + place[1..]],
        };

    private async Task<HttpClient> ComeAsync(string visitor)
    {
        var client = CreateClient(
            new() { AllowAutoRedirect = false, BaseAddress = new("https://shop.test") }
        );
        switch (ViewerOf(visitor))
        {
            case InstructorViewer instructor:
                await new Visitor(client).SignIn(await GivePasswordAsync(instructor));
                break;
            case StudentViewer student:
                var owner = visitor == "outsider" ? Staff.Shop.OtherInstructor : Staff.Shop.Owner;
                var code = await Get<DoorStore>()
                    .NewStudentCodeAsync(owner, student.StudentId, endsOthers: false);
                var phone = await Get<JoinDesk>().UseStudentCodeAsync(code.Value!, "x");
                client.DefaultRequestHeaders.Add(
                    "Cookie",
                    $"{DeviceSession.CookieName}={phone.Value!.Token}"
                );
                break;
        }

        return client;
    }

    private async Task<string> GivePasswordAsync(InstructorViewer instructor)
    {
        await using var scope = Services.CreateAsyncScope();
        var users = scope.ServiceProvider.GetRequiredService<UserManager<Instructor>>();
        var account = (await users.FindByIdAsync(instructor.UserId))!;
        Assert.True((await users.AddPasswordAsync(account, Password)).Succeeded);
        return account.UserName!;
    }

    async ValueTask IAsyncDisposable.DisposeAsync()
    {
        await base.DisposeAsync();
        await Staff.DisposeAsync();
    }
}
