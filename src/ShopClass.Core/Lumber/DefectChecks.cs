using ShopClass.Core.Measure;

namespace ShopClass.Core.Lumber;

/// <summary>What is wrong with the defects marked on a board.</summary>
internal static class DefectChecks
{
    public static IEnumerable<(string Field, string Sentence)> ProblemsIn(
        Board board,
        UnitSystem unit
    )
    {
        if (board.Defects.Count > BoardChecks.MostDefects)
            return
            [
                (
                    $"Defects[{BoardChecks.MostDefects}]",
                    $"{board.Defects.Count} defects are marked. Mark at most {BoardChecks.MostDefects}; put neighbours into one."
                ),
            ];
        return board.Defects.SelectMany(
            (defect, i) =>
                ProblemsIn(defect, board, unit).Select(p => ($"Defects[{i}]{p.Field}", p.Sentence))
        );
    }

    private static IEnumerable<(string Field, string Sentence)> ProblemsIn(
        Defect defect,
        Board board,
        UnitSystem unit
    )
    {
        if (!Enum.IsDefined(defect.Kind) || !Enum.IsDefined(defect.Reach))
            yield return ("", "Choose what the defect is and where it shows from the lists.");
        var place = defect.Place;
        if (Outside(place.From, board.Length, "start", "long", unit) is { } from)
            yield return (".From", from);
        if (Outside(place.To, board.Length, "start", "long", unit) is { } to)
            yield return (".To", to);
        else if (place.To <= place.From)
            yield return (".To", Backwards(place.From, place.To, unit));

        var width = WidestWidth(board);
        if (Outside(place.Near, width, "near edge", "wide", unit) is { } near)
            yield return (".Near", near);
        if (Outside(place.Far, width, "near edge", "wide", unit) is { } far)
            yield return (".Far", far);
        else if (place.Far <= place.Near)
            yield return (".Far", Backwards(place.Near, place.Far, unit));
    }

    private static string? Outside(
        Length place,
        Length size,
        string origin,
        string direction,
        UnitSystem unit
    )
    {
        if (place < Length.Zero)
            return $"{Said.Exactly(place, unit)} is off the board. Measure from the {origin}, zero or more.";
        return place > size
            ? $"{Said.Exactly(place, unit)} from the {origin} is off the board, which is {Said.Exactly(size, unit)} {direction}."
            : null;
    }

    private static string Backwards(Length begin, Length end, UnitSystem unit) =>
        $"The defect ends at {Said.Exactly(end, unit)} and begins at {Said.Exactly(begin, unit)}. The end must be the larger.";

    // A tapered board: a defect may reach as far as the board does anywhere.
    private static Length WidestWidth(Board board) =>
        Length.Max(board.WidthAtStart, Length.Max(board.WidthAtMiddle, board.WidthAtEnd));
}
