using CsCheck;
using ShopClass.Core.Measure;
using Xunit;

namespace ShopClass.Core.Tests.Measure;

/// <summary>Currency codes and minor units are those of ISO 4217 (from memory).</summary>
public class MoneyTests
{
    [Theory]
    [InlineData("12.50", "USD", 1250)]
    [InlineData("12,50", "EUR", 1250)]
    [InlineData("12.5", "USD", 1250)]
    [InlineData("12", "USD", 1200)]
    [InlineData(".95", "USD", 95)]
    [InlineData("$12.50", "USD", 1250)]
    [InlineData("$12.50", "CAD", 1250)]
    [InlineData("12.50 EUR", "EUR", 1250)]
    [InlineData("EUR 12.50", "EUR", 1250)]
    [InlineData("€ 0,05", "EUR", 5)]
    [InlineData("1200", "JPY", 1200)]
    [InlineData("1.250", "KWD", 1250)]
    [InlineData("0", "USD", 0)]
    public void An_amount_is_read(string text, string currency, long minorUnits) =>
        Assert.Equal(new(minorUnits, currency), MoneyText.Read(text, currency).Value);

    [Theory]
    [InlineData("", "Nothing was typed")]
    [InlineData("-3", "less than zero")]
    [InlineData("−3.00", "less than zero")]
    [InlineData("12.505", "two ways")]
    [InlineData("1,250", "two ways")]
    [InlineData("12.5051", "4 decimals")]
    [InlineData("1,250.00", "no amount of money")]
    [InlineData("USD", "no amount of money")]
    [InlineData("twelve", "no amount of money")]
    [InlineData("12 EUR", "is in EUR")]
    [InlineData("€12", "is in EUR")]
    [InlineData("999999999999", "more than is ever paid")]
    public void What_is_no_amount_gets_a_sentence(string text, string part) =>
        Assert.Contains(part, MoneyText.Read(text, "USD").Problem, StringComparison.Ordinal);

    [Fact]
    public void A_currency_without_minor_units_takes_no_decimals() =>
        Assert.Contains(
            "has decimals",
            MoneyText.Read("12.5", "JPY").Problem,
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData(1250, "USD", "12.50 USD")]
    [InlineData(5, "EUR", "0.05 EUR")]
    [InlineData(1200, "JPY", "1200 JPY")]
    [InlineData(1250, "KWD", "1.250 KWD")]
    [InlineData(-310, "USD", "-3.10 USD")]
    public void An_amount_is_written(long minorUnits, string currency, string text) =>
        Assert.Equal(text, MoneyText.WriteWithCode(new(minorUnits, currency)));

    [Fact]
    public void What_is_written_is_read_back() =>
        Gen.Select(Gen.Long[0, 99_999_999], Gen.OneOf("USD", "JPY", "KWD"))
            .Sample(
                (minorUnits, currency) =>
                {
                    var money = new Money(minorUnits, currency);
                    return MoneyText.Read(MoneyText.Write(money), currency).Value == money;
                }
            );

    [Fact]
    public void Shares_add_up_and_none_is_a_minor_unit_away_from_its_due() =>
        Gen.Select(Gen.Long[0, 10_000_000], Gen.Long[0, 5_000].Array[1, 30])
            .Where((_, weights) => weights.Sum() > 0)
            .Sample(
                (amount, weights) =>
                {
                    var shares = new Money(amount, "USD").ShareBy(weights);
                    var total = weights.Sum();
                    return shares.Sum(s => s.MinorUnits) == amount
                        && shares
                            .Zip(weights)
                            .All(p =>
                                Math.Abs(p.First.MinorUnits * total - amount * p.Second) < total
                            );
                }
            );

    [Fact]
    public void A_tenner_among_three_is_a_cent_uneven() =>
        Assert.Equal([334L, 333L, 333L], new Money(1000, "USD").Split(3).Select(m => m.MinorUnits));

    [Fact]
    public void Two_currencies_never_mix()
    {
        Assert.Throws<InvalidOperationException>(() => new Money(1, "USD") + new Money(1, "EUR"));
        Assert.Throws<InvalidOperationException>(() => new Money(1, "USD") < new Money(1, "EUR"));
    }

    [Fact]
    public void Too_much_money_is_a_slip_and_throws() =>
        Assert.Throws<OverflowException>(() =>
            new Money(long.MaxValue, "USD") + new Money(1, "USD")
        );
}
