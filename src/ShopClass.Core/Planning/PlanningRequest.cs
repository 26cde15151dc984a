using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning;

/// <summary>Everything a plan depends on. The same request gives the same plan, to the byte.</summary>
public sealed record PlanningRequest
{
    /// <summary>What is to be made.</summary>
    public required Project Project { get; init; }

    /// <summary>The boards at hand, in the order they are to be used where it makes no difference.</summary>
    public required IReadOnlyList<Board> Boards { get; init; }

    /// <summary>The course's settings.</summary>
    public required CourseRules Rules { get; init; }

    /// <summary>What to favour, first things first.</summary>
    public IReadOnlyList<PlanGoal> Goals { get; init; } = PlanGoals.Usual;

    /// <summary>How many steps the search may take before it settles for the best it has. A count, not a clock.</summary>
    public int StepLimit { get; init; } = 200_000;
}

/// <summary>Something a plan can be better or worse at. Smaller values are better for all of them.</summary>
public enum PlanGoal
{
    /// <summary>Cost of the boards that are cut; boards without a price count by their number, then by their area.</summary>
    Boards,

    /// <summary>Edge joints to glue.</summary>
    GlueUps,

    /// <summary>Length sawn, rips weighing more than crosscuts, times thickness.</summary>
    SawingEffort,

    /// <summary>Number of different saw lines to mark.</summary>
    Lines,

    /// <summary>Length of board used up: what is not used stays one big offcut at the far end.</summary>
    LengthUsed,
}

/// <summary>Usual orders of goals.</summary>
public static class PlanGoals
{
    /// <summary>Cheapest boards, fewest glue-ups, least sawing, fewest lines, biggest offcut.</summary>
    public static IReadOnlyList<PlanGoal> Usual { get; } =
    [PlanGoal.Boards, PlanGoal.GlueUps, PlanGoal.SawingEffort, PlanGoal.Lines, PlanGoal.LengthUsed];

    /// <summary>The goal in a few words, for people.</summary>
    public static string Words(this PlanGoal goal) =>
        goal switch
        {
            PlanGoal.Boards => "boards used",
            PlanGoal.GlueUps => "edge joints to glue",
            PlanGoal.SawingEffort => "sawing",
            PlanGoal.Lines => "lines to mark",
            PlanGoal.LengthUsed => "length of board used",
            _ => throw new ArgumentOutOfRangeException(nameof(goal), goal, "Not a goal."),
        };
}
