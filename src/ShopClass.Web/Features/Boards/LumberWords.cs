using ShopClass.Core.Lumber;

namespace ShopClass.Web.Features.Boards;

/// <summary>The words shown for kinds of lumber and its faults.</summary>
public static class LumberWords
{
    public static string Of(DefectKind kind) =>
        kind switch
        {
            DefectKind.Knot => "knot",
            DefectKind.Split => "split",
            DefectKind.Check => "drying check",
            DefectKind.Wane => "wane",
            DefectKind.Hole => "hole",
            DefectKind.Pith => "pith",
            DefectKind.PitchPocket => "pitch pocket",
            DefectKind.Stain => "stain",
            DefectKind.Other => "something else",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind."),
        };

    public static string Of(DefectReach reach) =>
        reach switch
        {
            DefectReach.Through => "right through",
            DefectReach.MarkedFace => "only on the marked face",
            DefectReach.BackFace => "only on the back face",
            _ => throw new ArgumentOutOfRangeException(nameof(reach), reach, "Not a reach."),
        };

    public static string Of(Surfacing surfacing) =>
        surfacing switch
        {
            Surfacing.Rough => "rough",
            Surfacing.S2S => "surfaced two sides (S2S)",
            Surfacing.S3S => "surfaced three sides (S3S)",
            Surfacing.S4S => "surfaced four sides (S4S)",
            _ => throw new ArgumentOutOfRangeException(nameof(surfacing), surfacing, "Not a kind."),
        };

    /// <summary>What to look for on the board itself.</summary>
    public static string Look(Surfacing surfacing) =>
        surfacing switch
        {
            Surfacing.Rough => "Saw marks on both faces; no straight edge",
            Surfacing.S2S => "Both faces planed; edges rough",
            Surfacing.S3S => "Both faces planed; one edge straight",
            Surfacing.S4S => "Both faces planed; both edges straight",
            _ => throw new ArgumentOutOfRangeException(nameof(surfacing), surfacing, "Not a kind."),
        };

    public static string Capitalised(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
