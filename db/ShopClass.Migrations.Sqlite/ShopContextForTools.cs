using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;
using ShopClass.Data.Store;

namespace ShopClass.Migrations.Sqlite;

/// <summary>Makes the context when dotnet-ef writes a migration. No file is opened for that.</summary>
public sealed class ShopContextForTools : IDesignTimeDbContextFactory<ShopContext>
{
    public ShopContext CreateDbContext(string[] args)
    {
        var options = new DbContextOptionsBuilder<ShopContext>();
        options
            .UseShopStore("Data Source=design-time.db")
            .UseApplicationServiceProvider(StoreIdentity.ServicesForTools());
        return new ShopContext(options.Options);
    }
}
