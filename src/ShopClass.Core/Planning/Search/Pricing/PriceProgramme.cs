namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>What prices are wanted for.</summary>
internal enum Aim
{
    /// <summary>To show how full the boards must be.</summary>
    Room,

    /// <summary>The least sawing.</summary>
    Sawing,

    /// <summary>The least length used.</summary>
    Length,
}

/// <summary>
/// The linear programme over sections for one aim: every blank had at least as often as it is wanted, no board overrun (or
/// each by as little as possible, where the aim is room), at the least cost. It starts from each blank in a section of
/// its own, however far these overrun.
/// </summary>
internal sealed class PriceProgramme
{
    /// <summary>Length in prices is counted in this many parts of a tick.</summary>
    public const int PartsOfTick = 1024;

    /// <summary>A section's loss may be below zero by this part of all costs: finer prices are not worth their time.</summary>
    private const int SlackPart = 65_536;
    private const double RoomScale = 1L << 50;
    private const double OverrunCost = 50;
    private const int MostExchanges = 4_000;
    private readonly Aim aim;
    private readonly Bench bench;
    private readonly Packing packing;
    private readonly IReadOnlyList<BoardGroup> groups;
    private readonly Simplex simplex;
    private readonly double cost;
    private readonly Dictionary<int, Column> sections = [];

    public PriceProgramme(
        Aim aim,
        Bench bench,
        Packing packing,
        IReadOnlyList<BoardGroup> groups,
        IReadOnlyList<Column> known
    )
    {
        (this.aim, this.bench, this.packing, this.groups) = (aim, bench, packing, groups);
        var single = known.Take(packing.Kinds).ToList();
        cost =
            aim is Aim.Room
                ? 1
                : Math.Max(
                    1,
                    single.Select((c, i) => bench.Demand[i] * (double)CostOf(c, aim)).Sum()
                );
        simplex = new([
            .. bench.Demand.Select(d => (double)d),
            .. groups.Select(g => Full * g.Stocks.Count),
        ]);
        foreach (var column in known)
            Add(column);
        Start(single);
    }

    /// <summary>All costs together are about so much in the prices' own numbers.</summary>
    public double Scale => aim is Aim.Room ? RoomScale : cost;

    private double Full => aim is Aim.Room ? 0 : 1;
    private long OwnPerTick => aim is Aim.Length ? PartsOfTick : 0;

    /// <summary>Adds a section.</summary>
    public void Add(Column column)
    {
        var coefficients = new double[Rows];
        for (var i = 0; i < packing.Kinds; i++)
            coefficients[i] = packing.Count(column.Packed, i);
        coefficients[packing.Kinds + column.Group.Index] = (double)column.Span / column.Group.Room;
        sections.Add(simplex.Add(coefficients, CostOf(column, aim) / cost), column);
    }

    /// <summary>Prices for the sections added so far, in whole numbers.</summary>
    public Prices Solve()
    {
        simplex.Solve(MostExchanges);
        long PerTick(BoardGroup g) =>
            (long)Math.Ceiling(-simplex.Prices[packing.Kinds + g.Index] * Scale / g.Room);
        return new(
            aim is Aim.Sawing ? 1 : 0,
            [
                .. Enumerable
                    .Range(0, packing.Kinds)
                    .Select(i => Math.Max(0, (long)Math.Floor(simplex.Prices[i] * Scale))),
            ],
            [.. groups.Select(g => OwnPerTick + Math.Max(0, PerTick(g)))],
            (long)(Scale / SlackPart)
        );
    }

    /// <summary>
    /// What every plan costs at least, its sections' losses not counted: worth of all blanks less cost of all the room. In
    /// whole numbers, so that no rounding of the programme's touches it.
    /// </summary>
    public Int128 BoundAt(Prices prices)
    {
        Int128 bound = 0;
        for (var i = 0; i < packing.Kinds; i++)
            bound += (Int128)bench.Demand[i] * prices.Worth[i];
        foreach (var group in groups)
        {
            var perTick = (Int128)(prices.PerTick[group.Index] - OwnPerTick);
            bound -= perTick * group.Stocks.Count * group.Room;
        }

        return bound;
    }

    private int Rows => packing.Kinds + groups.Count;

    /// <summary>What a section costs for an aim, in the prices' own numbers.</summary>
    public static long CostOf(Column column, Aim aim) =>
        aim switch
        {
            Aim.Room => 0,
            Aim.Sawing => column.Effort,
            _ => column.Span * PartsOfTick,
        };

    private void Start(List<Column> single)
    {
        var kinds = packing.Kinds;
        for (var i = 0; i < kinds; i++)
            simplex.Add(Unit(i, -1), 0);
        var spare = groups.Select(g => simplex.Add(Unit(kinds + g.Index, 1), 0)).ToList();
        var over = new double[Rows];
        foreach (var group in groups)
            over[kinds + group.Index] = -group.Stocks.Count;
        var overrun = simplex.Add(over, aim is Aim.Room ? 1 : OverrunCost);
        var loads = groups.Select(g => Load(single, g) / g.Stocks.Count - Full).ToList();
        var worst = loads.IndexOf(loads.Max());
        if (loads[worst] > 0)
            spare[worst] = overrun;
        simplex.Start([.. Enumerable.Range(0, kinds), .. spare]);
    }

    private double Load(List<Column> single, BoardGroup group) =>
        single
            .Select((c, i) => c.Group == group ? bench.Demand[i] * (double)c.Span / group.Room : 0)
            .Sum();

    private double[] Unit(int row, double value)
    {
        var unit = new double[Rows];
        unit[row] = value;
        return unit;
    }
}
