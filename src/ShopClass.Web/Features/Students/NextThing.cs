namespace ShopClass.Web.Features.Students;

/// <summary>The one thing for a student to do next.</summary>
/// <param name="Says">What and why, in a sentence.</param>
/// <param name="Button">What the button says; null when there is nothing to do but wait.</param>
/// <param name="Href">Where it leads.</param>
public sealed record NextThing(string Says, string? Button, string? Href)
{
    public static NextThing For(StudentWork work, Guid courseId, Guid studentId)
    {
        if (work.Project is not { } project)
            return new("Your instructor has not set a project yet.", null, null);
        var place = $"/courses/{courseId}/students/{studentId}/projects/{project.Id}";
        if (work.Boards.Count == 0)
            return new(
                "Measure the board you brought and log it.",
                "Log your board",
                $"/my/board/new/{project.Id}/length"
            );
        if (!work.HasSomethingToJudge)
            return new("Your board is logged. The project has no parts yet.", null, null);
        if (work.Plan is null)
            return new(
                "Your board is logged. See how the parts lie on it.",
                "Make your plan",
                $"{place}/plan"
            );
        if (work.Plan.IsOutOfDate)
            return new(
                "Something has changed since your plan was made. If you have not begun sawing, make a new one.",
                "Look at your plan",
                $"{place}/plan"
            );
        return work.Plan.Checked.Plan.IsComplete
            ? new(
                "Your plan is ready. Ask your instructor to look at the board, then take the first step.",
                "Go to your first step",
                $"{place}/plan#step-by-step"
            )
            : new(
                "Your board does not yield every part. Talk to your instructor before you saw.",
                "Look at your plan",
                $"{place}/plan"
            );
    }
}
