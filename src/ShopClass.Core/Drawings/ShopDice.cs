namespace ShopClass.Core.Drawings;

/// <summary>Numbers that look thrown but are always the same for the same board, so that its drawing never changes.</summary>
internal sealed class ShopDice
{
    private ulong state;

    /// <summary>Dice for this key. The key is folded by the FNV-1a hash, 64 bits.</summary>
    public ShopDice(string key)
    {
        state = 14_695_981_039_346_656_037;
        foreach (var letter in key)
            state = unchecked((state ^ letter) * 1_099_511_628_211);
    }

    /// <summary>The next number, from <paramref name="least"/> up to <paramref name="most"/>.</summary>
    public double Next(double least, double most) => least + (most - least) * NextShare();

    // SplitMix64 (Steele, Lea and Flood, 2014): small, and good enough for grain.
    private double NextShare()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15;
            var z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return ((z ^ (z >> 31)) >> 11) / (double)(1UL << 53);
        }
    }
}
