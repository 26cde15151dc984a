namespace ShopClass.Core.Lessons;

/// <summary>A student in the state of the class.</summary>
/// <param name="Student">The name shown.</param>
/// <param name="Board">What they work on; empty where they have no plan.</param>
/// <param name="Done">Steps done.</param>
/// <param name="Steps">Steps in all; 0 where they have no plan.</param>
/// <param name="Next">The step to go on with; empty when there is none.</param>
/// <param name="Station">Where it is done; empty when there is none.</param>
/// <param name="Standing">Against the plan of lessons, in words; empty where there is none.</param>
/// <param name="Open">What waits for the instructor, in words: a check, a call, a spoiled piece, a fault.</param>
public sealed record ClassStateLine(
    string Student,
    string Board,
    int Done,
    int Steps,
    string Next,
    string Station,
    string Standing,
    IReadOnlyList<string> Open
);

/// <summary>The state of a class on a page, for whoever takes the next lesson.</summary>
/// <param name="Lesson">The lesson of the day, or the next one: its title and day; empty where none is left.</param>
/// <param name="Prepare">What to see to before it.</param>
/// <param name="Show">What is demonstrated in it.</param>
/// <param name="Students">Every student, by name.</param>
public sealed record ClassState(
    string Lesson,
    IReadOnlyList<string> Prepare,
    IReadOnlyList<string> Show,
    IReadOnlyList<ClassStateLine> Students
)
{
    /// <summary>What the minutes rest on, in a sentence; empty where none are shown.</summary>
    public string Basis { get; init; } = "";
}
