using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Lessons;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Store;

namespace ShopClass.Data.Lessons;

/// <summary>A course's lessons and stations.</summary>
public sealed class LessonStore(IDbContextFactory<ShopContext> factory)
{
    private static readonly FieldProblem TooMany = new(
        "",
        $"A course can have {StoreLimits.LessonsInACourse} lessons, and this one has them. Remove one first."
    );

    /// <summary>
    /// Shop and lessons, or null when the course is not the viewer's. A student sees no absences but their own.
    /// </summary>
    public async Task<LessonsView?> FindAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var course = await shop
            .Courses.AsNoTracking()
            .SeenBy(viewer, Deed.SeeLessons)
            .Include(c => c.Lessons)
            .Include(c => c.Shop)
            .SingleOrDefaultAsync(c => c.Id == courseId, cancel);
        return course is null ? null : ViewOf(course, viewer);
    }

    /// <summary>A new lesson. Problems carry the names of <see cref="Lesson"/>'s properties.</summary>
    public Task<Outcome<LessonView>> AddAsync(
        Viewer viewer,
        Guid courseId,
        Lesson lesson,
        CancellationToken cancel = default
    ) =>
        ChangeAsync(
            viewer,
            courseId,
            (shop, course) =>
            {
                if (course.Lessons.Count >= StoreLimits.LessonsInACourse)
                    return Outcome<LessonView>.Refused(TooMany);
                if (ProblemsIn(lesson) is { Count: > 0 } problems)
                    return Outcome<LessonView>.Refused(problems);
                var row = new LessonRow
                {
                    Id = Guid.NewGuid(),
                    CourseId = courseId,
                    Title = "",
                };
                row.Take(Tidy(lesson, course));
                shop.Add(row);
                return Outcome<LessonView>.Saved(row.ToView());
            },
            cancel
        );

    /// <summary>Saves a lesson. Problems carry the names of <see cref="Lesson"/>'s properties.</summary>
    public Task<Outcome<LessonView>> SaveAsync(
        Viewer viewer,
        Guid courseId,
        Guid lessonId,
        Lesson lesson,
        Guid version,
        CancellationToken cancel = default
    ) =>
        ChangeAsync(
            viewer,
            courseId,
            (_, course) =>
            {
                if (course.Lessons.Find(l => l.Id == lessonId) is not { } row)
                    return Outcome<LessonView>.NotFound();
                if (row.Version != version)
                    return Outcome<LessonView>.ChangedMeanwhile(row.ToView());
                if (ProblemsIn(lesson) is { Count: > 0 } problems)
                    return Outcome<LessonView>.Refused(problems);
                row.Take(Tidy(lesson, course));
                return Outcome<LessonView>.Saved(row.ToView());
            },
            cancel
        );

    /// <summary>Removes a lesson.</summary>
    public Task<Outcome<bool>> RemoveAsync(
        Viewer viewer,
        Guid courseId,
        Guid lessonId,
        CancellationToken cancel = default
    ) =>
        ChangeAsync(
            viewer,
            courseId,
            (shop, course) =>
            {
                if (course.Lessons.Find(l => l.Id == lessonId) is not { } row)
                    return Outcome<bool>.NotFound();
                shop.Remove(row);
                return Outcome<bool>.Saved(true);
            },
            cancel
        );

    /// <summary>
    /// Saves the shop. Problems carry the names of <see cref="StationCounts"/>'s properties, or a skill's name.
    /// </summary>
    public Task<Outcome<ShopView>> SaveShopAsync(
        Viewer viewer,
        Guid courseId,
        StationCounts stations,
        IReadOnlyList<SkillMinutes> demonstrations,
        Guid? version,
        CancellationToken cancel = default
    ) =>
        ChangeAsync(
            viewer,
            courseId,
            (shop, course) =>
            {
                if (course.Shop?.Version != version)
                    return Outcome<ShopView>.ChangedMeanwhile(
                        course.Shop?.ToView() ?? ShopView.Usual
                    );
                var problems = Wording.Problems(
                    LessonChecks
                        .ProblemsIn(stations)
                        .Concat(LessonChecks.ProblemsIn(demonstrations))
                );
                if (problems.Count > 0)
                    return Outcome<ShopView>.Refused(problems);
                var row = course.Shop ?? new ShopRow { CourseId = courseId };
                row.Take(stations, [.. demonstrations.OrderBy(d => d.Skill)]);
                if (course.Shop is null)
                    shop.Add(row);
                return Outcome<ShopView>.Saved(row.ToView());
            },
            cancel
        );

    internal static LessonsView ViewOf(CourseRow course, Viewer viewer) =>
        new(
            course.Shop?.ToView() ?? ShopView.Usual,
            [
                .. course
                    .Lessons.OrderBy(l => l.Date)
                    .ThenBy(l => l.Start)
                    .ThenBy(l => l.Title, Ordering.OfNames)
                    .ThenBy(l => l.Id)
                    .Select(l => Seen(l.ToView(), viewer)),
            ]
        );

    internal static List<FieldProblem> ProblemsIn(Lesson lesson) =>
        [
            .. Wording.Problems(
                (nameof(Lesson.Title), Wording.ProblemWithName(Wording.Tidy(lesson.Title)))
            ),
            .. Wording.Problems(LessonChecks.ProblemsIn(lesson)),
        ];

    private static LessonView Seen(LessonView lesson, Viewer viewer) =>
        viewer is StudentViewer student
            ? lesson with
            {
                Lesson = lesson.Lesson with
                {
                    Absent =
                    [
                        .. lesson.Lesson.Absent.Where(a => a == student.StudentId.ToString()),
                    ],
                },
            }
            : lesson;

    // Whoever is not in the course cannot be absent from it.
    private static Lesson Tidy(Lesson lesson, CourseRow course)
    {
        var known = course.Students.Select(s => s.Id.ToString()).ToHashSet(StringComparer.Ordinal);
        return lesson with
        {
            Title = Wording.Tidy(lesson.Title),
            Shows = [.. lesson.Shows.Distinct()],
            Absent =
            [
                .. lesson
                    .Absent.Where(known.Contains)
                    .Distinct(StringComparer.Ordinal)
                    .Order(StringComparer.Ordinal),
            ],
        };
    }

    private async Task<Outcome<T>> ChangeAsync<T>(
        Viewer viewer,
        Guid courseId,
        Func<ShopContext, CourseRow, Outcome<T>> change,
        CancellationToken cancel
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var course = await shop
            .Courses.RunBy(viewer)
            .Include(c => c.Lessons)
            .Include(c => c.Shop)
            .Include(c => c.Students)
            .SingleOrDefaultAsync(c => c.Id == courseId, cancel);
        if (course is null)
            return Outcome<T>.NotFound();
        if (course.IsArchived)
            return Outcome<T>.Refused(Wording.CourseIsArchived);
        var outcome = change(shop, course);
        if (!outcome.IsSaved)
            return outcome;
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return outcome;
    }
}
