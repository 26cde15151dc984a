using System.Text;
using ShopClass.Core.Measure;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Tests.Sawing.Steps;

/// <summary>A work sequence written out, to be read by people.</summary>
internal static class WorkText
{
    public static string Of(WorkSequence work, Precision precision)
    {
        var text = new StringBuilder();
        foreach (var step in work.Steps)
            text.Append(Of(step, precision)).Append('\n');
        return text.ToString();
    }

    private static string Of(Step step, Precision precision)
    {
        var lines = new List<string> { $"{step.Number}. {step.Title}" };
        Add("   ", string.Join(", ", Where(step)));
        Add("   From: ", step.MarkedFrom);
        foreach (var mark in step.Marks)
            Add("   - ", mark);
        Add("   Hold: ", step.Hold);
        Add("   How: ", step.Technique);
        Add("   Why: ", step.Reason);
        Add("   First: ", string.Join(" ", step.Needs));
        Add("   After: ", string.Join(", ", step.After));
        foreach (var open in step.Open)
            Add(
                "   Open: ",
                $"{open.Piece} {open.Dimension} {open.State}, {LengthWriter.WriteExactWithUnit(open.Extra, precision.Unit())} until {open.Until}"
            );
        Add("   Leaves: ", string.Join("; ", step.Leaves.Select(p => Of(p, precision))));
        Add("   Tools: ", string.Join(", ", step.Tools));
        Add("   Caution: ", step.Caution);
        lines.Add(
            $"   Time: {step.Time.SetUp / 60} + {(step.Time.Work + 59) / 60} min{(step.Time.Waiting > 0 ? $", then {step.Time.Waiting / 3600} h alone" : "")} ({step.Time.Basis})"
        );
        return string.Concat(lines.Select(l => l + "\n"));

        void Add(string head, string words)
        {
            if (words.Length > 0)
                lines.Add(head + words);
        }
    }

    private static IEnumerable<string> Where(Step step)
    {
        yield return step.Station.ToString();
        if (step.Class is { } @class)
            yield return $"{@class} class";
        if (step.Saw is { } saw)
            yield return $"{saw.Kind} ({saw.Points} points)";
        if (step.Support is { } support)
            yield return $"held: {support}";
        if (step.Line is { } line)
            yield return $"{line} line";
        if (step.WasteSide is { } side)
            yield return $"waste {side}";
        if (step.IsPrepared)
            yield return "prepared";
    }

    private static string Of(PieceLeft piece, Precision precision) =>
        $"{piece.Name} {LengthWriter.WriteSize(piece.Thickness, piece.Width, piece.Length, precision)}"
        + (piece.Use is PieceUse.Work ? "" : $" ({piece.Use})");
}
