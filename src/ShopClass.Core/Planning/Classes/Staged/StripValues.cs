namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>
/// The most valuable filling of a strip of every length, for a growing set of pieces: a knapsack that may take each piece as
/// often as it likes.
/// </summary>
internal sealed class StripValues
{
    private StripValues(long[] most, short[] last)
    {
        Most = most;
        Last = last;
    }

    /// <summary>The best value in each length.</summary>
    public long[] Most { get; }

    /// <summary>A way that the best filling of each length ends with; -1 for none.</summary>
    public short[] Last { get; }

    /// <summary>A strip with nothing allowed in it.</summary>
    public static StripValues Empty(int length)
    {
        var last = new short[length + 1];
        Array.Fill(last, (short)-1);
        return new(new long[length + 1], last);
    }

    /// <summary>A copy to go on from.</summary>
    public StripValues Copy() => new((long[])Most.Clone(), (short[])Last.Clone());

    /// <summary>Allows one more way of laying a piece; alone in its strip, or beside what fits before it.</summary>
    public void Allow(short way, int along, long value, bool alone)
    {
        if (value <= 0)
            return;
        var most = Most;
        for (var x = along; x < most.Length; x++)
        {
            var with = alone ? value : most[x - along] + value;
            if (with > most[x])
            {
                most[x] = with;
                Last[x] = way;
            }
        }
    }
}
