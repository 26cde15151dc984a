using System.IO.Compression;
using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using Xunit;

namespace ShopClass.Data.Tests.Keeping;

/// <summary>Looks for words in everything that is stored.</summary>
internal static class StoredWords
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>Every column of every table that has these words, packed ones unpacked.</summary>
    public static Task<IReadOnlyList<string>> WhereAsync(ThrowAwayStore store, string words) =>
        WhereAsync(store, new Regex($@"(?<!\w){Regex.Escape(words)}(?!\w)"));

    public static async Task<IReadOnlyList<string>> WhereAsync(ThrowAwayStore store, Regex pattern)
    {
        await using var context = store.Open();
        await context.Database.OpenConnectionAsync(Cancel);
        List<string> found = [];
        foreach (var type in context.Model.GetEntityTypes())
        {
            if (type.GetTableName() is not { } table)
                continue;
            await using var command = context.Database.GetDbConnection().CreateCommand();
            command.CommandText = $"SELECT * FROM \"{table}\"";
            await using var reader = await command.ExecuteReaderAsync(Cancel);
            while (await reader.ReadAsync(Cancel))
                for (var i = 0; i < reader.FieldCount; i++)
                {
                    var text = reader.GetValue(i) switch
                    {
                        byte[] bytes => Unpacked(bytes),
                        var value => $"{value}",
                    };
                    if (pattern.IsMatch(text))
                        found.Add($"{table}.{reader.GetName(i)}");
                }
        }

        return found;
    }

    private static string Unpacked(byte[] bytes)
    {
        if (bytes is not [0x1f, 0x8b, ..])
            return "";
        using var gzip = new GZipStream(new MemoryStream(bytes), CompressionMode.Decompress);
        using var reader = new StreamReader(gzip);
        // Apostrophes are escaped in what is packed.
        return Regex.Unescape(reader.ReadToEnd());
    }
}
