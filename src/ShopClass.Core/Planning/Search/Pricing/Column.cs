namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>A section that could be crosscut from a group's boards.</summary>
/// <param name="Group">The group.</param>
/// <param name="Packed">Its blanks.</param>
/// <param name="Span">Its length with the kerf after it.</param>
/// <param name="Effort">Its sawing, as <see cref="Score"/> counts it.</param>
/// <param name="Rips">Its rips.</param>
/// <param name="Loss">Its loss at the prices it was found with.</param>
/// <param name="Strips">Its strips in the group's pool.</param>
internal sealed record Column(
    BoardGroup Group,
    ulong Packed,
    long Span,
    long Effort,
    int Rips,
    long Loss,
    int[] Strips
)
{
    /// <summary>Length without the kerf after it.</summary>
    public long Length => Span - Group.First.CrosscutKerf;

    /// <summary>A section of such strips.</summary>
    public static Column Of(BoardGroup group, IReadOnlyList<int> strips, long loss)
    {
        var (stock, pool) = (group.First, group.Pool);
        var length = 0L;
        var taken = -stock.RipKerf;
        ulong packed = 0;
        foreach (var index in strips)
        {
            var strip = pool.Strips[index];
            length = Math.Max(length, strip.Length);
            taken += pool.Breadths[strip.Breadth].Width + stock.RipKerf;
            packed += strip.Packed;
        }

        var rips = strips.Count - 1 + (stock.Width - taken >= pool.Keepable ? 1 : 0);
        var crosscut = stock.Width;
        foreach (var index in strips)
        {
            var strip = pool.Strips[index];
            var cuts = strip.Count - 1 + (length - strip.Length > pool.Leeway ? 1 : 0);
            crosscut += cuts * pool.Breadths[strip.Breadth].Needed;
        }

        var sawing = Score.RipWeight * rips * length + Score.CrosscutWeight * crosscut;
        var effort = sawing * stock.Board.Thickness.Ticks;
        return new(group, packed, length + stock.CrosscutKerf, effort, rips, loss, [.. strips]);
    }

    /// <summary>Its loss at prices.</summary>
    public long LossAt(Prices prices, Packing packing)
    {
        var loss = prices.Sawing * Effort + prices.PerTick[Group.Index] * Span;
        for (var kind = 0; kind < packing.Kinds; kind++)
            loss -= packing.Count(Packed, kind) * prices.Worth[kind];
        return loss;
    }

    /// <summary>The same with its loss at prices.</summary>
    public Column At(Prices prices, Packing packing) =>
        this with
        {
            Loss = LossAt(prices, packing),
        };

    /// <summary>The section as a layout needs it.</summary>
    public SectionOption Option(long lines) =>
        new(
            Strips[0],
            Packed,
            Length,
            new(Effort, lines),
            [
                .. Strips
                    .Select(Group.Pool.Option)
                    .OrderByDescending(s => s.Width)
                    .ThenByDescending(s => s.Length)
                    .ThenBy(s => s.Code),
            ]
        );

    /// <summary>Lines to mark: its end, its rips and the crosscuts inside it.</summary>
    public int Lines() =>
        1
        + Rips
        + SharedLines.Fewest([.. Strips.Select(Group.Pool.Option)], Length, Group.Pool.Leeway);
}
