using Microsoft.Extensions.DependencyInjection;
using ShopClass.Data.Store;
using Xunit;

namespace ShopClass.Data.Tests.Store;

public class BackupTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_backup_made_while_the_store_is_in_use_can_be_restored()
    {
        await using var store = await ThrowAwayStore.MakeAsync();
        await store.AddInstructorAsync("before");
        var copy = store.FilePath + ".backup";
        var backup = store.Services.GetRequiredService<StoreBackup>();
        await using (var reader = store.Open())
        {
            await reader.Database.BeginTransactionAsync(Cancel);
            await reader.Database.RollbackTransactionAsync(Cancel);
            await backup.WriteAsync(copy, Cancel);
        }

        await store.AddInstructorAsync("after");

        Assert.Equal(["before"], await RestoredUsersAsync(copy));
        await backup.WriteAsync(copy, Cancel);
        Assert.Equal(["after", "before"], await RestoredUsersAsync(copy));
        Assert.False(File.Exists(copy + ".unfinished"));
    }

    private static async Task<string?[]> RestoredUsersAsync(string copy)
    {
        await using var restored = await ThrowAwayStore.RestoreAsync(copy);
        await using var shop = restored.Open();
        return [.. shop.Users.Select(u => u.UserName).Order()];
    }
}
