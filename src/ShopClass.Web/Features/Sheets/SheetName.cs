using Microsoft.Net.Http.Headers;
using ShopClass.Print.Sheets;

namespace ShopClass.Web.Features.Sheets;

/// <summary>What a sheet's file is called when somebody keeps it: letters and digits only, whatever people are called.</summary>
public static class SheetName
{
    private const int Longest = 60;

    public static string Inline(KitSheetContent content) =>
        new ContentDispositionHeaderValue("inline") { FileName = $"{For(content)}.pdf" }.ToString();

    public static string For(KitSheetContent content) =>
        Safe($"kit-{content.StudentShown}-{content.Plan.Request.Project.Name}")
        + $"-{content.PlanNumber}";

    internal static string Safe(string words)
    {
        var kept = words.Select(c => char.IsAsciiLetterOrDigit(c) ? char.ToLowerInvariant(c) : '-');
        var runs = string.Concat(kept).Split('-', StringSplitOptions.RemoveEmptyEntries);
        var name = string.Join('-', runs);
        return name.Length <= Longest ? name : name[..Longest].TrimEnd('-');
    }
}
