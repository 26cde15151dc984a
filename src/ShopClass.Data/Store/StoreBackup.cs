using Microsoft.EntityFrameworkCore;

namespace ShopClass.Data.Store;

/// <summary>Copies the store while it is in use.</summary>
public sealed class StoreBackup(IDbContextFactory<ShopContext> factory)
{
    /// <summary>
    /// Writes a whole, consistent copy to <paramref name="path"/>; a copy that is there already is replaced only when the
    /// new one is complete. To restore: stop the app, put the copy where the store was, remove its -wal and -shm files.
    /// </summary>
    public async Task WriteAsync(string path, CancellationToken cancel = default)
    {
        var unfinished = path + ".unfinished";
        File.Delete(unfinished);
        await using (var shop = await factory.CreateDbContextAsync(cancel))
        {
            await shop.Database.ExecuteSqlAsync($"VACUUM INTO {unfinished}", cancel);
        }

        File.Move(unfinished, path, overwrite: true);
    }
}
