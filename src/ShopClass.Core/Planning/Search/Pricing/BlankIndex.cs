using System.Numerics;

namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// For each blank, which sections or strips of a list hold it: those that hold only blanks that are left are found 64 at a
/// time.
/// </summary>
internal sealed class BlankIndex(Packing packing)
{
    /// <summary>So many of them have their bits in one word.</summary>
    public const int WordBits = 64;
    private readonly int[] first = FirstOf(packing);
    private readonly List<int> taken = [];
    private ulong[] bits = [];
    private ulong[] found = [];
    private int words;
    private int size;
    private int count;
    private int word;
    private ulong free;

    /// <summary>Starts the index anew, for so many sections that hold nothing yet.</summary>
    public void Clear(int sections)
    {
        words = (sections + WordBits - 1) / WordBits;
        Array.Clear(bits, 0, size);
        size = words * first[^1];
        if (bits.Length < size)
            bits = new ulong[2 * size];
    }

    /// <summary>Notes what a section holds.</summary>
    public void Note(int section, ulong packed)
    {
        var (at, bit) = (section / WordBits, 1UL << (section % WordBits));
        while (packed != 0)
        {
            var kind = packing.FirstKind(packed);
            var row = first[kind] * words + at;
            for (var n = packing.Count(packed, kind); n > 0; n--, row += words)
                bits[row] |= bit;
            packed &= ~packing.Mask(kind);
        }
    }

    /// <summary>Finds those that hold only what is left; how many looks that takes.</summary>
    public int Find(ulong left)
    {
        if (found.Length < words)
            found = new ulong[2 * words];
        var set = found.AsSpan(0, words);
        set.Fill(ulong.MaxValue);
        var looks = words;
        for (var gone = packing.All - left; gone != 0; )
        {
            var kind = packing.FirstKind(gone);
            gone &= ~packing.Mask(kind);
            var row = bits.AsSpan((first[kind] + packing.Count(left, kind)) * words, words);
            for (var w = 0; w < set.Length; w++)
                set[w] &= ~row[w];
            looks += words;
        }

        return looks;
    }

    /// <summary>A word's bits of those found, from one on and before another.</summary>
    public ulong Found(int at, int from, int to)
    {
        var some = found[at];
        if (at * WordBits < from)
            some &= ulong.MaxValue << (from % WordBits);
        return to - at * WordBits < WordBits ? some & ((1UL << (to % WordBits)) - 1) : some;
    }

    /// <summary>Makes the index of some sections anew.</summary>
    public void Fill(ReadOnlySpan<ulong> packed)
    {
        Clear(packed.Length);
        for (var i = 0; i < packed.Length; i++)
            Note(i, packed[i]);
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
