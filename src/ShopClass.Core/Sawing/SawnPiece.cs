using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Sawing;

/// <summary>A piece sawn from a board as a board of its own.</summary>
/// <remarks>
/// A piece with both edges of an S4S board stays S4S; one that was ripped from it has a sawn edge and is taken as S2S.
/// Sawn ends need no trim; an end that is still the board's own keeps the board's. Bad places come along, cut to the piece.
/// </remarks>
internal static class SawnPiece
{
    /// <summary>The piece.</summary>
    /// <param name="board">What it is sawn from.</param>
    /// <param name="rect">Where it lay.</param>
    /// <param name="id">Its key.</param>
    /// <param name="name">What it is called.</param>
    public static Board Of(Board board, BoardRect rect, string id, string name)
    {
        var whole = rect.Near == Length.Zero && rect.Far == board.SmallestWidth;
        var within = rect with { To = Length.Min(rect.To, board.Length) };
        return new()
        {
            Id = id,
            Name = name,
            SpeciesId = board.SpeciesId,
            Surfacing =
                board.Surfacing is Surfacing.Rough || whole ? board.Surfacing : Surfacing.S2S,
            Thickness = board.Thickness,
            WidthAtStart = within.Across,
            WidthAtMiddle = within.Across,
            WidthAtEnd = within.Across,
            Length = within.Along,
            Cup = Warp.CupOver(board, within.Across),
            Twist = Warp.TwistOver(board, within.Across, within.Along),
            TrimStart = Length.Max(Length.Zero, board.TrimStart - within.From),
            TrimEnd = Length.Max(Length.Zero, within.To - (board.Length - board.TrimEnd)),
            Defects = [.. BadPlaces(board, within)],
        };
    }

    private static IEnumerable<Defect> BadPlaces(Board board, BoardRect piece) =>
        from defect in board.Defects
        where defect.Place.Overlaps(piece)
        select defect with
        {
            Place = new(
                Length.Max(defect.Place.From, piece.From) - piece.From,
                Length.Min(defect.Place.To, piece.To) - piece.From,
                Length.Max(defect.Place.Near, piece.Near) - piece.Near,
                Length.Min(defect.Place.Far, piece.Far) - piece.Near
            ),
        };
}
