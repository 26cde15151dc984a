using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning;

/// <summary>Names one blank: the second A is <c>A2</c>; the first strip of a glued-up A2 is <c>A2.1</c>.</summary>
/// <param name="Part">The part's letter.</param>
/// <param name="Copy">Which of its quantity, from 1.</param>
/// <param name="Strip">Which strip of a glue-up, from 1; 0 for a blank in one piece.</param>
public readonly record struct BlankKey(string Part, int Copy, int Strip = 0) : IComparable<BlankKey>
{
    /// <inheritdoc/>
    public int CompareTo(BlankKey other)
    {
        var byPart = string.CompareOrdinal(Part, other.Part);
        if (byPart != 0)
            return byPart;
        return Copy != other.Copy ? Copy.CompareTo(other.Copy) : Strip.CompareTo(other.Strip);
    }

    /// <summary>As written on the wood: <c>A2</c>, <c>A2.1</c>.</summary>
    public override string ToString() => Strip == 0 ? $"{Part}{Copy}" : $"{Part}{Copy}.{Strip}";

    public static bool operator <(BlankKey a, BlankKey b) => a.CompareTo(b) < 0;

    public static bool operator >(BlankKey a, BlankKey b) => a.CompareTo(b) > 0;

    public static bool operator <=(BlankKey a, BlankKey b) => a.CompareTo(b) <= 0;

    public static bool operator >=(BlankKey a, BlankKey b) => a.CompareTo(b) >= 0;
}

/// <summary>Where everything comes from, on which board; what is missing; how good it is and how that is known.</summary>
public sealed record CutPlan
{
    /// <summary>The boards that are cut, in the request's order. Boards left whole are not listed.</summary>
    public required IReadOnlyList<BoardLayout> Boards { get; init; }

    /// <summary>Blanks that did not fit; empty when the boards yield the whole project.</summary>
    public required IReadOnlyList<BlankKey> Missing { get; init; }

    /// <summary>How many strips each glued-up part is made of, by letter; parts in one piece are not listed.</summary>
    public IReadOnlyDictionary<string, int> GlueUps { get; init; } =
        new SortedDictionary<string, int>(StringComparer.Ordinal);

    /// <summary>Value and proven bound for each goal of the request, in its order.</summary>
    public required IReadOnlyList<GoalResult> Goals { get; init; }

    /// <summary>Steps of search it took, of the request's limit.</summary>
    public required int StepsTaken { get; init; }

    /// <summary>
    /// Whether it is proven that no plan at all places every blank on these boards, by the rules and the glue-ups the course
    /// allows. False where the search merely found none.
    /// </summary>
    public bool IsProvenImpossible { get; init; }

    /// <summary>Whether every blank is placed.</summary>
    public bool IsComplete => Missing.Count == 0;

    /// <summary>Whether no plan can be better, in the order of the goals. Said only when every value meets its bound.</summary>
    public bool IsBestPossible => IsComplete && Goals.All(g => g.IsProven);
}

/// <summary>How a plan does on one goal.</summary>
/// <param name="Goal">The goal.</param>
/// <param name="Value">What the plan reaches, in the goal's own unit; smaller is better.</param>
/// <param name="Bound">What no plan that is as good on all earlier goals can go below; never more than <paramref name="Value"/>.</param>
public sealed record GoalResult(PlanGoal Goal, Int128 Value, Int128 Bound)
{
    /// <summary>Whether the value is proven to be the best there is.</summary>
    public bool IsProven => Value == Bound;
}

/// <summary>How one board is divided.</summary>
/// <param name="BoardId">The board.</param>
/// <param name="Sections">Its sections, from its start. At least a crosscut kerf lies between two, unless the last ends at the board's end.</param>
public sealed record BoardLayout(string BoardId, IReadOnlyList<Section> Sections);

/// <summary>A length of board between two crosscuts.</summary>
/// <param name="From">Where it begins along the board.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Strips">Its strips, from the near edge. At least a rip kerf lies between two.</param>
public sealed record Section(Length From, Length To, IReadOnlyList<Strip> Strips);

/// <summary>A width ripped from a section; it runs the section's whole length.</summary>
/// <param name="Near">Its edge nearest the board's near edge.</param>
/// <param name="Far">Its other edge.</param>
/// <param name="Blanks">Its blanks, from the section's beginning. At least a crosscut kerf lies between two.</param>
public sealed record Strip(Length Near, Length Far, IReadOnlyList<PlacedBlank> Blanks);

/// <summary>A blank in its place. It is as wide as its strip; surplus width stays in it until it is brought to width.</summary>
/// <param name="Key">Which blank.</param>
/// <param name="From">Where it begins along the board.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Needed">The least size it may have.</param>
/// <param name="Turned">Whether its length runs across the board (only where the part's grain may run either way).</param>
public sealed record PlacedBlank(
    BlankKey Key,
    Length From,
    Length To,
    RoughSize Needed,
    bool Turned = false
)
{
    /// <summary>The rectangle it takes on the board, in a strip.</summary>
    public BoardRect In(Strip strip) => new(From, To, strip.Near, strip.Far);
}

/// <summary>What a search tells while it runs.</summary>
/// <param name="StepsTaken">Steps so far.</param>
/// <param name="StepLimit">Steps allowed.</param>
/// <param name="Best">The best plan so far.</param>
public sealed record PlanProgress(int StepsTaken, int StepLimit, CutPlan Best);
