using Microsoft.EntityFrameworkCore;

namespace ShopClass.Data.Store;

/// <summary>What the app asks about accounts besides signing in.</summary>
public sealed class InstructorAccounts(IDbContextFactory<ShopContext> factory)
{
    /// <summary>Whether any instructor has an account; the demo's owner does not count. On the first start none has.</summary>
    public async Task<bool> AnyAsync(CancellationToken cancel = default)
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        return await shop.Users.AnyAsync(a => !a.IsDemo, cancel);
    }

    /// <summary>The key of the account that owns the demo course, or null where no demo was loaded.</summary>
    public async Task<string?> DemoAsync(CancellationToken cancel = default)
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        return await shop.Users.Where(a => a.IsDemo).Select(a => a.Id).SingleOrDefaultAsync(cancel);
    }
}
