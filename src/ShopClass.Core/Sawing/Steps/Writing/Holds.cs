namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>
/// Where the work, the hands and the waste are, for a right-handed student; <see cref="Mirror"/> makes the left-handed
/// ones. Common practice. The words left and right mean nothing but sides.
/// </summary>
internal static class Holds
{
    /// <summary>How a cupped board lies still.</summary>
    public const string HollowDown = "Lay it hollow side down, so that it cannot rock.";

    /// <summary>How a twisted board lies still.</summary>
    public const string WedgeUnder = "Push a thin wedge under the corner that stands off.";

    /// <summary>What the sawyer's sides do at a cut of the breakdown.</summary>
    public static string SidesOf(Cut cut) =>
        (cut.Support, cut.Kind is CutKind.Rip) switch
        {
            (Support.SawBench, _) =>
                "The left knee is on the work, the saw in the right hand, and what comes off is on the right.",
            (Support.BenchHook, _) =>
                "The left hand presses the work; the line is just past the right end of the fence.",
            (_, true) => "The line stands just past the right side of the jaws.",
            _ =>
                "The line is just past the right side of the jaws, and the left hand steadies the work.",
        };

    /// <summary>How a piece is held while an end is sawn off to a knife line.</summary>
    public static string EndCut(Support support, string piece) =>
        support is Support.BenchHook
            ? $"Press {piece} against the fence of the bench hook with the left hand; the line is just past the right end of the fence, "
                + "and the waste is free on the right. The forearm is in line with the saw."
            : $"Clamp {piece} in the vise with the line just past the right side of the jaws: it is too short for the bench hook. "
                + "The left hand steadies it on the far side of the jaws; the waste is free on the right.";

    /// <summary>How a piece is held while its end is planed.</summary>
    public static string EndPlaned(string piece) =>
        $"Clamp {piece} upright in the vise, low, with its end just above the jaws, and lead the plane with the left hand.";

    /// <summary>How a piece is held while its face is planed.</summary>
    public static string Face(string piece) =>
        $"Lay {piece} flat on the bench against a stop, with a batten behind it so that it cannot swing; the left hand is on the front of the plane.";

    /// <summary>How a piece is held while an edge is planed or ripped.</summary>
    public static string Edge(string piece) =>
        $"Clamp {piece} in the vise with the edge up and level, low in the jaws; the left hand guides the front of the plane.";

    /// <summary>How a piece is held for a narrow rip to a gauge line.</summary>
    public static string RipToWidth(string piece) =>
        $"Clamp {piece} upright in the vise with the line just past the right side of the jaws, and turn it end for end half way. "
        + "The waste is on the right.";
}
