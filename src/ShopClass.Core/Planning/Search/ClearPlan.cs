namespace ShopClass.Core.Planning.Search;

/// <summary>The sections to get from each board if none had a bad place, in no order.</summary>
/// <param name="Cost">Sawing and lines, trims of the boards' starts included.</param>
/// <param name="LengthUsed">Length used, trims included.</param>
/// <param name="Boards">Each board with its sections.</param>
internal sealed record ClearPlan(
    Cost Cost,
    long LengthUsed,
    IReadOnlyList<(Stock Stock, IReadOnlyList<SectionOption> Sections)> Boards
)
{
    /// <summary>What boards cost before their first section, and what is to be added to their sections' spans for the length used.</summary>
    public static (Cost Cost, long Length) Before(IEnumerable<Stock> stocks) =>
        stocks.Aggregate(
            (Cost: default(Cost), Length: 0L),
            (sum, s) => (sum.Cost + s.TrimCost, sum.Length + s.Start - s.CrosscutKerf)
        );

    /// <summary>The plan laid along its boards, which must be clear.</summary>
    public Draft ToDraft(Bench bench) =>
        new(
            [
                .. Boards.Select(b => new DraftBoard(
                    b.Stock,
                    ClearDraft.Of(b.Stock, b.Sections, bench.Request.Rules.LengthAllowance.Ticks)
                )),
            ],
            new int[bench.Kinds.Count]
        );

    /// <summary>The plan moved round the bad places of its boards, or null when that does not go.</summary>
    public Draft? Shuffled(Bench bench, Steps steps)
    {
        var boards = new List<DraftBoard>();
        foreach (var (stock, options) in Boards)
        {
            var sections = stock.IsClear
                ? ClearDraft.Of(stock, options, bench.Request.Rules.LengthAllowance.Ticks)
                : SectionShuffle.Place(stock, options, new(bench, stock, steps), steps);
            if (sections is null)
                return null;
            boards.Add(new(stock, sections));
        }

        return new(boards, new int[bench.Kinds.Count]);
    }
}

/// <summary>What is known about clear boards.</summary>
/// <param name="IsSettled">Whether it is certain that nothing is better than the plan and what was known before.</param>
/// <param name="Plan">The best plan found, or null.</param>
internal sealed record ClearAnswer(bool IsSettled, ClearPlan? Plan);
