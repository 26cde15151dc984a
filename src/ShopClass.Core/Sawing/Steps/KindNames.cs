namespace ShopClass.Core.Sawing.Steps;

/// <summary>Kinds of step in the trade's words, for tables.</summary>
public static class KindNames
{
    /// <summary>The kind, as a line of a table begins.</summary>
    public static string Of(StepKind kind) =>
        kind switch
        {
            StepKind.CheckBoard => "Looking the board over",
            StepKind.MarkOut => "Marking out",
            StepKind.EndTrim => "Trimming an end",
            StepKind.Crosscut => "Rough crosscut",
            StepKind.Rip => "Rough rip",
            StepKind.FlattenFace => "Flattening a face",
            StepKind.StraightenEdge => "Straightening an edge",
            StepKind.PlaneToThickness => "Planing to thickness",
            StepKind.JointEdges => "Planing edges to meet",
            StepKind.GlueUp => "Gluing up",
            StepKind.MarkReference => "Marking face and edge",
            StepKind.BringToWidth => "Bringing to width",
            StepKind.SquareEnd => "Squaring an end",
            StepKind.GangMark => "Marking like parts together",
            StepKind.CutToLength => "Cutting to length",
            StepKind.SetGauge => "Setting a gauge",
            StepKind.MarkJoint => "Marking a joint",
            StepKind.CutJoint => "Cutting a joint",
            StepKind.Fit => "Fitting",
            StepKind.CloseDimension => "Cutting an open size",
            StepKind.Assemble => "Putting together",
            StepKind.Finish => "Finishing",
            StepKind.Practise => "Practice",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of step."),
        };
}
