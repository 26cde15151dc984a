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
    private readonly int[] gone = new int[packing.Kinds];
    private readonly int[] taken = new int[packing.Kinds];
    private readonly ulong[] found = new ulong[AtOnce];
    private ulong[] bits = [];
    private int words;
    private int size;
    private int takenRows;
    private int count;
    private int word;
    private int ahead;
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

    /// <summary>Makes the index of some sections anew.</summary>
    public void Fill(ReadOnlySpan<ulong> packed)
    {
        Clear(packed.Length);
        for (var i = 0; i < packed.Length; i++)
            Note(i, packed[i]);
    }

    /// <summary>
    /// Starts looking among the first so many for those that hold only what is left; how many looks that takes.
    /// </summary>
    public int Start(ulong left, int among)
    {
        Leave(left);
        return Among(0, among);
    }

    /// <summary>From now on those are looked for that hold only what is left.</summary>
    public void Leave(ulong left)
    {
        takenRows = 0;
        for (var rest = packing.All - left; rest != 0; )
        {
            var kind = packing.FirstKind(rest);
            rest &= ~packing.Mask(kind);
            var row = first[kind] + packing.Count(left, kind);
            (gone[takenRows], taken[takenRows++]) = (row, row * words);
        }
    }

    /// <summary>Of each kind of which less is left than there is, the row that tells what holds more of it than that.</summary>
    public ReadOnlySpan<int> Gone => gone.AsSpan(0, takenRows);

    /// <summary>How many rows there are.</summary>
    public int Rows => first[^1];

    /// <summary>The first from one on and before another that is not in a row, or -1.</summary>
    public int FirstOutside(int of, int from, int to)
    {
        var row = bits.AsSpan(of * words, words);
        for (var w = from / WordBits; w * WordBits < to; w++)
        {
            var some = ~row[w];
            if (w * WordBits < from)
                some &= ulong.MaxValue << (from % WordBits);
            if (some != 0)
            {
                var at = w * WordBits + BitOperations.TrailingZeroCount(some);
                return at < to ? at : -1;
            }
        }

        return -1;
    }

    /// <summary>Starts looking from one on and before another; how many looks that takes.</summary>
    public int Among(int from, int to)
    {
        (word, ahead, count, free) = (from / WordBits, 0, to, 0);
        if (from >= to)
            return 0;
        LookAhead();
        free = found[0] & (ulong.MaxValue << (from % WordBits));
        return takenRows * (to / WordBits - word + 1);
    }

    /// <summary>The next of them, or -1.</summary>
    public int Next()
    {
        while (free == 0)
        {
            if ((word + ahead + 1) * WordBits >= count)
                return -1;
            if (++ahead == AtOnce)
            {
                (word, ahead) = (word + AtOnce, 0);
                LookAhead();
            }

            free = found[ahead];
        }

        var at = (word + ahead) * WordBits + BitOperations.TrailingZeroCount(free);
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

        (~low).CopyTo(found);
        (~high).CopyTo(found, Vector256<ulong>.Count);
        var last = count / WordBits - word;
        if (last < AtOnce)
            found[last] &= (1UL << (count % WordBits)) - 1;
    }

    private static int[] FirstOf(Packing packing)
    {
        var rows = new int[packing.Kinds + 1];
        for (var k = 0; k < packing.Kinds; k++)
            rows[k + 1] = rows[k] + packing.Count(packing.All, k);
        return rows;
    }
}
