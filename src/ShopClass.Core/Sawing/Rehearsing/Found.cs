using System.Runtime.CompilerServices;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Sawing.Rehearsing;

/// <summary>Makes findings that carry the name of the rule that makes them.</summary>
internal static class Found
{
    /// <summary>A broken must.</summary>
    public static Finding Must(
        string? boardId,
        string? subject,
        Length? amount,
        string sentence,
        [CallerMemberName] string rule = ""
    ) => new(FindingKind.Must, rule, boardId, subject, amount, sentence);

    /// <summary>A broken must of a cut.</summary>
    public static Finding Must(
        Tried cut,
        Length? amount,
        string sentence,
        [CallerMemberName] string rule = ""
    ) => new(FindingKind.Must, rule, cut.Cut.BoardId, cut.Name, amount, sentence);

    /// <summary>A broken must of a blank.</summary>
    public static Finding Must(
        Claimed blank,
        Length? amount,
        string sentence,
        [CallerMemberName] string rule = ""
    ) => new(FindingKind.Must, rule, blank.BoardId, blank.Key.ToString(), amount, sentence);

    /// <summary>Something worth knowing.</summary>
    public static Finding Note(
        string? boardId,
        string? subject,
        string sentence,
        [CallerMemberName] string rule = ""
    ) => new(FindingKind.Note, rule, boardId, subject, null, sentence);
}
