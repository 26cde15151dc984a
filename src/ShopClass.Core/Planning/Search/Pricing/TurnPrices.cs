namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// New prices at a turn of the search. The prices a list was made with know nothing of the sections placed since; with
/// prices for what is left, and of that only with the sections still on the list, most of these show themselves to be too
/// dear.
/// </summary>
internal sealed class TurnPrices
{
    private const int PricingCounted = 4096;
    private readonly Packing packing;
    private readonly CoverBoards boards;
    private readonly RestProgramme rest;
    private readonly Steps steps;
    private readonly List<long[]> perTick = [];
    private readonly long[] rooms;
    private long[] losses = [];

    /// <summary>Starts with the prices the list was made with.</summary>
    public TurnPrices(
        Packing packing,
        CoverBoards boards,
        RestProgramme rest,
        long[] first,
        Steps steps
    )
    {
        (this.packing, this.boards, this.rest, this.steps) = (packing, boards, rest, steps);
        perTick.Add(first);
        rooms = new long[first.Length];
    }

    /// <summary>Price of a tick of each group's boards, by the number of the prices.</summary>
    public long[] PerTick(int prices) => perTick[prices];

    /// <summary>
    /// Gives the turn prices of its own where these bound it better, and leaves on the list what can be in a plan that costs
    /// no more than so much.
    /// </summary>
    /// <param name="turn">The turn.</param>
    /// <param name="list">The list, losses going by the turn's prices; least loss first afterwards.</param>
    /// <param name="blanks">How many blanks are left.</param>
    /// <param name="shortest">The shortest section on the list of each group.</param>
    /// <param name="most">What a plan may cost.</param>
    public Span<Listed> Find(
        scoped ref CoverTurn turn,
        Span<Listed> list,
        int blanks,
        long[] shortest,
        long most
    )
    {
        boards.RoomFor(shortest, rooms);
        rest.Solve(list, turn.Left, rooms);
        steps.Take(1 + (int)(rest.Looks / PricingCounted));
        return Struck(ref turn, list, blanks, most);
    }

    private Span<Listed> Struck(scoped ref CoverTurn turn, Span<Listed> list, int blanks, long most)
    {
        boards.RoomFor(null, rooms);
        var bound = turn.Own + rest.BoundFor(turn.Left, rooms);
        // A rounding of the programme's may leave a loss just below zero: no plan holds more such sections than blanks.
        var least = 0L;
        if (losses.Length < list.Length)
            losses = new long[list.Length];
        for (var i = 0; i < list.Length; i++)
        {
            losses[i] = rest.LossOf(list[i].Column);
            least = Math.Min(least, losses[i]);
        }

        bound += least * blanks;
        if (bound <= turn.Bound)
            return list;
        var kept = 0;
        for (var i = 0; i < list.Length; i++)
        {
            if (bound + losses[i] - least <= most)
                list[kept++] = list[i] with { Loss = losses[i] };
        }

        var own = turn.Depth + 1;
        while (perTick.Count <= own)
            perTick.Add(new long[rooms.Length]);
        rest.PerTick.CopyTo(perTick[own], 0);
        turn = turn with { Bound = bound, Prices = own };
        list = list[..kept];
        list.Sort(
            (a, b) => a.Loss != b.Loss ? a.Loss.CompareTo(b.Loss) : a.Column.CompareTo(b.Column)
        );
        return list;
    }
}
