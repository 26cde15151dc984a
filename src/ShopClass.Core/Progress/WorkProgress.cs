using ShopClass.Core.Measure;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Progress;

/// <summary>How a check stands.</summary>
public enum CheckState
{
    /// <summary>None was asked for.</summary>
    None,

    /// <summary>Asked for, not looked at yet.</summary>
    Waiting,

    /// <summary>Looked at, and good.</summary>
    Passed,

    /// <summary>Looked at, and not good yet.</summary>
    SentBack,
}

/// <summary>A measured size of a piece.</summary>
/// <param name="Piece">The piece, as written on the wood.</param>
/// <param name="Size">What was measured.</param>
public sealed record SizeLogged(string Piece, Length Size);

/// <summary>How one step stands.</summary>
/// <param name="Step">The step.</param>
/// <param name="IsDone">Whether it is ticked or checked off.</param>
/// <param name="Check">How its check stands.</param>
/// <param name="Fault">What was wrong when it was last sent back; empty otherwise.</param>
/// <param name="NeedsHelp">Whether help is wanted here.</param>
/// <param name="Spoiled">Pieces said to be spoiled here and not settled.</param>
/// <param name="Sizes">The last size measured of each piece, in the order of first measuring.</param>
/// <param name="Notes">Notes, oldest first.</param>
public sealed record StepState(
    Step Step,
    bool IsDone,
    CheckState Check,
    string Fault,
    bool NeedsHelp,
    IReadOnlyList<string> Spoiled,
    IReadOnlyList<SizeLogged> Sizes,
    IReadOnlyList<string> Notes
)
{
    /// <summary>Whole minutes it took, as said with the last tick that said any; null where none did.</summary>
    public int? Minutes { get; init; }

    internal static StepState Untouched(Step step) =>
        new(step, false, CheckState.None, "", false, [], [], []);

    internal StepState After(StepAction action) =>
        action.Kind switch
        {
            StepActionKind.Tick => this with { IsDone = true, Minutes = action.Minutes ?? Minutes },
            StepActionKind.Untick => this with { IsDone = false, Minutes = null },
            StepActionKind.Measured => this with { Sizes = WithSize(action) },
            StepActionKind.Note => this with { Notes = [.. Notes, action.Text] },
            StepActionKind.PleaseCheck => this with { Check = CheckState.Waiting },
            StepActionKind.CheckedOff => this with
            {
                IsDone = true,
                Check = CheckState.Passed,
                Fault = "",
            },
            StepActionKind.SentBack => this with
            {
                Check = CheckState.SentBack,
                Fault = action.Text,
            },
            StepActionKind.NeedHelp => this with { NeedsHelp = true },
            StepActionKind.HelpOver or StepActionKind.Helped => this with { NeedsHelp = false },
            StepActionKind.Spoiled => this with
            {
                Spoiled = [.. Spoiled.Where(p => p != action.Text), action.Text],
            },
            StepActionKind.Settled => this with
            {
                Spoiled = [.. Spoiled.Where(p => p != action.Text)],
            },
            _ => throw new ArgumentOutOfRangeException(nameof(action), action.Kind, null),
        };

    private List<SizeLogged> WithSize(StepAction action)
    {
        var logged = Sizes.ToList();
        var size = new SizeLogged(action.Text, action.Size ?? Length.Zero);
        var at = logged.FindIndex(s => s.Piece == action.Text);
        if (at < 0)
            logged.Add(size);
        else
            logged[at] = size;
        return logged;
    }
}

/// <summary>How all steps of one plan stand: what follows from everything said about them.</summary>
public sealed class WorkProgress
{
    private readonly Dictionary<string, int> place;

    private WorkProgress(IReadOnlyList<StepState> steps)
    {
        Steps = steps;
        place = steps.Select((s, i) => (s.Step.Id, i)).ToDictionary(s => s.Id, s => s.i);
    }

    /// <summary>The steps, in order.</summary>
    public IReadOnlyList<StepState> Steps { get; }

    /// <summary>How many are done.</summary>
    public int Done => Steps.Count(s => s.IsDone);

    /// <summary>The first that is open and may be begun; null when all are done.</summary>
    public StepState? Next => Steps.FirstOrDefault(s => !s.IsDone && OpenBefore(s.Step).Count == 0);

    /// <summary>The first of these that is open and may be begun; where none is, the first of all.</summary>
    /// <param name="ids">Steps that come before the others, as those of today's lesson do.</param>
    public StepState? NextOf(IReadOnlyCollection<string> ids) =>
        Steps.FirstOrDefault(s =>
            !s.IsDone && ids.Contains(s.Step.Id) && OpenBefore(s.Step).Count == 0
        ) ?? Next;

    /// <summary>What will be next once this one is done too; null when nothing is left.</summary>
    /// <param name="done">The step that will be done.</param>
    /// <param name="ids">Steps that come before the others; null where none do.</param>
    public StepState? NextOnce(Step done, IReadOnlyCollection<string>? ids = null)
    {
        return (
                ids is null ? null : Steps.FirstOrDefault(s => ids.Contains(s.Step.Id) && IsNext(s))
            ) ?? Steps.FirstOrDefault(IsNext);

        bool IsNext(StepState s) =>
            !s.IsDone
            && s.Step.Number != done.Number
            && OpenBefore(s.Step).All(o => o.Step.Number == done.Number);
    }

    /// <summary>Works out how the steps stand. What is said about steps that are not there is left out.</summary>
    /// <param name="steps">The steps, numbered from 1.</param>
    /// <param name="actions">Everything said, oldest first.</param>
    public static WorkProgress Of(IReadOnlyList<Step> steps, IEnumerable<StepAction> actions)
    {
        StepState[] states = [.. steps.Select(StepState.Untouched)];
        var progress = new WorkProgress(states);
        foreach (var action in actions)
        {
            if (progress.place.TryGetValue(action.StepId, out var at))
                states[at] = states[at].After(action);
        }

        return progress;
    }

    /// <summary>One step's state, or null when there is no such step.</summary>
    public StepState? Find(string stepId) =>
        place.TryGetValue(stepId, out var at) ? Steps[at] : null;

    /// <summary>The steps that must be done before this one and are not.</summary>
    public IReadOnlyList<StepState> OpenBefore(Step step) =>
        [.. step.After.Select(number => Steps[number - 1]).Where(s => !s.IsDone)];

    /// <summary>The done steps that could not have been begun without this one.</summary>
    public IReadOnlyList<StepState> DoneAfter(Step step) =>
        [.. Steps.Where(s => s.IsDone && s.Step.After.Contains(step.Number))];
}
