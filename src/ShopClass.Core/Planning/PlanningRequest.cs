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

    /// <summary>
    /// How many steps the search may take before it settles for the best it has. A count, not a clock; a step is ten looks
    /// at a section, a strip or a place.
    /// </summary>
    public int StepLimit { get; init; } = 200_000;
}

/// <summary>Something a plan can be better or worse at. Smaller values are better for all of them.</summary>
public enum PlanGoal
{
    /// <summary>
    /// Cost of the boards that are cut; boards without a price count by their number, then by their area. One number that
    /// sorts right, not one to show.
    /// </summary>
    Boards,

    /// <summary>Edge joints to glue.</summary>
    GlueUps,

    /// <summary>
    /// Area sawn (length of cut times the board's thickness), a rip counted 3 times and a crosscut 4 times, in square
    /// ticks times ticks. The weights are whole numbers for our proposal of 8 square inches ripped a minute against 6
    /// crosscut: 1/8 to 1/6. So 24 such square inches are a minute in white pine. A rip is still the greater labour,
    /// because it runs the length of its section.
    /// </summary>
    /// <remarks>
    /// Counted are: the trim of the start, one crosscut at the end of each section, one rip between two strips, one more
    /// where an offcut wide enough to keep lies beside the last, crosscuts between and after the blanks of a strip as wide
    /// as its blanks need, and whatever a gap left for a bad place adds. Not counted: cuts to finished size, and what ripping
    /// two neighbouring sections as one saves.
    /// </remarks>
    SawingEffort,

    /// <summary>
    /// Number of different saw lines to mark, section by section; crosscut lines of neighbouring strips that fall together
    /// are one line, marked right across.
    /// </summary>
    Lines,

    /// <summary>
    /// Length of board used up, in ticks, from each board's start to the end of its last section: what is not used stays
    /// one big offcut at the far end.
    /// </summary>
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
