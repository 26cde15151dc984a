using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Remakes;
using ShopClass.Data.Access;
using ShopClass.Data.Plans;
using ShopClass.Data.Store;

namespace ShopClass.Data.Remakes;

/// <summary>What was done about spoiled parts. The plan itself is never touched.</summary>
public sealed class RemakeStore(IDbContextFactory<ShopContext> factory, TimeProvider clock)
{
    /// <summary>Most remakes kept with one plan version.</summary>
    public const int MostOfAPlan = 40;

    /// <summary>The remakes of a plan version, in the order they were chosen; empty for a plan that is not the viewer's.</summary>
    public async Task<IReadOnlyList<StoredRemake>> OfPlanAsync(
        Viewer viewer,
        Guid planId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var rows = await SeenRemakes(shop, viewer)
            .Where(r => r.PlanId == planId)
            .OrderBy(r => r.Number)
            .ToListAsync(cancel);
        return rows.ConvertAll(View);
    }

    /// <summary>
    /// Stores the way that was chosen. Refused when its own rehearsal did not pass, when it makes something else than the
    /// spoiled blank, or when the course is archived. The same choice sent twice (same <paramref name="id"/>) is stored once.
    /// </summary>
    /// <param name="viewer">Who chooses.</param>
    /// <param name="id">Made by whoever chooses, so that a choice sent again counts once.</param>
    /// <param name="planId">The plan version.</param>
    /// <param name="mishap">What happened.</param>
    /// <param name="option">The way chosen.</param>
    /// <param name="cancel">Gives up before anything is written.</param>
    public async Task<Outcome<StoredRemake>> SaveAsync(
        Viewer viewer,
        Guid id,
        Guid planId,
        Mishap mishap,
        RemakeOption option,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var plan = await shop
            .Plans.AsNoTracking()
            .SeenBy(viewer, Deed.LogWork)
            .Where(p => p.Id == planId)
            .Select(p => new { p.PlanFingerprint, p.Student!.Course!.IsArchived })
            .SingleOrDefaultAsync(cancel);
        if (plan is null)
            return Outcome<StoredRemake>.NotFound();
        if (
            await SeenRemakes(shop, viewer).SingleOrDefaultAsync(r => r.Id == id, cancel) is
            { } there
        )
            return Outcome<StoredRemake>.Saved(View(there));
        if (plan.IsArchived)
            return Outcome<StoredRemake>.Refused(Wording.CourseIsArchived);
        var before = await shop
            .Remakes.Where(r => r.PlanId == planId)
            .Select(r => (int?)r.Number)
            .MaxAsync(cancel);
        if (ProblemWith(plan.PlanFingerprint, mishap, option, before ?? 0) is { } problem)
            return Outcome<StoredRemake>.Refused(problem);
        var row = RowFor(id, planId, (before ?? 0) + 1, mishap, option);
        shop.Remakes.Add(row);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<StoredRemake>.Saved(View(row));
    }

    private static IQueryable<RemakeRow> SeenRemakes(ShopContext shop, Viewer viewer)
    {
        var plans = shop.Plans.SeenBy(viewer, Deed.SeeClass);
        return shop.Remakes.AsNoTracking().Where(r => plans.Any(p => p.Id == r.PlanId));
    }

    private static FieldProblem? ProblemWith(
        string planFingerprint,
        Mishap mishap,
        RemakeOption option,
        int before
    )
    {
        if (PlanSnapshot.Fingerprint(mishap.First ?? mishap.Plan) != planFingerprint)
            return new("Plan", "This belongs to another plan version. Open the plan again.");
        if (before >= MostOfAPlan)
            return new(
                "",
                $"{MostOfAPlan} remakes are kept with this plan already. Make a new plan for what is left."
            );
        if (option.Plan is not { } plan)
            return null;
        if (!plan.Rehearsal.Passed || !plan.Plan.IsComplete)
            return new("Rehearsal", "The rehearsal does not agree to this way of making it again.");
        return option.Blanks.Any(b => b.InFirstPlan == mishap.Spoiled)
            ? null
            : new("Blanks", $"This does not make {mishap.Spoiled} again.");
    }

    private static StoredRemake View(RemakeRow row) =>
        new(
            row.Id,
            row.PlanId,
            row.Number,
            row.MadeUtc,
            new(row.Part, row.Copy, row.Strip),
            row.CutsMade,
            Packed.Unpack<RemakeOption>(row.Option)
        );

    private RemakeRow RowFor(
        Guid id,
        Guid planId,
        int number,
        Mishap mishap,
        RemakeOption option
    ) =>
        new()
        {
            Id = id,
            PlanId = planId,
            Number = number,
            MadeUtc = clock.GetUtcNow().UtcDateTime,
            Part = mishap.Spoiled.Part,
            Copy = mishap.Spoiled.Copy,
            Strip = mishap.Spoiled.Strip,
            CutsMade = mishap.CutsMade,
            Way = option.Way,
            Option = Packed.Pack(option),
        };
}
