using ShopClass.Core.Planning.Search.BadPlaces;

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
            // The only choice was looked through to its end, and no boards had room for it.
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
        Score? clear = cost is { } c
            ? new Score(
                BoardCost.Of(chosen.Select(s => s.Board)),
                bench.Joints,
                c.Effort,
                c.Lines,
                length!.Value
            )
            : null;
        var least = TryAsTheyAre(bench, search, chosen, answer.Plan, clear);
        if (
            idealCost is not null
            && least is { } score
            && (ideal is null || score.CompareTo(ideal.Value, order) < 0)
        )
            ideal = score;
    }

    /// <summary>
    /// Searches boards of which some have bad places: whether to the end, and what no plan on them goes below, which is what is
    /// known of clear wood or more; nothing where the bad places leave no room for a plan at all.
    /// </summary>
    private (bool IsWhole, Score? Least) OnBadBoards(
        Bench bench,
        ClearSearch search,
        IReadOnlyList<Stock> chosen,
        Score clear
    )
    {
        var answer = search.OnBadBoards(
            chosen,
            HadOn(bench, chosen),
            steps.Taken + (request.StepLimit - steps.Taken) / 2,
            boards =>
            {
                Offer(Candidate.Of(bench, Draft.Of(bench, boards)));
                return HadOn(bench, chosen);
            }
        );
        if (answer?.Least is not { } least)
            return answer is { IsWhole: true } ? (true, null) : (false, clear);
        return (
            answer.IsWhole,
            clear with
            {
                Effort = least.Cost.Effort,
                Lines = least.Cost.Lines,
                LengthUsed = least.Length,
            }
        );
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

    /// <summary>Looks for plans on the boards as they are, and says what none of them goes below: as clear boards, or more.</summary>
    private Score? TryAsTheyAre(
        Bench bench,
        ClearSearch search,
        IReadOnlyList<Stock> chosen,
        ClearPlan? plan,
        Score? clear
    )
    {
        var isBad = chosen.Any(s => !s.IsClear);
        // Gaps for bad places may bring cuts onto one line that lie apart on clear wood.
        if (isBad)
            clear = clear is { } known ? known with { Lines = 0 } : null;
        var isTried = false;
        foreach (
            var draft in RealDrafts.Of(bench, search, chosen, plan, steps, () => best!.IsComplete)
        )
        {
            if (draft is not null)
                Offer(Candidate.Of(bench, draft));
            if (best!.IsComplete && clear is { } i && best.Score.CompareTo(i, order) == 0)
                return clear;
            // With any plan at hand the search to the end is much shorter.
            if (!isBad || isTried || clear is null || !best.IsComplete)
                continue;
            isTried = true;
            (var isWhole, clear) = OnBadBoards(bench, search, chosen, clear.Value);
            if (isWhole)
                return clear;
        }

        return isBad && !isTried && clear is { } c
            ? OnBadBoards(bench, search, chosen, c).Least
            : clear;
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
