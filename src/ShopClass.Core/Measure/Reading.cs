namespace ShopClass.Core.Measure;

/// <summary>
/// What was read from something a person typed: a value, or the reason there is none, as a sentence to show beside
/// the field.
/// </summary>
/// <typeparam name="T">The kind of value asked for.</typeparam>
public readonly record struct Reading<T>
{
    private Reading(T? value, string? problem)
    {
        Value = value;
        Problem = problem;
    }

    /// <summary>The value; only meaningful when <see cref="IsRead"/>.</summary>
    public T? Value { get; }

    /// <summary>The sentence to show beside the field, or null when a value was read.</summary>
    public string? Problem { get; }

    /// <summary>Whether a value was read.</summary>
    public bool IsRead => Problem is null;

    /// <summary>A value that was read.</summary>
    public static Reading<T> Of(T value) => new(value, problem: null);

    /// <summary>No value, and why.</summary>
    public static Reading<T> Refused(string problem) => new(default, problem);
}
