using System.IO.Compression;
using System.Text.Json;

namespace ShopClass.Data.Store;

/// <summary>Anything as JSON, packed with gzip.</summary>
internal static class Packed
{
    public static byte[] Pack<T>(T value)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Optimal))
        {
            JsonSerializer.Serialize(gzip, value, ShopJson.Options);
        }

        return packed.ToArray();
    }

    public static T Unpack<T>(byte[] packed)
    {
        using var gzip = new GZipStream(new MemoryStream(packed), CompressionMode.Decompress);
        return JsonSerializer.Deserialize<T>(gzip, ShopJson.Options)
            ?? throw new InvalidDataException("What was packed is empty.");
    }
}
