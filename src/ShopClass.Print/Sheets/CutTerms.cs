using ShopClass.Core.Sawing;

namespace ShopClass.Print.Sheets;

/// <summary>The trade's words for what a cut needs.</summary>
internal static class CutTerms
{
    public static string Of(CutKind kind) =>
        kind switch
        {
            CutKind.EndTrim => "end trim",
            CutKind.Crosscut => "crosscut",
            CutKind.Rip => "rip",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of cut."),
        };

    public static string Of(CutClass cutClass) =>
        cutClass switch
        {
            CutClass.Third => "third",
            CutClass.Second => "second",
            CutClass.First => "first",
            _ => throw new ArgumentOutOfRangeException(nameof(cutClass), cutClass, "Not a class."),
        };

    public static string Of(SawKind saw) =>
        saw switch
        {
            SawKind.HandCrosscut => "crosscut saw",
            SawKind.HandRip => "rip saw",
            SawKind.BackSaw => "back saw",
            _ => throw new ArgumentOutOfRangeException(nameof(saw), saw, "Not a saw."),
        };

    public static string Of(Support support) =>
        support switch
        {
            Support.SawBench => "saw bench",
            Support.BenchHook => "bench hook",
            Support.Vise => "vise",
            Support.Bench => "bench",
            _ => throw new ArgumentOutOfRangeException(nameof(support), support, "Not a support."),
        };

    public static string Of(LineKind line) =>
        line switch
        {
            LineKind.Pencil => "pencil",
            LineKind.Knife => "knife",
            LineKind.Gauge => "gauge",
            _ => throw new ArgumentOutOfRangeException(nameof(line), line, "Not a line."),
        };
}
