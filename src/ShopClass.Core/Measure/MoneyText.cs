using System.Globalization;
using System.Text.RegularExpressions;

namespace ShopClass.Core.Measure;

/// <summary>Reads and writes amounts of money as people do: <c>12.50</c>, <c>12,50</c>, <c>EUR 12.50</c>.</summary>
public static partial class MoneyText
{
    /// <summary>The most that is read: a hundred million whole units. Beyond that a digit slipped.</summary>
    public const long MostUnits = 100_000_000;

    /// <summary>
    /// Reads an amount. A decimal point or comma may stand before as many digits as the currency has; a mark before three
    /// digits is read as neither thousands nor decimals but asked about, except in a currency of three decimals.
    /// </summary>
    /// <param name="text">What was typed; may carry the currency's own code or sign.</param>
    /// <param name="currency">The ISO 4217 code it is in.</param>
    public static Reading<Money> Read(string? text, string currency)
    {
        var typed = (text ?? "").Trim();
        if (typed.Length == 0)
            return Reading<Money>.Refused("Nothing was typed. Write a price such as 12.50.");
        var match = Amount().Match(typed);
        if (typed.Length > 30 || !match.Success || !typed.Any(char.IsAsciiDigit))
            return Refused(typed, "is no amount of money. Write a price such as 12.50.");
        if (OtherCurrency(match, currency) is { } other)
            return Refused(
                typed,
                $"is in {other}, and this list is in {currency}. Write it in {currency}."
            );
        if (match.Groups["minus"].Success)
            return Refused(typed, "is less than zero. A price is zero or more.");
        return InMinorUnits(match, typed, currency);
    }

    /// <summary>The amount with the decimals of its currency and a point, without the code: <c>12.50</c>.</summary>
    public static string Write(Money money)
    {
        var decimals = Currencies.DecimalsOf(money.Currency);
        var amount = money.MinorUnits / Scale(decimals);
        return amount.ToString($"F{decimals}", CultureInfo.InvariantCulture);
    }

    /// <summary>The same with its code: <c>12.50 USD</c>.</summary>
    public static string WriteWithCode(Money money) => $"{Write(money)} {money.Currency}";

    private static Reading<Money> InMinorUnits(Match match, string typed, string currency)
    {
        var decimals = Currencies.DecimalsOf(currency);
        var behind = match.Groups["behind"].Value;
        if (behind.Length == 3 && decimals != 3)
            return Refused(
                typed,
                "can be read in two ways because of its comma or point. Write thousands without a mark."
            );
        if (behind.Length > decimals)
            return Refused(
                typed,
                decimals == 0
                    ? $"has decimals, and {currency} has none."
                    : $"has {behind.Length} decimals, and {currency} has {decimals}."
            );
        var whole = long.Parse(
            match.Groups["whole"].Value.PadLeft(1, '0'),
            CultureInfo.InvariantCulture
        );
        if (whole > MostUnits)
            return Refused(typed, "is more than is ever paid for wood. Check the number.");
        var minor = long.Parse(
            behind.PadRight(decimals, '0').PadLeft(1, '0'),
            CultureInfo.InvariantCulture
        );
        return Reading<Money>.Of(new(whole * (long)Scale(decimals) + minor, currency));
    }

    private static string? OtherCurrency(Match match, string currency)
    {
        var said = match.Groups["code"].Value.ToUpperInvariant();
        if (said.Length > 0 && said != currency)
            return said;
        var mine = Signs.FirstOrDefault(s => s.Code == currency).Sign;
        var sign = match.Groups["sign"].Value;
        return sign.Length == 0 || sign == mine || (sign == "$" && IsADollar(currency))
            ? null
            : Signs.First(s => s.Sign == sign).Code;
    }

    private static readonly (string Sign, string Code)[] Signs =
    [
        ("$", "USD"),
        ("€", "EUR"),
        ("£", "GBP"),
        ("¥", "JPY"),
    ];

    private static bool IsADollar(string currency) =>
        Currencies.Find(currency)?.Name.EndsWith("dollar", StringComparison.Ordinal) is true
        || currency is "MXN" or "CLP";

    private static decimal Scale(int decimals) =>
        decimals switch
        {
            0 => 1,
            1 => 10,
            2 => 100,
            _ => 1000,
        };

    private static Reading<Money> Refused(string typed, string why) =>
        Reading<Money>.Refused($"“{LengthText.Shown(typed)}” {why}");

    [GeneratedRegex(
        @"^(?:(?<code>[A-Za-z]{3})|(?<sign>[$€£¥]))?\s*(?<minus>[-−–])?\s*(?<whole>[0-9]{1,15})?(?:[.,](?<behind>[0-9]{1,15}))?\s*(?:(?<code>[A-Za-z]{3})|(?<sign>[$€£¥]))?$"
    )]
    private static partial Regex Amount();
}
