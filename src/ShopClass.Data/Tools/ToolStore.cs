using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Progress;
using ShopClass.Core.Tools;
using ShopClass.Data.Access;
using ShopClass.Data.Plans;
using ShopClass.Data.Progress;
using ShopClass.Data.Store;

namespace ShopClass.Data.Tools;

/// <summary>A course's tools; an empty version where nothing was said yet.</summary>
public sealed record ToolsView(Guid CourseId, ToolChest Chest, Guid Version);

/// <summary>What has been sawn in a course.</summary>
/// <param name="Steps">Steps done with a saw.</param>
/// <param name="Done">All steps that are done: the student's key and the step's.</param>
public sealed record SawLog(
    IReadOnlyList<SawnStep> Steps,
    IReadOnlySet<(string Student, string Step)> Done
);

/// <summary>The tools of a course's shop, its tool sets and its sharpening. Only the course's instructor sees them.</summary>
public sealed class ToolStore(
    IDbContextFactory<ShopContext> factory,
    PlanStore plans,
    ClassNews news,
    TimeProvider clock
)
{
    private readonly PlansInHand inHand = new(plans, news);

    /// <summary>The tools; null when the course is not the viewer's to run.</summary>
    public async Task<ToolsView?> FindAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        if (!await shop.Courses.RunBy(viewer).AnyAsync(c => c.Id == courseId, cancel))
            return null;
        var row = await shop.Set<ToolsRow>()
            .AsNoTracking()
            .SingleOrDefaultAsync(t => t.CourseId == courseId, cancel);
        return View(courseId, row);
    }

    /// <summary>Saves all of it. Problems carry field names of <see cref="ToolChecks"/>.</summary>
    public Task<Outcome<ToolsView>> SaveAsync(
        Viewer viewer,
        ToolsView tools,
        CancellationToken cancel = default
    )
    {
        var tidy = Tidy(tools.Chest);
        return ChangeAsync(
            viewer,
            tools.CourseId,
            tools.Version,
            _ => (tidy, Wording.Problems(ToolChecks.ProblemsIn(tidy))),
            cancel
        );
    }

    /// <summary>Writes down that a line of saws has just been sharpened: its minutes are counted from now.</summary>
    public Task<Outcome<ToolsView>> SharpenedAsync(
        Viewer viewer,
        Guid courseId,
        string tool,
        Guid version,
        CancellationToken cancel = default
    )
    {
        var now = clock.GetUtcNow().UtcDateTime;
        return ChangeAsync(
            viewer,
            courseId,
            version,
            chest =>
                (
                    chest with
                    {
                        Tools =
                        [
                            .. chest.Tools.Select(t =>
                                t.Name == tool ? t with { SharpenedUtc = now } : t
                            ),
                        ],
                    },
                    chest.Tools.Any(t => t.Name == tool)
                        ? []
                        : [new("", $"“{tool}” is not in the list of tools any more.")]
                ),
            cancel
        );
    }

    /// <summary>What has been sawn; null when the course is not the viewer's to run. A step that is in several versions of a plan counts once.</summary>
    public async Task<SawLog?> LogAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        if (!await shop.Courses.RunBy(viewer).AnyAsync(c => c.Id == courseId, cancel))
            return null;
        var said = await shop.Set<StepActionRow>()
            .AsNoTracking()
            .Where(a =>
                a.Plan!.Student!.CourseId == courseId
                && (
                    a.Kind == StepActionKind.Tick
                    || a.Kind == StepActionKind.CheckedOff
                    || a.Kind == StepActionKind.Untick
                )
            )
            .OrderBy(a => a.Number)
            .ToListAsync(cancel);
        var sawn = new Dictionary<(string, string), SawnStep>();
        var done = new HashSet<(string, string)>();
        foreach (var actions in said.GroupBy(a => a.PlanId))
        {
            if (await inHand.FindAsync(viewer, actions.Key, notes: null, cancel) is not { } plan)
                continue;
            var whose = plan.StudentId.ToString();
            var last = actions.GroupBy(a => a.StepId).ToDictionary(a => a.Key, a => a.Last());
            foreach (var step in plan.Work.Steps)
            {
                if (
                    !last.TryGetValue(step.Id, out var action)
                    || action.Kind is StepActionKind.Untick
                )
                    continue;
                done.Add((whose, step.Id));
                // A check after the tick does not saw again; a cut that was taken back and is done now does.
                var first = actions
                    .Where(a => a.StepId == step.Id)
                    .Reverse()
                    .TakeWhile(a => a.Kind is not StepActionKind.Untick)
                    .Last();
                if (ToolBook.SawsOf(step) is { Count: > 0 } saws)
                    sawn[(whose, $"{plan.ProjectId}/{step.Id}")] = new(
                        saws,
                        step.Time.Work,
                        first.SaidUtc
                    );
            }
        }

        return new([.. sawn.Values], done);
    }

    internal static ToolChest Tidy(ToolChest chest) =>
        chest with
        {
            Tools =
            [
                .. chest.Tools.Select(t =>
                    t with
                    {
                        Name = Wording.Tidy(t.Name),
                        Kind = Wording.Tidy(t.Kind),
                    }
                ),
            ],
            Sets =
            [
                .. chest.Sets.Select(s => new ToolSet(
                    Wording.Tidy(s.Name),
                    [.. s.Tools.Select(t => t with { Kind = Wording.Tidy(t.Kind) })]
                )),
            ],
        };

    private async Task<Outcome<ToolsView>> ChangeAsync(
        Viewer viewer,
        Guid courseId,
        Guid version,
        Func<ToolChest, (ToolChest Chest, List<FieldProblem> Problems)> change,
        CancellationToken cancel
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var course = await shop
            .Courses.RunBy(viewer)
            .Include(c => c.Tools)
            .SingleOrDefaultAsync(c => c.Id == courseId, cancel);
        if (course is null)
            return Outcome<ToolsView>.NotFound();
        if (course.IsArchived)
            return Outcome<ToolsView>.Refused(Wording.CourseIsArchived);
        if ((course.Tools?.Version ?? Guid.Empty) != version)
            return Outcome<ToolsView>.ChangedMeanwhile(View(courseId, course.Tools));
        var (chest, problems) = change(course.Tools?.ToChest() ?? ToolChest.Empty);
        if (problems.Count > 0)
            return Outcome<ToolsView>.Refused(problems);
        var row = course.Tools ?? new ToolsRow { CourseId = courseId };
        row.Take(chest);
        if (course.Tools is null)
            shop.Add(row);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<ToolsView>.Saved(View(courseId, row));
    }

    private static ToolsView View(Guid courseId, ToolsRow? row) =>
        new(courseId, row?.ToChest() ?? ToolChest.Empty, row?.Version ?? Guid.Empty);
}
