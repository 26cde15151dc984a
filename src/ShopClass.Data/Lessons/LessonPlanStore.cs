using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Lessons;
using ShopClass.Data.Access;
using ShopClass.Data.Plans;
using ShopClass.Data.Progress;
using ShopClass.Data.Store;
using ShopClass.Data.Students;

namespace ShopClass.Data.Lessons;

/// <summary>Plans of lessons as versioned snapshots, one line of versions for a course and a project.</summary>
public sealed class LessonPlanStore(
    IDbContextFactory<ShopContext> factory,
    TimeProvider clock,
    LessonStore lessons,
    StudentStore students,
    PlanStore plans,
    PaceStore paces
)
{
    /// <summary>What a plan of lessons would be made for now; null when the course is not the viewer's to run.</summary>
    public Task<LessonBasis?> BasisAsync(
        Viewer viewer,
        Guid courseId,
        Guid projectId,
        CancellationToken cancel = default
    ) => BasisForAsync(viewer, courseId, projectId, Deed.PlanLessons, madeBefore: null, cancel);

    // A plan keeps the pace it was made with: a step timed since does not make it out of date.
    private async Task<LessonBasis?> BasisForAsync(
        Viewer viewer,
        Guid courseId,
        Guid projectId,
        Deed deed,
        LessonRequest? madeBefore,
        CancellationToken cancel
    )
    {
        if (
            viewer is not InstructorViewer
            || !await HasProjectAsync(viewer, courseId, projectId, deed, cancel)
            || await lessons.FindAsync(viewer, courseId, cancel) is not { } found
            || (
                madeBefore is null
                    ? await paces.FindForAsync(viewer, courseId, deed, cancel)
                    : LessonPace.Of(madeBefore)
            )
                is not { } pace
        )
            return null;
        var (work, notes) = (new List<StudentWork>(), new List<string>());
        var states = (await plans.StatesForAsync(viewer, courseId, deed, cancel))
            .Where(s => s.ProjectId == projectId)
            .ToDictionary(s => s.StudentId);
        foreach (var student in await students.ListForAsync(viewer, courseId, deed, cancel))
        {
            var newest = await plans.NewestForAsync(viewer, student.Id, projectId, deed, cancel);
            work.Add(
                LessonPace.In(
                    WorkOf(student, newest, states.GetValueOrDefault(student.Id)),
                    newest,
                    pace
                )
            );
            if (newest is { IsOutOfDate: true })
                notes.Add($"The plan of {student.Shown} is out of date; its steps may change.");
            else if (newest is { Checked.Plan.IsComplete: false })
                notes.Add($"The plan of {student.Shown} does not yield every part yet.");
        }

        return new(
            new()
            {
                Shop = found.Shop.Stations,
                Demonstrations = found.Shop.Demonstrations,
                Lessons = [.. found.Lessons.Select(l => l.Lesson)],
                Students = work,
                Pace = pace.IsUsual ? null : pace.Course,
            },
            notes
        );
    }

    /// <summary>The newest plan, or null. A student gets their own part of it.</summary>
    public async Task<StoredLessonPlan?> NewestAsync(
        Viewer viewer,
        Guid courseId,
        Guid projectId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var row = await shop
            .LessonPlans.AsNoTracking()
            .SeenBy(viewer, Deed.SeeLessons)
            .Where(p => p.CourseId == courseId && p.ProjectId == projectId)
            .OrderByDescending(p => p.Number)
            .FirstOrDefaultAsync(cancel);
        return row is null ? null : await ShowAsync(viewer, row, cancel);
    }

    /// <summary>One version, or null. A student gets their own part of it.</summary>
    public async Task<StoredLessonPlan?> FindAsync(
        Viewer viewer,
        Guid lessonPlanId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var row = await shop
            .LessonPlans.AsNoTracking()
            .SeenBy(viewer, Deed.SeeLessons)
            .SingleOrDefaultAsync(p => p.Id == lessonPlanId, cancel);
        return row is null ? null : await ShowAsync(viewer, row, cancel);
    }

    /// <summary>
    /// Stores a plan as the next version. Refuses one the review finds fault with, and one made for lessons or steps that
    /// have changed (field "Request"). The same plan again gives back the version that is there.
    /// </summary>
    public async Task<Outcome<StoredLessonPlan>> SaveAsync(
        Viewer viewer,
        Guid courseId,
        Guid projectId,
        LessonRequest request,
        LessonPlan plan,
        CancellationToken cancel = default
    )
    {
        if (
            await BasisForAsync(viewer, courseId, projectId, Deed.PlanLessons, request, cancel)
            is not { } now
        )
            return Outcome<StoredLessonPlan>.NotFound();
        var fingerprint = LessonSnapshot.Fingerprint(request);
        if (fingerprint != LessonSnapshot.Fingerprint(now.Request))
            return Refused(
                "Request",
                "Lessons, stations or plans have changed since this was made. Make it again."
            );
        if (LessonReview.Findings(request, plan) is { Count: > 0 } findings)
            return Refused("Review", $"The review does not agree to this plan: {findings[0]}");
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var course = await shop.Courses.RunBy(viewer).SingleAsync(c => c.Id == courseId, cancel);
        if (course.IsArchived)
            return Outcome<StoredLessonPlan>.Refused(Wording.CourseIsArchived);
        var newest = await shop
            .LessonPlans.Where(p => p.CourseId == courseId && p.ProjectId == projectId)
            .OrderByDescending(p => p.Number)
            .FirstOrDefaultAsync(cancel);
        var row = new LessonPlanRow
        {
            Id = Guid.NewGuid(),
            CourseId = courseId,
            ProjectId = projectId,
            Number = (newest?.Number ?? 0) + 1,
            MadeUtc = clock.GetUtcNow().UtcDateTime,
            RequestFingerprint = fingerprint,
            PlanFingerprint = LessonSnapshot.Fingerprint(plan),
            Snapshot = LessonSnapshot.Pack(request, plan),
        };
        if (
            newest?.PlanFingerprint == row.PlanFingerprint
            && newest.RequestFingerprint == row.RequestFingerprint
        )
            return Outcome<StoredLessonPlan>.Saved(View(newest, isOutOfDate: false));
        shop.Add(row);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<StoredLessonPlan>.Saved(View(row, isOutOfDate: false));
    }

    private static Outcome<StoredLessonPlan> Refused(string field, string sentence) =>
        Outcome<StoredLessonPlan>.Refused(new FieldProblem(field, sentence));

    private async Task<bool> HasProjectAsync(
        Viewer viewer,
        Guid courseId,
        Guid projectId,
        Deed deed,
        CancellationToken cancel
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        return await shop
            .Projects.RunBy(viewer, deed)
            .AnyAsync(p => p.Id == projectId && p.CourseId == courseId, cancel);
    }

    private static StudentWork WorkOf(StudentView student, StoredPlan? plan, PlanState? state)
    {
        var boards = plan is null
            ? ""
            : string.Join(", ", plan.Checked.Request.Boards.Select(b => b.Name));
        var without = (plan, state?.Boards ?? 0) switch
        {
            (null, 0) => $"{student.Shown} has no board for this project yet.",
            (null, _) => $"{student.Shown} has a board and no plan for it yet.",
            ({ Work.Steps.Count: 0 }, _) =>
                $"The boards of {student.Shown} yield no part, so there is nothing to do yet.",
            _ => "",
        };
        return new(student.Id.ToString(), student.Shown, boards, plan?.Work, without);
    }

    private async Task<StoredLessonPlan> ShowAsync(
        Viewer viewer,
        LessonPlanRow row,
        CancellationToken cancel
    )
    {
        var people = await students.ListForAsync(viewer, row.CourseId, Deed.SeeLessons, cancel);
        if (viewer is StudentViewer student)
            return OwnPart(
                Named(View(row, isOutOfDate: false), people),
                student.StudentId.ToString()
            );
        var plan = View(row, isOutOfDate: false);
        var now = await BasisForAsync(
            viewer,
            row.CourseId,
            row.ProjectId,
            Deed.SeeLessons,
            plan.Request,
            cancel
        );
        var isOutOfDate =
            now is null || LessonSnapshot.Fingerprint(now.Request) != row.RequestFingerprint;
        return Named(plan with { IsOutOfDate = isOutOfDate }, people);
    }

    // Names as they are shown now: an alias taken since stands in old plans too.
    private static StoredLessonPlan Named(StoredLessonPlan plan, IReadOnlyList<StudentView> people)
    {
        var shown = people.ToDictionary(p => p.Id.ToString(), p => p.Shown, StringComparer.Ordinal);
        return plan with
        {
            Request = plan.Request with
            {
                Students = [.. plan.Request.Students.Select(s => NamedNow(s))],
            },
        };

        StudentWork NamedNow(StudentWork student) =>
            shown.TryGetValue(student.StudentId, out var name)
                ? student with
                {
                    Name = name,
                    WithoutWork = student.WithoutWork.Replace(
                        student.Name,
                        name,
                        StringComparison.Ordinal
                    ),
                }
                : student;
    }

    private static StoredLessonPlan View(LessonPlanRow row, bool isOutOfDate)
    {
        var (request, plan) = LessonSnapshot.Unpack(row.Snapshot);
        return new(
            row.Id,
            row.CourseId,
            row.ProjectId,
            row.Number,
            row.MadeUtc,
            request,
            plan,
            isOutOfDate
        );
    }

    private static StoredLessonPlan OwnPart(StoredLessonPlan whole, string student) =>
        whole with
        {
            Request = whole.Request with
            {
                Pace = null,
                Students =
                [
                    .. whole
                        .Request.Students.Where(s => s.StudentId == student)
                        .Select(s => s with { Pace = null }),
                ],
                Lessons =
                [
                    .. whole.Request.Lessons.Select(l =>
                        l with
                        {
                            Absent = [.. l.Absent.Where(a => a == student)],
                        }
                    ),
                ],
            },
            Plan = whole.Plan with
            {
                Left = [.. whole.Plan.Left.Where(t => t.StudentId == student)],
                Lessons =
                [
                    .. whole.Plan.Lessons.Select(l => new LessonProgram(
                        [.. l.Showings.Where(s => s.StudentId is null || s.StudentId == student)],
                        [.. l.Turns.Where(t => t.Turn.StudentId == student)]
                    )),
                ],
            },
        };
}
