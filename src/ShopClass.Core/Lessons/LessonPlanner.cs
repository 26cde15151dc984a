using ShopClass.Core.Lessons.Filling;

namespace ShopClass.Core.Lessons;

/// <summary>
/// Puts every student's steps into lessons by a rule: run the lessons through, give each place to whoever has the best claim
/// to it, and keep the best of several ways of settling claims. Same request, same plan.
/// </summary>
public static class LessonPlanner
{
    /// <summary>How many mixed orders are tried after the plain ones.</summary>
    private const int MixedOrders = 36;

    /// <summary>A plan. Whatever stands in its way is in <see cref="LessonChecks.Obstacles"/>; the rest is planned.</summary>
    /// <param name="request">What is asked.</param>
    /// <param name="progress">Hears how far it is, in hundredths.</param>
    /// <param name="cancel">Stops the work.</param>
    public static LessonPlan Plan(
        LessonRequest request,
        IProgress<int>? progress = null,
        CancellationToken cancel = default
    ) => Plan(new Roster(request, TurnMaker.Of(request.Students)), MixedOrders, progress, cancel);

    /// <summary>A quick plan for turns made elsewhere: the plain orders only.</summary>
    internal static LessonPlan Quick(LessonRequest request, IReadOnlyList<TurnToPlace> turns) =>
        Plan(new Roster(request, turns), 0, progress: null, CancellationToken.None);

    private static LessonPlan Plan(
        Roster roster,
        int mixed,
        IProgress<int>? progress,
        CancellationToken cancel
    )
    {
        LessonPlan? best = null;
        var leastLeft = LessonBounds.LeastLeft(roster.Request, roster.Turns);
        var habits = Habit.Several(mixed).ToList();
        var bestHabit = habits[0];
        for (var i = 0; i < habits.Count; i++)
        {
            cancel.ThrowIfCancellationRequested();
            var plan = CourseFill.Run(roster, habits[i], leastLeft);
            if (best is null || plan.Score < best.Score)
                (best, bestHabit) = (plan, habits[i]);
            progress?.Report((i + 1) * 100 / habits.Count);
        }

        return ShowingShift.Improve(roster, bestHabit, best!, cancel);
    }
}
