using System.Data.Common;
using ShopClass.Core.Courses;
using ShopClass.Core.Projects;
using ShopClass.Data.Access;
using ShopClass.Data.Projects;

namespace ShopClass.Web.Features.Projects;

/// <summary>
/// A project's parts list while somebody works on it. Each row is stored on its own as soon as it is complete and right;
/// a row that is not keeps what was typed.
/// </summary>
public sealed class ProjectEditor(
    ProjectStore store,
    Viewer viewer,
    CourseRules rules,
    ProjectView opened
)
{
    private readonly List<PartDraft> rows = [.. opened.Parts.Select(PartDraft.From)];
    private readonly HashSet<PartDraft> again = [];

    public CourseRules Rules => rules;

    public IReadOnlyList<PartDraft> Rows => rows;

    /// <summary>The last thing that happened to a row, for who cannot see it.</summary>
    public string Said { get; private set; } = "";

    /// <summary>The project as far as its rows are parts: those being typed are as they were last stored.</summary>
    public Project AsDrawn =>
        new()
        {
            Name = opened.Name,
            Parts = [.. rows.Select(r => r.ToPart() ?? r.Stored?.Part).OfType<Part>()],
            Joints = opened.Joints,
        };

    public bool IsFull => rows.Count >= PartChecks.MostParts;

    /// <summary>Rows not stored yet stand below the others: the store will put them there.</summary>
    private int StoredRows => rows.Count(r => r.Stored is not null);

    /// <summary>A row at the end with the next letter; the unfinished one where there is one already.</summary>
    public PartDraft Add()
    {
        if (rows.Find(r => r.Stored is null) is { } unfinished)
            return unfinished;

        var row = PartDraft.New(NextLetter());
        rows.Add(row);
        return row;
    }

    /// <summary>Something in a row was changed: checks it, and stores it where it is right.</summary>
    public async Task ChangedAsync(PartDraft row, string field)
    {
        row.Touch(field);
        row.Check(Others(row), rules);
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

    /// <summary>A copy at the end of the list, under the next letter.</summary>
    public async Task<PartDraft?> DuplicateAsync(PartDraft row)
    {
        if (row.ToPart() is not { } part || IsFull)
            return null;

        var copy = PartDraft.New(NextLetter());
        copy.Show(part with { Letter = copy.Letter });
        rows.Insert(StoredRows, copy);
        await StoreAsync(copy);
        return copy;
    }

    /// <summary>Takes a row out of the list; gives what <see cref="PutBackAsync"/> needs, or null when it could not.</summary>
    public async Task<RemovedRow?> RemoveAsync(PartDraft row)
    {
        var removed = new RemovedRow(row, rows.IndexOf(row));
        if (row.Stored is { } stored)
        {
            var outcome = await store.RemovePartAsync(viewer, opened.Id, stored.Id);
            if (outcome.Kind is OutcomeKind.Refused)
            {
                TakeRefusal(row, outcome.Problems);
                return null;
            }
        }

        rows.Remove(row);
        Said = $"{row.Called} was taken out.";
        return removed;
    }

    /// <summary>Puts a removed row back where it was.</summary>
    public async Task PutBackAsync(RemovedRow removed)
    {
        var (row, place) = removed;
        if (rows.Contains(row))
            return;

        var wasStored = row.Stored is not null;
        row.IsNotStored();
        rows.Insert(StoredRows, row);
        if (!wasStored)
            return;
        row.Check(Others(row), rules);
        await StoreAsync(row);
        while (row.Stored is not null && rows.IndexOf(row) > place)
            if (!await MoveAsync(row, -1))
                break;
        Said = $"{row.Called} is back.";
    }

    /// <summary>Moves a stored row one place up (-1) or down (+1).</summary>
    public async Task<bool> MoveAsync(PartDraft row, int by)
    {
        var from = rows.IndexOf(row);
        var to = from + by;
        if (row.Stored is not { } stored || to < 0 || to >= rows.Count || rows[to].Stored is null)
            return false;

        var outcome = await store.MovePartAsync(viewer, opened.Id, stored.Id, by);
        if (!outcome.IsSaved)
            return false;

        (rows[from], rows[to]) = (rows[to], rows[from]);
        Said = $"{row.Called} is now row {to + 1} of {rows.Count}.";
        return true;
    }

    /// <summary>Keeps what is in the fields, over what somebody else stored.</summary>
    public async Task KeepMineAsync(PartDraft row)
    {
        if (row.Theirs is { } theirs)
            row.IsStored(theirs);
        else
            row.IsNotStored();
        row.State = RowState.NotSaved;
        row.Check(Others(row), rules);
        await StoreAsync(row);
    }

    /// <summary>Takes what somebody else stored, or lets the row go that they removed.</summary>
    public void TakeTheirs(PartDraft row)
    {
        if (row.Theirs is { } theirs)
            row.Show(theirs);
        else
            rows.Remove(row);
    }

    /// <summary>Adds a pasted list, all of it or nothing; gives the sentences why not.</summary>
    public async Task<IReadOnlyList<string>> AddAllAsync(IReadOnlyList<Part> parts)
    {
        var outcome = await store.AddPartsAsync(viewer, opened.Id, parts);
        if (!outcome.IsSaved)
            return outcome.Problems.Count > 0
                ? [.. outcome.Problems.Select(p => p.Sentence)]
                : ["The project is not there any more; nothing was added."];

        var stored = outcome.Value!.Select(PartDraft.From).ToList();
        stored.ForEach(row => row.State = RowState.Saved);
        rows.InsertRange(StoredRows, stored);
        Said = $"{stored.Count} parts were added.";
        return [];
    }

    private async Task StoreAsync(PartDraft row)
    {
        if (row.ToPart() is not { } part)
        {
            row.State = RowState.NotSaved;
            return;
        }

        row.State = RowState.Saving;
        try
        {
            Settle(row, await WriteAsync(row, part));
        }
        catch (Exception slip)
            when (slip is DbException or IOException || slip.InnerException is DbException)
        {
            row.State = RowState.Failed;
        }
    }

    private async Task<Outcome<PartView>> WriteAsync(PartDraft row, Part part)
    {
        if (row.Stored is { } stored)
            return await store.SavePartAsync(viewer, opened.Id, stored.Id, part, stored.Version);

        var added = await store.AddPartsAsync(viewer, opened.Id, [part]);
        return new(
            added.Kind,
            added.Value?[0],
            [
                .. added.Problems.Select(p =>
                    p with
                    {
                        Field = p.Field.Replace("1.", "", StringComparison.Ordinal),
                    }
                ),
            ]
        );
    }

    private void Settle(PartDraft row, Outcome<PartView> outcome)
    {
        switch (outcome.Kind)
        {
            case OutcomeKind.Saved:
                Follow(row.Stored?.Part.Letter, outcome.Value!.Part.Letter);
                row.IsStored(outcome.Value);
                row.State = RowState.Saved;
                Said = $"{row.Called} saved.";
                break;
            case OutcomeKind.Refused:
                TakeRefusal(row, outcome.Problems);
                break;
            default:
                row.Theirs = outcome.Value;
                row.State = RowState.ChangedElsewhere;
                break;
        }
    }

    /// <summary>What is taken from a part follows it to its new letter, as it does in the store.</summary>
    private void Follow(string? from, string to)
    {
        if (from is null || from == to)
            return;
        foreach (var row in rows)
            row.Follow(from, to);
    }

    private static void TakeRefusal(PartDraft row, IEnumerable<FieldProblem> problems)
    {
        row.TakeProblems(problems.Select(p => (p.Field, p.Sentence)));
        row.State = RowState.NotSaved;
    }

    /// <summary>The other parts, as they are stored.</summary>
    public IReadOnlyList<Part> OthersOf(PartDraft row) => Others(row);

    private List<Part> Others(PartDraft row) =>
        [.. rows.Where(r => r != row).Select(r => r.Stored?.Part ?? r.ToPart()).OfType<Part>()];

    private string NextLetter() => PartLetters.Next(rows.Select(r => r.Letter));
}

/// <summary>A row taken out of the list, and where it stood.</summary>
public sealed record RemovedRow(PartDraft Row, int Place);
