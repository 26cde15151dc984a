using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning.Search;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning.Guide;

/// <summary>Finds how short boards of one width may be.</summary>
/// <remarks>
/// Whatever fits on a board fits on a longer one, so the length is found by halving, to the course's precision. A trial
/// whose steps run out counts as not fitting: then a shorter board may do, never a longer one be needed.
/// </remarks>
internal sealed class LengthSearch(Project parts, CourseRules rules, CancellationToken cancel)
{
    /// <summary>Steps each trial may take.</summary>
    private const int TrialSteps = 2_000;

    /// <summary>Steps the plan that is shown may take.</summary>
    private const int PlanSteps = 5_000;

    private readonly Length step = rules.Precision.Step();
    private readonly Length longest = SellerSizes.LengthsFor(rules.Unit)[^1];

    /// <summary>The plan on the shortest boards of this section found, or null when not even the longest sold do.</summary>
    /// <param name="thickness">Their thickness on the bench.</param>
    /// <param name="width">Their width.</param>
    /// <param name="count">How many.</param>
    /// <param name="known">A length already known to do, if any.</param>
    public CheckedPlan? Shortest(Length thickness, Length width, int count, Length? known)
    {
        PlanningRequest At(Length length, int steps) =>
            new()
            {
                Project = parts,
                Rules = rules,
                Boards = TrialBoards.Equal(
                    count,
                    TrialBoards.Of(thickness, width, length),
                    rules.UsualEndTrim
                ),
                StepLimit = steps,
            };
        bool Fits(Length length) => FitSearch.Fits(At(length, TrialSteps));

        var start = new[] { known, longest }.OfType<Length>().Where(Fits).Take(1).ToList();
        if (start.Count == 0)
            return null;
        var shortest = Halve(start[0], Fits);
        // The plan is made afresh and rehearsed; should its search miss what the trial found, the board grows until it
        // does not.
        while (shortest <= longest)
        {
            cancel.ThrowIfCancellationRequested();
            var plan = CheckedPlan.Make(At(shortest, PlanSteps), cancel: cancel);
            cancel.ThrowIfCancellationRequested();
            if (plan.Plan.IsComplete && plan.Rehearsal.Passed)
                return plan;
            shortest += step;
        }

        return null;
    }

    /// <summary>Whether it is proven that boards one step shorter than this plan's do not yield the parts.</summary>
    public bool NoShorterDoes(CheckedPlan plan)
    {
        cancel.ThrowIfCancellationRequested();
        var request = plan.Request with
        {
            Boards = [.. plan.Request.Boards.Select(b => b with { Length = b.Length - step })],
        };
        return Planner.Plan(request, cancel: cancel).IsProvenImpossible;
    }

    private Length Halve(Length does, Func<Length, bool> fits)
    {
        var high = does.RoundDownTo(step).Ticks / step.Ticks;
        var low = 0L;
        while (high - low > 1)
        {
            cancel.ThrowIfCancellationRequested();
            var middle = (low + high) / 2;
            if (fits(step * middle))
                high = middle;
            else
                low = middle;
        }

        return step * high;
    }
}
