using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Web.Features.Boards;

namespace ShopClass.Web.Features.Students;

/// <summary>A board in one line: size, wood, surfacing, bad places.</summary>
public static class BoardLine
{
    public static string Of(Board board, Precision precision)
    {
        var size = LengthWriter.WriteSize(
            board.Thickness,
            board.SmallestWidth,
            board.Length,
            precision
        );
        var tapers =
            board.WidthAtStart == board.WidthAtMiddle && board.WidthAtStart == board.WidthAtEnd
                ? ""
                : " at the narrowest";
        var wood = SpeciesTable.Find(board.SpeciesId)?.CommonName ?? board.SpeciesId;
        return $"{size}{tapers} · {wood} · {LumberWords.Of(board.Surfacing)} · {BadPlaces(board.Defects.Count)}";
    }

    private static string BadPlaces(int count) =>
        count switch
        {
            0 => "no bad places marked",
            1 => "1 bad place",
            _ => $"{count} bad places",
        };
}
