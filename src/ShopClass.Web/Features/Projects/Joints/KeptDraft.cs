namespace ShopClass.Web.Features.Projects.Joints;

/// <summary>
/// A line of a short list while it is being edited. Holds what was typed even where that is not finished; becomes what is
/// kept once it is complete.
/// </summary>
public abstract class KeptDraft<T>
    where T : class
{
    private readonly HashSet<string> touched = [];
    private List<(string Field, string Sentence)> problems = [];

    /// <summary>Stays the same while the line is on the page.</summary>
    public string Key { get; } = Guid.NewGuid().ToString("N");

    /// <summary>What is stored, as last seen; null for a line not stored yet.</summary>
    public T? Stored { get; private set; }

    public RowState State { get; set; } = RowState.NotSaved;

    /// <summary>What it is called in a sentence.</summary>
    public abstract string Called { get; }

    /// <summary>What is kept, where the line is finished; it may still be wrong.</summary>
    public T? Item => Unfinished().Any() ? null : Finished();

    public bool IsRight => problems.Count == 0;

    public bool HasProblem => problems.Exists(p => touched.Contains(p.Field));

    /// <summary>What it still lacks, in words.</summary>
    public IReadOnlyList<string> Missing =>
        [.. Unfinished().Where(p => !touched.Contains(p.Field)).Select(p => p.Lacks).Distinct()];

    /// <summary>The sentence to show at a field: none before somebody has been there.</summary>
    public string? ProblemAt(string field) =>
        touched.Contains(field) ? problems.Find(p => p.Field == field).Sentence : null;

    /// <summary>Puts what is stored in the fields, over whatever was there.</summary>
    public void ShowStored(T stored)
    {
        IsStored(stored);
        State = RowState.AsOpened;
        problems = [];
        touched.Clear();
        Show(stored);
    }

    public void IsStored(T stored) => Stored = stored;

    public void IsNotStored() => (Stored, State) = (null, RowState.NotSaved);

    public void Touch(string field) => touched.Add(field);

    /// <summary>Takes what checks and unfinished fields say; those somebody was at are shown.</summary>
    public void TakeProblems(IEnumerable<(string Field, string Sentence)> found, bool show)
    {
        (string Field, string Sentence)[] checkedNow = [.. found];
        problems = [.. Unfinished().Select(u => (u.Field, u.Sentence)), .. checkedNow];
        if (show)
            touched.UnionWith(checkedNow.Select(p => p.Field));
    }

    /// <summary>What is not typed yet: the field, the sentence at it, and what is lacking in a word or two.</summary>
    protected abstract IEnumerable<(string Field, string Sentence, string Lacks)> Unfinished();

    protected abstract T Finished();

    protected abstract void Show(T item);
}
