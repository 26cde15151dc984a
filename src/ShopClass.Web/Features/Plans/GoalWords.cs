using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;

namespace ShopClass.Web.Features.Plans;

/// <summary>How a plan does on its goals, in sentences that claim no more than is proven.</summary>
public static class GoalWords
{
    public static string Overall(CutPlan plan)
    {
        if (!plan.IsComplete)
            return "Not every part could be placed.";
        if (plan.IsBestPossible)
            return "Best possible: no plan for these boards can be better, in the order of these goals.";
        return "A good plan. Where it says so below, a better one has not been ruled out.";
    }

    public static string Of(GoalResult goal, CheckedPlan made) =>
        $"{What(goal, made)} {Proof(goal, made)}";

    private static string What(GoalResult goal, CheckedPlan made) =>
        goal.Goal switch
        {
            PlanGoal.Boards => $"Uses {Count(made.Plan.Boards.Count, "board")}.",
            PlanGoal.GlueUps => goal.Value == 0
                ? "No edge joints to glue."
                : $"{Count((int)goal.Value, "edge joint")} to glue.",
            PlanGoal.SawingEffort =>
                $"{Count(made.Sequence.Cuts.Count, "cut")}: {Sawn(made, rips: false)} across the grain, {Sawn(made, rips: true)} along it.",
            PlanGoal.Lines => $"{Count((int)goal.Value, "line")} to mark.",
            PlanGoal.LengthUsed => $"Takes {Write((long)goal.Value, made)} of board length.",
            _ => throw new ArgumentOutOfRangeException(nameof(goal), goal.Goal, "Not a goal."),
        };

    private static string Proof(GoalResult goal, CheckedPlan made)
    {
        if (!made.Plan.IsComplete)
            return "";
        if (goal.IsProven || IsPlainlyLeast(goal, made))
            return NoneLess(goal.Goal, made);
        return AtMost(goal, made) is { } most
            ? $"That is at most {most} more than the best possible."
            : "Whether less would do is not proven.";
    }

    /// <summary>Nothing is less than one board, nor than nothing.</summary>
    private static bool IsPlainlyLeast(GoalResult goal, CheckedPlan made) =>
        goal.Value == 0
        || (goal.Goal is PlanGoal.Boards && made.Plan.Boards.Count == 1 && !HasPrices(made));

    private static string NoneLess(PlanGoal goal, CheckedPlan made) =>
        goal switch
        {
            PlanGoal.Boards when HasPrices(made) => "No plan can use cheaper boards.",
            PlanGoal.Boards => "No plan can use fewer.",
            PlanGoal.GlueUps => "No plan can do with fewer.",
            PlanGoal.SawingEffort => "No plan as good so far needs less sawing.",
            PlanGoal.Lines => "No plan as good so far needs fewer.",
            _ => "No plan as good so far takes less.",
        };

    private static string? AtMost(GoalResult goal, CheckedPlan made)
    {
        var over = goal.Value - goal.Bound;
        return goal.Goal switch
        {
            PlanGoal.GlueUps => Count((int)over, "joint"),
            PlanGoal.Lines => Count((int)over, "line"),
            PlanGoal.LengthUsed => Write((long)over, made),
            PlanGoal.SawingEffort when goal.Bound > 0 =>
                $"{(over * 100 + goal.Bound - 1) / goal.Bound} %",
            _ => null,
        };
    }

    private static bool HasPrices(CheckedPlan made) =>
        made.Request.Boards.Any(b => b.Price is not null);

    private static string Sawn(CheckedPlan made, bool rips) =>
        Write(
            made.Sequence.Cuts.Where(c => c.Kind is CutKind.Rip == rips)
                .Sum(c => c.SawnLength.Ticks),
            made
        );

    private static string Write(long ticks, CheckedPlan made) =>
        LengthWriter.WriteWithUnit(Length.FromTicks(ticks), made.Request.Rules.Precision);

    private static string Count(int number, string what) =>
        number == 1 ? $"1 {what}" : $"{number} {what}s";
}
