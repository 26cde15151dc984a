using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons;

/// <summary>Who is where, when, in every lesson, and what did not fit.</summary>
/// <param name="Lessons">One for each lesson asked for, in order.</param>
/// <param name="Left">Turns that fall off the end, student by student.</param>
/// <param name="Score">How good it is.</param>
/// <param name="LeastLeft">No plan leaves fewer minutes than this.</param>
public sealed record LessonPlan(
    IReadOnlyList<LessonProgram> Lessons,
    IReadOnlyList<Turn> Left,
    LessonScore Score,
    int LeastLeft
);

/// <summary>One lesson.</summary>
/// <param name="Showings">Demonstrations, by time.</param>
/// <param name="Turns">Turns, by time and then by student.</param>
public sealed record LessonProgram(
    IReadOnlyList<Showing> Showings,
    IReadOnlyList<PlacedTurn> Turns
);

/// <summary>A demonstration.</summary>
/// <param name="Skill">What is shown.</param>
/// <param name="Start">Minutes after the lesson begins.</param>
/// <param name="Minutes">How long it takes.</param>
/// <param name="StudentId">Null for the whole class; otherwise the one who was absent the first time.</param>
public sealed record Showing(Skill Skill, int Start, int Minutes, string? StudentId = null)
{
    /// <summary>When it is over.</summary>
    public int End => Start + Minutes;
}

/// <summary>A turn with its time and place.</summary>
/// <param name="Turn">The turn.</param>
/// <param name="Start">Minutes after the lesson begins.</param>
/// <param name="Place">Which of the counted places of its station, from 1; null where places are not counted.</param>
public sealed record PlacedTurn(Turn Turn, int Start, int? Place)
{
    /// <summary>When it is over.</summary>
    public int End => Start + Turn.Minutes;
}

/// <summary>How good a plan of lessons is; what comes first counts first.</summary>
/// <param name="Left">Minutes of work that fall off the end.</param>
/// <param name="Waiting">Minutes students are there, are not done and have nothing of their own to do.</param>
/// <param name="Spread">Minutes of class time between the first and the last student to be done.</param>
public sealed record LessonScore(int Left, int Waiting, int Spread) : IComparable<LessonScore>
{
    /// <summary>Whether everybody gets done.</summary>
    public bool EverybodyFinishes => Left == 0;

    /// <inheritdoc/>
    public int CompareTo(LessonScore? other) =>
        other is null
            ? 1
            : (Left, Waiting, Spread).CompareTo((other.Left, other.Waiting, other.Spread));

    public static bool operator <(LessonScore a, LessonScore b) => a.CompareTo(b) < 0;

    public static bool operator >(LessonScore a, LessonScore b) => a.CompareTo(b) > 0;

    public static bool operator <=(LessonScore a, LessonScore b) => a.CompareTo(b) <= 0;

    public static bool operator >=(LessonScore a, LessonScore b) => a.CompareTo(b) >= 0;
}
