namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>Numbers as if at random, the same every time: xorshift (Marsaglia 2003).</summary>
internal sealed class Draws(ulong seed)
{
    private ulong state = seed;

    /// <summary>A share from 0 up to 1.</summary>
    public double Share() => (double)(Next() >> 11) / (1UL << 53);

    /// <summary>A whole number from 0 up to a limit.</summary>
    public int Below(int limit) => (int)(Next() % (ulong)limit);

    private ulong Next()
    {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        return state;
    }
}
