namespace ShopClass.Core.Planning.Patterns;

/// <summary>
/// Fewest boards for pieces of their full width: what a single-width board, or a strip, is crosscut into. First what is sure
/// (<see cref="EasyBoards"/>), then two quick fillings against two quick bounds, then column generation for a bound
/// that is nearly always exact, then diving for a plan that meets it.
/// </summary>
public static class LengthsFromBoards
{
    private const int Starts = 40;
    private const int NodesEach = 40;
    private const int Breadth = 2;

    /// <summary>The fewest boards found and a bound on them. The same request always gets the same plan.</summary>
    /// <param name="request">Board, kerf and pieces; every piece must be no longer than the board.</param>
    /// <param name="cancel">Stops the search early; the plan found so far is whole.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is not positive, a count is negative, or a piece is longer than the board.</exception>
    public static LengthsPlan Fewest(LengthsRequest request, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        var reduced = ReducedLengths.Of(request);
        var work = new Work(request.StepLimit, cancel);
        int[] left = [.. reduced.Lengths.Counts];
        var settled = EasyBoards.Settle(reduced.Lengths, left);
        var rest = reduced.Lengths.With(left);
        var (boards, bound) = Solve(rest, work);
        var kinds = Enumerable.Range(0, left.Length).Where(i => left[i] > 0).ToArray();
        return new(
            reduced.Name([
                .. settled,
                .. boards.Select(b => b with { Kinds = [.. b.Kinds.Select(k => kinds[k])] }),
            ]),
            settled.Count + bound,
            work.Steps
        );
    }

    private static (List<Pattern> Boards, int Bound) Solve(Lengths lengths, Work work)
    {
        if (lengths.Sizes.Length == 0)
            return ([], 0);
        List<Pattern> best = [.. BestFit.Fill(lengths).Select(Pattern.Of)];
        var bound = LengthBounds.Of(lengths);
        if (best.Count == bound)
            return (best, bound);
        List<Pattern> other = [.. BestFit.FillWithLeastSlack(lengths, work).Select(Pattern.Of)];
        List<Pattern> known = [.. best, .. other];
        if (other.Count < best.Count)
            best = other;
        if (best.Count == bound)
            return (best, bound);
        var relaxed = new Relaxation(lengths, known);
        relaxed.Solve(best.Count - 1, work);
        bound = Math.Max(bound, relaxed.Bound);
        for (var target = bound; target < best.Count && !work.IsUp; target++)
        {
            var dive = new PatternDive(lengths, relaxed.Pool, target, work);
            if (dive.Find(Starts, NodesEach, Breadth) is { } found)
                best = found;
        }

        return (best, bound);
    }
}
