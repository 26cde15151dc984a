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
    private bool isOnlyChoice;

    /// <summary>Cost of the cheapest boards not known to be too few; null before any was looked at.</summary>
    private Int128? leastBoards;

    public CutPlan Run()
    {
        var choices = GlueUpChoices.For(request);
        isProven = choices.Count < GlueUpChoices.MostChoices;
        isOnlyChoice = choices.Count == 1;
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
        if (bench.Stocks.Count > BoardChoices.MostBoards)
        {
            isProven = false;
            return;
        }

        var search = new ClearSearch(bench, steps);
        foreach (var chosen in BoardChoices.Different(bench.Stocks))
        {
            if (SimpleBounds.AreTooSmall(bench, chosen))
                continue;
            var cost = BoardCost.Of(chosen.Select(s => s.Board));
            var mayBeIdeal = ideal is null || MayBeat(cost, bench.Joints, ideal.Value);
            if (
                !mayBeIdeal
                && best is { IsComplete: true } b
                && !MayBeat(cost, bench.Joints, b.Score)
            )
                continue;
            TryBoards(bench, search, chosen, mayBeIdeal ? cost : null);
            if (steps.AreUp)
                break;
        }

        if (!best!.IsComplete && search.Most(bench.Stocks) is { } most)
            Offer(Candidate.Of(bench, most));
    }

    private void TryBoards(
        Bench bench,
        ClearSearch search,
        IReadOnlyList<Stock> chosen,
        Int128? idealCost
    )
    {
        var isCheapest = leastBoards is null;
        leastBoards ??= BoardCost.Of(chosen.Select(s => s.Board));
        var have = HadOn(bench, chosen);
        var answer = search.On(
            chosen,
            have is { } h ? (h.Cost, h.LengthUsed) : null,
            first =>
            {
                if (chosen.All(s => s.IsClear))
                    Offer(Candidate.Of(bench, first.ToDraft(bench)));
            }
        );
        isProven &= answer.IsSettled;
        if (isCheapest && answer is { IsSettled: true, Plan: null } && have is null)
            leastBoards = null;
        var (cost, length) = answer.Plan is { } plan
            ? (plan.Cost, plan.LengthUsed)
            : (have?.Cost, have?.LengthUsed);
        if (idealCost is { } boards && cost is { } c)
        {
            var score = new Score(boards, bench.Joints, c.Effort, c.Lines, length!.Value);
            if (ideal is null || score.CompareTo(ideal.Value, order) < 0)
                ideal = score;
        }

        TryAsTheyAre(bench, search, chosen, answer.Plan);
    }

    /// <summary>What the best plan so far costs, if it is on just these boards.</summary>
    private (Cost Cost, long LengthUsed)? HadOn(Bench bench, IReadOnlyList<Stock> chosen)
    {
        if (
            best is not { IsComplete: true } b
            || b.Bench != bench
            || b.Boards.Count != chosen.Count
        )
            return null;
        var score = b.Score;
        return chosen.All(s =>
            b.Boards.Any(l => string.Equals(l.BoardId, s.Board.Id, StringComparison.Ordinal))
        )
            ? (new(score.Effort, (long)score.Lines), (long)score.LengthUsed)
            : null;
    }

    private void TryAsTheyAre(
        Bench bench,
        ClearSearch search,
        IReadOnlyList<Stock> chosen,
        ClearPlan? clear
    )
    {
        foreach (var draft in RealDrafts.Of(bench, search, chosen, clear, steps))
        {
            Offer(Candidate.Of(bench, draft));
            if (best!.IsComplete && ideal is { } i && best.Score.CompareTo(i, order) == 0)
                return;
        }
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
                Always(first),
                isProven && !steps.AreUp ? ideal : null
            ),
            StepsTaken = steps.Taken,
        };

    /// <summary>Bounds that hold however the search ends: cheaper boards were shown to be too few, where blanks are cut in one way only.</summary>
    private Score Always(Bench first)
    {
        var simple = SimpleBounds.Of(first);
        return isOnlyChoice && leastBoards is { } least
            ? simple with
            {
                Boards = Int128.Max(simple.Boards, least),
            }
            : simple;
    }
}
