using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Courses;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Alternatives;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Access;
using ShopClass.Data.Projects;
using ShopClass.Data.Store;
using ShopClass.Data.Students;

namespace ShopClass.Data.Plans;

/// <summary>Plans as versioned snapshots.</summary>
public sealed class PlanStore(IDbContextFactory<ShopContext> factory, TimeProvider clock)
{
    /// <summary>What a plan for this student and project would be asked now; null when either is not the viewer's.</summary>
    public async Task<PlanningRequest?> RequestAsync(
        Viewer viewer,
        Guid studentId,
        Guid projectId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        return (await AskAsync(shop, viewer, Deed.SeeClass, studentId, projectId, cancel))?.Request;
    }

    /// <summary>The newest plan, or null.</summary>
    public Task<StoredPlan?> NewestAsync(
        Viewer viewer,
        Guid studentId,
        Guid projectId,
        CancellationToken cancel = default
    ) => NewestForAsync(viewer, studentId, projectId, Deed.SeeClass, cancel);

    /// <summary>The same for whoever needs it to do something else.</summary>
    internal async Task<StoredPlan?> NewestForAsync(
        Viewer viewer,
        Guid studentId,
        Guid projectId,
        Deed deed,
        CancellationToken cancel
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var row = await NewestRowAsync(shop, viewer, deed, studentId, projectId, cancel);
        return row is null ? null : await ShowAsync(shop, viewer, deed, row, cancel);
    }

    /// <summary>One plan version, or null.</summary>
    public Task<StoredPlan?> FindAsync(
        Viewer viewer,
        Guid planId,
        CancellationToken cancel = default
    ) => FindForAsync(viewer, planId, Deed.SeeClass, cancel);

    /// <summary>The same for whoever needs it to do something else.</summary>
    internal async Task<StoredPlan?> FindForAsync(
        Viewer viewer,
        Guid planId,
        Deed deed,
        CancellationToken cancel
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var row = await shop
            .Plans.AsNoTracking()
            .SeenBy(viewer, deed)
            .SingleOrDefaultAsync(p => p.Id == planId, cancel);
        return row is null ? null : await ShowAsync(shop, viewer, deed, row, cancel);
    }

    /// <summary>
    /// Stores a plan as the next version. Refuses one whose rehearsal did not pass, and one made for a request that is
    /// no longer what is stored (field "Request"); the order of goals is the plan's own, and on boards that are true already
    /// so is whether blanks are sawn straight to size. The same plan again for the same hand gives back the version that is there.
    /// </summary>
    public async Task<Outcome<StoredPlan>> SaveAsync(
        Viewer viewer,
        Guid studentId,
        Guid projectId,
        CheckedPlan plan,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        if (
            await AskAsync(shop, viewer, Deed.LogWork, studentId, projectId, cancel)
            is not { } asked
        )
            return Outcome<StoredPlan>.NotFound();
        if (asked.IsArchived)
            return Outcome<StoredPlan>.Refused(Wording.CourseIsArchived);
        if (ProblemWith(plan, asked.Request) is { } problem)
            return Outcome<StoredPlan>.Refused(problem);
        var newest = await NewestRowAsync(shop, viewer, Deed.LogWork, studentId, projectId, cancel);
        var row = RowFor(plan, asked.Hand, studentId, projectId, (newest?.Number ?? 0) + 1);
        if (
            newest?.PlanFingerprint == row.PlanFingerprint
            && View(newest, asked.Hand, asked.Notes, isOutOfDate: false) is var same
            && same.Work.Hand == asked.Hand
        )
            return Outcome<StoredPlan>.Saved(same);
        shop.Plans.Add(row);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<StoredPlan>.Saved(View(row, asked.Hand, asked.Notes, isOutOfDate: false));
    }

    /// <summary>The state of every student of a course on every project.</summary>
    public Task<IReadOnlyList<PlanState>> StatesAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    ) => StatesForAsync(viewer, courseId, Deed.SeeClass, cancel);

    /// <summary>The same for whoever needs it to do something else.</summary>
    internal async Task<IReadOnlyList<PlanState>> StatesForAsync(
        Viewer viewer,
        Guid courseId,
        Deed deed,
        CancellationToken cancel
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        return await PlanStates.ReadAsync(shop, viewer, courseId, deed, cancel);
    }

    internal static PlanningRequest RequestFor(
        CourseRules rules,
        ProjectRow project,
        IEnumerable<BoardRow> boards
    ) =>
        new()
        {
            Rules = rules,
            Project = project.ToProject(),
            Boards = [.. boards.OrderBy(b => b.Position).Select(b => b.ToBoard())],
        };

    private static FieldProblem? ProblemWith(CheckedPlan plan, PlanningRequest stored)
    {
        var made = PlanSnapshot.Fingerprint(plan.Request);
        var isTheCourses = made == PlanSnapshot.Fingerprint(stored);
        if (!isTheCourses && !(PlanSnapshot.Answers(made, stored) && Sizing.IsOnTrueBoards(plan)))
        {
            return new(
                "Request",
                "The project, the boards or the settings have changed since this plan was made. Make it again."
            );
        }

        return
            plan.Rehearsal.Findings.FirstOrDefault(f => f.Kind is Core.Sawing.FindingKind.Must)
                is { } must
            ? new("Rehearsal", $"The rehearsal does not agree to this plan: {must.Sentence}")
            : null;
    }

    private static async Task<Asked?> AskAsync(
        ShopContext shop,
        Viewer viewer,
        Deed deed,
        Guid studentId,
        Guid projectId,
        CancellationToken cancel
    )
    {
        var student = await shop
            .Students.AsNoTracking()
            .SeenBy(viewer, deed)
            .Include(s => s.Course)
            .SingleOrDefaultAsync(s => s.Id == studentId, cancel);
        var project = await shop
            .Projects.AsNoTracking()
            .SeenBy(viewer, deed)
            .Include(p => p.Parts)
            .SingleOrDefaultAsync(p => p.Id == projectId, cancel);
        if (student is null || project is null || student.CourseId != project.CourseId)
            return null;
        var boards = await shop
            .Boards.AsNoTracking()
            .Where(b => b.StudentId == studentId && b.ProjectId == projectId)
            .ToListAsync(cancel);
        var course = student.Course!;
        return new(
            RequestFor(course.Rules, project, boards),
            student.IsLeftHanded ? Hand.Left : Hand.Right,
            course.TechniqueNotes,
            course.IsArchived
        );
    }

    private static Task<PlanRow?> NewestRowAsync(
        ShopContext shop,
        Viewer viewer,
        Deed deed,
        Guid studentId,
        Guid projectId,
        CancellationToken cancel
    ) =>
        shop
            .Plans.AsNoTracking()
            .SeenBy(viewer, deed)
            .Where(p => p.StudentId == studentId && p.ProjectId == projectId)
            .OrderByDescending(p => p.Number)
            .FirstOrDefaultAsync(cancel);

    private static async Task<StoredPlan> ShowAsync(
        ShopContext shop,
        Viewer viewer,
        Deed deed,
        PlanRow row,
        CancellationToken cancel
    )
    {
        var now = await AskAsync(shop, viewer, deed, row.StudentId, row.ProjectId, cancel);
        return View(
            row,
            now?.Hand ?? Hand.Right,
            now?.Notes ?? [],
            now is null || !PlanSnapshot.Answers(row.RequestFingerprint, now.Request)
        );
    }

    /// <summary>
    /// What is stored, in the instructor's own words for how things are done; a plan from before steps were stored gets them
    /// for the hand on the card now.
    /// </summary>
    private static StoredPlan View(
        PlanRow row,
        Hand handNow,
        IReadOnlyList<TechniqueNote> notes,
        bool isOutOfDate
    )
    {
        var plan = PlanSnapshot.Unpack(row.Snapshot);
        var work = row.Work is { } stored
            ? PlanSnapshot.UnpackWork(stored)
            : WorkWriter.Write(plan, handNow);
        return new(
            row.Id,
            row.StudentId,
            row.ProjectId,
            row.Number,
            row.MadeUtc,
            plan,
            TechniqueNotes.InOwnWords(work, notes),
            isOutOfDate
        );
    }

    private PlanRow RowFor(
        CheckedPlan plan,
        Hand hand,
        Guid studentId,
        Guid projectId,
        int number
    ) =>
        new()
        {
            Id = Guid.NewGuid(),
            StudentId = studentId,
            ProjectId = projectId,
            Number = number,
            MadeUtc = clock.GetUtcNow().UtcDateTime,
            RequestFingerprint = PlanSnapshot.Fingerprint(plan.Request),
            PlanFingerprint = PlanSnapshot.Fingerprint(plan),
            IsComplete = plan.Plan.IsComplete,
            Sentence = plan.Verdict.Sentence,
            Snapshot = PlanSnapshot.Pack(plan),
            Work = PlanSnapshot.Pack(WorkWriter.Write(plan, hand)),
        };

    private sealed record Asked(
        PlanningRequest Request,
        Hand Hand,
        IReadOnlyList<TechniqueNote> Notes,
        bool IsArchived
    );
}
