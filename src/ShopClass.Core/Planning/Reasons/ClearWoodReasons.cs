using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Reasons;

/// <summary>Reasons that bad places give.</summary>
internal static class ClearWoodReasons
{
    public static BlankReason? HiddenFace(BlankInPlace blank)
    {
        if (blank.Board.Defects.FirstOrDefault(d => d.Place.Overlaps(blank.Rect)) is not { } defect)
            return null;
        var face = defect.Reach is DefectReach.BackFace ? "back face" : "marked face";
        return blank.Because(
            ReasonKind.HiddenFace,
            $"It covers the {Name(defect)} at {blank.Say(defect.Place.From)}, which shows only on the {face} and becomes its hidden face."
        ) with
        {
            From = defect.Place.From,
        };
    }

    public static BlankReason? OnlyClearRun(BlankInPlace blank)
    {
        if (blank.Part.AcceptsHiddenDefect || blank.Board.Defects.Count == 0)
            return null;
        var (along, across) = blank.Needed;
        ClearRun[] runs =
        [
            .. ClearRuns
                .Of(blank.Board, Length.Min(across, blank.Rect.Across))
                .Where(r => r.Along >= along),
        ];
        if (runs.Length != 1 || (runs[0].From == blank.Board.TrimStart && runs[0].To == blank.End))
            return null;
        var run = runs[0];
        return blank.Because(
            ReasonKind.OnlyClearRun,
            $"The only clear run of {blank.Board.Name} long enough for it, at its width, is this one: {blank.Say(run.Along)}, from {Begin(blank, run)} to {Finish(blank, run)}."
        ) with
        {
            From = run.From,
            To = run.To,
        };
    }

    public static BlankReason? PastABadPlace(BlankInPlace blank)
    {
        var rect = blank.Rect;
        var defect = blank.Board.Defects.FirstOrDefault(d =>
            d.Place.To == rect.From && d.Place.Near < rect.Far && rect.Near < d.Place.Far
        );
        return defect is null
            ? null
            : blank.Because(
                ReasonKind.PastABadPlace,
                $"It begins where the {Name(defect)} ends, at {blank.Say(rect.From)}, so no clear wood is lost between them."
            ) with
            {
                From = rect.From,
            };
    }

    private static string Begin(BlankInPlace blank, ClearRun run) =>
        run.From == blank.Board.TrimStart
            ? "the start"
            : $"{Ending(blank, d => d.Place.To == run.From)} {blank.Say(run.From)}";

    private static string Finish(BlankInPlace blank, ClearRun run) =>
        run.To == blank.End
            ? "the far end"
            : $"{Ending(blank, d => d.Place.From == run.To)} {blank.Say(run.To)}";

    private static string Ending(BlankInPlace blank, Func<Defect, bool> isThere) =>
        blank.Board.Defects.FirstOrDefault(isThere) is { } defect ? $"the {Name(defect)} at" : "";

    private static string Name(Defect defect) =>
        defect.Kind switch
        {
            DefectKind.PitchPocket => "pitch pocket",
            DefectKind.Other => "bad place",
            _ => defect.Kind.ToString().ToLowerInvariant(),
        };
}
