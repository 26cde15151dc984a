using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>One stage of a joint with the pieces it is cut in.</summary>
/// <param name="Joint">The joint.</param>
/// <param name="Stage">Which part's share.</param>
/// <param name="Own">The pieces it is cut in.</param>
/// <param name="Other">The pieces that meet them.</param>
/// <param name="MateThickness">How thick the piece is that goes in.</param>
internal sealed record JointCut(
    Joint Joint,
    JointStage Stage,
    IReadOnlyList<Workpiece> Own,
    IReadOnlyList<Workpiece> Other,
    Length MateThickness
)
{
    /// <summary>The letter it meets, or the kind of joint where it meets nothing.</summary>
    public string With => Other.Count > 0 ? Other[0].Part.Letter : "alone";

    public string Id => $"{Stage.Word}:{Own[0].Part.Letter}:{With}";

    public static string WordOf(JointKind kind) =>
        kind switch
        {
            JointKind.HalfLap => "halflap",
            JointKind.MortiseAndTenon => "tenon",
            JointKind.ThroughPeg => "peg",
            _ => kind.ToString().ToLowerInvariant(),
        };
}
