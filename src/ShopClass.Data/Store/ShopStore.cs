using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using ShopClass.Data.Access;
using ShopClass.Data.CourseFiles;
using ShopClass.Data.Courses;
using ShopClass.Data.Joining;
using ShopClass.Data.Keeping;
using ShopClass.Data.Learning;
using ShopClass.Data.Lessons;
using ShopClass.Data.Orders;
using ShopClass.Data.People;
using ShopClass.Data.Plans;
using ShopClass.Data.Progress;
using ShopClass.Data.Projects;
using ShopClass.Data.Remakes;
using ShopClass.Data.Students;
using ShopClass.Data.Students.Logging;
using ShopClass.Data.Tools;

namespace ShopClass.Data.Store;

/// <summary>Puts the store into an app's services.</summary>
public static class ShopStore
{
    /// <summary>Where the migrations are.</summary>
    public const string MigrationsAssembly = "ShopClass.Migrations.Sqlite";

    /// <summary>
    /// Adds the context factory, the shape of the account tables and all stores. Call <see cref="ShopStartup"/> before the
    /// first is used.
    /// </summary>
    /// <param name="services">The app's services.</param>
    /// <param name="connectionString">A SQLite connection string: <c>Data Source=folder/shopclass.db</c>.</param>
    public static IServiceCollection AddShopStore(
        this IServiceCollection services,
        string connectionString
    )
    {
        services.Configure<IdentityOptions>(StoreIdentity.Apply);
        services.AddDbContextFactory<ShopContext>(options =>
            options.UseShopStore(connectionString)
        );
        services.TryAddSingleton(TimeProvider.System);
        services.AddSingleton<CourseStore>();
        services.AddSingleton<ProjectStore>();
        services.AddSingleton<StudentStore>();
        services.AddSingleton<BoardStore>();
        services.AddSingleton<BoardEntryStore>();
        services.AddSingleton<BoardYesStore>();
        services.AddSingleton<PlanStore>();
        services.AddSingleton<LessonStore>();
        services.AddSingleton<LessonPlanStore>();
        services.AddSingleton<RemakeStore>();
        services.AddSingleton<CourseFileStore>();
        services.AddSingleton<SellerStore>();
        services.AddSingleton<RackStore>();
        services.AddSingleton<OrderStore>();
        services.AddSingleton<KitStore>();
        services.AddSingleton<ToolStore>();
        services.AddSingleton<InstructorAccounts>();
        services.AddSingleton<StoreBackup>();
        services.AddSingleton<ClassNews>();
        services.AddSingleton<DoorStore>();
        services.AddSingleton<JoinDesk>();
        services.AddSingleton<ProgressStore>();
        services.AddSingleton<TodayStore>();
        services.AddSingleton<PaceStore>();
        services.AddSingleton<StartStore>();
        services.AddSingleton<KeepingStore>();
        services.AddSingleton<PeopleStore>();
        services.AddSingleton<Invitations>();
        services.AddSingleton<StudentExport>();
        return services;
    }

    /// <summary>SQLite with our settings and migrations.</summary>
    public static DbContextOptionsBuilder UseShopStore(
        this DbContextOptionsBuilder options,
        string connectionString
    ) =>
        options
            .UseSqlite(
                connectionString,
                sqlite =>
                    // One statement sees one state of the store; the collections are small.
                    sqlite
                        .MigrationsAssembly(MigrationsAssembly)
                        .UseQuerySplittingBehavior(QuerySplittingBehavior.SingleQuery)
            )
            .AddInterceptors(new SqliteSettings.Interceptor());
}
