namespace ShopClass.Core.Measure;

/// <summary>
/// An amount of money in whole minor units (cents, pence) of an ISO 4217 currency. Never a fraction, so sums are right to
/// the cent. Arithmetic is checked for overflow; two currencies never mix.
/// </summary>
/// <param name="MinorUnits">The amount in the currency's minor unit.</param>
/// <param name="Currency">The three-letter ISO 4217 code.</param>
public readonly record struct Money(long MinorUnits, string Currency) : IComparable<Money>
{
    /// <summary>Nothing, in this currency.</summary>
    public static Money Zero(string currency) => new(0, currency);

    /// <summary>
    /// Shares this out in proportion to <paramref name="weights"/>, so that the shares add up to the whole. What does not
    /// divide goes a minor unit at a time to the largest remainders; where they are equal, to the earlier share.
    /// </summary>
    /// <exception cref="ArgumentException">No weight is above zero, one is below, or the amount is.</exception>
    public IReadOnlyList<Money> ShareBy(IReadOnlyList<long> weights)
    {
        var total = weights.Aggregate(Int128.Zero, (sum, w) => sum + w);
        if (MinorUnits < 0 || total <= 0 || weights.Any(w => w < 0))
            throw new ArgumentException(
                $"{MinorUnits} {Currency} cannot be shared by these weights: amount and weights are zero or more, and one weight is above zero.",
                nameof(weights)
            );
        var (amount, currency) = (MinorUnits, Currency);
        var shares = weights.Select(w => (long)((Int128)amount * w / total)).ToArray();
        var left = amount - shares.Sum();
        var next = Enumerable
            .Range(0, weights.Count)
            .OrderByDescending(i => (Int128)amount * weights[i] % total)
            .ThenBy(i => i)
            .Take((int)left);
        foreach (var i in next)
            shares[i]++;
        return [.. shares.Select(s => new Money(s, currency))];
    }

    /// <summary>Shares this out evenly in so many parts that add up to the whole; the first ones are a minor unit more where it does not divide.</summary>
    /// <exception cref="ArgumentException">Fewer than one part, or an amount below zero.</exception>
    public IReadOnlyList<Money> Split(int parts) =>
        ShareBy([.. Enumerable.Repeat(1L, Math.Max(0, parts))]);

    /// <inheritdoc/>
    public int CompareTo(Money other) => MinorUnits.CompareTo(Matching(other).MinorUnits);

    public static Money operator +(Money a, Money b) =>
        a with
        {
            MinorUnits = a.MinorUnits + a.Matching(b).MinorUnits,
        };

    public static Money operator -(Money a, Money b) =>
        a with
        {
            MinorUnits = a.MinorUnits - a.Matching(b).MinorUnits,
        };

    public static Money operator *(Money a, long times) =>
        a with
        {
            MinorUnits = a.MinorUnits * times,
        };

    public static bool operator <(Money a, Money b) => a.CompareTo(b) < 0;

    public static bool operator >(Money a, Money b) => a.CompareTo(b) > 0;

    public static bool operator <=(Money a, Money b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Money a, Money b) => a.CompareTo(b) >= 0;

    private Money Matching(Money other) =>
        other.Currency == Currency
            ? other
            : throw new InvalidOperationException(
                $"{Currency} and {other.Currency} cannot be reckoned together."
            );
}
