using ShopClass.Core.Planning;
using ShopClass.Data.Access;
using ShopClass.Data.Plans;
using ShopClass.Data.Students;
using ShopClass.Web.Features.Shell;

namespace ShopClass.Web.Features.Courses;

/// <summary>
/// Makes the missing plans of a class, one student after another. Each is stored before the next begins, so that
/// stopping half-way loses nothing.
/// </summary>
public sealed class ClassPlanning(PlanStore plans, Viewer viewer)
{
    /// <summary>Why a student got no plan, one sentence each.</summary>
    public IReadOnlyList<string> Problems => problems;

    public int Total { get; private set; }

    public int Done { get; private set; }

    private readonly List<string> problems = [];

    public async Task RunAsync(
        IReadOnlyList<(StudentView Student, PlanState State)> waiting,
        Func<Task> onProgress,
        CancellationToken cancel
    )
    {
        Total = waiting.Count;
        foreach (var (student, state) in waiting)
        {
            if (cancel.IsCancellationRequested)
                return;
            var sentences = await PlanOneAsync(state, cancel);
            problems.AddRange(sentences.Select(s => $"{student.Shown}: {s}"));
            Done++;
            await onProgress();
        }
    }

    private async Task<IReadOnlyList<string>> PlanOneAsync(
        PlanState state,
        CancellationToken cancel
    )
    {
        if (
            await plans.RequestAsync(viewer, state.StudentId, state.ProjectId, cancel)
            is not { } request
        )
            return ["This student or project is no longer there."];
        var plan = await Task.Run(() => CheckedPlan.Make(request, progress: null, cancel), cancel);
        var saved = await plans.SaveAsync(viewer, state.StudentId, state.ProjectId, plan, cancel);
        return saved.Sentences();
    }
}
