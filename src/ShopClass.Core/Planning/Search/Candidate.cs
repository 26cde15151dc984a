namespace ShopClass.Core.Planning.Search;

/// <summary>A finished layout with what it is worth.</summary>
internal sealed record Candidate(
    Bench Bench,
    IReadOnlyList<BoardLayout> Boards,
    IReadOnlyList<BlankKey> Missing,
    Score Score
)
{
    public static Candidate Of(Bench bench, Draft draft)
    {
        var (boards, missing) = new PlanWriter(bench).Write(draft);
        return new(bench, boards, missing, Score.Of(bench, boards));
    }

    public bool IsComplete => Missing.Count == 0;

    /// <summary>
    /// Whether this is better: fewer parts missing, then less of their area, then the goals in their order. The earlier
    /// found stays where nothing differs.
    /// </summary>
    public bool Beats(Candidate? other)
    {
        if (other is null)
            return true;
        var byMissing = MissingParts.CompareTo(other.MissingParts);
        if (byMissing != 0)
            return byMissing < 0;
        var byArea = MissingArea.CompareTo(other.MissingArea);
        if (byArea != 0)
            return byArea < 0;
        foreach (var goal in GoalOrder.Of(Bench.Request))
        {
            var byGoal = Score.For(goal).CompareTo(other.Score.For(goal));
            if (byGoal != 0)
                return byGoal < 0;
        }

        return false;
    }

    private int MissingParts => Missing.Select(k => (k.Part, k.Copy)).Distinct().Count();

    private Int128 MissingArea =>
        Missing.Aggregate(
            (Int128)0,
            (sum, key) => sum + Bench.Kinds.First(k => k.Items.Any(i => i.Key == key)).Area
        );
}

/// <summary>The goals asked for, then the others in their usual order to settle ties.</summary>
internal static class GoalOrder
{
    public static IReadOnlyList<PlanGoal> Of(PlanningRequest request) =>
        [.. request.Goals.Concat(PlanGoals.Usual).Distinct()];
}
