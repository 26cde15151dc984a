using System.Globalization;

namespace ShopClass.Core.Planning.Alternatives;

/// <summary>Lays the same parts out on the same boards for different orders of goals.</summary>
public static class OtherWays
{
    /// <summary>The most ways shown beside one another.</summary>
    public const int Most = 3;

    /// <summary>
    /// Up to three complete, rehearsed plans with different layouts, the usual first. Each is at least as good as the
    /// others at what it puts first: one that another beats there, because its search met the step limit, is left out.
    /// </summary>
    /// <param name="request">What is asked; its own order of goals is not looked at.</param>
    /// <param name="progress">Told of better plans, and how far all searches together are, as steps of one limit.</param>
    /// <param name="cancel">Stops the search.</param>
    /// <exception cref="OperationCanceledException">It was stopped: half the ways would say nothing.</exception>
    public static IReadOnlyList<OtherWay> Of(
        PlanningRequest request,
        IProgress<PlanProgress>? progress = null,
        CancellationToken cancel = default
    )
    {
        var ways = new List<OtherWay>();
        foreach (var kind in WayKinds.All)
        {
            var teller = progress is null
                ? null
                : new Teller(progress, ways.Count, request.StepLimit);
            var made = CheckedPlan.Make(request with { Goals = kind.Goals() }, teller, cancel);
            cancel.ThrowIfCancellationRequested();
            ways.Add(new(kind, made));
        }

        var good = ways.Where(w => w.Plan.Plan.IsComplete && w.Plan.Rehearsal.Passed).ToList();
        return
        [
            .. good.Where(way => good.All(other => !Beats(other, way)))
                .DistinctBy(way => Layout(way.Plan.Plan), StringComparer.Ordinal)
                .Take(Most),
        ];
    }

    /// <summary>
    /// Whether two plans lay the blanks alike: copies of a part may have changed places, and what one plan calls two
    /// sections another may call one strip.
    /// </summary>
    public static bool AreAlike(CutPlan one, CutPlan other) =>
        string.Equals(Layout(one), Layout(other), StringComparison.Ordinal);

    private static bool Beats(OtherWay other, OtherWay way)
    {
        var first = way.Kind.Goals()[0];
        return Value(other, first) < Value(way, first);
    }

    private static Int128 Value(OtherWay way, PlanGoal goal) =>
        way.Plan.Plan.Goals.First(g => g.Goal == goal).Value;

    private static string Layout(CutPlan plan) =>
        string.Join(
            '\n',
            from layout in plan.Boards
            from section in layout.Sections
            from strip in section.Strips
            from blank in strip.Blanks
            orderby blank.From, strip.Near
            select string.Create(
                CultureInfo.InvariantCulture,
                $"{layout.BoardId} {strip.Near.Ticks} {strip.Far.Ticks} {blank.Key.Part} {blank.From.Ticks} {blank.To.Ticks}"
            )
        );

    /// <summary>Counts the steps of one search in with those of the others.</summary>
    private sealed class Teller(IProgress<PlanProgress> all, int before, int limit)
        : IProgress<PlanProgress>
    {
        public void Report(PlanProgress value)
        {
            // A limit is a limit for each search; all of them together may be more than an int holds.
            var quarter = limit / WayKinds.All.Count;
            all.Report(
                value with
                {
                    StepsTaken = before * quarter + value.StepsTaken / WayKinds.All.Count,
                    StepLimit = limit,
                }
            );
        }
    }
}
