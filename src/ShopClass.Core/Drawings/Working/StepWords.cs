using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Drawings.Working;

/// <summary>What the picture of a step shows, in words: one sentence a line.</summary>
internal static class StepWords
{
    public static string Of(CheckedPlan plan, WorkSequence work, Step step, string shown)
    {
        var precision = plan.Request.Rules.Precision;
        List<string> lines = [$"Step {step.Number} of {work.Steps.Count}: {step.Title}."];
        if (shown.Length > 0)
            lines.Add(shown);
        else
            lines.AddRange(WorkedPieces.Of(plan, work, step).Select(p => Of(p, precision)));
        if (step.Line is { } line)
            lines.Add($"The line is a {line.ToString().ToLowerInvariant()} line{From(step)}.");
        lines.AddRange(step.Marks.Select(m => $"Marked: {m}."));
        if (step.WasteSide is { } side)
            lines.Add($"The waste is on the {side.ToString().ToLowerInvariant()}.");
        if (step.Hold.Length > 0)
            lines.Add(step.Hold);
        return string.Join('\n', lines);
    }

    private static string From(Step step) =>
        step.MarkedFrom.Length > 0 ? $", from {step.MarkedFrom}" : "";

    private static string Of(WorkedPiece piece, Precision precision)
    {
        var before = Size(piece.Before, precision);
        var after = Size(piece.After, precision);
        return before == after
            ? $"{piece.Name} is {before}."
            : $"{piece.Name} is {before} before, {after} after.";
    }

    private static string Size(PieceLeft piece, Precision precision) =>
        StepTerms.Size(piece.Thickness, piece.Width, piece.Length, precision);
}
