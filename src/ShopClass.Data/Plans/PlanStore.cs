using ShopClass.Core.Planning;
using ShopClass.Data.Access;

namespace ShopClass.Data.Plans;

/// <summary>A stored plan: a snapshot of request and result that never changes.</summary>
/// <param name="Id">Its key.</param>
/// <param name="StudentId">Whose.</param>
/// <param name="ProjectId">For which project.</param>
/// <param name="Number">The plan version, from 1, for this student and project.</param>
/// <param name="MadeUtc">When it was made.</param>
/// <param name="Checked">The plan with its sequence, rehearsal and verdict.</param>
/// <param name="IsOutOfDate">Whether project, boards or rules have changed since.</param>
public sealed record StoredPlan(
    Guid Id,
    Guid StudentId,
    Guid ProjectId,
    int Number,
    DateTime MadeUtc,
    CheckedPlan Checked,
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
);

/// <summary>Plans as versioned snapshots.</summary>
public sealed class PlanStore
{
    /// <summary>What a plan for this student and project would be asked now; null when either is not the viewer's.</summary>
    public Task<PlanningRequest?> RequestAsync(
        Viewer viewer,
        Guid studentId,
        Guid projectId,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    /// <summary>The newest plan, or null.</summary>
    public Task<StoredPlan?> NewestAsync(
        Viewer viewer,
        Guid studentId,
        Guid projectId,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    /// <summary>One plan version, or null.</summary>
    public Task<StoredPlan?> FindAsync(
        Viewer viewer,
        Guid planId,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    /// <summary>
    /// Stores a plan as the next version. Refuses one whose rehearsal did not pass, and one made for a request that is
    /// no longer what is stored (field "Request"). The same plan again gives back the version that is there.
    /// </summary>
    public Task<Outcome<StoredPlan>> SaveAsync(
        Viewer viewer,
        Guid studentId,
        Guid projectId,
        CheckedPlan plan,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();

    /// <summary>The state of every student of a course on every project.</summary>
    public Task<IReadOnlyList<PlanState>> StatesAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    ) => throw new NotImplementedException();
}
