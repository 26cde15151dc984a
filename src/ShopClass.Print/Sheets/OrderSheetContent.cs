using System.Globalization;
using ShopClass.Core.Orders;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>What the sheets of an order say.</summary>
/// <param name="CourseName">The course.</param>
/// <param name="Order">The order.</param>
/// <param name="Number">Its number.</param>
/// <param name="MadeUtc">When it was made.</param>
/// <param name="PrintedOn">The date printed on the sheets.</param>
public sealed record OrderSheetContent(
    string CourseName,
    ClassOrder Order,
    int Number,
    DateTime MadeUtc,
    DateOnly PrintedOn
)
{
    internal string Project => Order.Ask.Project.Name;

    internal string Line =>
        $"{CourseName}, {Project}. Order {Number} of {Date(DateOnly.FromDateTime(MadeUtc))}, printed {Date(PrintedOn)}.";

    internal PageFrame Frame(string title, Paper paper) =>
        new(
            paper,
            $"{Project}: {title}",
            $"{Project}, {title}",
            $"{CourseName}, order {Number} of {Date(DateOnly.FromDateTime(MadeUtc))}, printed {Date(PrintedOn)}"
        );

    internal static string Date(DateOnly date) =>
        date.ToString("d MMM yyyy", CultureInfo.InvariantCulture);
}
