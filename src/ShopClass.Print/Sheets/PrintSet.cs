using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>Several sheets as one file, to be printed in one go.</summary>
public static class PrintSet
{
    /// <summary>The sheets one after another, each with its own page numbers, listed beside the document, readable aloud in order.</summary>
    /// <param name="title">What the set is called.</param>
    /// <param name="manuscripts">The sheets.</param>
    /// <param name="onSheet">Told after each sheet how many are done.</param>
    /// <param name="cancel">Gives up between two sheets.</param>
    public static byte[] Make(
        string title,
        IReadOnlyList<Manuscript> manuscripts,
        Action<int>? onSheet = null,
        CancellationToken cancel = default
    ) => Printer.Print(title, manuscripts, withOutline: true, onSheet, cancel);
}
