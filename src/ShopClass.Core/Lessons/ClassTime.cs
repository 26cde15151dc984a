namespace ShopClass.Core.Lessons;

/// <summary>When lessons begin, so that what must be left alone between two of them can be reckoned.</summary>
public static class ClassTime
{
    private const int MinutesInADay = 24 * 60;

    /// <summary>
    /// Beginning of each lesson in minutes since the day of the first. Lessons are taken to begin at the same hour; two on
    /// one day follow each other at once, so that no waiting is counted that may not be there.
    /// </summary>
    public static long[] Beginnings(IReadOnlyList<Lesson> lessons)
    {
        var begins = new long[lessons.Count];
        for (var l = 0; l < begins.Length; l++)
        {
            var day = (long)(lessons[l].Date.DayNumber - lessons[0].Date.DayNumber) * MinutesInADay;
            begins[l] = l == 0 ? day : Math.Max(day, begins[l - 1] + lessons[l - 1].Minutes);
        }

        return begins;
    }
}
