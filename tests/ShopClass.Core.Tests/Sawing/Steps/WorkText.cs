using System.Text;
using ShopClass.Core.Measure;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Tests.Sawing.Steps;

/// <summary>A work sequence written out, to be read by people. How a thing is done is told at its first time.</summary>
internal sealed class WorkText(Precision precision)
{
    private readonly Dictionary<string, int> told = new(StringComparer.Ordinal);
    private readonly StringBuilder text = new();

    public string Of(WorkSequence work)
    {
        foreach (var step in work.Steps)
            Write(step);
        var busy = work.Steps.Sum(s => s.Time.Busy);
        text.Append($"About {(busy + 1800) / 3600} hours of work in all, waiting left out.\n");
        return text.ToString();
    }

    private void Write(Step step)
    {
        text.Append($"{step.Number}. {step.Title}\n");
        Line("", Where(step));
        Line("From: ", step.MarkedFrom);
        foreach (var mark in step.Marks)
            Line("- ", mark);
        Line("Hold: ", step.Hold);
        Line("How: ", How(step));
        Line("Why: ", step.Reason);
        Line("First: ", string.Join(" ", step.Needs));
        Line("After: ", step.After.Count == 0 ? "" : $"step {string.Join(", ", step.After)}");
        foreach (var open in step.Open)
            Line("Open: ", StepTerms.Of(open, precision.Unit()));
        Line("Leaves: ", string.Join("; ", step.Leaves.Select(l => StepTerms.Of(l, precision))));
        Line("Tools: ", string.Join(", ", step.Tools));
        Line("Mind: ", step.Caution);
        Line("", Time(step.Time));
        text.Append('\n');
    }

    private string How(Step step)
    {
        if (step.Technique.Length == 0)
            return "";
        if (told.TryGetValue(step.Technique, out var number))
            return $"as in step {number}.";
        told[step.Technique] = step.Number;
        return step.Technique;
    }

    private static string Where(Step step)
    {
        List<string> words = [Words(step.Station.ToString())];
        if (step.IsPrepared)
            words.Add("prepared by the instructor");
        if (step.Class is { } @class)
            words.Add($"{@class.ToString().ToLowerInvariant()}-class cut");
        if (step.Saw is { } saw)
            words.Add($"{Words(saw.Kind.ToString())}, {saw.Points} points");
        if (step.Line is { } line)
            words.Add($"{line.ToString().ToLowerInvariant()} line");
        if (step.WasteSide is { } side)
            words.Add($"waste on the {side.ToString().ToLowerInvariant()}");
        return char.ToUpperInvariant(words[0][0]) + string.Join("; ", words)[1..];
    }

    private static string Time(StepTime time)
    {
        var alone = time.Waiting > 0 ? $", then {time.Waiting / 3600} h left alone" : "";
        return $"About {(time.Busy + 59) / 60} min{alone} ({time.Basis}).";
    }

    private static string Words(string name) =>
        string.Concat(name.Select(c => char.IsUpper(c) ? $" {char.ToLowerInvariant(c)}" : $"{c}"))
            .Trim();

    private void Line(string head, string words)
    {
        if (words.Length > 0)
            text.Append("   ").Append(head).Append(words).Append('\n');
    }
}
