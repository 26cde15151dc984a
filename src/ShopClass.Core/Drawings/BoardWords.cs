using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Drawings;

/// <summary>A board in words.</summary>
internal static class BoardWords
{
    /// <summary>Size, ends to trim and defects, each as a sentence.</summary>
    public static string Of(Board board, Precision precision)
    {
        string At(Length length) => LengthWriter.WriteWithUnit(length, precision);
        List<string> sentences =
        [
            $"{board.Name}: {At(board.Length)} long, {At(board.Thickness)} thick, {Widths(board, At)}.",
        ];
        if (board.Cup > Length.Zero)
            sentences.Add($"Cupped: hollow by {At(board.Cup)} across.");
        if (board.Twist > Length.Zero)
            sentences.Add($"Twisted: one corner stands {At(board.Twist)} off a flat bench.");
        if (board.TrimStart > Length.Zero)
            sentences.Add($"Trim {At(board.TrimStart)} off the start.");
        if (board.TrimEnd > Length.Zero)
            sentences.Add($"Trim {At(board.TrimEnd)} off the far end.");
        sentences.AddRange(board.Defects.Select((d, i) => Sentence(i + 1, d, At)));
        return string.Join('\n', sentences);
    }

    private static string Widths(Board board, Func<Length, string> at) =>
        board.WidthAtStart == board.WidthAtMiddle && board.WidthAtMiddle == board.WidthAtEnd
            ? $"{at(board.WidthAtStart)} wide"
            : $"{at(board.WidthAtStart)} wide at the start, {at(board.WidthAtMiddle)} in the middle "
                + $"and {at(board.WidthAtEnd)} at the far end";

    private static string Sentence(int number, Defect defect, Func<Length, string> at)
    {
        var place = defect.Place;
        var face = defect.Reach switch
        {
            DefectReach.MarkedFace => ", on the marked face only",
            DefectReach.BackFace => ", on the back face only",
            _ => "",
        };
        return $"Defect {number} is a {DefectNotes.Words(defect.Kind)}, from {at(place.From)} to {at(place.To)} "
            + $"along and {at(place.Near)} to {at(place.Far)} from the near edge{face}.";
    }
}
