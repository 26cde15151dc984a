using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// For each blank, which sections or strips of a list hold it: those that hold only blanks that are left are found 64 at a
/// time.
/// </summary>
internal sealed class BlankIndex(Packing packing)
{
    /// <summary>So many of them have their bits in one word.</summary>
    public const int WordBits = 64;

    /// <summary>So many words are looked at together.</summary>
    private const int AtOnce = 8;
    private readonly int[] first = FirstOf(packing);
    private readonly int[] taken = new int[packing.Kinds];
    private readonly ulong[] ahead = new ulong[AtOnce];
    private ulong[] bits = [];
    private ulong[] found = [];
    private int words;
    private int size;
    private int takenRows;
    private int count;
    private int word;
    private ulong free;

    /// <summary>Starts the index anew, for so many sections that hold nothing yet.</summary>
    public void Clear(int sections)
    {
        words = (sections + WordBits - 1) / WordBits;
        Array.Clear(bits, 0, size);
        size = words * first[^1];
        // The last look may reach past the last word.
        if (bits.Length < size + AtOnce)
            bits = new ulong[2 * size + AtOnce];
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
            Without(set, row);
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
        takenRows = 0;
        for (var k = 0; k < packing.Kinds; k++)
        {
            var some = packing.Count(left, k);
            if (some < packing.Count(packing.All, k))
                taken[takenRows++] = (first[k] + some) * words;
        }

        (count, word, free) = (among, -1, 0);
        return takenRows * (among / WordBits + 1);
    }

    /// <summary>The next of them, or -1.</summary>
    public int Next()
    {
        while (free == 0)
        {
            if (++word * WordBits >= count)
                return -1;
            if (word % AtOnce == 0)
                LookAhead();
            free = ahead[word % AtOnce];
        }

        var at = word * WordBits + BitOperations.TrailingZeroCount(free);
        free &= free - 1;
        return at;
    }

    /// <summary>Finds those in the next words that hold nothing taken.</summary>
    private void LookAhead()
    {
        ref var from = ref Unsafe.Add(ref MemoryMarshal.GetArrayDataReference(bits), word);
        var (low, high) = (Vector256<ulong>.Zero, Vector256<ulong>.Zero);
        foreach (var row in taken.AsSpan(0, takenRows))
        {
            low |= Vector256.LoadUnsafe(ref from, (nuint)row);
            high |= Vector256.LoadUnsafe(ref from, (nuint)(row + Vector256<ulong>.Count));
        }

        (~low).CopyTo(ahead);
        (~high).CopyTo(ahead, Vector256<ulong>.Count);
        for (var w = 0; w < AtOnce; w++)
        {
            var some = count - (word + w) * WordBits;
            if (some < WordBits)
                ahead[w] &= some <= 0 ? 0 : (1UL << some) - 1;
        }
    }

    private static void Without(Span<ulong> set, ReadOnlySpan<ulong> row)
    {
        var many = MemoryMarshal.Cast<ulong, Vector<ulong>>(set);
        var others = MemoryMarshal.Cast<ulong, Vector<ulong>>(row);
        for (var v = 0; v < many.Length; v++)
            many[v] = Vector.AndNot(many[v], others[v]);
        for (var w = many.Length * Vector<ulong>.Count; w < set.Length; w++)
            set[w] &= ~row[w];
    }

    private static int[] FirstOf(Packing packing)
    {
        var rows = new int[packing.Kinds + 1];
        for (var k = 0; k < packing.Kinds; k++)
            rows[k + 1] = rows[k] + packing.Count(packing.All, k);
        return rows;
    }
}
