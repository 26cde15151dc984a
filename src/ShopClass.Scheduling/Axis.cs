using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Scheduling;

/// <summary>The minutes of all lessons laid end to end, and what the calendar adds between them.</summary>
internal sealed class Axis
{
    private readonly long[] calendar;

    public Axis(LessonRequest request)
    {
        Request = request;
        Minutes =
        [
            .. request.Lessons.Select(l => l.Minutes < Lesson.FewestMinutes ? 0 : l.Minutes),
        ];
        Begins = new long[Minutes.Length + 1];
        for (var l = 0; l < Minutes.Length; l++)
            Begins[l + 1] = Begins[l] + Minutes[l];
        calendar = ClassTime.Beginnings(request.Lessons);
    }

    public LessonRequest Request { get; }

    public int[] Minutes { get; }

    /// <summary>Beginning of each lesson, and the end of the last.</summary>
    public long[] Begins { get; }

    public int Lessons => Minutes.Length;

    public long End => Begins[^1];

    /// <summary>Calendar minutes to add to a minute of a lesson.</summary>
    public long Gap(int lesson) => calendar[lesson] - Begins[lesson];

    /// <summary>Which lesson a minute belongs to.</summary>
    public int LessonAt(long minute)
    {
        var lesson = 0;
        while (lesson + 1 < Lessons && Begins[lesson + 1] <= minute)
            lesson++;
        return lesson;
    }

    /// <summary>From when a student may use a skill under a plan's demonstrations; null when they never see it.</summary>
    public long? SeenFrom(LessonPlan plan, string student, Skill skill)
    {
        for (var l = 0; l < Lessons; l++)
        {
            if (!Request.Lessons[l].IsAttendedBy(student))
                continue;
            foreach (var showing in plan.Lessons[l].Showings)
            {
                if (
                    showing.Skill == skill
                    && (showing.StudentId is null || showing.StudentId == student)
                )
                    return Begins[l] + showing.End;
            }
        }

        return null;
    }
}
