using ShopClass.Data.Access;

namespace ShopClass.Web.Features.Shell;

/// <summary>What became of a write, in sentences for the person who asked for it.</summary>
public static class OutcomeWords
{
    /// <summary>Why nothing was written; empty when it was.</summary>
    public static IReadOnlyList<string> Sentences<T>(this Outcome<T> outcome) =>
        outcome.Kind switch
        {
            OutcomeKind.Saved => [],
            OutcomeKind.Refused => [.. outcome.Problems.Select(p => p.Sentence)],
            OutcomeKind.ChangedMeanwhile =>
            [
                "Somebody changed this meanwhile, so nothing was saved. What is stored now is shown; try again.",
            ],
            _ => ["This is no longer there, so nothing was saved."],
        };

    /// <summary>The count with its word: "1 board", "3 boards".</summary>
    public static string Count(this int count, string one, string? many = null) =>
        $"{count} {(count == 1 ? one : many ?? one + "s")}";
}
