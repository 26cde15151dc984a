using ShopClass.Core.Sawing;

namespace ShopClass.Core.Planning.Reasons;

/// <summary>Reasons that other blanks give.</summary>
internal static class NeighbourReasons
{
    public static BlankReason? GlueMate(BlankInPlace blank)
    {
        var key = blank.Blank.Key;
        BlankKey[] mates =
        [
            .. blank
                .OthersOnTheBoard()
                .Where(o => o.Section.From == blank.Section.From)
                .Select(o => o.Blank.Key)
                .Where(k => k.Part == key.Part && k.Copy == key.Copy)
                .Order(),
        ];
        return mates.Length == 0
            ? null
            : blank.Because(
                ReasonKind.GlueMate,
                $"It shares a section with {List(mates)}, which it is glued to: their grain and colour come from the same stretch of board."
            ) with
            {
                With = mates,
            };
    }

    /// <summary>The cut is looked up: a rip through two sections may have parted them before.</summary>
    public static BlankReason? OneCrosscut(BlankInPlace blank)
    {
        var alike = blank
            .Beside()
            .Where(o => o.Rect.From == blank.Rect.From && o.Rect.To == blank.Rect.To)
            .ToList();
        foreach (var cut in blank.Cuts.Where(c => Ends(c, blank)))
        {
            BlankKey[] freed = [.. alike.Where(o => Ends(cut, o)).Select(o => o.Blank.Key).Order()];
            if (freed.Length > 0)
            {
                return blank.Because(
                    ReasonKind.OneCrosscut,
                    $"It shares a section with {List(freed)} of the same sawn length, so one crosscut (cut {cut.Number}) serves {(freed.Length == 1 ? "both" : "them all")}: one line to mark instead of {freed.Length + 1}."
                ) with
                {
                    With = freed,
                    Cut = cut.Number,
                };
            }
        }

        return null;
    }

    public static BlankReason? GangMarked(BlankInPlace blank)
    {
        BlankKey[] alike =
        [
            .. blank
                .Beside()
                .Where(o => o.Rect.From == blank.Rect.From && o.Rect.To == blank.Rect.To)
                .Select(o => o.Blank.Key)
                .Order(),
        ];
        return alike.Length == 0
            ? null
            : blank.Because(
                ReasonKind.GangMarked,
                $"It lies beside {List(alike)}, from the same line to the same line, so {(alike.Length == 1 ? "both" : "all")} are marked together, square across the board."
            ) with
            {
                With = alike,
            };
    }

    /// <summary>It could lie nearer the start, but not on a neighbour's line.</summary>
    public static BlankReason? OneLine(BlankInPlace blank)
    {
        var rect = blank.Rect;
        var ready = blank
            .Strip.Blanks.Where(b => b.To <= rect.From)
            .Select(b => b.To + blank.Request.Rules.CrosscutKerf)
            .Append(blank.Section.From)
            .Max();
        var nearer = rect with { From = ready, To = ready + rect.Along };
        if (rect.From <= ready || blank.Board.Defects.Any(d => d.Place.Overlaps(nearer)))
            return null;
        BlankKey[] inLine =
        [
            .. blank
                .Beside()
                .Where(o => o.Rect.From == rect.From || o.Rect.To == rect.From)
                .Select(o => o.Blank.Key)
                .Order(),
        ];
        return inLine.Length == 0
            ? null
            : blank.Because(
                ReasonKind.OneLine,
                $"It could begin at {blank.Say(ready)}, but begins at {blank.Say(rect.From)}, on one line with {List(inLine)}: one line to mark instead of {inLine.Length + 1}."
            ) with
            {
                With = inLine,
                From = ready,
            };
    }

    public static BlankReason? WithinLength(BlankInPlace blank)
    {
        // A section may end past all its blanks, where a bad place keeps the next one from lying nearer.
        var longest = blank.Section.Strips.MaxBy(Reach)!;
        if (Reach(blank.Strip) >= Reach(longest))
            return null;
        BlankKey[] beside = [.. longest.Blanks.Select(b => b.Key)];
        return blank.Because(
            ReasonKind.WithinLength,
            $"It comes out of the width beside {List(beside)}, within the length {(beside.Length == 1 ? "that takes" : "they take")} anyway; by itself it would use up {blank.Say(blank.Rect.Along)} more of the board's length."
        ) with
        {
            With = beside,
        };
    }

    public static BlankReason? RoomBeside(BlankInPlace blank)
    {
        var isLongest = blank.Rect.From == blank.Section.From && blank.Rect.To == blank.Section.To;
        BlankKey[] beside =
        [
            .. blank
                .Beside()
                .Where(o => o.Rect.To < blank.Section.To || o.Rect.From > blank.Section.From)
                .Select(o => o.Blank.Key)
                .Order(),
        ];
        return !isLongest || beside.Length == 0
            ? null
            : blank.Because(
                ReasonKind.RoomBeside,
                $"It leaves width for {List(beside)} beside it, within its own length."
            ) with
            {
                With = beside,
            };
    }

    public static BlankReason? OneRip(BlankInPlace blank)
    {
        foreach (var cut in blank.Cuts.Where(c => Edges(c, blank)))
        {
            BlankKey[] others =
            [
                .. blank
                    .OthersOnTheBoard()
                    .Where(o =>
                        o.Strip.Near == blank.Strip.Near
                        && o.Strip.Far == blank.Strip.Far
                        && Edges(cut, o)
                    )
                    .Select(o => o.Blank.Key)
                    .Order(),
            ];
            if (others.Length > 0)
            {
                return blank.Because(
                    ReasonKind.OneRip,
                    $"It lies in line with {List(others)}, so one rip (cut {cut.Number}) serves {(others.Length == 1 ? "both" : "them all")}: one line to mark instead of {others.Length + 1}."
                ) with
                {
                    With = others,
                    Cut = cut.Number,
                };
            }
        }

        return null;
    }

    private static Measure.Length Reach(Strip strip) => strip.Blanks[^1].To;

    /// <summary>Whether a crosscut runs along the blank's far end from edge to edge.</summary>
    private static bool Ends(Cut cut, BlankInPlace blank) =>
        cut.Kind is not CutKind.Rip
        && cut.Kerf.From == blank.Rect.To
        && cut.Kerf.Near <= blank.Rect.Near
        && cut.Kerf.Far >= blank.Rect.Far;

    /// <summary>Whether a rip runs along one edge of the blank from end to end.</summary>
    private static bool Edges(Cut cut, BlankInPlace blank) =>
        cut.Kind is CutKind.Rip
        && (cut.Kerf.Near == blank.Rect.Far || cut.Kerf.Far == blank.Rect.Near)
        && cut.Kerf.From <= blank.Rect.From
        && cut.Kerf.To >= blank.Rect.To;

    private static string List(IEnumerable<BlankKey> keys) =>
        Say.List([.. keys.Select(k => k.ToString())]);
}
