using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons.Filling;

/// <summary>A request laid out for planning: turns, students and lessons by number.</summary>
internal sealed class Roster
{
    public Roster(LessonRequest request, IReadOnlyList<TurnToPlace> turns)
    {
        (Request, Turns) = (request, turns);
        Students = [.. request.Students.Select(s => s.StudentId)];
        var number = Students.Select((id, i) => (id, i)).ToDictionary(s => s.id, s => s.i);
        StudentOf = [.. turns.Select(t => number[t.Turn.StudentId])];
        TurnsOf =
        [
            .. Students.Select(
                (_, s) => Enumerable.Range(0, turns.Count).Where(t => StudentOf[t] == s).ToArray()
            ),
        ];
        Minutes =
        [
            .. request.Lessons.Select(l => l.Minutes < Lesson.FewestMinutes ? 0 : l.Minutes),
        ];
        Begins = ClassTime.Beginnings(request.Lessons);
        Tails = TailsOf(turns);
    }

    /// <summary>What was asked.</summary>
    public LessonRequest Request { get; }

    /// <summary>All turns.</summary>
    public IReadOnlyList<TurnToPlace> Turns { get; }

    /// <summary>Keys of the students.</summary>
    public string[] Students { get; }

    /// <summary>Student of each turn.</summary>
    public int[] StudentOf { get; }

    /// <summary>Turns of each student, in order.</summary>
    public int[][] TurnsOf { get; }

    /// <summary>Minutes of each lesson; none where it is too short to be one.</summary>
    public int[] Minutes { get; }

    /// <summary>When each lesson begins, in minutes of the calendar.</summary>
    public long[] Begins { get; }

    /// <summary>For each turn, the minutes of the longest chain of turns and waiting that hangs on it, itself included.</summary>
    public long[] Tails { get; }

    /// <summary>Whether a student comes.</summary>
    public bool Attends(int student, int lesson) =>
        Request.Lessons[lesson].IsAttendedBy(Students[student]);

    private static long[] TailsOf(IReadOnlyList<TurnToPlace> turns)
    {
        var tails = turns.Select(t => (long)t.Turn.Minutes).ToArray();
        for (var t = turns.Count - 1; t >= 0; t--)
        {
            foreach (var before in turns[t].After)
                tails[before] = Math.Max(tails[before], turns[before].Turn.Minutes + tails[t]);
        }

        return tails;
    }
}
