using ShopClass.Core.Lessons;
using ShopClass.Core.Paces;
using ShopClass.Data.Plans;

namespace ShopClass.Data.Lessons;

/// <summary>Puts a course's own pace into what a plan of lessons is made for, and reads it back.</summary>
internal static class LessonPace
{
    /// <summary>The pace a request was made with.</summary>
    public static ClassPace Of(LessonRequest request) =>
        new(
            request.Pace ?? new([], []),
            request
                .Students.Where(s => s.Pace is not null)
                .ToDictionary(s => s.StudentId, s => s.Pace!, StringComparer.Ordinal)
        );

    /// <summary>A student's work with its times by the pace.</summary>
    public static StudentWork In(StudentWork work, StoredPlan? plan, ClassPace pace)
    {
        var own = pace.Students.GetValueOrDefault(work.StudentId);
        if (work.Work is not { } steps || plan is null || pace.IsUsual)
            return work with { Pace = own };
        var boards = plan.Checked.Request.Boards;
        return work with
        {
            Work = PacedWork.Of(
                steps,
                pace.Course,
                own ?? PaceFactor.Usual,
                s => TimedSteps.SpeciesOf(s, boards)
            ),
            Pace = own,
        };
    }
}
