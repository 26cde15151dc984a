using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Paces;
using ShopClass.Core.Planning;
using ShopClass.Core.Progress;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Plans;
using ShopClass.Data.Progress;
using ShopClass.Data.Remakes;
using ShopClass.Data.Store;

namespace ShopClass.Data.Learning;

/// <summary>Reads off what was said about steps what a course has learned. Whether anybody may see it is asked before.</summary>
internal static class LearnedReading
{
    /// <summary>
    /// What the next course could start from: what this one learned, on top of what it started from itself; where it has
    /// learned nothing, what came with its file.
    /// </summary>
    public static async Task<Learned> OfAsync(
        ShopContext shop,
        Guid courseId,
        CancellationToken cancel
    )
    {
        var start = await shop.Set<StartRow>()
            .AsNoTracking()
            .SingleOrDefaultAsync(s => s.CourseId == courseId, cancel);
        var from = start is { Choice: StartChoice.Taken } ? start.ToLearned() : Learned.Nothing;
        var timed = await TimedAsync(shop, courseId, cancel);
        var learned = from.Since(
            PaceEstimate.Of(timed, from.Pace).Course,
            await ProjectsAsync(shop, courseId, cancel)
        );
        return learned.IsNothing && start is not null ? start.ToLearned() : learned;
    }

    /// <summary>The steps of a course that were timed, each once.</summary>
    public static async Task<IReadOnlyCollection<TimedStep>> TimedAsync(
        ShopContext shop,
        Guid courseId,
        CancellationToken cancel
    )
    {
        var said = await shop.Set<StepActionRow>()
            .AsNoTracking()
            .Where(a => a.Plan!.Student!.CourseId == courseId)
            .Where(a => a.Minutes != null || a.Kind == StepActionKind.Untick)
            .OrderBy(a => a.Number)
            .Select(a => new { a.Plan!.StudentId, Row = a })
            .ToListAsync(cancel);
        return Timed(said.Select(s => (s.StudentId, s.Row)));
    }

    /// <summary>The steps that were timed, by what was said in order.</summary>
    public static IReadOnlyCollection<TimedStep> Timed(
        IEnumerable<(Guid StudentId, StepActionRow Row)> said
    )
    {
        // A tick taken back takes its minutes with it; the step ticked again is timed once.
        var timed = new Dictionary<(Guid, string), TimedStep>();
        foreach (var (student, row) in said)
        {
            if (row is { Minutes: { } taken, PlannedMinutes: { } planned, StepKind: { } kind })
                timed[(row.PlanId, row.StepId)] = new(
                    student.ToString(),
                    kind,
                    row.SpeciesId,
                    planned,
                    taken
                );
            else if (row.Kind is StepActionKind.Untick)
                timed.Remove((row.PlanId, row.StepId));
        }

        return timed.Values;
    }

    // By each student's plan in hand, where anything was said about its steps.
    private static async Task<IReadOnlyList<LearnedProject>> ProjectsAsync(
        ShopContext shop,
        Guid courseId,
        CancellationToken cancel
    )
    {
        var lines = await CurrentPlan
            .LinesOf(shop, shop.Plans.Where(p => p.Student!.CourseId == courseId))
            .ToListAsync(cancel);
        var current = lines
            .GroupBy(l => (l.StudentId, l.ProjectId))
            .Select(g => CurrentPlan.Of(g)!)
            .Where(l => l.LastSaid is not null)
            .Select(l => l.Id)
            .ToHashSet();
        var rows = await shop
            .Plans.AsNoTracking()
            .Where(p => current.Contains(p.Id))
            .Select(p => new PlanDone(p.Id, p.Project!.Name, p.Snapshot, p.Work))
            .ToListAsync(cancel);
        var said = (
            await shop.Set<StepActionRow>()
                .AsNoTracking()
                .Where(a => current.Contains(a.PlanId))
                .OrderBy(a => a.Number)
                .ToListAsync(cancel)
        ).ToLookup(a => a.PlanId);
        var remakes = (
            await shop
                .Remakes.AsNoTracking()
                .Where(r => current.Contains(r.PlanId))
                .OrderBy(r => r.Number)
                .ToListAsync(cancel)
        ).ToLookup(r => r.PlanId);
        return
        [
            .. rows.GroupBy(r => r.Project, StringComparer.Ordinal)
                .OrderBy(g => g.Key, Access.Ordering.OfNames)
                .Select(g => Of(g.Key, [.. g], said, remakes))
                .Where(p => p.Waste is not null || p.Spoiled.Count > 0),
        ];
    }

    private static LearnedProject Of(
        string name,
        IReadOnlyList<PlanDone> plans,
        ILookup<Guid, StepActionRow> said,
        ILookup<Guid, RemakeRow> remakes
    )
    {
        List<(CheckedPlan, IReadOnlyList<CheckedPlan>)> sawn = [];
        var (made, spoiled) = (new List<string>(), new List<string>());
        foreach (var row in plans)
        {
            var plan = PlanSnapshot.Unpack(row.Snapshot);
            var parts = plan.Request.Project.Parts;
            IReadOnlyList<Step> steps = row.Work is { } work
                ? PlanSnapshot.UnpackWork(work).Steps
                : [];
            var done = Done(said[row.Id]);
            var pieces = steps
                .Where(s => done.Contains(s.Id))
                .SelectMany(MadeAt)
                .Select(p => p.Split('.')[0])
                .Distinct();
            List<string> letters = [.. LettersOf(pieces, parts)];
            if (letters.Count == 0)
                continue;
            // What is half sawn does not tell yet what it wastes.
            if (
                plan.Plan.IsComplete
                && steps.Where(s => s.Cut is not null).All(s => done.Contains(s.Id))
            )
                sawn.Add(
                    (
                        plan,
                        [
                            .. remakes[row.Id]
                                .Select(r =>
                                    Packed.Unpack<Core.Remakes.RemakeOption>(r.Option).Plan
                                )
                                .OfType<CheckedPlan>(),
                        ]
                    )
                );
            made.AddRange(letters);
            made.AddRange(remakes[row.Id].Select(r => r.Part));
            spoiled.AddRange(
                LettersOf(
                    said[row.Id]
                        .Where(a => a.Kind is StepActionKind.Spoiled)
                        .DistinctBy(a => (a.StepId, a.Text))
                        .Select(a => a.Text),
                    parts
                )
            );
        }

        return new(
            name,
            WoodUsed.Waste(sawn),
            [
                .. made.Where(m => m.Length > 0)
                    .GroupBy(m => m, StringComparer.Ordinal)
                    .OrderBy(g => g.Key, StringComparer.Ordinal)
                    .Select(g => new SpoiledShare(
                        g.Key,
                        Math.Min(g.Count(), spoiled.Count(s => s == g.Key)),
                        g.Count()
                    )),
            ]
        );
    }

    private static IEnumerable<string> LettersOf(
        IEnumerable<string> pieces,
        IReadOnlyList<Part> parts
    ) => pieces.Select(p => WoodUsed.PartOf(p, parts)).Where(p => p.Length > 0);

    // A blank is made when the breakdown leaves it, or when a later step has worked on it.
    private static IEnumerable<string> MadeAt(Step step) =>
        step.Kind <= StepKind.Rip
            ? step.Leaves.Where(l => l.Use is PieceUse.Work).Select(l => l.Name)
            : step.Pieces;

    private static HashSet<string> Done(IEnumerable<StepActionRow> said)
    {
        var done = new HashSet<string>(StringComparer.Ordinal);
        foreach (var action in said)
        {
            if (action.Kind is StepActionKind.Tick or StepActionKind.CheckedOff)
                done.Add(action.StepId);
            else if (action.Kind is StepActionKind.Untick)
                done.Remove(action.StepId);
        }

        return done;
    }

    private sealed record PlanDone(Guid Id, string Project, byte[] Snapshot, byte[]? Work);
}
