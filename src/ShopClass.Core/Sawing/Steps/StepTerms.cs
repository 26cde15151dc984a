using System.Globalization;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps;

/// <summary>A step in the trade's words; the same on screens and on paper.</summary>
public static class StepTerms
{
    /// <summary>Where it is done.</summary>
    public static string Of(Station station) =>
        station switch
        {
            Station.SawBench => "saw bench",
            Station.Vise => "bench with a vise",
            Station.BenchHook => "bench hook",
            Station.BenchTop => "any bench",
            Station.Gluing => "gluing place",
            Station.Sharpening => "sharpening bench",
            _ => throw new ArgumentOutOfRangeException(nameof(station), station, "Not a station."),
        };

    /// <summary>How good the cut must be.</summary>
    public static string Of(CutClass cutClass) =>
        cutClass switch
        {
            CutClass.Third => "third class, rough, beside the line",
            CutClass.Second => "second class, to the line",
            CutClass.First => "first class, a joint or a face that shows",
            _ => throw new ArgumentOutOfRangeException(nameof(cutClass), cutClass, "Not a class."),
        };

    /// <summary>The saw with its teeth and kerf.</summary>
    public static string Of(SawChoice saw, UnitSystem unit)
    {
        var kind = saw.Kind switch
        {
            SawKind.HandCrosscut => "crosscut saw",
            SawKind.HandRip => "rip saw",
            _ => "back saw",
        };
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{kind}, about {saw.Points} points, kerf {Said.Exactly(saw.Kerf, unit)}"
        );
    }

    /// <summary>The line that is worked to, and what it is marked from.</summary>
    public static string Line(Step step) =>
        step switch
        {
            { Line: null } => step.MarkedFrom,
            { MarkedFrom.Length: 0 } => Of(step.Line.Value),
            _ => $"{Of(step.Line.Value)}, from {step.MarkedFrom}",
        };

    /// <summary>"about 9 minutes: 3 to set up and mark, 6 of work; then left alone for 24 hours".</summary>
    public static string Of(StepTime time)
    {
        var parts =
            time.Work == 0 || time.SetUp == 0
                ? ""
                : $": {Minutes(time.SetUp)} to set up and mark, {Minutes(time.Work)} of work";
        var alone = time.Waiting > 0 ? $"; then left alone for {Long(time.Waiting)}" : "";
        return $"about {Long(time.Busy)}{parts}{alone}";
    }

    /// <summary>What becomes of an open dimension in this step.</summary>
    public static string Of(OpenNow open, UnitSystem unit)
    {
        var what = $"The {open.Dimension.Words()} of {open.Piece}";
        return open.State switch
        {
            OpenState.Open =>
                $"{what} stays {Said.Exactly(open.Extra, unit)} over. It waits until {open.Until}.",
            OpenState.TakenFromMate => $"{what} is taken from its place now.",
            OpenState.Cut => $"{what} is cut to the line taken from its place.",
            OpenState.Fitted => $"{what} has been tried and fits.",
            _ => throw new ArgumentOutOfRangeException(nameof(open), open.State, "Not a state."),
        };
    }

    /// <summary>The steps this one waits for, by number and what they do.</summary>
    public static IReadOnlyList<string> WaitsFor(Step step, WorkSequence work) =>
        [.. step.After.Select(n => $"step {n}, {LowerFirst(work.Steps[n - 1].Title)}")];

    /// <summary>A piece that is left: "A1, 3/4 × 6 × 14 in".</summary>
    public static string Of(PieceLeft piece, Precision precision)
    {
        var size = Size(piece.Thickness, piece.Width, piece.Length, precision);
        return piece.Use switch
        {
            PieceUse.Offcut => $"{piece.Name}, {size}, to keep",
            PieceUse.Waste => $"{piece.Name}, {size}, waste",
            _ => $"{piece.Name}, {size}",
        };
    }

    /// <summary>
    /// Thickness, width and length, as the course writes lengths; half a mark is written too, because it is set with a gauge
    /// and not read from a tape.
    /// </summary>
    public static string Size(Length thickness, Length width, Length length, Precision precision) =>
        $"{Bare(thickness, precision)} × {Bare(width, precision)} × {Bare(length, precision)} {(precision.Unit() is UnitSystem.Inch ? "in" : "mm")}";

    private static string Bare(Length length, Precision precision) =>
        length.Ticks % (precision.Step().Ticks / 2) == 0
            ? LengthWriter.WriteExact(length, precision.Unit())
            : LengthWriter.Write(length, precision);

    private static string Of(LineKind line) =>
        line switch
        {
            LineKind.Pencil => "pencil line",
            LineKind.Knife => "knife line",
            LineKind.Gauge => "gauge line",
            _ => throw new ArgumentOutOfRangeException(nameof(line), line, "Not a line."),
        };

    // Names of parts keep their capitals; only a title's own first word loses it.
    private static string LowerFirst(string title) =>
        title.Length > 1 && char.IsLower(title[1])
            ? char.ToLowerInvariant(title[0]) + title[1..]
            : title;

    private static string Long(int seconds) =>
        seconds >= 5400
            ? Count((seconds + 1800) / 3600, "hour")
            : Count((int)Minutes(seconds), "minute");

    private static long Minutes(int seconds) => Math.Max(1, (seconds + 59L) / 60);

    private static string Count(int count, string what) =>
        count == 1 ? $"1 {what}" : string.Create(CultureInfo.InvariantCulture, $"{count} {what}s");
}
