using ShopClass.Core.Courses;
using ShopClass.Core.Paces;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Remakes;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons;

/// <summary>A project that can be made from what is left of a student's own board.</summary>
/// <param name="Project">The project.</param>
/// <param name="Plan">How: planned, and agreed to by the rehearsal.</param>
public sealed record Filler(Project Project, CheckedPlan Plan)
{
    /// <summary>About how many minutes of work it is.</summary>
    /// <param name="pace">The student's pace.</param>
    /// <param name="hand">Their hand.</param>
    public int Minutes(StepPace pace, Hand hand)
    {
        var work = pace.Of(WorkWriter.Write(Plan, hand), Plan.Request.Boards);
        return (int)((work.Steps.Sum(s => (long)s.Time.Busy) + 59) / 60);
    }
}

/// <summary>What a student who is ahead can make from their own offcut.</summary>
public static class Fillers
{
    /// <summary>Those of the projects that the offcuts of a plan yield whole, in the order they are given.</summary>
    /// <param name="plan">The student's plan, all sawn.</param>
    /// <param name="projects">The course's projects.</param>
    /// <param name="rules">The course's rules.</param>
    /// <param name="cancel">Gives up.</param>
    public static IReadOnlyList<Filler> Of(
        CheckedPlan plan,
        IEnumerable<Project> projects,
        CourseRules rules,
        CancellationToken cancel = default
    )
    {
        var offcuts = LeftBoards.OffcutsOf(plan);
        if (offcuts.Count == 0)
            return [];
        List<Filler> found = [];
        foreach (var project in projects.Where(p => p.Parts.Any(x => x.Quantity > 0)))
        {
            var asked = new PlanningRequest
            {
                Rules = rules,
                Project = project,
                Boards = offcuts,
            };
            var made = CheckedPlan.Make(asked, progress: null, cancel);
            if (made.Plan.IsComplete && made.Rehearsal.Passed)
                found.Add(new(project, made));
        }

        return found;
    }
}
