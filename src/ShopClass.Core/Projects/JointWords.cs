namespace ShopClass.Core.Projects;

/// <summary>Joints and sizes in words; the same on screens, on sheets and in sentences.</summary>
public static class JointWords
{
    /// <summary>The kind of joint, in small letters: "mortise and tenon".</summary>
    public static string Words(this JointKind kind) =>
        kind switch
        {
            JointKind.Dado => "dado",
            JointKind.Rabbet => "rabbet",
            JointKind.Notch => "notch",
            JointKind.HalfLap => "half lap",
            JointKind.MortiseAndTenon => "mortise and tenon",
            JointKind.Dovetail => "dovetail",
            JointKind.ThroughPeg => "through peg",
            JointKind.Nailed => "nailed or screwed butt",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a joint."),
        };

    /// <summary>What is cut into the receiving part, in small letters: a mortise of a mortise and tenon.</summary>
    public static string CutWords(this JointKind kind) =>
        kind switch
        {
            JointKind.MortiseAndTenon => "mortise",
            JointKind.ThroughPeg => "peg hole",
            JointKind.Dovetail => "socket",
            _ => kind.Words(),
        };

    /// <summary>The dimension, in small letters.</summary>
    public static string Words(this PartDimension dimension) =>
        dimension switch
        {
            PartDimension.Thickness => "thickness",
            PartDimension.Width => "width",
            PartDimension.Length => "length",
            _ => throw new ArgumentOutOfRangeException(nameof(dimension), dimension, "Not a size."),
        };
}
