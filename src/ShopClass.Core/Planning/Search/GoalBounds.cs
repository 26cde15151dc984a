namespace ShopClass.Core.Planning.Search;

/// <summary>States for each goal what no plan as good on all earlier goals can go below.</summary>
internal static class GoalBounds
{
    /// <summary>
    /// The ideal bounds a goal as long as the plan meets it on every goal before. After that only what holds for every
    /// plan is said.
    /// </summary>
    public static IReadOnlyList<GoalResult> Of(
        PlanningRequest request,
        Score score,
        Score always,
        Score? ideal
    )
    {
        var results = new List<GoalResult>();
        var level = ideal is not null;
        foreach (var goal in request.Goals)
        {
            var value = score.For(goal);
            var bound = always.For(goal);
            if (level)
                bound = Int128.Max(bound, ideal!.Value.For(goal));
            level = level && value == ideal!.Value.For(goal);
            results.Add(new(goal, value, Int128.Min(value, bound)));
        }

        return results;
    }
}
