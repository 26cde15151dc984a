namespace ShopClass.Core.Lessons;

/// <summary>What no plan of lessons can beat.</summary>
public static class LessonBounds
{
    /// <summary>
    /// The least minutes any plan leaves over: what students have more to do than they are there for, or what a station is
    /// asked for beyond the minutes its places have, whichever is more. Demonstrations the instructor has put into a
    /// lesson take their time off both.
    /// </summary>
    public static int LeastLeft(LessonRequest request, IReadOnlyList<TurnToPlace> turns)
    {
        int[] minutes =
        [
            .. Enumerable.Range(0, request.Lessons.Count).Select(l => Free(request, l)),
        ];
        var byStudents = request.Students.Sum(s =>
            Math.Max(
                0,
                turns.Where(t => t.Turn.StudentId == s.StudentId).Sum(t => t.Turn.Minutes)
                    - minutes.Where((_, l) => request.Lessons[l].IsAttendedBy(s.StudentId)).Sum()
            )
        );
        var byStations = StationCounts.Counted.Max(station =>
            turns.Where(t => t.Turn.Station == station).Sum(t => t.Turn.Minutes)
            - minutes.Select((m, l) => m * request.StationsIn(l).PlacesAt(station)!.Value).Sum()
        );
        return Math.Max(byStudents, byStations);
    }

    private static int Free(LessonRequest request, int lesson)
    {
        var asked = request.Lessons[lesson];
        if (asked.Minutes < Lesson.FewestMinutes)
            return 0;
        var free = asked.Minutes;
        foreach (var skill in asked.Shows)
        {
            var shown = request.MinutesToShow(skill);
            if (shown <= free)
                free -= shown;
        }

        return free;
    }
}
