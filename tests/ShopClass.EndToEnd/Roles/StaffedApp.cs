using System.Globalization;
using System.Text;
using Microsoft.AspNetCore.Identity;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using ShopClass.Core.Measure;
using ShopClass.Data.Access;
using ShopClass.Data.Joining;
using ShopClass.Data.Projects;
using ShopClass.Data.Store;
using ShopClass.Data.Tests;
using ShopClass.Data.Tests.Access;
using ShopClass.Web.Features.Joining;

namespace ShopClass.EndToEnd.Roles;

/// <summary>The running app over a store with two courses and people of every role, each at a live page of their own.</summary>
public sealed class StaffedApp : RunningApp
{
    private const string Password = "oak ash elm lime";
    private readonly Dictionary<string, Person> people = new(StringComparer.Ordinal);

    public Staff Staff { get; } = new();

    /// <summary>A project of the other course.</summary>
    public Guid OtherProject { get; private set; }

    private string StorePath => Path.Combine(Folder, "shopclass.db");

    public override async ValueTask InitializeAsync()
    {
        await Staff.InitializeAsync();
        File.Copy(Staff.BackupPath, StorePath, overwrite: true);
        await base.InitializeAsync();
        var projects = Services.GetRequiredService<ProjectStore>();
        var (other, elsewhere) = (Staff.Shop.OtherInstructor, Staff.Shop.OtherCourse.Id);
        OtherProject = Shop.Value(await projects.CreateAsync(other, elsewhere, "Box")).Id;
        Shop.Value(
            await projects.AddPartsAsync(other, OtherProject, [Wood.Side(), Wood.Side("B")])
        );
        Shop.Value(await projects.PutJointAsync(other, OtherProject, null, Wood.Nailed()));
    }

    /// <summary>The browser of this visitor, signed in, on a live page.</summary>
    public async Task<Person> OfAsync(string visitor)
    {
        if (!people.TryGetValue(visitor, out var person))
            people[visitor] = person = await ComeAsync(visitor);
        return person;
    }

    /// <summary>
    /// Takes an instructor's role in Ada's course away behind the app's back, as when a lesson moves to another day: no
    /// page is told. The row goes to somebody else, and comes back with <see cref="GiveBackAsync"/>.
    /// </summary>
    public Task TakeAwayAsync(string visitor) =>
        HandAsync(visitor, IdOf(visitor), IdOf("other instructor"));

    /// <summary>Gives the role back.</summary>
    public Task GiveBackAsync(string visitor) =>
        HandAsync(visitor, IdOf("other instructor"), IdOf(visitor));

    /// <summary>Every row of every table, as text.</summary>
    public async Task<string> EverythingAsync()
    {
        await using var store = await OpenAsync();
        List<string> tables = [];
        await using (var names = store.CreateCommand())
        {
            names.CommandText = "SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name";
            await using var reader = await names.ExecuteReaderAsync();
            while (await reader.ReadAsync())
                tables.Add(reader.GetString(0));
        }

        var all = new StringBuilder();
        foreach (var table in tables)
        {
            await using var rows = store.CreateCommand();
            rows.CommandText = $"SELECT * FROM \"{table}\" ORDER BY 1";
            await using var reader = await rows.ExecuteReaderAsync();
            while (await reader.ReadAsync())
            {
                var values = new object[reader.FieldCount];
                reader.GetValues(values);
                all.Append(table).Append('|').AppendJoin('|', values.Select(AsText)).AppendLine();
            }
        }

        return all.ToString();
    }

    public override async ValueTask DisposeAsync()
    {
        foreach (var person in people.Values)
            await person.DisposeAsync();
        await base.DisposeAsync();
        await Staff.DisposeAsync();
    }

    private static string AsText(object value) =>
        value is byte[] bytes
            ? Convert.ToHexString(bytes)
            : Convert.ToString(value, CultureInfo.InvariantCulture) ?? "";

    private string IdOf(string visitor) => ((InstructorViewer)Staff.As(visitor)).UserId;

    private async Task HandAsync(string visitor, string from, string to)
    {
        await using var store = await OpenAsync();
        await using var command = store.CreateCommand();
        command.CommandText = visitor is "owner"
            ? "UPDATE Courses SET OwnerId = $to WHERE OwnerId = $from AND Name = 'Evenings'"
            : "UPDATE People SET AccountId = $to WHERE AccountId = $from";
        command.Parameters.AddWithValue("$from", from);
        command.Parameters.AddWithValue("$to", to);
        Assert.Equal(1, await command.ExecuteNonQueryAsync());
    }

    private async Task<SqliteConnection> OpenAsync()
    {
        var store = new SqliteConnection(
            $"Data Source={StorePath};Pooling=False;Default Timeout=20"
        );
        await store.OpenAsync();
        return store;
    }

    private async Task<Person> ComeAsync(string visitor)
    {
        var person = await Person.AtADesk(this);
        if (Staff.As(visitor) is InstructorViewer instructor)
        {
            var name = await GivePasswordAsync(instructor);
            await person.Open("/account/sign-in");
            await person.Page.GetByLabel("Name", new() { Exact = false }).First.FillAsync(name);
            await person.Page.GetByLabel("Password", new() { Exact = true }).FillAsync(Password);
            await person
                .Page.Locator("main")
                .GetByRole(AriaRole.Button, new() { Name = "Sign in" })
                .ClickAsync();
            await person.Page.WaitForURLAsync("**/courses");
        }
        else
        {
            await BringThePhoneAsync(person, visitor);
        }

        return person;
    }

    private async Task BringThePhoneAsync(Person person, string visitor)
    {
        var student = (StudentViewer)Staff.As(visitor);
        var owner = visitor is "outsider" ? Staff.Shop.OtherInstructor : Staff.Shop.Owner;
        var code = await Services
            .GetRequiredService<DoorStore>()
            .NewStudentCodeAsync(owner, student.StudentId, endsOthers: false);
        var phone = await Services
            .GetRequiredService<JoinDesk>()
            .UseStudentCodeAsync(code.Value!, "x");
        await person.Page.Context.AddCookiesAsync([
            new()
            {
                Name = DeviceSession.CookieName,
                Value = phone.Value!.Token,
                Url = Address.ToString(),
            },
        ]);
    }

    private async Task<string> GivePasswordAsync(InstructorViewer instructor)
    {
        await using var scope = Services.CreateAsyncScope();
        var users = scope.ServiceProvider.GetRequiredService<UserManager<Account>>();
        var account = (await users.FindByIdAsync(instructor.UserId))!;
        Assert.True((await users.AddPasswordAsync(account, Password)).Succeeded);
        return account.UserName!;
    }
}
