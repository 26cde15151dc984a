using ShopClass.Data.Access;

namespace ShopClass.Data.Progress;

/// <summary>What the students of a course have ticked of a project, for the sheet on the wall.</summary>
public static class TickedSteps
{
    /// <summary>Ids of the steps done, or no longer needed after a remake, by student; students with none of either are left out. Empty for anybody but the instructor.</summary>
    public static async Task<IReadOnlyDictionary<string, IReadOnlySet<string>>> OfAsync(
        ProgressStore progress,
        Viewer viewer,
        Guid courseId,
        Guid projectId,
        CancellationToken cancel = default
    ) =>
        (await progress.RoomAsync(viewer, courseId, cancel))
            .Where(s => s.InHand is { Progress.Done: > 0 } work && work.Plan.ProjectId == projectId)
            .ToDictionary(
                s => s.StudentId.ToString(),
                IReadOnlySet<string> (s) =>
                    s.InHand!.Progress.Steps.Where(x => x.IsDone)
                        .Select(x => x.Step.Id)
                        .ToHashSet(StringComparer.Ordinal),
                StringComparer.Ordinal
            );
}
