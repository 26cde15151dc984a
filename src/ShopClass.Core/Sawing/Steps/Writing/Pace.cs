using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>
/// About how long things take. Sawing: area by rate, species and student. All figures are our proposal; no published basis
/// was found.
/// </summary>
internal sealed class Pace(int studentPercent)
{
    // Square inches of white pine a minute (our proposal).
    public const int Rip = 8;
    public const int Crosscut = 6;
    public const int BackSaw = 3;
    public const int PlaneFace = 8;
    public const int PlaneEdge = 3;
    public const int Pare = 2;

    /// <summary>Set-up minutes of a rough cut beside a pencil line.</summary>
    public const int RoughSetUp = 3;

    /// <summary>Set-up minutes of a cut to a knife line, marking it all round included.</summary>
    public const int KnifeSetUp = 6;

    private static readonly Int128 SquareInch = (Int128)Length.TicksPerInch * Length.TicksPerInch;

    /// <summary>Work that goes by area in this wood.</summary>
    public StepTime Worked(
        int setUp,
        Area area,
        int rate,
        string verb,
        Board board,
        int waiting = 0
    )
    {
        var factor = SpeciesPercent(board.SpeciesId);
        var wood = SpeciesTable.Find(board.SpeciesId)?.CommonName ?? board.SpeciesId;
        var seconds = Rounded(area.SquareTicks * 60 * 100, SquareInch * rate * factor);
        return new(
            Scaled(setUp * 60),
            Scaled(seconds),
            waiting,
            $"our proposal: {setUp} {Minutes(setUp)} to set up, then {rate} {(rate == 1 ? "square inch" : "square inches")} {verb} a minute in white pine"
                + (factor == 100 ? "" : $", {factor} % of that in {wood}")
                + Student
        );
    }

    /// <summary>Work that takes about as long whatever the size.</summary>
    public StepTime Flat(int minutes, string what, int waiting = 0) =>
        new(
            0,
            Scaled(minutes * 60),
            waiting,
            $"our proposal: {minutes} {Minutes(minutes)} {what}" + Student
        );

    /// <summary>What is done before class takes no time of the student's.</summary>
    public static StepTime Prepared { get; } =
        new(0, 0, 0, "done by the instructor before class; none of the student's time");

    /// <summary>
    /// How fast a species saws against white pine, in per cent. Our proposal: pine and basswood 100, yellow-poplar 80,
    /// cherry 60, oak and hard maple 40, and other species by their published specific gravity between those.
    /// </summary>
    public static int SpeciesPercent(string speciesId)
    {
        // Wood Handbook FPL-GTR-190, Table 5-3a, at 12 %: eastern white pine 0.35, yellow-poplar 0.42, black cherry 0.50,
        // black walnut 0.55, hard maple and northern red oak 0.63.
        return SpeciesTable.Find(speciesId)?.SpecificGravity12?.Value switch
        {
            null => 60,
            <= 0.40m => 100,
            <= 0.45m => 80,
            <= 0.52m => 60,
            <= 0.58m => 50,
            _ => 40,
        };
    }

    private string Student =>
        studentPercent == 100 ? "" : $"; this student takes {studentPercent} % of that";

    private static string Minutes(int count) => count == 1 ? "minute" : "minutes";

    private int Scaled(int seconds) =>
        (int)Math.Min((long)seconds * Math.Max(1, studentPercent) / 100, int.MaxValue);

    /// <summary>Seconds, up to the next ten: an estimate written to the second would promise too much.</summary>
    private static int Rounded(Int128 over, Int128 under)
    {
        var seconds = (over + under - 1) / under;
        return (int)Int128.Min((seconds + 9) / 10 * 10, 1_000_000);
    }
}
