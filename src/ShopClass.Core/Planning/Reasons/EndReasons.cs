using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Reasons;

/// <summary>Reasons of last resort: where the start and the far end are.</summary>
internal static class EndReasons
{
    public static BlankReason? OffcutInOnePiece(BlankInPlace blank)
    {
        var rules = blank.Request.Rules;
        var left = blank.End - (blank.Layout.Sections[^1].To + rules.CrosscutKerf);
        return left < rules.ShortestOffcut || !IsPacked(blank)
            ? null
            : blank.Because(
                ReasonKind.OffcutInOnePiece,
                $"Everything is packed towards the start of {blank.Board.Name}, so the {blank.Say(left)} left at the far end stay in one piece."
            ) with
            {
                Amount = left,
            };
    }

    public static BlankReason? FirstOnTheBoard(BlankInPlace blank)
    {
        if (blank.Rect.From != blank.Board.TrimStart)
            return null;
        var sentence =
            blank.Board.TrimStart == Length.Zero
                ? $"It begins at the start of {blank.Board.Name}, where the tape is hooked."
                : $"It begins at the line of the end trim, {blank.Say(blank.Rect.From)} from the start of {blank.Board.Name}.";
        return blank.Because(ReasonKind.FirstOnTheBoard, sentence);
    }

    public static BlankReason? NextInTurn(BlankInPlace blank)
    {
        var before = blank
            .OthersOnTheBoard()
            .Where(o => o.Rect.To <= blank.Rect.From)
            .MaxBy(o => o.Rect.To);
        return before is null
            ? blank.Because(ReasonKind.NextInTurn, "It lies on wood that is clear for it.")
            : blank.Because(
                ReasonKind.NextInTurn,
                $"It is the next along the board after {before.Blank.Key}, on wood that is clear for it."
            ) with
            {
                With = [before.Blank.Key],
            };
    }

    /// <summary>Whether nothing but kerfs lies between the sections, from the trim on.</summary>
    private static bool IsPacked(BlankInPlace blank)
    {
        var ready = blank.Board.TrimStart;
        foreach (var section in blank.Layout.Sections)
        {
            if (section.From != ready)
                return false;
            ready = section.To + blank.Request.Rules.CrosscutKerf;
        }

        return true;
    }
}
