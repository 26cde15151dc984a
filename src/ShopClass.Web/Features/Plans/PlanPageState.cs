using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Alternatives;
using ShopClass.Core.Sawing;
using ShopClass.Data.Access;
using ShopClass.Data.Plans;

namespace ShopClass.Web.Features.Plans;

/// <summary>What the plan page shows, and whether a plan may be shown at all.</summary>
public sealed class PlanPageState
{
    /// <summary>What a plan would be asked now.</summary>
    public PlanningRequest? Request { get; private set; }

    /// <summary>
    /// The same, with what the plan on show puts first and its way of sizing: whoever chose that keeps it in the next plan.
    /// </summary>
    public PlanningRequest? RequestToMake =>
        RequestByTheCourse is { } request
        && Shown is { Checked: var shown }
        && shown.Request.Rules.LengthAllowance == Length.Zero
        && request.Boards.All(b => b.IsTrue)
            ? request.StraightToSize()
            : RequestByTheCourse;

    /// <summary>The same by the course's own allowances.</summary>
    public PlanningRequest? RequestByTheCourse =>
        Request is { } request && Shown is { } shown
            ? request with
            {
                Goals = shown.Checked.Request.Goals,
            }
            : Request;

    /// <summary>The stored plan on show; never one whose rehearsal did not pass.</summary>
    public StoredPlan? Shown { get; private set; }

    /// <summary>Why a plan that was made is not shown: what the rehearsal found, as sentences.</summary>
    public IReadOnlyList<string> Refusals { get; private set; } = [];

    /// <summary>A sentence when a plan could not be stored.</summary>
    public string? Trouble { get; private set; }

    public bool HasNoBoards => Request is { Boards.Count: 0 };

    public bool HasNoParts => Request is { Project.Parts.Count: 0 };

    public bool CanMake => Request is not null && !HasNoBoards && !HasNoParts;

    /// <summary>Whether the page makes a plan by itself: there is none yet and nothing has gone wrong.</summary>
    public bool ShouldMake => CanMake && Shown is null && Refusals.Count == 0 && Trouble is null;

    public void Found(PlanningRequest? request, StoredPlan? newest)
    {
        Request = request;
        Show(newest);
    }

    /// <summary>Takes in a plan that was made; whether it may be stored and shown.</summary>
    public bool Accepts(CheckedPlan made)
    {
        Trouble = null;
        Refusals = FindingsAgainst(made);
        return Refusals.Count == 0;
    }

    public void Take(Outcome<StoredPlan> outcome)
    {
        if (outcome.IsSaved)
            Show(outcome.Value);
        else
            Trouble = outcome.Problems is [var first, ..]
                ? first.Sentence
                : "The plan could not be saved. Open the page again to see how things stand.";
    }

    /// <summary>Whether the boards, the project or the settings changed while the plan was being made.</summary>
    public static bool IsOvertaken(Outcome<StoredPlan> outcome) =>
        outcome.Kind is OutcomeKind.ChangedMeanwhile
        || outcome.Problems.Any(p => p.Field == "Request");

    private void Show(StoredPlan? plan)
    {
        Shown = plan?.Checked.Rehearsal.Passed is true ? plan : null;
        if (plan is not null)
            Refusals = FindingsAgainst(plan.Checked);
    }

    private static IReadOnlyList<string> FindingsAgainst(CheckedPlan plan) =>
        [.. plan.Rehearsal.Findings.Where(f => f.Kind is FindingKind.Must).Select(f => f.Sentence)];
}
