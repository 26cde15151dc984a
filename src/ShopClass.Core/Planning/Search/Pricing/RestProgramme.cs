namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// The linear programme over listed sections for what is left of blanks and of boards: every blank left had just as often
/// as it is wanted, no more room than is left. Solved anew at a turn of the search, its prices show which sections can
/// still be in a plan that costs no more than so much. A small dense simplex; its figures only steer: every bound is then
/// worked out in whole numbers.
/// </summary>
internal sealed class RestProgramme
{
    private const double Tiny = 1e-9;

    /// <summary>What a blank missing costs, the dearest section costing 1.</summary>
    private const double Missing = 3;
    private const double Perturbed = 1e-7;
    private const int MostExchanges = 600;
    private const int AtHand = 12;

    /// <summary>So many sections at the head of the list are looked at before all of them.</summary>
    private const int Front = 300;
    private const double GoldenPart = 0.6180339887498949;
    private const long Greatest = 1L << 52;
    private const long GreatestPerTick = 1L << 36;
    private readonly Packing packing;
    private readonly IReadOnlyList<Column> columns;
    private readonly Contents contents;
    private readonly int kinds;
    private readonly int groups;
    private readonly double[] rooms;
    private readonly double scale;
    private readonly long[] own;
    private readonly double[] costs;
    private readonly double[] spans;
    private readonly int[] group;
    private readonly RestBasis basis;
    private readonly double[] prices;
    private readonly long[] worth;
    private readonly (int Column, double Gain)[] hand = new (int, double)[AtHand];
    private int atHand;
    private int ahead;

    public RestProgramme(
        Packing packing,
        IReadOnlyList<BoardGroup> boards,
        IReadOnlyList<Column> columns,
        Contents contents,
        Aim aim
    )
    {
        (this.packing, this.columns, this.contents) = (packing, columns, contents);
        (kinds, groups) = (packing.Kinds, boards.Count);
        rooms = [.. boards.Select(g => (double)g.Room)];
        spans = new double[columns.Count];
        group = new int[columns.Count];
        own = new long[columns.Count];
        costs = new double[columns.Count];
        for (var c = 0; c < columns.Count; c++)
        {
            group[c] = kinds + columns[c].Group.Index;
            spans[c] = columns[c].Span / rooms[columns[c].Group.Index];
            own[c] = PriceProgramme.CostOf(columns[c], aim);
        }

        scale = Math.Max(1, own.DefaultIfEmpty(1).Max());
        for (var c = 0; c < costs.Length; c++)
            costs[c] = own[c] / scale;
        basis = new(kinds + groups);
        prices = basis.Prices;
        worth = new long[kinds];
        PerTick = new long[groups];
    }

    /// <summary>Price of a tick of each group's boards.</summary>
    public long[] PerTick { get; }

    /// <summary>How many sections were looked at in the last solution, all rounds together.</summary>
    public long Looks { get; private set; }

    /// <summary>Prices for what is left, of these sections.</summary>
    public void Solve(ReadOnlySpan<Listed> list, ulong left, ReadOnlySpan<long> room)
    {
        Start(left, room);
        Looks = 0;
        ahead = Math.Min(list.Length, Front);
        for (var n = 0; n < MostExchanges; n++)
        {
            if (Entering(list) is not (>= 0 and var entering))
                break;
            Exchange(entering);
        }

        for (var k = 0; k < kinds; k++)
            worth[k] = packing.HasAny(left, k) ? Whole(Math.Floor(prices[k] * scale), Greatest) : 0;
        for (var g = 0; g < groups; g++)
        {
            var price = Math.Max(0, -prices[kinds + g]) * scale / rooms[g];
            PerTick[g] = Whole(Math.Ceiling(price), GreatestPerTick);
        }
    }

    /// <summary>What is left costs at least, with so much room left and losses not counted.</summary>
    public long BoundFor(ulong left, ReadOnlySpan<long> room)
    {
        var bound = 0L;
        for (var k = 0; k < kinds; k++)
            bound += packing.Count(left, k) * worth[k];
        for (var g = 0; g < groups; g++)
            bound -= PerTick[g] * room[g];
        return bound;
    }

    /// <summary>What a section costs itself.</summary>
    public long OwnOf(int c) => own[c];

    /// <summary>What a section loses at the last prices.</summary>
    public long LossOf(int c)
    {
        var loss = own[c] + PerTick[group[c] - kinds] * columns[c].Span;
        var of = contents.Kinds(c);
        var counts = contents.Counts(c);
        for (var i = 0; i < of.Length; i++)
            loss -= counts[i] * worth[of[i]];
        return loss;
    }

    private void Start(ulong left, ReadOnlySpan<long> room)
    {
        atHand = 0;
        basis.Start();
        for (var i = 0; i < basis.Rows; i++)
        {
            var have = i >= kinds ? room[i - kinds] / rooms[i - kinds] : packing.Count(left, i);
            basis.Prices[i] = i < kinds && have > 0 ? Missing : 0;
            // A little more than there is, differently for each row: keeps the simplex from standing still.
            var more = Perturbed * (1 + (i + 1) * GoldenPart % 1);
            basis.Levels[i] = i < kinds && have == 0 ? 0 : have + more;
        }
    }

    private int Entering(ReadOnlySpan<Listed> list)
    {
        // The best of the last look round are gone through first.
        var (best, least) = (-1, -Tiny);
        for (var h = 0; h < atHand; h++)
        {
            var gain = Gain(hand[h].Column);
            if (gain < least)
                (best, least) = (hand[h].Column, gain);
        }

        if (best >= 0 && least <= hand[atHand - 1].Gain / 2)
            return best;
        if (ahead < list.Length && Best(list[..ahead]) is >= 0 and var soon)
            return soon;
        return Best(list);
    }

    /// <summary>The section that gains most; the next best are kept at hand.</summary>
    private int Best(ReadOnlySpan<Listed> list)
    {
        atHand = 0;
        Looks += list.Length;
        foreach (var item in list)
        {
            var gain = Gain(item.Column);
            if (gain < -Tiny && (atHand < AtHand || gain < hand[atHand - 1].Gain))
                Keep(item.Column, gain);
        }

        return atHand == 0 ? -1 : hand[0].Column;
    }

    private void Keep(int column, double gain)
    {
        var at = atHand < AtHand ? atHand++ : atHand - 1;
        for (; at > 0 && hand[at - 1].Gain > gain; at--)
            hand[at] = hand[at - 1];
        hand[at] = (column, gain);
    }

    private double Gain(int c)
    {
        var gain = costs[c] - prices[group[c]] * spans[c];
        var of = contents.Kinds(c);
        var counts = contents.Counts(c);
        for (var i = 0; i < of.Length; i++)
            gain -= prices[of[i]] * counts[i];
        return gain;
    }

    private void Exchange(int c)
    {
        var of = contents.Kinds(c);
        var counts = contents.Counts(c);
        for (var i = 0; i < basis.Rows; i++)
        {
            var row = basis.Row(i);
            var sum = row[group[c]] * spans[c];
            for (var k = 0; k < of.Length; k++)
                sum += row[of[k]] * counts[k];
            basis.Along[i] = sum;
        }

        basis.Exchange(Gain(c));
    }

    /// <summary>A price as a whole number, kept where no sum of prices overflows: any prices bound a plan.</summary>
    private static long Whole(double price, long most) => (long)Math.Clamp(price, -most, most);
}
