using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Reasons;

/// <summary>Lengths and lists in sentences.</summary>
internal static class Say
{
    public static string Length(PlanningRequest request, Length length) =>
        LengthWriter.WriteWithUnit(length, request.Rules.Precision);

    /// <summary>Two different lengths, written so that they differ: exactly, where the course's precision hides it.</summary>
    public static (string Needed, string There) Apart(
        PlanningRequest request,
        Length needed,
        Length there
    )
    {
        var (a, b) = (Length(request, needed), Length(request, there));
        return string.Equals(a, b, StringComparison.Ordinal)
            ? (
                BlankNeeds.WriteExact(needed, request.Rules),
                BlankNeeds.WriteExact(there, request.Rules)
            )
            : (a, b);
    }

    public static string List(IReadOnlyList<string> names) =>
        names.Count switch
        {
            0 => "",
            1 => names[0],
            _ => $"{string.Join(", ", names.SkipLast(1))} and {names[^1]}",
        };

    /// <summary>The blanks of a part: "A1 and A2", "the 6 blanks A1 to A6".</summary>
    public static string Copies(string letter, int quantity) =>
        quantity > 3
            ? $"the {quantity} blanks {letter}1 to {letter}{quantity}"
            : List([.. Enumerable.Range(1, quantity).Select(i => $"{letter}{i}")]);

    public static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
