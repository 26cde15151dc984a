using ShopClass.Core.Measure;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Print.Lettering;
using ShopClass.Print.Pages;

namespace ShopClass.Print.Sheets;

/// <summary>What a card says under its heading, in the order it is needed at the bench.</summary>
internal static class StepLines
{
    public static IEnumerable<CardLine> Of(Step step, UnitSystem unit)
    {
        if (step.IsPrepared)
            yield return new("Prepared by the instructor before class.", Face.Strong);
        foreach (var mark in step.Marks)
            yield return new($"{Sentence(mark)}.", Face.Strong);
        yield return new($"{string.Join("; ", Place(step))}.");
        if (Facts(step, unit).ToList() is { Count: > 0 } facts)
            yield return new($"{Sentence(string.Join("; ", facts))}.");
        if (step.Hold.Length > 0)
            yield return new($"Hold: {step.Hold}");
        if (step.Technique.Length > 0)
            yield return new(step.Technique);
        if (step.Caution.Length > 0)
            yield return new($"Take care: {step.Caution}", Face.Strong);
        foreach (var open in step.Open)
            yield return new(StepTerms.Of(open, unit));
        if (Before(step) is { Length: > 0 } before)
            yield return new(before);
    }

    private static string Before(Step step)
    {
        List<string> words = [];
        if (step.Needs.Count > 0)
            words.Add($"First: {string.Join(" ", step.Needs)}");
        if (step.After.Count > 0)
            words.Add($"After {Numbers(step.After)}.");
        if (step.Tools.Count > 0)
            words.Add($"Set out: {string.Join(", ", step.Tools)}.");
        return string.Join(" ", words);
    }

    private static IEnumerable<string> Place(Step step)
    {
        yield return Sentence(StepTerms.Of(step.Station));
        yield return StepTerms.Of(step.Time);
    }

    private static IEnumerable<string> Facts(Step step, UnitSystem unit)
    {
        if (step.Saw is { } saw)
            yield return StepTerms.Of(saw, unit);
        if (StepTerms.Line(step) is { Length: > 0 } line)
            yield return step.Line is null ? $"measured from {line}" : line;
        if (step.Class is { } cutClass)
            yield return StepTerms.Of(cutClass);
        if (step.WasteSide is { } side)
            yield return $"waste on the {(side is Side.Left ? "left" : "right")}";
    }

    private static string Numbers(IReadOnlyList<int> steps) =>
        steps.Count == 1
            ? $"step {steps[0]}"
            : $"steps {string.Join(", ", steps.SkipLast(1))} and {steps[^1]}";

    private static string Sentence(string words) =>
        char.ToUpperInvariant(words[0]) + words[1..].TrimEnd('.');
}
