namespace ShopClass.Core.Planning.Search;

/// <summary>
/// One run of the planner: a good plan at once, then for each choice of glue-ups and of boards, best first, everything
/// the boards could yield.
/// </summary>
internal sealed class PlanSearch(
    PlanningRequest request,
    IProgress<PlanProgress>? progress,
    CancellationToken cancel
)
{
    private const int LongList = 1_500;
    private readonly Steps steps = new(request.StepLimit, cancel);
    private readonly IReadOnlyList<PlanGoal> order = GoalOrder.Of(request);
    private Candidate? best;
    private Score? ideal;
    private bool isProven = true;

    /// <summary>Whether these boards yield everything, as far as so many steps can tell.</summary>
    public static bool Fits(PlanningRequest request)
    {
        var search = new PlanSearch(request, null, CancellationToken.None);
        foreach (var choice in GlueUpChoices.For(request))
        {
            var bench = Bench.Lay(request, choice, costMatters: false);
            if (search.FitsOn(bench) || search.steps.AreUp)
                return search.best is { IsComplete: true };
        }

        return false;
    }

    private bool FitsOn(Bench bench)
    {
        if (SimpleBounds.AreTooSmall(bench, bench.Stocks) || !bench.EachHasABoard)
            return false;
        var greedy = new Greedy(bench);
        foreach (var lead in Greedy.Leads)
        {
            Offer(Candidate.Of(bench, greedy.LayOut(bench.Stocks, lead)));
            if (best!.IsComplete)
                return true;
        }

        if (ExactSearch.Over(bench, steps) is not { } exact || bench.Stocks.Count > 10)
            return false;
        foreach (var chosen in BoardChoices.Different(bench.Stocks).Reverse())
        {
            if (!SimpleBounds.AreTooSmall(bench, chosen))
                TryAsTheyAre(bench, exact, chosen, null);
            if (best!.IsComplete || steps.AreUp)
                break;
        }

        return best!.IsComplete;
    }

    public CutPlan Run()
    {
        var choices = GlueUpChoices.For(request);
        isProven = choices.Count < GlueUpChoices.MostChoices;
        List<Bench> all = [.. choices.Select(c => Bench.Lay(request, c))];
        List<Bench> benches = [.. all.Where(b => b.EachHasABoard)];
        if (benches.Count == 0)
            benches = all[..1];
        foreach (var bench in benches)
        {
            TryGreedy(bench);
            if (best!.IsComplete)
                break;
        }

        foreach (var bench in benches)
        {
            if (steps.AreUp || (ideal is { } i && !MayBeat(0, bench.Joints, i)))
                break;
            TryExact(bench);
        }

        return Write(best!, all[0]) with
        {
            // The only choice was looked through to its end, and no boards had room for it, not even if they were clear.
            IsProvenImpossible =
                isProven
                && ideal is null
                && !steps.AreUp
                && !best!.IsComplete
                && choices.Count == 1
                && all[0].Stocks.Count > 0,
        };
    }

    private void TryGreedy(Bench bench)
    {
        var greedy = new Greedy(bench);
        var looks = bench.Kinds.Count * bench.Demand.Sum();
        // A very long parts list gets one plan on all boards rather than seventy slow ones.
        var isLong = looks > LongList;
        foreach (var stocks in isLong ? [bench.Stocks] : BoardChoices.Orders(bench.Stocks))
        {
            foreach (var lead in isLong ? [Greedy.Lead.Largest] : Greedy.Leads)
            {
                Offer(Candidate.Of(bench, greedy.LayOut(stocks, lead)));
                if (!steps.Take(20 + looks))
                    return;
            }
        }
    }

    private void TryExact(Bench bench)
    {
        if (bench.Kinds.Count == 0 || bench.Stocks.Count == 0)
            return;
        if (ExactSearch.Over(bench, steps) is not { } exact || bench.Stocks.Count > 10)
        {
            isProven = false;
            return;
        }

        foreach (var chosen in BoardChoices.Different(bench.Stocks))
        {
            var cost = BoardCost.Of(chosen.Select(s => s.Board));
            if (SimpleBounds.AreTooSmall(bench, chosen))
                continue;
            if (ideal is null || MayBeat(cost, bench.Joints, ideal.Value))
                TryBoards(bench, exact, chosen, cost);
            else if (best is { IsComplete: true } b && !MayBeat(cost, bench.Joints, b.Score))
                continue;
            else
                TryAsTheyAre(bench, exact, chosen, null);
            if (steps.AreUp)
                break;
        }

        isProven &= exact.IsWhole;
        if (!best!.IsComplete && exact.Most(bench.Stocks) is { } most)
            Offer(Candidate.Of(bench, most.ToDraft(bench)));
    }

    private void TryBoards(Bench bench, ExactSearch exact, IReadOnlyList<Stock> chosen, Int128 cost)
    {
        if (exact.OnClearWood(chosen) is not { } clear)
            return;
        var score = new Score(
            cost,
            bench.Joints,
            clear.Cost.Effort,
            clear.Cost.Lines,
            clear.Length
        );
        if (ideal is null || score.CompareTo(ideal.Value, order) < 0)
            ideal = score;
        TryAsTheyAre(bench, exact, chosen, clear);
    }

    private void TryAsTheyAre(
        Bench bench,
        ExactSearch exact,
        IReadOnlyList<Stock> chosen,
        Allotment? clear
    )
    {
        clear ??= exact.OnClearWood(chosen);
        if (clear is null)
            return;
        if (chosen.All(s => s.IsClear))
        {
            Offer(Candidate.Of(bench, clear.ToDraft(bench)));
            return;
        }

        if (exact.Shuffled(clear) is { } shuffled)
            Offer(Candidate.Of(bench, shuffled));
        if (best!.IsComplete && ideal is { } i && best.Score.CompareTo(i, order) == 0)
            return;
        if (exact.AsTheyAre(chosen) is { } real)
            Offer(Candidate.Of(bench, real.ToDraft(bench)));
    }

    /// <summary>Whether a plan with these outer values could be better, as far as the goals before the first other one tell.</summary>
    private bool MayBeat(Int128 boards, Int128 joints, Score than)
    {
        foreach (var goal in order)
        {
            if (goal is not (PlanGoal.Boards or PlanGoal.GlueUps))
                return true;
            var by = (goal is PlanGoal.Boards ? boards : joints).CompareTo(than.For(goal));
            if (by != 0)
                return by < 0;
        }

        return true;
    }

    private void Offer(Candidate candidate)
    {
        if (!candidate.Beats(best))
            return;
        best = candidate;
        progress?.Report(new(steps.Taken, request.StepLimit, Write(candidate, candidate.Bench)));
    }

    private CutPlan Write(Candidate candidate, Bench first) =>
        new()
        {
            Boards = candidate.Boards,
            Missing = candidate.Missing,
            GlueUps = new SortedDictionary<string, int>(
                candidate.Bench.GlueUps.ToDictionary(StringComparer.Ordinal),
                StringComparer.Ordinal
            ),
            Goals = GoalBounds.Of(
                request,
                candidate.Score,
                SimpleBounds.Of(first),
                isProven && !steps.AreUp ? ideal : null
            ),
            StepsTaken = steps.Taken,
        };
}
