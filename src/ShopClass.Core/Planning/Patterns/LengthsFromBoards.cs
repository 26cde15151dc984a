namespace ShopClass.Core.Planning.Patterns;

/// <summary>
/// Fewest boards for pieces of their full width: what a single-width board, or a strip, is crosscut into. First what is sure
/// (<see cref="EasyBoards"/>), then two quick fillings against two quick bounds, then column generation for a bound
/// that is nearly always exact, then diving for a plan that meets it. Where the first dives miss it, the list of all patterns
/// such a plan can hold is often short enough to be searched to its end (<see cref="TightPatterns"/>, <see cref="ExactCover"/>).
/// </summary>
public static class LengthsFromBoards
{
    private const int FirstStarts = 2;
    private const int MoreStarts = 38;
    private const int MostPatterns = 1000;
    private const int MostNodes = 10_000;
    private const int SharedWithSearch = 70;
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
        if (best.Count == bound)
            return (best, bound);
        var dive = new PatternDive(lengths, relaxed.Pool, bound, work);
        if (dive.Find(FirstStarts, NodesEach, Breadth) is { } found)
            return (found, bound);
        var part = work.Part(SharedWithSearch);
        var (exact, isDecided) = Search(lengths, relaxed, bound, part);
        work.HandBack(part);
        if (exact != null)
            return (exact, bound);
        var more = bound + 1;
        if (isDecided)
            bound = more;
        else if (dive.Find(MoreStarts, NodesEach, Breadth) is { } late)
            return (late, bound);
        for (var target = more; target < best.Count && !work.IsUp; target++)
        {
            var next = new PatternDive(lengths, relaxed.Pool, target, work);
            if (next.Find(FirstStarts + MoreStarts, NodesEach, Breadth) is { } fewer)
                best = fewer;
        }

        return (best, bound);
    }

    /// <summary>So many boards found by looking through all patterns they can be cut by, or the proof that there is no such plan.</summary>
    private static (List<Pattern>? Boards, bool IsDecided) Search(
        Lengths lengths,
        Relaxation relaxed,
        int boards,
        Work work
    )
    {
        var (worth, most) = relaxed.Last;
        if (worth.Length == 0)
            return (null, false);
        var shortBy = (long)boards * most;
        for (var i = 0; i < worth.Length; i++)
            shortBy -= (long)worth[i] * lengths.Counts[i];
        if (shortBy < 0)
            return (null, true);
        if (
            new TightPatterns(lengths, worth, most - shortBy, MostPatterns).All(work) is not { } all
        )
            return (null, false);
        var cover = new ExactCover(lengths, boards, work);
        return (cover.Find(all, MostNodes), cover.IsDecided);
    }
}
