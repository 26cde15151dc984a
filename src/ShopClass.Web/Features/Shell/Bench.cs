namespace ShopClass.Web.Features.Shell;

/// <summary>Marks a page for the bench: plain, light HTML with cut-down fonts, for a phone with a weak signal.</summary>
[AttributeUsage(AttributeTargets.Class)]
public sealed class BenchAttribute : Attribute;
