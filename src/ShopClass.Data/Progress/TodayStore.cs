using System.Collections.Concurrent;
using Microsoft.EntityFrameworkCore;
using ShopClass.Data.Access;
using ShopClass.Data.Lessons;
using ShopClass.Data.Store;

namespace ShopClass.Data.Progress;

/// <summary>A student's part of today's lesson.</summary>
/// <param name="Title">The lesson's title.</param>
/// <param name="StepIds">Their steps in it, by their ids, in the lesson's order.</param>
public sealed record TodaysLesson(string Title, IReadOnlyList<string> StepIds);

/// <summary>Which steps today's lesson is for, by the newest plan of lessons.</summary>
public sealed class TodayStore(IDbContextFactory<ShopContext> factory, TimeProvider clock)
{
    private const int Most = 20;

    // Stored plans of lessons never change, so what is in them is read once.
    private readonly ConcurrentDictionary<Guid, IReadOnlyList<Entry>> kept = new();

    /// <summary>Today's lesson for this student, or null: there is none today, or they have no steps in it.</summary>
    public async Task<TodaysLesson?> FindAsync(
        Viewer viewer,
        Guid studentId,
        Guid courseId,
        Guid projectId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        if (
            !await shop
                .Students.SeenBy(viewer, Deed.SeeClass)
                .AnyAsync(s => s.Id == studentId, cancel)
        )
            return null;
        var newest = await shop
            .LessonPlans.SeenBy(viewer, Deed.SeeLessons)
            .Where(p => p.CourseId == courseId && p.ProjectId == projectId)
            .OrderByDescending(p => p.Number)
            .Select(p => (Guid?)p.Id)
            .FirstOrDefaultAsync(cancel);
        if (newest is not { } plan)
            return null;
        if (!kept.TryGetValue(plan, out var entries))
        {
            var packed = await shop
                .LessonPlans.Where(p => p.Id == plan)
                .Select(p => p.Snapshot)
                .SingleAsync(cancel);
            if (kept.Count >= Most)
                kept.Clear();
            kept[plan] = entries = Read(packed);
        }

        var today = DateOnly.FromDateTime(clock.GetLocalNow().DateTime);
        return entries
            .Where(e => e.StudentId == studentId.ToString() && e.Date == today)
            .Select(e => new TodaysLesson(e.Title, e.StepIds))
            .FirstOrDefault();
    }

    private static List<Entry> Read(byte[] packed)
    {
        var (request, plan) = LessonSnapshot.Unpack(packed);
        return
        [
            .. from student in request.Students
            where student.Work is not null
            let ids = student.Work!.Steps.ToDictionary(s => s.Number, s => s.Id)
            from lesson in plan.Lessons.Select((program, at) => (program, request.Lessons[at]))
            let steps = lesson
                .program.Turns.Where(t => t.Turn.StudentId == student.StudentId)
                .OrderBy(t => t.Start)
                .SelectMany(t => t.Turn.Steps)
                .Where(ids.ContainsKey)
                .Select(n => ids[n])
                .Distinct()
                .ToList()
            where steps.Count > 0
            select new Entry(student.StudentId, lesson.Item2.Date, lesson.Item2.Title, steps),
        ];
    }

    private sealed record Entry(
        string StudentId,
        DateOnly Date,
        string Title,
        IReadOnlyList<string> StepIds
    );
}
