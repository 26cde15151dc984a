using System.Runtime.CompilerServices;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Sawing.Steps.Rehearsing;

/// <summary>Makes findings that carry the name of the rule that makes them.</summary>
internal static class Noticed
{
    public static Finding Must(
        Step step,
        string sentence,
        Length? amount = null,
        [CallerMemberName] string rule = ""
    ) =>
        new(
            FindingKind.Must,
            rule,
            step.Cut?.BoardId,
            $"step {step.Number}",
            amount,
            $"Step {step.Number} ({step.Title}): {sentence}"
        );

    public static Finding Must(
        string subject,
        string sentence,
        Length? amount = null,
        [CallerMemberName] string rule = ""
    ) => new(FindingKind.Must, rule, null, subject, amount, sentence);
}
