namespace ShopClass.Core.Lessons;

/// <summary>Counts how good a plan of lessons is.</summary>
public static class Scoring
{
    /// <summary>The score of these programs with these turns left over.</summary>
    public static LessonScore Of(
        LessonRequest request,
        IReadOnlyList<LessonProgram> programs,
        IReadOnlyList<Turn> left
    )
    {
        var unfinished = left.Select(t => t.StudentId).ToHashSet(StringComparer.Ordinal);
        var waiting = 0;
        var ends = new List<int>();
        foreach (var student in request.Students.Where(s => s.Work is { Steps.Count: > 0 }))
        {
            var end = LastTurn(student.StudentId, programs);
            if (unfinished.Contains(student.StudentId))
                end = (programs.Count - 1, programs.Count == 0 ? 0 : request.Lessons[^1].Minutes);
            waiting += Waiting(request, programs, student.StudentId, end);
            ends.Add(request.Lessons.Take(end.Lesson).Sum(l => l.Minutes) + end.Minute);
        }

        return new(
            left.Sum(t => t.Minutes),
            waiting,
            ends.Count == 0 ? 0 : ends.Max() - ends.Min()
        );
    }

    private static (int Lesson, int Minute) LastTurn(
        string student,
        IReadOnlyList<LessonProgram> programs
    )
    {
        for (var l = programs.Count - 1; l >= 0; l--)
        {
            var last = programs[l]
                .Turns.Where(t => t.Turn.StudentId == student)
                .Select(t => t.End)
                .DefaultIfEmpty(-1)
                .Max();
            if (last >= 0)
                return (l, last);
        }

        return (0, 0);
    }

    private static int Waiting(
        LessonRequest request,
        IReadOnlyList<LessonProgram> programs,
        string student,
        (int Lesson, int Minute) end
    )
    {
        var waiting = 0;
        for (var l = 0; l <= end.Lesson; l++)
        {
            if (!request.Lessons[l].IsAttendedBy(student))
                continue;
            var there = l == end.Lesson ? end.Minute : request.Lessons[l].Minutes;
            var watching = programs[l]
                .Showings.Where(s => s.StudentId is null || s.StudentId == student)
                .Sum(s => s.Minutes);
            var working = programs[l]
                .Turns.Where(t => t.Turn.StudentId == student)
                .Sum(t => t.Turn.Minutes);
            waiting += Math.Max(0, there - watching - working);
        }

        return waiting;
    }
}
