using ShopClass.Core.Paces;
using ShopClass.Core.Planning;
using ShopClass.Core.Progress;
using ShopClass.Core.Remakes;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Plans;

namespace ShopClass.Data.Progress;

/// <summary>The plan a student works by, and how far they are.</summary>
/// <param name="Plan">The plan with its steps, as it was stored. Whether it is out of date is not looked at.</param>
/// <param name="CourseId">The student's course.</param>
/// <param name="Progress">How its steps stand.</param>
public sealed record PlanInHand(StoredPlan Plan, Guid CourseId, WorkProgress Progress)
{
    /// <summary>Its steps joined with those of its remakes; null where nothing was remade.</summary>
    public RemadeWork? Remade { get; init; }

    /// <summary>The pace its forecasts go by: for who works the room. The table's for anybody else.</summary>
    public StepPace Pace { get; init; } = StepPace.Usual;

    /// <summary>Whether the course wants the first cuts timed.</summary>
    public bool TimesFirstCuts { get; init; }

    /// <summary>Which of the three timed cuts a step is, where its minutes are asked for; else null.</summary>
    public int? CutToTime(Step step) => TimesFirstCuts ? FirstCuts.NumberOf(Progress, step) : null;

    /// <summary>A step with its time by <see cref="Pace"/>.</summary>
    public Step Paced(Step step) => Pace.At(step, PlanOf(step).Request.Boards);

    /// <summary>The plan a step is drawn from: a remake's own, or this one.</summary>
    public CheckedPlan PlanOf(Step step) =>
        Remade?.Plans.GetValueOrDefault(step.Id) ?? Plan.Checked;
}

/// <summary>A step that waits for somebody.</summary>
/// <param name="State">How it stands.</param>
/// <param name="SinceUtc">Since when.</param>
public sealed record StepWaiting(StepState State, DateTime SinceUtc);

/// <summary>A fault for which a step was sent back.</summary>
/// <param name="Fault">What was wrong.</param>
/// <param name="AtUtc">When it was said.</param>
public sealed record FaultSaid(string Fault, DateTime AtUtc);

/// <summary>A student in the room.</summary>
/// <param name="StudentId">Who.</param>
/// <param name="Shown">What the class sees.</param>
/// <param name="InHand">What they work by; null when they have no plan.</param>
/// <param name="LastUtc">When they last said anything about a step; null when never.</param>
/// <param name="Help">Where they need help, since when.</param>
/// <param name="Checks">What waits to be looked at.</param>
/// <param name="Spoiled">Steps with a spoiled piece that is not settled.</param>
/// <param name="Faults">What steps were sent back for.</param>
public sealed record StudentAtWork(
    Guid StudentId,
    string Shown,
    PlanInHand? InHand,
    DateTime? LastUtc,
    IReadOnlyList<StepWaiting> Help,
    IReadOnlyList<StepWaiting> Checks,
    IReadOnlyList<StepWaiting> Spoiled,
    IReadOnlyList<FaultSaid> Faults
);
