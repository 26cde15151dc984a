using ShopClass.Core.Planning;

namespace ShopClass.Print.Sheets;

/// <summary>What is known about how good a plan is, and no more.</summary>
internal static class PlanQuality
{
    public static string Sentence(CutPlan plan)
    {
        if (!plan.IsComplete)
            return "Not every part is placed, so nothing is said about how good the plan is.";
        if (plan.IsBestPossible)
            return $"Best possible, proven for every goal in this order: {string.Join(", ", plan.Goals.Select(g => g.Goal.Words()))}.";
        return $"Not proven the best possible. By goal, first things first: {string.Join("; ", plan.Goals.Select(Words))}.";
    }

    private static string Words(GoalResult result)
    {
        var name = result.Goal.Words();
        if (result.IsProven)
            return $"{name}, as few or little as can be";
        if (result.Bound <= 0)
            return $"{name}, no useful bound known";
        var percent = ((result.Value - result.Bound) * 100 + result.Bound - 1) / result.Bound;
        return $"{name}, at most {percent} % more than the least conceivable";
    }
}
