using ShopClass.Core.Measure;

namespace ShopClass.Core.Sawing.Steps;

/// <summary>An instructor's own words in place of a technique note.</summary>
/// <param name="Key">Which note, a key of <see cref="Techniques.Usual"/>.</param>
/// <param name="Text">Their words.</param>
public sealed record TechniqueNote(string Key, string Text);

/// <summary>Technique notes in an instructor's own words.</summary>
public static class TechniqueNotes
{
    /// <summary>Most characters in a note: it has to fit a card.</summary>
    public const int LongestNote = 600;

    /// <summary>The keys in the order of the work, to show them in.</summary>
    public static IReadOnlyList<string> InOrderOfWork { get; } = [.. Techniques.Usual.Keys];

    /// <summary>The keys by the alphabet, as course files have them.</summary>
    public static IReadOnlyList<string> Keys { get; } =
    [.. Techniques.Usual.Keys.Order(StringComparer.Ordinal)];

    /// <summary>What a note is about, in words: "Wide crosscut".</summary>
    public static string Title(string key) =>
        string.Concat(
            key.Select((c, i) => i > 0 && char.IsUpper(c) ? $" {char.ToLowerInvariant(c)}" : $"{c}")
        );

    /// <summary>What is wrong with somebody's words for a note, as a sentence; null when nothing is. Empty words are right: the usual ones stand then.</summary>
    public static string? Problem(string key, string text) =>
        Techniques.Usual.ContainsKey(key)
            ? TypedText.NotesProblem(text, LongestNote)
            : "There is no technique note of that name.";

    /// <summary>
    /// The steps with these words in place of the usual ones. A step that was written with other words than today's usual
    /// ones keeps them.
    /// </summary>
    public static WorkSequence InOwnWords(WorkSequence work, IReadOnlyList<TechniqueNote> notes) =>
        notes.Count == 0
            ? work
            : work with
            {
                Steps =
                [
                    .. work.Steps.Select(s =>
                        s with
                        {
                            Technique = notes.Aggregate(s.Technique, Replaced),
                        }
                    ),
                ],
            };

    private static string Replaced(string technique, TechniqueNote note) =>
        Techniques.Usual.TryGetValue(note.Key, out var usual)
            ? technique.Replace(usual, note.Text, StringComparison.Ordinal)
            : technique;
}
