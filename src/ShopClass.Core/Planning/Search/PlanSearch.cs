namespace ShopClass.Core.Planning.Search;

/// <summary>One run of the planner.</summary>
internal sealed class PlanSearch(
    PlanningRequest request,
    IProgress<PlanProgress>? progress,
    CancellationToken cancel
)
{
    private Candidate? best;
    private int steps;

    public CutPlan Run()
    {
        foreach (var choice in GlueUpChoices.For(request))
        {
            var bench = Bench.Lay(request, choice);
            TryGreedy(bench);
            if (best!.IsComplete || cancel.IsCancellationRequested)
                break;
        }

        return Write(best!);
    }

    private void TryGreedy(Bench bench)
    {
        var greedy = new Greedy(bench);
        foreach (var stocks in BoardChoices.Orders(bench.Stocks))
        {
            foreach (var lead in Greedy.Leads)
            {
                steps++;
                Offer(Candidate.Of(bench, greedy.LayOut(stocks, lead)));
                if (cancel.IsCancellationRequested)
                    return;
            }
        }
    }

    private void Offer(Candidate candidate)
    {
        if (!candidate.Beats(best))
            return;
        best = candidate;
        progress?.Report(new(steps, request.StepLimit, Write(candidate)));
    }

    private CutPlan Write(Candidate candidate)
    {
        var bounds = SimpleBounds.Of(candidate.Bench);
        return new()
        {
            Boards = candidate.Boards,
            Missing = candidate.Missing,
            GlueUps = new SortedDictionary<string, int>(
                candidate.Bench.GlueUps.ToDictionary(StringComparer.Ordinal),
                StringComparer.Ordinal
            ),
            Goals =
            [
                .. request.Goals.Select(g => new GoalResult(
                    g,
                    candidate.Score.For(g),
                    Int128.Min(candidate.Score.For(g), bounds.For(g))
                )),
            ],
            StepsTaken = steps,
        };
    }
}
