using ShopClass.Core.Planning;
using ShopClass.Web.Features.Plans;

namespace ShopClass.Web.Tests.Plans;

public class GoalWordsTests
{
    private const long Inch = 40_640;

    [Fact]
    public void Best_possible_is_said_only_when_every_value_meets_its_bound()
    {
        var proven = HandMade.Made(
            goals: [new(PlanGoal.Lines, 8, 8), new(PlanGoal.LengthUsed, Inch, Inch)]
        );
        var open = HandMade.Made(
            goals: [new(PlanGoal.Lines, 8, 8), new(PlanGoal.LengthUsed, 2 * Inch, Inch)]
        );

        Assert.StartsWith(
            "Best possible",
            GoalWords.Overall(proven.Plan),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain(
            "Best possible",
            GoalWords.Overall(open.Plan),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_plan_that_misses_a_blank_is_never_called_best_possible()
    {
        var short_ = HandMade.Made(goals: [new(PlanGoal.Lines, 8, 8)], missing: [new("A", 1)]);

        Assert.Equal("Not every part could be placed.", GoalWords.Overall(short_.Plan));
    }

    [Theory]
    [InlineData(PlanGoal.GlueUps, 0, 0, "No edge joints to glue. No plan can do with fewer.")]
    [InlineData(
        PlanGoal.GlueUps,
        2,
        1,
        "2 edge joints to glue. That is at most 1 joint more than the best possible."
    )]
    [InlineData(PlanGoal.Lines, 8, 8, "8 lines to mark. No plan as good so far needs fewer.")]
    [InlineData(
        PlanGoal.Lines,
        8,
        5,
        "8 lines to mark. That is at most 3 lines more than the best possible."
    )]
    [InlineData(
        PlanGoal.LengthUsed,
        40 * Inch,
        38 * Inch,
        "Takes 40 in of board length. That is at most 2 in more than the best possible."
    )]
    [InlineData(PlanGoal.Boards, 7, 5, "Uses 1 board. No plan can use fewer.")]
    [InlineData(
        PlanGoal.SawingEffort,
        112,
        100,
        "0 cuts: 0 in across the grain, 0 in along it. That is at most 12 % more than the best possible."
    )]
    [InlineData(
        PlanGoal.SawingEffort,
        112,
        0,
        "0 cuts: 0 in across the grain, 0 in along it. Whether less would do is not proven."
    )]
    public void A_goal_says_what_is_reached_and_no_more_than_is_proven(
        PlanGoal goal,
        long value,
        long bound,
        string expected
    ) => Assert.Equal(expected, GoalWords.Of(new(goal, value, bound), HandMade.Made()));
}
