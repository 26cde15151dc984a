using System.Numerics;

namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// For each blank, which sections of a list hold it: those that hold only blanks that are left are found 64 at a time.
/// </summary>
internal sealed class BlankIndex(Packing packing)
{
    private const int WordBits = 64;
    private readonly int[] first = FirstOf(packing);
    private readonly List<int> taken = [];
    private ulong[] bits = [];
    private int words;
    private int count;
    private int word;
    private ulong free;

    /// <summary>Makes the index of some sections anew.</summary>
    public void Fill(ReadOnlySpan<ulong> packed)
    {
        words = (packed.Length + WordBits - 1) / WordBits;
        var size = words * first[^1];
        if (bits.Length < size)
            bits = new ulong[size];
        Array.Clear(bits, 0, size);
        for (var i = 0; i < packed.Length; i++)
        {
            for (var k = 0; k < packing.Kinds; k++)
            {
                for (var n = packing.Count(packed[i], k) - 1; n >= 0; n--)
                    bits[(first[k] + n) * words + i / WordBits] |= 1UL << (i % WordBits);
            }
        }
    }

    /// <summary>Starts looking among the first so many for those that hold only what is left; how many looks that takes.</summary>
    public int Start(ulong left, int among)
    {
        taken.Clear();
        for (var k = 0; k < packing.Kinds; k++)
        {
            var some = packing.Count(left, k);
            if (some < packing.Count(packing.All, k))
                taken.Add((first[k] + some) * words);
        }

        (count, word, free) = (among, -1, 0);
        return taken.Count * (among / WordBits + 1);
    }

    /// <summary>The next of them, or -1.</summary>
    public int Next()
    {
        while (free == 0)
        {
            if (++word * WordBits >= count)
                return -1;
            var held = 0UL;
            foreach (var row in taken)
                held |= bits[row + word];
            var some = count - word * WordBits;
            free = ~held & (some >= WordBits ? ulong.MaxValue : (1UL << some) - 1);
        }

        var at = word * WordBits + BitOperations.TrailingZeroCount(free);
        free &= free - 1;
        return at;
    }

    private static int[] FirstOf(Packing packing)
    {
        var rows = new int[packing.Kinds + 1];
        for (var k = 0; k < packing.Kinds; k++)
            rows[k + 1] = rows[k] + packing.Count(packing.All, k);
        return rows;
    }
}
