using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Data.Access;
using ShopClass.Data.Students;

namespace ShopClass.Web.Features.Boards;

/// <summary>Logging a board: what is missing, what is wrong, what to ask before it is saved.</summary>
public sealed class BoardEditor(CourseRules rules, BoardDraft draft)
{
    private IReadOnlyList<FieldProblem> _refusals = [];

    public CourseRules Rules { get; } = rules;

    public BoardDraft Draft { get; private set; } = draft;

    public BadPlaces Places => new(this);

    /// <summary>Set once somebody has tried to save: from then on empty fields are pointed out too.</summary>
    public bool TriedToSave { get; private set; }

    /// <summary>The question to answer before this board can be saved, or null.</summary>
    public string? Question { get; private set; }

    /// <summary>What somebody else saved meanwhile, or null.</summary>
    public BoardView? ChangedMeanwhile { get; private set; }

    public bool IsGone { get; private set; }

    public static BoardEditor ForNew(CourseRules rules, int boardsAlready) =>
        new(
            rules,
            new BoardDraft
            {
                Name = $"Board {boardsAlready + 1}",
                TrimStart = rules.UsualEndTrim,
                TrimEnd = rules.UsualEndTrim,
            }
        );

    public static BoardEditor ForStored(CourseRules rules, BoardView stored) =>
        new(rules, BoardDraft.Of(stored.Board, stored.Version));

    /// <summary>The dressed size meant by the nominal figures that were typed, where they are such.</summary>
    public DressedSize? DressedInstead =>
        Draft is { Thickness: { } thickness, WidthAtStart: { } width }
            ? DressedSizes.TypedAsNominal(thickness, width)
            : null;

    /// <summary>The sentence to show at a field, or null.</summary>
    public string? ProblemAt(string field) =>
        Problems().FirstOrDefault(p => p.Field == field)?.Sentence;

    /// <summary>Everything that stands in the way of saving, in the order of the page.</summary>
    public IReadOnlyList<FieldProblem> Problems()
    {
        var missing = TriedToSave ? BoardGaps.In(Draft) : [];
        return [.. missing, .. WrongFields(), .. _refusals];
    }

    /// <summary>Something was typed: what the store said about the old entries no longer counts.</summary>
    public void Changed()
    {
        _refusals = [];
        Question = null;
        if (Draft.SameWidthAllAlong)
            Draft.WidthAtMiddle = Draft.WidthAtEnd = Draft.WidthAtStart;
    }

    /// <summary>The board to save, or null when there is something to put right or to answer first.</summary>
    public Board? BoardToSave()
    {
        TriedToSave = true;
        Changed();
        if (Problems().Count > 0 || BoardGaps.Filled(Draft) is not { } board)
            return null;
        Question = IsKnownToBeMeasured ? null : BoardChecks.NominalQuestion(board, Rules);
        return Question is null ? board : null;
    }

    /// <summary>Answers the question: the board was measured, and the figures stand.</summary>
    public void SayMeasured()
    {
        Draft.MeasuredThickness = Draft.Thickness;
        Draft.MeasuredWidth = Draft.WidthAtStart;
        Question = null;
    }

    /// <summary>Answers the question: the seller's name was typed; take the size it stands for.</summary>
    public void UseDressedSize()
    {
        if (DressedInstead is not { } dressed)
            return;
        Draft.Thickness = dressed.Thickness;
        Draft.WidthAtStart = dressed.Width;
        Draft.SameWidthAllAlong = true;
        Changed();
    }

    /// <summary>Takes in how the save ended; what was typed stays as it is.</summary>
    public void Take(Outcome<BoardView> outcome)
    {
        _refusals = outcome.Kind is OutcomeKind.Refused ? outcome.Problems : [];
        ChangedMeanwhile = outcome.Kind is OutcomeKind.ChangedMeanwhile ? outcome.Value : null;
        IsGone =
            outcome.Kind is OutcomeKind.NotFound
            || (outcome.Kind is OutcomeKind.ChangedMeanwhile && outcome.Value is null);
    }

    /// <summary>Keeps what is typed here, to be saved over what somebody else stored.</summary>
    public void KeepMine()
    {
        Draft.Version = ChangedMeanwhile?.Version;
        ChangedMeanwhile = null;
    }

    /// <summary>Drops what is typed here for what somebody else stored.</summary>
    public void TakeTheirs()
    {
        if (ChangedMeanwhile is { } theirs)
            Draft = BoardDraft.Of(theirs.Board, theirs.Version);
        ChangedMeanwhile = null;
        TriedToSave = false;
    }

    private bool IsKnownToBeMeasured =>
        Draft.MeasuredThickness is not null
        && Draft.MeasuredThickness == Draft.Thickness
        && Draft.MeasuredWidth == Draft.WidthAtStart;

    private IEnumerable<FieldProblem> WrongFields()
    {
        var gaps = BoardGaps.In(Draft).Select(g => g.Field).ToHashSet(StringComparer.Ordinal);
        return BoardChecks
            .ProblemsIn(BoardGaps.Bridged(Draft, Rules), Rules)
            .Where(p => !gaps.Contains(p.Field) && !RestsOnAGap(p.Field, gaps))
            .Select(p => new FieldProblem(p.Field, p.Sentence));
    }

    /// <summary>A place can only be judged against a board whose size is known.</summary>
    private static bool RestsOnAGap(string field, HashSet<string> gaps) =>
        (
            field.StartsWith("Defects", StringComparison.Ordinal)
            || field.StartsWith("Trim", StringComparison.Ordinal)
        ) && gaps.Overlaps(["Length", "WidthAtStart", "WidthAtMiddle", "WidthAtEnd"])
        || (
            field.StartsWith("Defects[", StringComparison.Ordinal)
            && gaps.Any(g => g.StartsWith(field.Split('.')[0], StringComparison.Ordinal))
        );
}
