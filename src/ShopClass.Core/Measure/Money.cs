namespace ShopClass.Core.Measure;

/// <summary>An amount of money in whole minor units (cents, pence) of an ISO 4217 currency. Never a fraction.</summary>
/// <param name="MinorUnits">The amount in the currency's minor unit.</param>
/// <param name="Currency">The three-letter ISO 4217 code.</param>
public readonly record struct Money(long MinorUnits, string Currency);
