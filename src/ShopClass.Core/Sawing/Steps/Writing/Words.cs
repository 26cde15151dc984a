using ShopClass.Core.Lumber;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>Small joins of words.</summary>
internal static class Words
{
    /// <summary>"A1, A2 and B1".</summary>
    public static string List(IReadOnlyList<string> names) =>
        names.Count switch
        {
            0 => "",
            1 => names[0],
            _ => $"{string.Join(", ", names.Take(names.Count - 1))} and {names[^1]}",
        };

    /// <summary>"A1 to A7" where there are many, else the list.</summary>
    public static string Short(IReadOnlyList<string> names) =>
        names.Count > 4 ? $"{names[0]} to {names[^1]}" : List(names);

    /// <summary>A board's name in a sentence: in quotation marks, because it may be any words.</summary>
    public static string Called(Board board) => $"“{board.Name}”";

    /// <summary>What widths and squares go by: a board without a straight edge is measured from a line along it.</summary>
    public static string NearEdge(Board board) =>
        board.Surfacing is Surfacing.S4S or Surfacing.S3S
            ? "the near edge"
            : "the straight line along the near edge";

    /// <summary>Words as the beginning of a sentence.</summary>
    public static string Sentence(string words) =>
        words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words.TrimEnd('.')[1..];

    public static string Them(int count, string one, string many) => count == 1 ? one : many;
}
