using ShopClass.Core.Measure;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Planning.Reasons;

/// <summary>What becomes of width and length over what a blank needs.</summary>
internal static class WidthReasons
{
    public static BlankReason? WholeWidth(BlankInPlace blank)
    {
        var isWhole =
            blank.Strip.Near == Length.Zero && blank.Strip.Far == blank.Board.SmallestWidth;
        if (!isWhole || blank.Cuts.Any(c => c.Kind is CutKind.Rip && c.Piece.Contains(blank.Rect)))
            return null;
        var edges = blank.Board.HasStraightEdges ? " and keeps both straight edges" : "";
        return blank.Because(
            ReasonKind.WholeWidth,
            $"It takes the whole width of {blank.Board.Name}, so it saves a rip of {blank.Say(blank.Rect.Along)}{edges}."
        );
    }

    public static BlankReason? SurplusWidth(BlankInPlace blank)
    {
        var over = blank.Rect.Across - blank.Needed.Across;
        var rules = blank.Request.Rules;
        var isSliver = over - rules.RipKerf < rules.NarrowestOffcut;
        return IsSaid(blank, over)
            ? blank.Because(
                ReasonKind.SurplusWidth,
                $"It keeps {blank.Say(over)} more than it needs across the board until it is brought to size{(isSliver ? $", instead of a rip of {blank.Say(blank.Rect.Along)} for a strip too narrow to keep" : "")}."
            ) with
            {
                Amount = over,
            }
            : null;
    }

    public static BlankReason? SurplusLength(BlankInPlace blank)
    {
        var over = blank.Rect.Along - blank.Needed.Along;
        return IsSaid(blank, over) && blank.Rect.To == blank.Section.To
            ? blank.Because(
                ReasonKind.SurplusLength,
                $"It keeps {blank.Say(over)} more than it needs along the board, up to the end of its section, until it is brought to size: that saves a rough crosscut of {blank.Say(blank.Rect.Across)}."
            ) with
            {
                Amount = over,
            }
            : null;
    }

    /// <summary>Less than the course's precision is nothing to tell.</summary>
    private static bool IsSaid(BlankInPlace blank, Length over) =>
        over >= blank.Request.Rules.Precision.Step();
}
