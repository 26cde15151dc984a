using System.Collections.Concurrent;
using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Progress;
using ShopClass.Core.Remakes;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Access;
using ShopClass.Data.Plans;
using ShopClass.Data.Remakes;
using ShopClass.Data.Store;

namespace ShopClass.Data.Progress;

/// <summary>A remake with its steps, and when it was chosen.</summary>
internal sealed record RemakeInHand(RemakeMade Made, DateTime MadeUtc);

/// <summary>Stored remakes never change either, so those of plans that are worked by are kept unpacked, until names go.</summary>
internal sealed class RemakesInHand
{
    private const int Most = 300;
    private readonly ConcurrentDictionary<Guid, RemakeInHand> kept = new();

    public RemakesInHand(ClassNews news) => _ = news.Listen(Hear);

    private void Hear(News news)
    {
        if (news.Kind is NewsKind.Ended)
            kept.Clear();
    }

    /// <summary>The remakes of these plans, each plan's in the order they were chosen.</summary>
    public async Task<ILookup<Guid, RemakeInHand>> OfAsync(
        ShopContext shop,
        IQueryable<RemakeRow> rows,
        CancellationToken cancel
    )
    {
        var there = await rows.OrderBy(r => r.Number)
            .Select(r => new { r.Id, r.PlanId })
            .ToListAsync(cancel);
        List<(Guid Plan, RemakeInHand Remake)> found = [];
        foreach (var line in there)
        {
            if (!kept.TryGetValue(line.Id, out var remake))
            {
                var row = await shop
                    .Remakes.AsNoTracking()
                    .SingleAsync(r => r.Id == line.Id, cancel);
                if (kept.Count >= Most)
                    kept.Clear();
                kept[line.Id] = remake = new(row.ToMade(), row.MadeUtc);
            }

            found.Add((line.PlanId, remake));
        }

        return found.ToLookup(f => f.Plan, f => f.Remake);
    }
}

/// <summary>What counts of a course while its plans are worked by.</summary>
/// <param name="CourseId">Its key.</param>
/// <param name="IsArchived">Whether it is put away.</param>
/// <param name="BoardsWaitForYes">Whether nothing is sawn before the instructor's yes.</param>
/// <param name="FirstCutsUntimed">Whether nobody is asked to time their first cuts.</param>
/// <param name="Notes">How the work is done, in the instructor's own words.</param>
internal sealed record CourseOf(
    Guid CourseId,
    bool IsArchived,
    bool BoardsWaitForYes,
    bool FirstCutsUntimed,
    IReadOnlyList<TechniqueNote> Notes
);

/// <summary>How work stands whose parts may have been remade.</summary>
internal static class Standing
{
    /// <summary>The progress of a plan with its remakes, and their joined steps where there are any.</summary>
    public static PlanInHand Of(
        StoredPlan plan,
        CourseOf course,
        IEnumerable<RemakeInHand> remakes,
        IReadOnlyList<StepActionRow> said
    )
    {
        RemakeInHand[] all = [.. remakes];
        var actions = said.Select(a => a.ToAction());
        if (all.Length == 0)
            return new(plan, course.CourseId, WorkProgress.Of(plan.Work.Steps, actions))
            {
                TimesFirstCuts = !course.FirstCutsUntimed,
            };
        var joined = RemakeSteps.Join(
            plan.Work,
            [.. all.Select(r => r.Made)],
            number => DoneBefore(said, all.First(r => r.Made.Number == number).MadeUtc),
            course.Notes
        );
        var settled = joined.Settled.Select(id => Said(id, StepActionKind.Tick));
        var progress = WorkProgress.Of(joined.Steps, [.. WithSettled(said, all), .. settled]);
        return new(plan, course.CourseId, progress)
        {
            Remade = joined,
            TimesFirstCuts = !course.FirstCutsUntimed,
        };
    }

    // A spoiled piece is settled once its remake is chosen; it may be spoiled again after that.
    private static IEnumerable<StepAction> WithSettled(
        IReadOnlyList<StepActionRow> said,
        RemakeInHand[] remakes
    )
    {
        var next = 0;
        foreach (var action in said)
        {
            for (; next < remakes.Length && remakes[next].MadeUtc < action.StoredUtc; next++)
                foreach (var settled in Settled(said, remakes[next]))
                    yield return settled;
            yield return action.ToAction();
        }

        for (; next < remakes.Length; next++)
            foreach (var settled in Settled(said, remakes[next]))
                yield return settled;
    }

    private static IEnumerable<StepAction> Settled(
        IEnumerable<StepActionRow> said,
        RemakeInHand remake
    ) =>
        from action in said
        where
            action.Kind is StepActionKind.Spoiled
            && action.Text == remake.Made.Spoiled.ToString()
            && action.StoredUtc <= remake.MadeUtc
        select Said(action.StepId, StepActionKind.Settled, action.Text);

    // By when it was said: what waited on a phone for a signal was done before.
    private static HashSet<string> DoneBefore(IEnumerable<StepActionRow> said, DateTime made)
    {
        var done = new HashSet<string>(StringComparer.Ordinal);
        foreach (var action in said.Where(a => a.SaidUtc <= made))
        {
            if (action.Kind is StepActionKind.Tick or StepActionKind.CheckedOff)
                done.Add(action.StepId);
            else if (action.Kind is StepActionKind.Untick)
                done.Remove(action.StepId);
        }

        return done;
    }

    private static StepAction Said(string step, StepActionKind kind, string text = "") =>
        new(Guid.Empty, step, kind, text);
}
