using System.Globalization;
using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Data.Projects;

namespace ShopClass.Web.Features.Projects;

/// <summary>How a row of the parts list stands with the store.</summary>
public enum RowState
{
    /// <summary>As it was when the page was opened.</summary>
    AsOpened,

    /// <summary>Not stored: new, or with something to put right.</summary>
    NotSaved,

    Saving,

    Saved,

    /// <summary>Somebody else changed or removed it; waits for a choice.</summary>
    ChangedElsewhere,

    /// <summary>The store could not be reached.</summary>
    Failed,
}

/// <summary>
/// A row of the parts list while it is being edited. Holds what was typed even where that is no part yet; becomes a
/// <see cref="Part"/> once it is complete.
/// </summary>
public sealed class PartDraft
{
    private static readonly Length standIn = Core.Measure.Length.FromInches(1);
    private readonly HashSet<string> touched = [];
    private List<(string Field, string Sentence)> problems = [];

    /// <summary>Stays the same while the row is on the page.</summary>
    public string Key { get; } = Guid.NewGuid().ToString("N");

    /// <summary>What is stored, as last seen; null for a row not stored yet.</summary>
    public PartView? Stored { get; private set; }

    /// <summary>What somebody else stored meanwhile; null with <see cref="RowState.ChangedElsewhere"/> when they removed it.</summary>
    public PartView? Theirs { get; set; }

    public RowState State { get; set; }

    public string Letter { get; set; } = "";

    public string Name { get; set; } = "";

    public Length? Thickness { get; set; }

    public Length? Width { get; set; }

    public Length? Length { get; set; }

    public string Quantity { get; set; } = "1";

    public GrainDirection Grain { get; set; }

    public bool ShowFace { get; set; }

    public bool GlueUpAllowed { get; set; }

    public bool AcceptsHiddenDefect { get; set; }

    public ReferenceFace ReferenceFace { get; set; }

    public string JointNotes { get; set; } = "";

    public IReadOnlyList<OpenDraft> Open { get; } =
    [.. Enum.GetValues<PartDimension>().Select(d => new OpenDraft(d))];

    public bool IsDetailed { get; set; }

    /// <summary>"B, shelf", or what there is of it.</summary>
    public string Called =>
        (Letter.Trim(), Name.Trim()) switch
        {
            ("", "") => "new part",
            ("", var name) => name,
            (var letter, "") => letter,
            var (letter, name) => $"{letter}, {name}",
        };

    public bool IsRight => problems.Count == 0;

    /// <summary>What it still lacks, in words, for a row nobody has finished.</summary>
    public IReadOnlyList<string> Missing =>
        [.. problems.Where(p => !touched.Contains(p.Field)).Select(p => Said(p.Field)).Distinct()];

    public static PartDraft New(string letter) =>
        new() { Letter = letter, State = RowState.NotSaved };

    public static PartDraft From(PartView stored)
    {
        var draft = new PartDraft();
        draft.Show(stored);
        return draft;
    }

    /// <summary>Puts the stored row in the fields, over whatever was there.</summary>
    public void Show(PartView stored)
    {
        IsStored(stored);
        State = RowState.AsOpened;
        problems = [];
        touched.Clear();
        Show(stored.Part);
    }

    /// <summary>Puts a part in the fields.</summary>
    public void Show(Part part)
    {
        (Letter, Name, JointNotes) = (part.Letter, part.Name, part.JointNotes);
        var finished = part.Finished;
        (Thickness, Width, Length) = (finished.Thickness, finished.Width, finished.Length);
        Quantity = part.Quantity.ToString(CultureInfo.InvariantCulture);
        Grain = part.Grain;
        ShowFace = part.ShowFace;
        GlueUpAllowed = part.GlueUpAllowed;
        AcceptsHiddenDefect = part.AcceptsHiddenDefect;
        ReferenceFace = part.ReferenceFace;
        foreach (var open in Open)
            open.Take(part.Open.FirstOrDefault(o => o.Dimension == open.Dimension));
    }

    /// <summary>The row is now stored like this; what is in the fields stays.</summary>
    public void IsStored(PartView stored) => (Stored, Theirs) = (stored, null);

    /// <summary>Another part has got a new letter.</summary>
    public void Follow(string from, string to)
    {
        foreach (var open in Open)
            open.Follow(from, to);
        if (Stored is { } stored && stored.Part.Open.Any(o => o.Follow(from, to) != o))
            Stored = stored with
            {
                Part = stored.Part with
                {
                    Open = [.. stored.Part.Open.Select(o => o.Follow(from, to))],
                },
            };
    }

    /// <summary>The row is no longer stored.</summary>
    public void IsNotStored() => (Stored, Theirs, State) = (null, null, RowState.NotSaved);

    public void Touch(string field) => touched.Add(field);

    /// <summary>The sentence to show at a field: none before somebody has been there.</summary>
    public string? ProblemAt(string field) =>
        touched.Contains(field) ? problems.Find(p => p.Field == field).Sentence : null;

    public void Check(IReadOnlyList<Part> others, CourseRules rules)
    {
        List<(string Field, string Sentence)> unfinished = [.. Unfinished()];
        TakeProblems(
            PartChecks
                .ProblemsIn(Finished(), others, rules)
                .Concat(OpenCircles.ProblemsIn(Finished(), others))
                .Where(p => !unfinished.Exists(u => u.Field == p.Field))
        );
        problems = [.. unfinished, .. problems];
    }

    /// <summary>Problems with what was typed, said at their fields whether or not somebody was there.</summary>
    public void TakeProblems(IEnumerable<(string Field, string Sentence)> found)
    {
        problems = [.. found];
        touched.UnionWith(problems.Select(p => p.Field));
    }

    /// <summary>The part, where the row is complete and right.</summary>
    public Part? ToPart() => IsRight && !Unfinished().Any() ? Finished() : null;

    private IEnumerable<(string Field, string Sentence)> Unfinished()
    {
        if (Letter.Trim().Length == 0)
            yield return (nameof(Letter), "Give the part a letter.");
        if (Name.Trim().Length == 0)
            yield return (nameof(Name), "Give the part a name.");
        if (Thickness is null)
            yield return (nameof(Thickness), "Type the finished thickness.");
        if (Width is null)
            yield return (nameof(Width), "Type the finished width.");
        if (Length is null)
            yield return (nameof(Length), "Type the finished length.");
        if (ReadQuantity() is null)
            yield return (nameof(Quantity), "Type how many, as a whole number.");
        foreach (var open in Open)
            if (open.Problem is { } problem)
                yield return (open.Field, problem);
    }

    /// <summary>The part; where a field is not finished, an inch or a one stands in.</summary>
    private Part Finished() =>
        new()
        {
            Letter = Letter.Trim().ToUpperInvariant(),
            Name = Name.Trim(),
            Finished = new(Thickness ?? standIn, Width ?? standIn, Length ?? standIn),
            Quantity = ReadQuantity() ?? 1,
            Grain = Grain,
            ShowFace = ShowFace,
            GlueUpAllowed = GlueUpAllowed,
            AcceptsHiddenDefect = AcceptsHiddenDefect,
            ReferenceFace = ReferenceFace,
            JointNotes = JointNotes.Trim(),
            Open = [.. Open.Select(o => o.ToOpen()).OfType<OpenDimension>()],
        };

    private int? ReadQuantity() =>
        int.TryParse(Quantity, NumberStyles.Integer, CultureInfo.InvariantCulture, out var quantity)
            ? quantity
            : null;

    private static string Said(string field) =>
        field switch
        {
            nameof(Letter) => "a letter",
            nameof(Name) => "a name",
            nameof(Quantity) => "how many",
            nameof(Thickness) or nameof(Width) or nameof(Length) =>
                $"the {field.ToLowerInvariant()}",
            _ => "the “open until” line",
        };
}
