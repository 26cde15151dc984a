using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Store;
using ShopClass.Data.Students;
using Instructor = ShopClass.Data.Store.Account;

namespace ShopClass.Web.Tests.Access;

/// <summary>The whole app in this process, with a store of its own and a clock that can be moved.</summary>
public class OpenShop : WebApplicationFactory<Program>
{
    public const string Password = "oak ash elm lime";

    private readonly string folder = Directory.CreateTempSubdirectory("shopclass-web-").FullName;

    protected virtual string EnvironmentName => "Development";

    /// <summary>Where the store is.</summary>
    protected string Folder => folder;

    public MovableClock Clock { get; } = new();

    public T Get<T>()
        where T : notnull => Services.GetRequiredService<T>();

    public Visitor Visit() =>
        new(
            CreateClient(
                new() { AllowAutoRedirect = false, BaseAddress = new("https://shop.test") }
            )
        );

    public async Task<InstructorViewer> AddInstructorAsync(string name)
    {
        await using var scope = Services.CreateAsyncScope();
        var users = scope.ServiceProvider.GetRequiredService<UserManager<Instructor>>();
        var account = new Instructor { UserName = name };
        var made = await users.CreateAsync(account, Password);
        Assert.True(made.Succeeded, string.Join(' ', made.Errors.Select(e => e.Description)));
        return new(account.Id);
    }

    public async Task ChangePasswordAsync(string name)
    {
        await using var scope = Services.CreateAsyncScope();
        var users = scope.ServiceProvider.GetRequiredService<UserManager<Instructor>>();
        var account = (await users.FindByNameAsync(name))!;
        Assert.True((await users.ChangePasswordAsync(account, Password, Password + "x")).Succeeded);
    }

    public async Task<(
        InstructorViewer Owner,
        CourseSummary Course,
        IReadOnlyList<StudentView> Students
    )> DemoAsync()
    {
        var owner = new InstructorViewer((await Get<InstructorAccounts>().DemoAsync())!);
        var course = (await Get<CourseStore>().ListAsync(owner))[0];
        return (owner, course, await Get<StudentStore>().ListAsync(owner, course.Id));
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseEnvironment(EnvironmentName).UseSetting("Store:Folder", folder);
        builder.UseStaticWebAssets();
        builder.ConfigureTestServices(services => services.AddSingleton<TimeProvider>(Clock));
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        SqliteConnection.ClearAllPools();
        if (disposing && Directory.Exists(folder))
            Directory.Delete(folder, recursive: true);
    }
}

/// <summary>A shop as it is put to work: no demo.</summary>
public sealed class WorkingShop : OpenShop
{
    protected override string EnvironmentName => "Production";
}

/// <summary>The real time, moved forward by what a test asks for.</summary>
public sealed class MovableClock : TimeProvider
{
    private TimeSpan ahead;

    public void Advance(TimeSpan by) => ahead += by;

    public override DateTimeOffset GetUtcNow() => base.GetUtcNow() + ahead;
}
