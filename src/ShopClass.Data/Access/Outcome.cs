namespace ShopClass.Data.Access;

/// <summary>What is wrong with one field, as a sentence to show beside it.</summary>
/// <param name="Field">The field's name; empty when it is about the whole.</param>
/// <param name="Sentence">What is wrong and what is expected.</param>
public sealed record FieldProblem(string Field, string Sentence);

/// <summary>How a write ended. When it is <see cref="OutcomeKind.Saved"/> it is on disk.</summary>
public enum OutcomeKind
{
    /// <summary>Written, durably.</summary>
    Saved,

    /// <summary>Somebody else changed it since it was read; nothing was written.</summary>
    ChangedMeanwhile,

    /// <summary>Something in it is not right; nothing was written.</summary>
    Refused,

    /// <summary>It does not exist for this viewer.</summary>
    NotFound,
}

/// <summary>The outcome of a write, with what was written or why it was not.</summary>
/// <typeparam name="T">What a successful write gives back.</typeparam>
/// <param name="Kind">How it ended.</param>
/// <param name="Value">What was written, or for <see cref="OutcomeKind.ChangedMeanwhile"/> what is stored now.</param>
/// <param name="Problems">Why it was refused.</param>
public sealed record Outcome<T>(OutcomeKind Kind, T? Value, IReadOnlyList<FieldProblem> Problems)
{
    /// <summary>Whether it is on disk.</summary>
    public bool IsSaved => Kind is OutcomeKind.Saved;

    /// <summary>Written.</summary>
    public static Outcome<T> Saved(T value) => new(OutcomeKind.Saved, value, []);

    /// <summary>Changed by somebody else; carries what is stored now.</summary>
    public static Outcome<T> ChangedMeanwhile(T? stored) =>
        new(OutcomeKind.ChangedMeanwhile, stored, []);

    /// <summary>Refused for these reasons.</summary>
    public static Outcome<T> Refused(params IReadOnlyList<FieldProblem> problems) =>
        new(OutcomeKind.Refused, default, problems);

    /// <summary>Not there for this viewer.</summary>
    public static Outcome<T> NotFound() => new(OutcomeKind.NotFound, default, []);
}
