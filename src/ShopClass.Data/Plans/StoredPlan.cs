using ShopClass.Core.Planning;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Data.Plans;

/// <summary>A stored plan: a snapshot of request and result that never changes.</summary>
/// <param name="Id">Its key.</param>
/// <param name="StudentId">Whose.</param>
/// <param name="ProjectId">For which project.</param>
/// <param name="Number">The plan version, from 1, for this student and project.</param>
/// <param name="MadeUtc">When it was made.</param>
/// <param name="Checked">The plan with its sequence, rehearsal and verdict.</param>
/// <param name="Work">Its steps, for the hand on the student's card when it was made.</param>
/// <param name="IsOutOfDate">Whether project, boards or rules have changed since.</param>
public sealed record StoredPlan(
    Guid Id,
    Guid StudentId,
    Guid ProjectId,
    int Number,
    DateTime MadeUtc,
    CheckedPlan Checked,
    WorkSequence Work,
    bool IsOutOfDate
);

/// <summary>One line of the class overview: a student and a project.</summary>
/// <param name="StudentId">Whose.</param>
/// <param name="ProjectId">For which project.</param>
/// <param name="Boards">Boards logged.</param>
/// <param name="PlanNumber">Newest plan version; null when none was made.</param>
/// <param name="IsOutOfDate">Whether that plan is out of date.</param>
/// <param name="IsComplete">Whether that plan yields every part and passed the rehearsal.</param>
/// <param name="Sentence">That plan's verdict in a sentence; empty when none was made.</param>
public sealed record PlanState(
    Guid StudentId,
    Guid ProjectId,
    int Boards,
    int? PlanNumber,
    bool IsOutOfDate,
    bool IsComplete,
    string Sentence
)
{
    /// <summary>That plan's key, for its page and its kit sheet; null when none was made.</summary>
    public Guid? PlanId { get; init; }

    /// <summary>When that plan was made; null when none was.</summary>
    public DateTime? PlanMadeUtc { get; init; }
}
