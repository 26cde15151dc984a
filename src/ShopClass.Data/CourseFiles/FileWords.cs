using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Data.CourseFiles;

/// <summary>The words a course file uses for a choice. They stay as they are when the code's own names change.</summary>
/// <typeparam name="T">The choice.</typeparam>
internal sealed class FileWords<T>(params (string Word, T Value)[] all)
    where T : struct
{
    public IEnumerable<string> Words => all.Select(a => a.Word);

    public T? Find(string word) =>
        all.Where(a => a.Word == word).Select(a => (T?)a.Value).FirstOrDefault();

    public string For(T value) =>
        all.First(a => EqualityComparer<T>.Default.Equals(a.Value, value)).Word;
}

/// <summary>All choices of a course file.</summary>
internal static class FileWords
{
    public static FileWords<UnitSystem> Units { get; } =
        new(("inch", UnitSystem.Inch), ("metric", UnitSystem.Metric));

    public static FileWords<SupplyKind> SupplyKinds { get; } =
        new(
            ("hardware", SupplyKind.Hardware),
            ("glue", SupplyKind.Glue),
            ("finish", SupplyKind.Finish),
            ("abrasive", SupplyKind.Abrasive),
            ("other", SupplyKind.Other)
        );

    public static FileWords<Precision> Precisions { get; } =
        new(
            ("1/16 in", Precision.Sixteenth),
            ("1/32 in", Precision.ThirtySecond),
            ("1/64 in", Precision.SixtyFourth),
            ("1 mm", Precision.Millimetre),
            ("0.5 mm", Precision.HalfMillimetre)
        );

    public static FileWords<GrainDirection> Grains { get; } =
        new(("length", GrainDirection.AlongLength), ("any", GrainDirection.Any));

    public static FileWords<PartDimension> Dimensions { get; } =
        new(
            ("thickness", PartDimension.Thickness),
            ("width", PartDimension.Width),
            ("length", PartDimension.Length)
        );

    public static FileWords<OpenEventKind> Events { get; } =
        new(
            ("joint fitted", OpenEventKind.JointFitted),
            ("glued up", OpenEventKind.GluedUp),
            ("dry fit", OpenEventKind.DryFit),
            ("rest stands", OpenEventKind.RestStands),
            ("put together", OpenEventKind.Together)
        );

    public static FileWords<ReferenceFace> ReferenceFaces { get; } =
        new(
            ("truest", ReferenceFace.Truest),
            ("inside", ReferenceFace.Inside),
            ("outside", ReferenceFace.Outside)
        );

    public static FileWords<JointKind> Joints { get; } =
        new(
            ("dado", JointKind.Dado),
            ("rabbet", JointKind.Rabbet),
            ("notch", JointKind.Notch),
            ("half lap", JointKind.HalfLap),
            ("mortise and tenon", JointKind.MortiseAndTenon),
            ("dovetail", JointKind.Dovetail),
            ("through peg", JointKind.ThroughPeg),
            ("nailed", JointKind.Nailed)
        );

    public static FileWords<JointSide> JointSides { get; } =
        new(
            ("reference", JointSide.Reference),
            ("opposite", JointSide.Opposite),
            ("both", JointSide.Both)
        );

    public static FileWords<Skill> Skills { get; } =
        new(
            ("marking out", Skill.MarkingOut),
            ("crosscutting", Skill.Crosscutting),
            ("ripping", Skill.Ripping),
            ("planing", Skill.Planing),
            ("edge gluing", Skill.EdgeGluing),
            ("fine crosscutting", Skill.FineCrosscutting),
            ("gauging", Skill.Gauging),
            ("joinery", Skill.Joinery),
            ("assembly", Skill.Assembly),
            ("finishing", Skill.Finishing)
        );

    public static FileWords<StepKind> Steps { get; } =
        new(
            ("looking the board over", StepKind.CheckBoard),
            ("marking out", StepKind.MarkOut),
            ("trimming an end", StepKind.EndTrim),
            ("rough crosscut", StepKind.Crosscut),
            ("rough rip", StepKind.Rip),
            ("flattening a face", StepKind.FlattenFace),
            ("straightening an edge", StepKind.StraightenEdge),
            ("planing to thickness", StepKind.PlaneToThickness),
            ("planing edges to meet", StepKind.JointEdges),
            ("gluing up", StepKind.GlueUp),
            ("marking face and edge", StepKind.MarkReference),
            ("bringing to width", StepKind.BringToWidth),
            ("squaring an end", StepKind.SquareEnd),
            ("marking like parts together", StepKind.GangMark),
            ("cutting to length", StepKind.CutToLength),
            ("setting a gauge", StepKind.SetGauge),
            ("marking a joint", StepKind.MarkJoint),
            ("cutting a joint", StepKind.CutJoint),
            ("fitting", StepKind.Fit),
            ("cutting an open size", StepKind.CloseDimension),
            ("putting together", StepKind.Assemble),
            ("finishing", StepKind.Finish),
            ("practice", StepKind.Practise)
        );

    public static FileWords<Surfacing> Surfacings { get; } =
        new(
            ("rough", Surfacing.Rough),
            ("S2S", Surfacing.S2S),
            ("S3S", Surfacing.S3S),
            ("S4S", Surfacing.S4S)
        );

    public static FileWords<PriceBasis> Bases { get; } =
        new(
            ("each", PriceBasis.Each),
            ("foot", PriceBasis.PerFoot),
            ("board foot", PriceBasis.PerBoardFoot),
            ("metre", PriceBasis.PerMetre)
        );

    public static FileWords<RackState> RackStates { get; } =
        new(("free", RackState.Free), ("set aside", RackState.SetAside));

    public static FileWords<DefectKind> Defects { get; } =
        new(
            ("knot", DefectKind.Knot),
            ("split", DefectKind.Split),
            ("check", DefectKind.Check),
            ("wane", DefectKind.Wane),
            ("hole", DefectKind.Hole),
            ("pith", DefectKind.Pith),
            ("pitch pocket", DefectKind.PitchPocket),
            ("stain", DefectKind.Stain),
            ("other", DefectKind.Other)
        );

    public static FileWords<DefectReach> Reaches { get; } =
        new(
            ("through", DefectReach.Through),
            ("marked face", DefectReach.MarkedFace),
            ("back face", DefectReach.BackFace)
        );
}
