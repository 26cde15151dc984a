using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;

namespace ShopClass.Data.Store;

/// <summary>
/// The shape of the account tables. Identity takes it from the services of whoever makes the context, so the app, the
/// migrations and the tests must all take it from here: a context that guesses another shape refuses to migrate.
/// </summary>
public static class StoreIdentity
{
    /// <summary>Sets the store's options.</summary>
    public static void Apply(IdentityOptions options)
    {
        // Version 1: no passkey tables.
        options.Stores.SchemaVersion = IdentitySchemaVersions.Version1;
        options.Stores.MaxLengthForKeys = 128;
    }

    /// <summary>Just enough services for a context made outside the app.</summary>
    public static IServiceProvider ServicesForTools() =>
        new ServiceCollection().Configure<IdentityOptions>(Apply).BuildServiceProvider();
}
