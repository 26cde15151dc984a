namespace ShopClass.Core.Planning.Patterns;

/// <summary>
/// The most valuable filling by trying pieces from the longest on: quick when a board holds few pieces, whatever its length.
/// A branch is left when the room it has, filled at the best rate of the sizes still open, cannot be worth more.
/// </summary>
internal sealed class FewPiecesPricing(Lengths lengths) : IPricing
{
    private readonly double[] rate = new double[lengths.Sizes.Length + 1];
    private readonly int[] dearest = new int[lengths.Sizes.Length + 1];
    private readonly int[] taken = new int[lengths.Sizes.Length];
    private int[] worth = [];
    private int[] cut = [];
    private long most;
    private long looks;
    private long allowed;

    /// <inheritdoc />
    public int? Best(int[] worth, int atLeast, Work work)
    {
        this.worth = worth;
        (most, looks, allowed) = (atLeast, 0, work.Left);
        for (var i = worth.Length - 1; i >= 0; i--)
        {
            rate[i] = Math.Max(rate[i + 1], (double)worth[i] / lengths.Sizes[i]);
            dearest[i] = Math.Max(dearest[i + 1], worth[i]);
        }

        Try(0, lengths.Board, 0);
        return work.Take(looks) ? (int)most : null;
    }

    /// <inheritdoc />
    public Pattern Cut() => Pattern.Of(cut);

    private void Try(int from, int room, long value)
    {
        if (value > most)
        {
            most = value;
            cut = [.. taken];
        }

        for (var i = FirstFitting(from, room); i < worth.Length && looks < allowed; i++)
        {
            looks++;
            var pieces = (long)room / lengths.Sizes[^1];
            if (value + Math.Min((long)(rate[i] * room) + 1, pieces * dearest[i]) <= most)
                return;
            if (taken[i] == lengths.Counts[i] || worth[i] == 0)
                continue;
            taken[i]++;
            Try(i, room - lengths.Sizes[i], value + worth[i]);
            taken[i]--;
        }
    }

    /// <summary>The first size from here on that is no longer than the room.</summary>
    private int FirstFitting(int from, int room)
    {
        var (low, high) = (from, worth.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (lengths.Sizes[middle] <= room)
                high = middle;
            else
                low = middle + 1;
        }

        return low;
    }
}
