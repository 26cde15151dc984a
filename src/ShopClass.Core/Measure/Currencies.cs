using System.Collections.Frozen;

namespace ShopClass.Core.Measure;

/// <summary>A currency of ISO 4217.</summary>
/// <param name="Code">Its three letters.</param>
/// <param name="Name">Its name in English.</param>
/// <param name="Decimals">How many decimals its minor unit stands for: 2 for cents, 0 where there is none.</param>
public sealed record Currency(string Code, string Name, int Decimals);

/// <summary>The currencies the app knows, by ISO 4217 (codes and minor units from memory).</summary>
public static class Currencies
{
    private static readonly FrozenDictionary<string, Currency> ByCode = new Currency[]
    {
        new("AUD", "Australian dollar", 2),
        new("BRL", "Brazilian real", 2),
        new("CAD", "Canadian dollar", 2),
        new("CHF", "Swiss franc", 2),
        new("CLP", "Chilean peso", 0),
        new("CNY", "Chinese yuan", 2),
        new("CZK", "Czech koruna", 2),
        new("DKK", "Danish krone", 2),
        new("EUR", "euro", 2),
        new("GBP", "pound sterling", 2),
        new("HUF", "Hungarian forint", 2),
        new("ILS", "Israeli new shekel", 2),
        new("INR", "Indian rupee", 2),
        new("ISK", "Icelandic króna", 0),
        new("JPY", "Japanese yen", 0),
        new("KRW", "South Korean won", 0),
        new("KWD", "Kuwaiti dinar", 3),
        new("MXN", "Mexican peso", 2),
        new("NOK", "Norwegian krone", 2),
        new("NZD", "New Zealand dollar", 2),
        new("PLN", "Polish złoty", 2),
        new("RON", "Romanian leu", 2),
        new("SEK", "Swedish krona", 2),
        new("SGD", "Singapore dollar", 2),
        new("TND", "Tunisian dinar", 3),
        new("TRY", "Turkish lira", 2),
        new("UAH", "Ukrainian hryvnia", 2),
        new("USD", "United States dollar", 2),
        new("ZAR", "South African rand", 2),
    }.ToFrozenDictionary(c => c.Code, StringComparer.Ordinal);

    /// <summary>All, by code.</summary>
    public static IReadOnlyList<Currency> All { get; } =
    [.. ByCode.Values.OrderBy(c => c.Code, StringComparer.Ordinal)];

    /// <summary>The currency with this code in capitals, or null.</summary>
    public static Currency? Find(string code) => ByCode.GetValueOrDefault(code);

    /// <summary>Decimals of a currency; two for one that is not listed.</summary>
    public static int DecimalsOf(string code) => Find(code)?.Decimals ?? 2;
}
