namespace ShopClass.Core.Sawing.Steps;

/// <summary>What a step does, in the usual order of the work (common practice).</summary>
public enum StepKind
{
    /// <summary>Look the board over, measure it, ring its bad places.</summary>
    CheckBoard,

    /// <summary>Mark the board out in pencil by running tape positions.</summary>
    MarkOut,

    /// <summary>Take a bad or untrue end off.</summary>
    EndTrim,

    /// <summary>Rough crosscut beside a pencil line.</summary>
    Crosscut,

    /// <summary>Rough rip beside a pencil line.</summary>
    Rip,

    /// <summary>Plane one face flat.</summary>
    FlattenFace,

    /// <summary>Plane one edge straight and square.</summary>
    StraightenEdge,

    /// <summary>Gauge and plane to thickness.</summary>
    PlaneToThickness,

    /// <summary>Plane edges to meet.</summary>
    JointEdges,

    /// <summary>Glue and clamp.</summary>
    GlueUp,

    /// <summary>Mark reference face and edge.</summary>
    MarkReference,

    /// <summary>Gauge and bring to width.</summary>
    BringToWidth,

    /// <summary>Knife all round and square one end.</summary>
    SquareEnd,

    /// <summary>Mark the length of like parts together.</summary>
    GangMark,

    /// <summary>Crosscut to length at a knife line.</summary>
    CutToLength,

    /// <summary>Set a marking gauge once, for all that use it.</summary>
    SetGauge,

    /// <summary>Lay a joint out with knife and gauge.</summary>
    MarkJoint,

    /// <summary>Saw and pare a joint.</summary>
    CutJoint,

    /// <summary>Try parts together and pare until they fit.</summary>
    Fit,

    /// <summary>Cut a dimension that stayed open, after its event.</summary>
    CloseDimension,

    /// <summary>Put together.</summary>
    Assemble,

    /// <summary>Clean up and finish.</summary>
    Finish,

    /// <summary>Practise on the student's own waste before the real cut.</summary>
    Practise,
}

/// <summary>A skill that is demonstrated before its first use (common practice).</summary>
public enum Skill
{
    /// <summary>Measuring and marking out.</summary>
    MarkingOut,

    /// <summary>Rough crosscutting at the saw bench.</summary>
    Crosscutting,

    /// <summary>Ripping.</summary>
    Ripping,

    /// <summary>Planing.</summary>
    Planing,

    /// <summary>Edge gluing.</summary>
    EdgeGluing,

    /// <summary>Knife lines and sawing at the bench hook.</summary>
    FineCrosscutting,

    /// <summary>Gauging.</summary>
    Gauging,

    /// <summary>Sawing and paring joints.</summary>
    Joinery,

    /// <summary>Fitting and assembly.</summary>
    Assembly,

    /// <summary>Finishing.</summary>
    Finishing,
}

/// <summary>Where in the shop a step is done.</summary>
public enum Station
{
    /// <summary>A saw bench.</summary>
    SawBench,

    /// <summary>A bench with a vise.</summary>
    Vise,

    /// <summary>A bench hook on any bench.</summary>
    BenchHook,

    /// <summary>Any free place at a bench, nothing held.</summary>
    BenchTop,

    /// <summary>Where glue-ups stand.</summary>
    Gluing,

    /// <summary>Where edges are sharpened.</summary>
    Sharpening,
}
