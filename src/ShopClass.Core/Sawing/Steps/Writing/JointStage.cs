using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>One part's share of a joint: what is cut in it, and how. Stages are in the order they are cut.</summary>
/// <param name="Word">What is cut.</param>
/// <param name="Technique">Key of its technique note.</param>
/// <param name="OnMate">Whether it is cut in the part that enters.</param>
/// <param name="FromMate">Whether it is marked from the other part, already cut.</param>
/// <param name="Tools">What it takes besides knife, square and gauge.</param>
internal sealed record JointStage(
    string Word,
    string Technique,
    bool OnMate,
    bool FromMate,
    IReadOnlyList<string> Tools
)
{
    private static readonly string[] Sawn = ["back saw", "chisels", "mallet"];

    /// <summary>
    /// What is cut for a joint. The hole comes before the tongue that fits it, because a tongue is easier to pare than a
    /// hole; tails come before their sockets, which are marked from them. Common practice.
    /// </summary>
    public static IReadOnlyList<JointStage> Of(Joint joint, Part? part, Part? mate) =>
        part is not null && joint.IsStopped(part, mate)
            ? StoppedDado(joint.NeedsShoulder(part, mate))
            : Of(joint.Kind);

    /// <summary>A dado that ends inside the part; what is wider than it loses a corner, so that it passes the end.</summary>
    private static JointStage[] StoppedDado(bool withShoulder)
    {
        JointStage trench = new(
            "stopped dado",
            "StoppedDado",
            false,
            false,
            [.. Sawn, "router plane"]
        );
        return withShoulder ? [trench, new("shoulder", "Shoulder", true, true, Sawn)] : [trench];
    }

    private static IReadOnlyList<JointStage> Of(JointKind kind) =>
        kind switch
        {
            JointKind.Dado => [new("dado", "Dado", false, false, [.. Sawn, "router plane"])],
            JointKind.Rabbet => [new("rabbet", "Rabbet", false, false, Sawn)],
            JointKind.Notch => [new("notch", "Notch", false, false, Sawn)],
            JointKind.HalfLap =>
            [
                new("half lap", "HalfLap", false, false, Sawn),
                new("half lap", "HalfLap", true, true, Sawn),
            ],
            JointKind.MortiseAndTenon =>
            [
                new("mortise", "Mortise", false, false, ["mortise chisel", "mallet"]),
                new("tenon", "Tenon", true, true, Sawn),
            ],
            JointKind.Dovetail =>
            [
                new("tails", "Tails", true, false, ["dovetail saw", "chisels", "mallet", "bevel"]),
                new("sockets", "Sockets", false, true, ["dovetail saw", "chisels", "mallet"]),
            ],
            JointKind.ThroughPeg =>
            [
                new("hole", "Hole", false, false, ["brace and bit", "chisel"]),
                new("peg", "Peg", true, true, ["block plane", "chisel"]),
            ],
            JointKind.Nailed => [],
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a joint."),
        };

    /// <summary>
    /// Wood to saw and pare for one of them: walls and floor. A guide to the minutes, no more.
    /// </summary>
    public Area Worked(Joint joint, Workpiece piece, Length mateThickness)
    {
        var wide = joint.Width ?? mateThickness;
        return Word switch
        {
            "stopped dado" => Across(joint, piece) * (2 * joint.Depth + wide),
            "shoulder" => piece.Thickness * (3 * joint.Depth),
            "dado" or "rabbet" or "half lap" => piece.Width * (2 * joint.Depth + wide),
            "notch" => piece.Thickness * (2 * joint.Depth + wide),
            "mortise" => (2 * wide + 2 * mateThickness) * piece.Thickness,
            "tenon" => piece.Width * (2 * joint.Depth + piece.Thickness),
            "hole" => piece.Thickness * (4 * wide),
            _ => piece.Width * (3 * joint.Depth),
        };
    }

    private static Length Across(Joint joint, Workpiece piece) =>
        joint.Reach(piece.Part, null) is { } reach ? reach.Far - reach.Near : piece.Width;
}
