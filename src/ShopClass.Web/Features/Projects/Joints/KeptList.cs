using System.Data.Common;
using ShopClass.Data.Access;

namespace ShopClass.Web.Features.Projects.Joints;

/// <summary>How a short list is written and judged.</summary>
/// <param name="Put">Saves a line in the place of what it was, or at the end.</param>
/// <param name="Remove">Takes a line out.</param>
/// <param name="Check">What is wrong with a line, beside the others.</param>
/// <param name="Most">Most lines.</param>
public sealed record KeptBy<T>(
    Func<T?, T, Task<Outcome<T>>> Put,
    Func<T, Task<Outcome<bool>>> Remove,
    Func<T, IReadOnlyList<T>, IReadOnlyList<(string Field, string Sentence)>> Check,
    int Most
)
    where T : class;

/// <summary>
/// A short list of a project while somebody works on it. Each line is stored on its own as soon as it is complete and right.
/// </summary>
public sealed class KeptList<T, TRow>(KeptBy<T> keeper)
    where T : class
    where TRow : KeptDraft<T>, new()
{
    private readonly List<TRow> rows = [];
    private readonly HashSet<TRow> again = [];

    public IReadOnlyList<TRow> Rows => rows;

    public bool IsFull => rows.Count >= keeper.Most;

    /// <summary>The last thing that happened, for who cannot see it.</summary>
    public string Said { get; private set; } = "";

    /// <summary>Takes what is stored now; lines with something unsaved in them stay.</summary>
    public void Take(IReadOnlyList<T> stored)
    {
        TRow[] unsaved =
        [
            .. rows.Where(r => r.Stored is null && r.State is not RowState.ChangedElsewhere),
        ];
        rows.Clear();
        foreach (var item in stored)
        {
            var row = new TRow();
            row.ShowStored(item);
            rows.Add(row);
        }

        rows.AddRange(unsaved);
        Recheck();
    }

    /// <summary>Judges every stored line again, since the parts have changed.</summary>
    public void Recheck()
    {
        foreach (var row in rows.Where(r => r.Item is not null))
            row.TakeProblems(keeper.Check(row.Item!, Others(row)), show: true);
    }

    /// <summary>An empty line at the end; the unfinished one where there is one already.</summary>
    public TRow Add()
    {
        if (rows.Find(r => r.Stored is null) is { } unfinished)
            return unfinished;
        var row = new TRow();
        rows.Add(row);
        return row;
    }

    /// <summary>Something in a line was changed: checks it, and stores it where it is right.</summary>
    public async Task ChangedAsync(TRow row, string field)
    {
        row.Touch(field);
        Judge(row);
        if (row.State is RowState.ChangedElsewhere)
            return;
        if (row.State is RowState.Saving)
        {
            again.Add(row);
            return;
        }

        do await StoreAsync(row);
        while (again.Remove(row) && row.State is not RowState.ChangedElsewhere);
    }

    /// <summary>Takes a line out; says whether it is gone.</summary>
    public async Task<bool> RemoveAsync(TRow row)
    {
        if (row.Stored is { } stored && await keeper.Remove(stored) is { Problems: [var no, ..] })
        {
            row.TakeProblems([(no.Field, no.Sentence)], show: true);
            return false;
        }

        rows.Remove(row);
        Said = $"{row.Called} was taken out.";
        Recheck();
        return true;
    }

    /// <summary>Puts a line back at the end.</summary>
    public Task PutBackAsync(TRow row)
    {
        row.IsNotStored();
        rows.Add(row);
        Judge(row);
        return StoreAsync(row);
    }

    private void Judge(TRow row) =>
        row.TakeProblems(
            row.Item is { } item ? keeper.Check(item, Others(row)) : [],
            show: row.Item is not null
        );

    private async Task StoreAsync(TRow row)
    {
        if (!row.IsRight || row.Item is not { } item)
        {
            row.State = RowState.NotSaved;
            return;
        }

        row.State = RowState.Saving;
        try
        {
            Settle(row, await keeper.Put(row.Stored, item));
        }
        catch (Exception slip)
            when (slip is DbException or IOException || slip.InnerException is DbException)
        {
            row.State = RowState.Failed;
        }
    }

    private void Settle(TRow row, Outcome<T> outcome)
    {
        switch (outcome.Kind)
        {
            case OutcomeKind.Saved:
                row.IsStored(outcome.Value!);
                row.State = RowState.Saved;
                Said = $"{row.Called} saved.";
                Recheck();
                break;
            case OutcomeKind.Refused:
                row.TakeProblems(outcome.Problems.Select(p => (p.Field, p.Sentence)), show: true);
                row.State = RowState.NotSaved;
                break;
            default:
                row.State = RowState.ChangedElsewhere;
                break;
        }
    }

    private List<T> Others(TRow row) =>
        [.. rows.Where(r => r != row).Select(r => r.Stored).OfType<T>()];
}
