namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>A section on a list, with what it loses at the prices the list goes by.</summary>
internal readonly record struct Listed(int Column, long Loss);
