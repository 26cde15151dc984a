using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Data.Store;
using ShopClass.Migrations.Sqlite;
using Xunit;

namespace ShopClass.Data.Tests.Store;

public class StartupTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_migrations_hold_everything_the_model_has()
    {
        await using var store = await ThrowAwayStore.MakeAsync();
        await using var asTheApp = store.Open();
        await using var asTheTools = new ShopContextForTools().CreateDbContext([]);

        Assert.False(asTheApp.Database.HasPendingModelChanges());
        Assert.False(asTheTools.Database.HasPendingModelChanges());
        Assert.Empty(await asTheApp.Database.GetPendingMigrationsAsync(Cancel));
        Assert.NotEmpty(await asTheApp.Database.GetAppliedMigrationsAsync(Cancel));
    }

    [Fact]
    public async Task Starting_again_on_the_same_file_changes_nothing()
    {
        await using var store = await ThrowAwayStore.MakeAsync();
        await store.AddInstructorAsync();
        await using var again = store.Restarted();

        await ShopStartup.PrepareAsync(again, demo: false, Cancel);

        Assert.True(await again.GetRequiredService<InstructorAccounts>().AnyAsync(Cancel));
    }

    [Theory]
    [InlineData("journal_mode", "wal")]
    [InlineData("synchronous", "2")]
    [InlineData("foreign_keys", "1")]
    [InlineData("busy_timeout", "10000")]
    public async Task Every_connection_has_the_setting(string pragma, string expected)
    {
        await using var store = await ThrowAwayStore.MakeAsync();
        await using var shop = store.Open();
        await shop.Database.OpenConnectionAsync(Cancel);
        await using var command = shop.Database.GetDbConnection().CreateCommand();
        command.CommandText = $"PRAGMA {pragma}";

        Assert.Equal(expected, $"{await command.ExecuteScalarAsync(Cancel)}");
    }

    [Fact]
    public async Task A_store_in_memory_is_refused_since_it_cannot_keep_a_log()
    {
        await using var shop = new ShopContext(
            (DbContextOptions<ShopContext>)
                new DbContextOptionsBuilder<ShopContext>()
                    .UseShopStore("Data Source=:memory:")
                    .UseApplicationServiceProvider(StoreIdentity.ServicesForTools())
                    .Options
        );

        var refusal = await Assert.ThrowsAsync<StoreUnusableException>(() =>
            SqliteSettings.VerifyAsync(shop, Cancel)
        );

        Assert.Contains("journal_mode answers 'memory', 'wal' is needed", refusal.Message);
    }

    [Fact]
    public async Task A_damaged_file_is_refused_at_the_start()
    {
        await using var store = await ThrowAwayStore.MakeAsync();
        for (var i = 0; i < 200; i++)
        {
            await store.AddInstructorAsync($"instructor {i}");
        }

        await using (var shop = store.Open())
        {
            await shop.Database.ExecuteSqlAsync($"PRAGMA wal_checkpoint(TRUNCATE)", Cancel);
        }

        ForgetConnections(store);
        DamageTheMiddle(store.FilePath);
        await using var again = store.Restarted();

        var slip = await Assert.ThrowsAnyAsync<Exception>(() =>
            ShopStartup.PrepareAsync(again, demo: false, Cancel)
        );

        Assert.True(slip is StoreUnusableException or SqliteException, slip.ToString());
    }

    private static void ForgetConnections(ThrowAwayStore store)
    {
        using var connection = new SqliteConnection(store.ConnectionString);
        SqliteConnection.ClearPool(connection);
    }

    private static void DamageTheMiddle(string path)
    {
        using var file = File.OpenWrite(path);
        file.Position = file.Length / 2;
        file.Write(Enumerable.Repeat((byte)0xA5, (int)(file.Length / 3)).ToArray());
    }
}
