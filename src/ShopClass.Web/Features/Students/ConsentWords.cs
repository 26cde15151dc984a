using System.Globalization;
using ShopClass.Data.Students;

namespace ShopClass.Web.Features.Students;

/// <summary>What is noted about consent, in words.</summary>
public static class ConsentWords
{
    public static string Of(Consent? consent) =>
        consent is null
            ? "not noted"
            : $"{(consent.IsGiven ? "yes" : "no")}, {consent.On.ToString("d MMMM yyyy", CultureInfo.InvariantCulture)}";

    /// <summary>How many of a class said what, and of whom nothing is noted.</summary>
    public static string Of(IReadOnlyList<StudentView> students)
    {
        var open = students.Where(s => s.Card.Consent is null).Select(s => s.Shown).ToList();
        var (yes, no) = (
            students.Count(s => s.Card.Consent is { IsGiven: true }),
            students.Count(s => s.Card.Consent is { IsGiven: false })
        );
        return open.Count == 0
            ? $"Consent: {yes} said yes, {no} no."
            : $"Consent: {yes} said yes, {no} no; not noted for {(open.Count > 4 ? $"{open.Count} students" : string.Join(", ", open))}.";
    }
}
