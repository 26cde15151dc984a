namespace ShopClass.Core.Planning.Search;

/// <summary>Finds out whether boards yield everything, in whatever way.</summary>
internal sealed class FitSearch
{
    private readonly Steps steps;

    private FitSearch(PlanningRequest request) =>
        steps = new(request.StepLimit, CancellationToken.None);

    /// <summary>Whether these boards yield everything, as far as so many steps can tell.</summary>
    public static bool Fits(PlanningRequest request)
    {
        var search = new FitSearch(request);
        foreach (var choice in GlueUpChoices.For(request))
        {
            if (search.FitsOn(Bench.Lay(request, choice, costMatters: false)))
                return true;
            if (search.steps.AreUp)
                return false;
        }

        return false;
    }

    private bool FitsOn(Bench bench)
    {
        if (SimpleBounds.AreTooSmall(bench, bench.Stocks) || !bench.EachHasABoard)
            return false;
        var greedy = new Greedy(bench);
        if (Greedy.Leads.Any(lead => IsComplete(bench, greedy.LayOut(bench.Stocks, lead))))
            return true;
        if (bench.Stocks.Count > BoardChoices.MostBoards)
            return false;
        var search = new ClearSearch(bench, steps);
        foreach (var chosen in BoardChoices.Different(bench.Stocks).Reverse())
        {
            if (SimpleBounds.AreTooSmall(bench, chosen))
                continue;
            var clear = search.On(chosen, null).Plan;
            var drafts = RealDrafts.Of(bench, search, chosen, clear, steps, () => false);
            if (drafts.OfType<Draft>().Any(draft => IsComplete(bench, draft)))
                return true;
            if (steps.AreUp)
                return false;
        }

        return false;
    }

    private static bool IsComplete(Bench bench, Draft draft) =>
        Candidate.Of(bench, draft).IsComplete;
}
