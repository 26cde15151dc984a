using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Paces;
using ShopClass.Core.Progress;
using ShopClass.Data.Access;
using ShopClass.Data.Learning;
using ShopClass.Data.Plans;
using ShopClass.Data.Store;

namespace ShopClass.Data.Progress;

/// <summary>
/// What is said about the steps of a plan. Each action is written durably in a transaction of its own before it is
/// answered, and counts once however often it is sent.
/// </summary>
public sealed class ProgressStore(
    IDbContextFactory<ShopContext> factory,
    PlanStore plans,
    TimeProvider clock,
    ClassNews news
) : IDisposable
{
    private readonly PlansInHand inHand = new(plans, news);
    private readonly RemakesInHand remakesInHand = new(news);
    private readonly Turns oneAtATime = new();

    /// <summary>A plan and how far it is done; null when it is not the viewer's.</summary>
    public async Task<PlanInHand?> FindAsync(
        Viewer viewer,
        Guid planId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        return await CourseOfAsync(shop, viewer, Deed.SeeClass, planId, cancel) is { } course
            ? await LookAsync(shop, viewer, planId, course, cancel)
            : null;
    }

    /// <summary>The plan a student works by, as <see cref="CurrentPlan"/> says. Null when there is none.</summary>
    /// <param name="viewer">Who asks.</param>
    /// <param name="studentId">Whose.</param>
    /// <param name="projectId">For which project; null for any.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<PlanInHand?> CurrentAsync(
        Viewer viewer,
        Guid studentId,
        Guid? projectId = null,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var mine = shop
            .Plans.SeenBy(viewer, Deed.SeeClass)
            .Where(p =>
                p.StudentId == studentId && (projectId == null || p.ProjectId == projectId)
            );
        var lines = await CurrentPlan.LinesOf(shop, mine).ToListAsync(cancel);
        return
            CurrentPlan.Of(lines) is { } current
            && await CourseOfAsync(shop, viewer, Deed.SeeClass, current.Id, cancel) is { } course
            ? await LookAsync(shop, viewer, current.Id, course, cancel)
            : null;
    }

    /// <summary>
    /// Stores what is said about a step. The same id again changes nothing and is answered like the first time. Refuses
    /// what cannot be said as the work stands, with a sentence.
    /// </summary>
    /// <param name="viewer">The student whose plan it is, or their instructor.</param>
    /// <param name="planId">The plan.</param>
    /// <param name="action">What is said.</param>
    /// <param name="saidUtc">When, by the device's clock; null for now.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<Outcome<PlanInHand>> SayAsync(
        Viewer viewer,
        Guid planId,
        StepAction action,
        DateTime? saidUtc = null,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        // Unpacked before the turn to write: nobody waits for somebody else's plan.
        if (
            await CourseOfAsync(shop, viewer, Deed.WorkTheRoom, planId, cancel) is not { } before
            || await inHand.FindAsync(viewer, planId, before.Notes, cancel) is not { } plan
        )
            return Outcome<PlanInHand>.NotFound();
        using var turn = await oneAtATime.TakeAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        if (await CourseOfAsync(shop, viewer, Deed.WorkTheRoom, planId, cancel) is not { } course)
            return Outcome<PlanInHand>.NotFound();
        var said = await SaidAsync(shop, planId, cancel);
        var remakes = await RemakesAsync(shop, planId, cancel);
        var there = await shop.Set<StepActionRow>()
            .AsNoTracking()
            .SingleOrDefaultAsync(a => a.Id == action.Id, cancel);
        if (there is not null)
            return
                there.PlanId == planId && there.StepId == action.StepId && there.Kind == action.Kind
                ? Outcome<PlanInHand>.Saved(Standing.Of(plan, course, remakes, said))
                : Outcome<PlanInHand>.Refused(SayChecks.SaidAlready);
        if (course.IsArchived)
            return Outcome<PlanInHand>.Refused(Wording.CourseIsArchived);
        var now = Standing.Of(plan, course, remakes, said);
        if (
            viewer is StudentViewer
            && course.BoardsWaitForYes
            && await SayChecks.WaitsForYesAsync(shop, now, action, cancel) is { } waits
        )
            return Outcome<PlanInHand>.Refused(waits);
        var tidy = action with { Text = Wording.Tidy(action.Text) };
        if (SayChecks.ProblemWith(viewer, now.Progress, tidy) is { } problem)
            return Outcome<PlanInHand>.Refused(problem);
        var row = RowFor(viewer, planId, tidy, saidUtc);
        StepTiming.Add(row, now, tidy);
        shop.Add(row);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        news.Tell(new(NewsKind.Progress, course.CourseId, plan.StudentId));
        return Outcome<PlanInHand>.Saved(Standing.Of(plan, course, remakes, [.. said, row]));
    }

    /// <summary>Where every student of a course is, by shown name. For the instructor; empty for anybody else.</summary>
    public async Task<IReadOnlyList<StudentAtWork>> RoomAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var students = await shop
            .Students.AsNoTracking()
            .RunBy(viewer, Deed.WorkTheRoom)
            .Where(s => s.CourseId == courseId)
            .ToListAsync(cancel);
        var course = await shop
            .Courses.RunBy(viewer, Deed.WorkTheRoom)
            .Where(c => c.Id == courseId)
            .Select(c => new CourseOf(
                c.Id,
                c.IsArchived,
                c.BoardsWaitForYes,
                c.FirstCutsUntimed,
                c.TechniqueNotes
            ))
            .SingleOrDefaultAsync(cancel);
        if (course is null)
            return [];
        var inCourse = shop
            .Plans.SeenBy(viewer, Deed.WorkTheRoom)
            .Where(p => p.Student!.CourseId == courseId);
        var plansOf = (await CurrentPlan.LinesOf(shop, inCourse).ToListAsync(cancel)).ToLookup(p =>
            p.StudentId
        );
        var said = (
            await shop.Set<StepActionRow>()
                .AsNoTracking()
                .Where(a => a.Plan!.Student!.CourseId == courseId)
                .OrderBy(a => a.Number)
                .ToListAsync(cancel)
        ).ToLookup(a => a.PlanId);
        var remakes = await remakesInHand.OfAsync(
            shop,
            shop.Remakes.Where(r => r.Plan!.Student!.CourseId == courseId),
            cancel
        );
        var start = await PaceStore.StartAsync(shop, courseId, cancel);
        var pace = PaceEstimate.Of(
            LearnedReading.Timed(
                plansOf.SelectMany(s => s.SelectMany(p => said[p.Id].Select(a => (s.Key, a))))
            ),
            start
        );
        List<StudentAtWork> room = [];
        foreach (
            var student in students
                .Select(s => s.ToView())
                .OrderBy(s => s.Shown, Ordering.OfNames)
                .ThenBy(s => s.Id)
        )
        {
            var current = CurrentPlan.Of(plansOf[student.Id]);
            var plan = current is null
                ? null
                : await inHand.FindAsync(viewer, current.Id, course.Notes, cancel);
            room.Add(
                plan is null
                    ? AtWork.Of(student, course, null, [], [], StepPace.Usual)
                    : AtWork.Of(
                        student,
                        course,
                        plan,
                        remakes[plan.Id],
                        [.. said[plan.Id]],
                        StepPace.Of(pace, student.Id.ToString())
                    )
            );
        }

        return room;
    }

    /// <summary>Whose plans were made last, newest first: for the app itself, to have them ready.</summary>
    public async Task<IReadOnlyList<StudentViewer>> LastPlannedAsync(
        int most,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var lines = await shop
            .Plans.Where(p => !p.Student!.Course!.IsArchived)
            .OrderByDescending(p => p.MadeUtc)
            .Take(most)
            .Select(p => new { p.StudentId, p.Student!.CourseId })
            .ToListAsync(cancel);
        return [.. lines.Distinct().Select(l => new StudentViewer(l.StudentId, l.CourseId))];
    }

    public void Dispose() => oneAtATime.Dispose();

    private StepActionRow RowFor(Viewer viewer, Guid planId, StepAction action, DateTime? saidUtc)
    {
        var now = clock.GetUtcNow().UtcDateTime;
        return new()
        {
            Id = action.Id,
            PlanId = planId,
            StepId = action.StepId,
            Kind = action.Kind,
            Text = action.Text,
            Size = action.Size,
            ByInstructor = viewer is InstructorViewer,
            StoredUtc = now,
            // A device's clock may be wrong; what was said was said before it was stored.
            SaidUtc = saidUtc is { } said && said < now ? said : now,
        };
    }

    private async Task<PlanInHand?> LookAsync(
        ShopContext shop,
        Viewer viewer,
        Guid planId,
        CourseOf course,
        CancellationToken cancel
    ) =>
        await inHand.FindAsync(viewer, planId, course.Notes, cancel) is { } plan
            ? Standing.Of(
                plan,
                course,
                await RemakesAsync(shop, planId, cancel),
                await SaidAsync(shop, planId, cancel)
            )
            : null;

    private async Task<IEnumerable<RemakeInHand>> RemakesAsync(
        ShopContext shop,
        Guid planId,
        CancellationToken cancel
    ) =>
        (await remakesInHand.OfAsync(shop, shop.Remakes.Where(r => r.PlanId == planId), cancel))[
            planId
        ];

    private static Task<List<StepActionRow>> SaidAsync(
        ShopContext shop,
        Guid planId,
        CancellationToken cancel
    ) =>
        shop.Set<StepActionRow>()
            .AsNoTracking()
            .Where(a => a.PlanId == planId)
            .OrderBy(a => a.Number)
            .ToListAsync(cancel);

    private static Task<CourseOf?> CourseOfAsync(
        ShopContext shop,
        Viewer viewer,
        Deed deed,
        Guid planId,
        CancellationToken cancel
    ) =>
        shop
            .Plans.SeenBy(viewer, deed)
            .Where(p => p.Id == planId)
            .Select(p => new CourseOf(
                p.Student!.CourseId,
                p.Student.Course!.IsArchived,
                p.Student.Course.BoardsWaitForYes,
                p.Student.Course.FirstCutsUntimed,
                p.Student.Course.TechniqueNotes
            ))
            .SingleOrDefaultAsync(cancel);
}
