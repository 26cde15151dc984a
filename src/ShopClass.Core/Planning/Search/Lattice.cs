namespace ShopClass.Core.Planning.Search;

/// <summary>
/// All choices of "so many of each kind" between none and the whole demand, each with a number: none is 0, the whole
/// demand is the last. Taking one choice out of another is taking their numbers from each other.
/// </summary>
internal sealed class Lattice
{
    /// <summary>The most choices the exact search works with.</summary>
    public const int MostChoices = 1 << 17;

    private readonly int[] strides;
    private readonly int[] shifts;
    private readonly ulong guard;
    private readonly ulong[] packed;
    private readonly byte[] first;

    private Lattice(IReadOnlyList<int> demand, int size)
    {
        Size = size;
        strides = new int[demand.Count];
        shifts = new int[demand.Count];
        var stride = 1;
        var bit = 0;
        for (var i = 0; i < demand.Count; i++)
        {
            strides[i] = stride;
            shifts[i] = bit;
            stride *= demand[i] + 1;
            bit += BitsFor(demand[i]);
            guard |= 1UL << (bit - 1);
        }

        packed = new ulong[size];
        first = new byte[size];
        for (var code = 1; code < size; code++)
        {
            var kind = demand.Count - 1;
            while (code < strides[kind])
                kind--;
            packed[code] = packed[code - strides[kind]] + (1UL << shifts[kind]);
            first[code] = code == strides[kind] ? (byte)kind : first[code - strides[kind]];
        }
    }

    /// <summary>How many choices there are.</summary>
    public int Size { get; }

    /// <summary>The number of the whole demand.</summary>
    public int All => Size - 1;

    /// <summary>A lattice over the demand, or null where it would be too large.</summary>
    public static Lattice? Over(IReadOnlyList<int> demand)
    {
        long size = 1;
        var bits = 0;
        foreach (var count in demand)
        {
            size *= count + 1;
            bits += BitsFor(count);
            if (size > MostChoices || bits > 64)
                return null;
        }

        return new(demand, (int)size);
    }

    /// <summary>Writes down every choice that one holds, none and all of it too, smallest number first; how many they are.</summary>
    public int Parts(int code, int[] into)
    {
        var count = 1;
        into[0] = 0;
        for (var kind = 0; kind < strides.Length; kind++)
        {
            var next = kind + 1 < strides.Length ? strides[kind + 1] : Size;
            var (few, most) = (count, code % next / strides[kind] * strides[kind]);
            for (var some = strides[kind]; some <= most; some += strides[kind])
            {
                for (var i = 0; i < few; i++)
                    into[count++] = into[i] + some;
            }
        }

        return count;
    }

    /// <summary>The number of one of a kind.</summary>
    public int One(int kind) => strides[kind];

    /// <summary>The first kind in a choice.</summary>
    public int First(int code) => first[code];

    /// <summary>The counts of a choice packed into one word, with a spare bit over each.</summary>
    public ulong Packed(int code) => packed[code];

    /// <summary>Whether the first choice holds all of the second.</summary>
    public bool Holds(ulong whole, ulong part) => (((whole | guard) - part) & guard) == guard;

    private static int BitsFor(int count) => 33 - int.LeadingZeroCount(count);
}
