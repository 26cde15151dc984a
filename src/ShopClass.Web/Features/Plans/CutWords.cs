using ShopClass.Core.Measure;
using ShopClass.Core.Sawing;

namespace ShopClass.Web.Features.Plans;

/// <summary>A cut in the words of its card.</summary>
public static class CutWords
{
    public static string Of(CutKind kind) =>
        kind switch
        {
            CutKind.EndTrim => "End trim",
            CutKind.Crosscut => "Crosscut",
            CutKind.Rip => "Rip",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a cut."),
        };

    public static string Of(CutClass cutClass) =>
        cutClass switch
        {
            CutClass.Third => "Third class: rough, beside the line",
            CutClass.Second => "Second class: to the line, cleaned up afterwards",
            CutClass.First => "First class: a joint or a surface that shows",
            _ => throw new ArgumentOutOfRangeException(nameof(cutClass), cutClass, "Not a class."),
        };

    public static string Of(SawKind saw) =>
        saw switch
        {
            SawKind.HandCrosscut => "Hand crosscut saw",
            SawKind.HandRip => "Hand rip saw",
            SawKind.BackSaw => "Back saw",
            _ => throw new ArgumentOutOfRangeException(nameof(saw), saw, "Not a saw."),
        };

    public static string Of(Support support) =>
        support switch
        {
            Support.SawBench => "Saw bench",
            Support.BenchHook => "Bench hook",
            Support.Vise => "Vise",
            Support.Bench => "Bench",
            _ => throw new ArgumentOutOfRangeException(nameof(support), support, "Not a support."),
        };

    public static string Of(LineKind line) =>
        line switch
        {
            LineKind.Pencil => "Pencil line",
            LineKind.Knife => "Knife line",
            LineKind.Gauge => "Gauge line",
            _ => throw new ArgumentOutOfRangeException(nameof(line), line, "Not a line."),
        };

    /// <summary>Where the line is: hooked tape for a crosscut, gauge or rule from the near edge for a rip.</summary>
    public static string Place(Cut cut, Precision precision)
    {
        var at = LengthWriter.WriteWithUnit(cut.Position, precision);
        return cut.Kind is CutKind.Rip ? $"{at} from the near edge" : $"{at} from the start";
    }

    public static string Sawn(Cut cut, Precision precision) =>
        LengthWriter.WriteWithUnit(cut.SawnLength, precision);
}
