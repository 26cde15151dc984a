using System.Globalization;
using Google.OrTools.Sat;
using ShopClass.Core.Lessons;

namespace ShopClass.Scheduling;

/// <summary>
/// Makes a plan of lessons better with a general solver (CP-SAT of Google OR-Tools). It works by count of steps on one
/// thread with fixed seeds, never by the clock, so that the same plan comes out every time.
/// </summary>
public static class LessonImprover
{
    private const int Rounds = 4;

    // In the solver's own count of work; docs/performance.md has the seconds.
    private const double EffortForEachStudent = 0.006;

    /// <summary>The rule's plan for a request, made better.</summary>
    /// <param name="request">What is asked.</param>
    /// <param name="progress">Hears how far it is, in hundredths.</param>
    /// <param name="cancel">Stops the work between two rounds.</param>
    public static LessonPlan Plan(
        LessonRequest request,
        IProgress<int>? progress = null,
        CancellationToken cancel = default
    )
    {
        var plan = LessonPlanner.Plan(request, progress: null, cancel);
        progress?.Report(100 / (Rounds + 1));
        return Improve(request, plan, progress, cancel);
    }

    /// <summary>A plan made better; itself where nothing better is found.</summary>
    public static LessonPlan Improve(
        LessonRequest request,
        LessonPlan plan,
        IProgress<int>? progress = null,
        CancellationToken cancel = default
    )
    {
        var turns = TurnMaker.Of(request.Students);
        if (turns.Count == 0 || request.Lessons.Count == 0)
            return plan;
        var effort = EffortForEachStudent * request.Students.Count;
        for (var round = 1; round <= Rounds; round++)
        {
            cancel.ThrowIfCancellationRequested();
            var (better, isBest) = Round(request, plan, turns, effort, round);
            plan = better;
            progress?.Report((round + 1) * 100 / (Rounds + 1));
            if (isBest)
                break;
        }

        return plan;
    }

    private static (LessonPlan Plan, bool IsBest) Round(
        LessonRequest request,
        LessonPlan plan,
        IReadOnlyList<TurnToPlace> turns,
        double effort,
        int seed
    )
    {
        var axis = new Axis(request);
        var model = new ClassModel(axis, plan, turns);
        using var solver = new CpSolver
        {
            StringParameters = string.Create(
                CultureInfo.InvariantCulture,
                $"num_workers:1 interleave_search:true random_seed:{seed} max_deterministic_time:{effort}"
            ),
        };
        var status = solver.Solve(model.Model);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
            return (plan, false);
        var read = Read(request, plan, turns, axis, t => model.StartOf(t, solver));
        return (read.Score < plan.Score ? read : plan, status is CpSolverStatus.Optimal);
    }

    private static LessonPlan Read(
        LessonRequest request,
        LessonPlan plan,
        IReadOnlyList<TurnToPlace> turns,
        Axis axis,
        Func<int, long?> startOf
    )
    {
        var timed = turns.Select((t, i) => (t.Turn, Start: startOf(i))).ToList();
        List<LessonProgram> programs =
        [
            .. Enumerable
                .Range(0, axis.Lessons)
                .Select(l => new LessonProgram(
                    plan.Lessons[l].Showings,
                    Places.Give(
                        timed
                            .Where(t => t.Start is { } at && axis.LessonAt(at) == l)
                            .Select(t => (t.Turn, (int)(t.Start!.Value - axis.Begins[l]))),
                        request.StationsIn(l)
                    )
                )),
        ];
        List<Turn> left = [.. timed.Where(t => t.Start is null).Select(t => t.Turn)];
        return new(programs, left, Scoring.Of(request, programs, left), plan.LeastLeft);
    }
}
