using ShopClass.Core.Lumber;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Paces;

/// <summary>A step somebody timed.</summary>
/// <param name="StudentId">Key of the student.</param>
/// <param name="Kind">The kind of step.</param>
/// <param name="SpeciesId">Species of the wood; empty where it is not known.</param>
/// <param name="Planned">Whole minutes by the table, from 1.</param>
/// <param name="Taken">Whole minutes it took, from 1.</param>
public sealed record TimedStep(
    string StudentId,
    StepKind Kind,
    string SpeciesId,
    int Planned,
    int Taken
);

/// <summary>What may be said of the minutes a step took.</summary>
public static class TimedSteps
{
    /// <summary>No step is timed as longer: eight hours.</summary>
    public const int MostMinutes = 480;

    /// <summary>Why these minutes cannot be, as a sentence; null where they can.</summary>
    public static string? ProblemWith(int minutes) =>
        minutes is < 1 or > MostMinutes
            ? $"A step takes from 1 to {MostMinutes} minutes. Write whole minutes, or leave it empty."
            : null;

    /// <summary>
    /// Species a step works in: its cut's board; else the one species of all the boards; else the board it names. Empty
    /// where none of them tells.
    /// </summary>
    public static string SpeciesOf(Step step, IReadOnlyList<Board> boards)
    {
        if (boards.FirstOrDefault(b => b.Id == step.Cut?.BoardId) is { } sawn)
            return sawn.SpeciesId;
        string[] species = [.. boards.Select(b => b.SpeciesId).Distinct()];
        return species is [var only]
            ? only
            : boards.FirstOrDefault(b => step.Pieces.Contains(b.Name))?.SpeciesId ?? "";
    }
}
