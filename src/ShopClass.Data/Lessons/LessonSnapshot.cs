using System.IO.Compression;
using System.Security.Cryptography;
using System.Text.Json;
using ShopClass.Core.Lessons;
using ShopClass.Data.Store;

namespace ShopClass.Data.Lessons;

/// <summary>A plan of lessons with its request, as bytes and as fingerprints.</summary>
internal static class LessonSnapshot
{
    private sealed record Both(LessonRequest Request, LessonPlan Plan);

    public static byte[] Pack(LessonRequest request, LessonPlan plan)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Optimal))
        {
            JsonSerializer.Serialize(gzip, new Both(request, plan), ShopJson.Options);
        }

        return packed.ToArray();
    }

    public static (LessonRequest Request, LessonPlan Plan) Unpack(byte[] packed)
    {
        using var gzip = new GZipStream(new MemoryStream(packed), CompressionMode.Decompress);
        var both =
            JsonSerializer.Deserialize<Both>(gzip, ShopJson.Options)
            ?? throw new InvalidDataException("The stored plan of lessons is empty.");
        return (both.Request, both.Plan);
    }

    /// <summary>SHA-256 of a plan.</summary>
    public static string Fingerprint(LessonPlan plan) => FingerprintOf(plan);

    /// <summary>SHA-256 of what a plan of lessons follows from. A student's or a board's new name changes nothing.</summary>
    public static string Fingerprint(LessonRequest request) =>
        FingerprintOf(
            request with
            {
                Students =
                [
                    .. request
                        .Students.OrderBy(s => s.StudentId, StringComparer.Ordinal)
                        .Select(s => s with { Name = "", Board = "", WithoutWork = "" }),
                ],
            }
        );

    private static string FingerprintOf<T>(T value) =>
        Convert.ToHexStringLower(
            SHA256.HashData(JsonSerializer.SerializeToUtf8Bytes(value, ShopJson.Options))
        );
}
