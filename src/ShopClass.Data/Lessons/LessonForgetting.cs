using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Lessons;
using ShopClass.Data.Store;

namespace ShopClass.Data.Lessons;

/// <summary>Takes a student who is removed out of lessons and of every stored plan of lessons.</summary>
internal static class LessonForgetting
{
    public static async Task ForgetAsync(
        ShopContext shop,
        Guid courseId,
        Guid studentId,
        CancellationToken cancel
    )
    {
        foreach (
            var lesson in await shop.Lessons.Where(l => l.CourseId == courseId).ToListAsync(cancel)
        )
        {
            if (lesson.Absent.Contains(studentId))
                lesson.Absent = [.. lesson.Absent.Where(a => a != studentId)];
        }

        var id = studentId.ToString();
        foreach (
            var row in await shop.LessonPlans.Where(p => p.CourseId == courseId).ToListAsync(cancel)
        )
        {
            var (request, plan) = LessonSnapshot.Unpack(row.Snapshot);
            row.Snapshot = LessonSnapshot.Pack(Without(request, id), Without(plan, id));
        }
    }

    private static LessonRequest Without(LessonRequest request, string student) =>
        request with
        {
            Students = [.. request.Students.Where(s => s.StudentId != student)],
            Lessons =
            [
                .. request.Lessons.Select(l =>
                    l with
                    {
                        Absent = [.. l.Absent.Where(a => a != student)],
                    }
                ),
            ],
        };

    private static LessonPlan Without(LessonPlan plan, string student) =>
        plan with
        {
            Left = [.. plan.Left.Where(t => t.StudentId != student)],
            Lessons =
            [
                .. plan.Lessons.Select(l => new LessonProgram(
                    [.. l.Showings.Where(s => s.StudentId != student)],
                    [.. l.Turns.Where(t => t.Turn.StudentId != student)]
                )),
            ],
        };
}
