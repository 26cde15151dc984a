using System.Globalization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Data.Access;
using ShopClass.Data.CourseFiles;
using ShopClass.Data.Courses;
using ShopClass.Data.Joining;
using ShopClass.Data.Learning;
using ShopClass.Data.Lessons;
using ShopClass.Data.Plans;
using ShopClass.Data.Progress;
using ShopClass.Data.Projects;
using ShopClass.Data.Remakes;
using ShopClass.Data.Store;
using ShopClass.Data.Students;
using ShopClass.Data.Students.Logging;

namespace ShopClass.Data.Tests;

/// <summary>A real store in a SQLite file of its own, migrated, and deleted with everything in it at the end.</summary>
public sealed class ThrowAwayStore : IAsyncDisposable
{
    private readonly string _folder;
    private readonly ServiceProvider _services;

    private ThrowAwayStore(string folder, TimeProvider? clock)
    {
        _folder = folder;
        var services = new ServiceCollection();
        services.AddLogging();
        if (clock is not null)
        {
            services.AddSingleton(clock);
        }

        services.AddShopStore(ConnectionString);
        _services = services.BuildServiceProvider(validateScopes: true);
    }

    public string FilePath => Path.Combine(_folder, "shopclass.db");

    public string ConnectionString => $"Data Source={FilePath}";

    public IServiceProvider Services => _services;

    public CourseStore Courses => _services.GetRequiredService<CourseStore>();

    public ProjectStore Projects => _services.GetRequiredService<ProjectStore>();

    public StudentStore Students => _services.GetRequiredService<StudentStore>();

    public BoardStore Boards => _services.GetRequiredService<BoardStore>();

    public BoardEntryStore Entries => _services.GetRequiredService<BoardEntryStore>();

    public BoardYesStore Yes => _services.GetRequiredService<BoardYesStore>();

    public PlanStore Plans => _services.GetRequiredService<PlanStore>();

    public DoorStore Doors => _services.GetRequiredService<DoorStore>();

    public JoinDesk JoinDesk => _services.GetRequiredService<JoinDesk>();

    public LessonStore Lessons => _services.GetRequiredService<LessonStore>();

    public LessonPlanStore LessonPlans => _services.GetRequiredService<LessonPlanStore>();

    public RemakeStore Remakes => _services.GetRequiredService<RemakeStore>();
    public PaceStore Paces => _services.GetRequiredService<PaceStore>();
    public StartStore Starts => _services.GetRequiredService<StartStore>();
    public ProgressStore Progress => _services.GetRequiredService<ProgressStore>();

    public CourseFileStore Files => _services.GetRequiredService<CourseFileStore>();

    public static async Task<ThrowAwayStore> MakeAsync(
        bool demo = false,
        TimeProvider? clock = null
    )
    {
        var name = string.Create(
            CultureInfo.InvariantCulture,
            $"shopclass-test-{Guid.NewGuid():N}"
        );
        var store = new ThrowAwayStore(Path.Combine(Path.GetTempPath(), name), clock);
        await ShopStartup.PrepareAsync(store.Services, demo);
        return store;
    }

    /// <summary>A store that begins as a copy of this file, as after restoring a backup.</summary>
    public static async Task<ThrowAwayStore> RestoreAsync(string file)
    {
        var store = Copy(file);
        await ShopStartup.PrepareAsync(store.Services, demo: false);
        return store;
    }

    /// <summary>The same without starting up: for a copy of a store that was ready.</summary>
    public static ThrowAwayStore Copy(string file, TimeProvider? clock = null)
    {
        var name = string.Create(
            CultureInfo.InvariantCulture,
            $"shopclass-test-{Guid.NewGuid():N}"
        );
        var folder = Directory.CreateDirectory(Path.Combine(Path.GetTempPath(), name));
        var store = new ThrowAwayStore(folder.FullName, clock);
        File.Copy(file, store.FilePath);
        return store;
    }

    /// <summary>A second app on the same file, as after a restart. It leaves the file alone when it is done.</summary>
    public ServiceProvider Restarted()
    {
        var services = new ServiceCollection();
        services.AddLogging();
        services.AddShopStore(ConnectionString);
        return services.BuildServiceProvider(validateScopes: true);
    }

    /// <summary>A context of its own, to look behind the stores.</summary>
    public ShopContext Open() =>
        _services.GetRequiredService<IDbContextFactory<ShopContext>>().CreateDbContext();

    /// <summary>An instructor with an account and nothing else.</summary>
    public async Task<InstructorViewer> AddInstructorAsync(string name = "instructor")
    {
        var account = new Account
        {
            UserName = name,
            NormalizedUserName = name.ToUpperInvariant(),
            SecurityStamp = Guid.NewGuid().ToString("N"),
        };
        await using var shop = Open();
        shop.Users.Add(account);
        await shop.SaveChangesAsync();
        return new InstructorViewer(account.Id);
    }

    public async ValueTask DisposeAsync()
    {
        await _services.DisposeAsync();
        using (var connection = new SqliteConnection(ConnectionString))
        {
            SqliteConnection.ClearPool(connection);
        }

        if (Directory.Exists(_folder))
        {
            Directory.Delete(_folder, recursive: true);
        }
    }
}
