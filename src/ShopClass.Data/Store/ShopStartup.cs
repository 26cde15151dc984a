using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace ShopClass.Data.Store;

/// <summary>Makes the store ready when the app starts.</summary>
public static class ShopStartup
{
    /// <summary>
    /// Creates the folder and the file where they are missing, brings the tables up to date, verifies SQLite's settings
    /// and the file, and loads the demo course once where it is wanted.
    /// </summary>
    /// <exception cref="StoreUnusableException">The file cannot be trusted.</exception>
    public static async Task PrepareAsync(
        IServiceProvider services,
        bool demo,
        CancellationToken cancel = default
    )
    {
        var factory = services.GetRequiredService<IDbContextFactory<ShopContext>>();
        await using (var shop = await factory.CreateDbContextAsync(cancel))
        {
            MakeFolder(shop.Database.GetConnectionString());
            await shop.Database.MigrateAsync(cancel);
            await SqliteSettings.VerifyAsync(shop, cancel);
        }

        if (demo)
        {
            await DemoCourse.LoadOnceAsync(services, cancel);
        }
    }

    private static void MakeFolder(string? connectionString)
    {
        var file = new SqliteConnectionStringBuilder(connectionString).DataSource;
        if (Path.GetDirectoryName(Path.GetFullPath(file)) is { Length: > 0 } folder)
        {
            Directory.CreateDirectory(folder);
        }
    }
}
