using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Alternatives;

/// <summary>
/// Two ways to size blanks from boards that are true already: oversize for the habit, as the course does it, or straight to
/// the finished length, each crosscut sawn once to a knife line.
/// </summary>
/// <remarks>
/// Widths are alike in both: a ripped edge is planed, so it keeps its allowance, and a blank between two straight edges of its
/// board needs none.
/// </remarks>
/// <param name="Oversize">By the course's length allowance.</param>
/// <param name="Straight">Without it.</param>
public sealed record SizingPair(CheckedPlan Oversize, CheckedPlan Straight);

/// <summary>Whether and how blanks may be sawn straight to size.</summary>
public static class Sizing
{
    /// <summary>The same request for blanks without a length allowance.</summary>
    public static PlanningRequest StraightToSize(this PlanningRequest request) =>
        request with
        {
            Rules = request.Rules with { LengthAllowance = Length.Zero },
        };

    /// <summary>Whether all boards a plan cuts are true already.</summary>
    public static bool IsOnTrueBoards(CheckedPlan made) =>
        made.Plan.Boards.Count > 0
        && made.Plan.Boards.All(l => made.Request.Boards.First(b => b.Id == l.BoardId).IsTrue);

    /// <summary>Which of the two a plan on true boards is, for people; null for one on other boards.</summary>
    public static string? Sentence(CheckedPlan made)
    {
        if (!IsOnTrueBoards(made))
            return null;
        var rules = made.Request.Rules;
        return rules.LengthAllowance == Length.Zero
            ? "The boards are true already, and blanks are sawn straight to finished length: every crosscut to a knife line, second class."
            : $"The boards are true already. Blanks are sawn {Reasons.Say.Length(made.Request, rules.LengthAllowance)} over in length all the same: for the habit, and for boards that are not.";
    }

    /// <summary>
    /// Both ways, whole and rehearsed; null where the course leaves no length allowance anyhow, where a board that is cut is
    /// not true, or where one of the ways finds no whole plan.
    /// </summary>
    /// <param name="request">What is asked by the course's own rules.</param>
    /// <param name="progress">Told of better plans.</param>
    /// <param name="cancel">Stops the search.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static SizingPair? Pair(
        PlanningRequest request,
        IProgress<PlanProgress>? progress = null,
        CancellationToken cancel = default
    )
    {
        if (request.Rules.LengthAllowance == Length.Zero)
            return null;
        var over = CheckedPlan.Make(request, progress, cancel);
        cancel.ThrowIfCancellationRequested();
        var straight = CheckedPlan.Make(request.StraightToSize(), progress, cancel);
        cancel.ThrowIfCancellationRequested();
        return IsGood(over) && IsGood(straight) ? new(over, straight) : null;
    }

    private static bool IsGood(CheckedPlan made) =>
        made.Plan.IsComplete && made.Rehearsal.Passed && IsOnTrueBoards(made);
}
