using System.Security.Cryptography;
using System.Text;

namespace ShopClass.Data.Joining;

/// <summary>
/// Codes that are read off a blackboard and typed with a thumb: eight characters of 25 that are not taken for each other,
/// and no vowels, so that no word comes of it. What looks like one of them is read as it.
/// </summary>
public static class JoinCode
{
    public const int Length = 8;

    public const string Alphabet = "CDFGHJKMNPQRTVWXY23456789";

    private const string LooksLike = "S5B8Z2";

    /// <summary>A new one, from the system's random source: 37 bits.</summary>
    public static string Make() => RandomNumberGenerator.GetString(Alphabet, Length);

    /// <summary>As it is written on the board: <c>CDFG-HJKM</c>.</summary>
    public static string Write(string code) => $"{code[..4]}-{code[4..]}";

    /// <summary>What was typed, without spaces and dashes, small or capital; null when it cannot be a code.</summary>
    public static string? Read(string? typed)
    {
        if (typed is null or { Length: > 40 })
            return null;
        var code = new StringBuilder();
        foreach (var c in typed)
        {
            if (char.IsWhiteSpace(c) || c is '-' or '–' or '.')
                continue;
            var capital = char.ToUpperInvariant(c);
            var like = LooksLike.IndexOf(capital, StringComparison.Ordinal);
            code.Append(like >= 0 && like % 2 == 0 ? LooksLike[like + 1] : capital);
        }

        return
            code.Length == Length
            && code.ToString() is var read
            && read.All(c => Alphabet.Contains(c, StringComparison.Ordinal))
            ? read
            : null;
    }
}

/// <summary>What only its holder knows, and the part of it that is stored.</summary>
internal static class Secret
{
    /// <summary>256 random bits, for a cookie.</summary>
    public static string Make() => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(32));

    /// <summary>SHA-256. A secret with this many random bits needs no salt.</summary>
    public static string HashOf(string secret) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(secret)));
}
