using System.Data.Common;
using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace ShopClass.Data.Store;

/// <summary>
/// How SQLite must behave: what is saved is on disk before we say so, readers never wait for a writer, and no row is
/// left without its owner. See docs/decisions/0007-sqlite-settings.md.
/// </summary>
public static class SqliteSettings
{
    /// <summary>How long a write waits for another before it gives up.</summary>
    public const int BusyMilliseconds = 10_000;

    private static readonly string OnOpening = string.Create(
        CultureInfo.InvariantCulture,
        $"""
        PRAGMA busy_timeout = {BusyMilliseconds};
        PRAGMA journal_mode = WAL;
        PRAGMA synchronous = FULL;
        PRAGMA foreign_keys = ON;
        """
    );

    private static readonly (string Pragma, string Expected)[] Musts =
    [
        ("journal_mode", "wal"),
        ("synchronous", "2"),
        ("foreign_keys", "1"),
        ("busy_timeout", BusyMilliseconds.ToString(CultureInfo.InvariantCulture)),
        ("quick_check", "ok"),
    ];

    /// <summary>Reads every setting back and has SQLite check the file.</summary>
    /// <exception cref="StoreUnusableException">One of them is not as it must be.</exception>
    public static async Task VerifyAsync(ShopContext shop, CancellationToken cancel = default)
    {
        await shop.Database.OpenConnectionAsync(cancel);
        var connection = shop.Database.GetDbConnection();
        foreach (var (pragma, expected) in Musts)
        {
            var found = await ReadAsync(connection, pragma, cancel);
            if (found != expected)
            {
                throw new StoreUnusableException(
                    $"The store {connection.DataSource} cannot be used: SQLite's {pragma} answers '{found}', "
                        + $"'{expected}' is needed. A store must be an undamaged file on a disk of this machine, "
                        + "not on a network share."
                );
            }
        }
    }

    /// <summary>Sets them on every connection as it opens.</summary>
    public sealed class Interceptor : DbConnectionInterceptor
    {
        /// <inheritdoc/>
        public override void ConnectionOpened(
            DbConnection connection,
            ConnectionEndEventData eventData
        )
        {
            using var command = connection.CreateCommand();
            command.CommandText = OnOpening;
            command.ExecuteNonQuery();
        }

        /// <inheritdoc/>
        public override async Task ConnectionOpenedAsync(
            DbConnection connection,
            ConnectionEndEventData eventData,
            CancellationToken cancellationToken = default
        )
        {
            await using var command = connection.CreateCommand();
            command.CommandText = OnOpening;
            await command.ExecuteNonQueryAsync(cancellationToken);
        }
    }

    private static async Task<string> ReadAsync(
        DbConnection connection,
        string pragma,
        CancellationToken cancel
    )
    {
        await using var command = connection.CreateCommand();
        command.CommandText = $"PRAGMA {pragma}";
        return Convert.ToString(
                await command.ExecuteScalarAsync(cancel),
                CultureInfo.InvariantCulture
            ) ?? "";
    }
}

/// <summary>The store's file cannot be trusted with anybody's work.</summary>
public sealed class StoreUnusableException : Exception
{
    public StoreUnusableException() { }

    public StoreUnusableException(string message)
        : base(message) { }

    public StoreUnusableException(string message, Exception innerException)
        : base(message, innerException) { }
}
