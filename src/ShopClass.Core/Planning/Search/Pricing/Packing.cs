using System.Numerics;

namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>Counts of each kind in one word, with a spare bit over each so that comparing all of them is one subtraction.</summary>
internal sealed class Packing
{
    private const int WordBits = 64;
    private readonly int[] shifts;
    private readonly ulong[] masks;
    private readonly ulong guard;

    /// <summary>The kind that each bit helps to count.</summary>
    private readonly byte[] kindAt = new byte[WordBits];

    private Packing(IReadOnlyList<int> demand)
    {
        shifts = new int[demand.Count];
        masks = new ulong[demand.Count];
        var bit = 0;
        for (var i = 0; i < demand.Count; i++)
        {
            shifts[i] = bit;
            masks[i] = (1UL << (BitsFor(demand[i]) - 1)) - 1;
            kindAt.AsSpan(bit, BitsFor(demand[i])).Fill((byte)i);
            bit += BitsFor(demand[i]);
            guard |= 1UL << (bit - 1);
            All |= (ulong)demand[i] << shifts[i];
        }
    }

    /// <summary>The whole demand.</summary>
    public ulong All { get; }

    /// <summary>How many kinds there are.</summary>
    public int Kinds => shifts.Length;

    /// <summary>A packing for this demand, or null where it needs more than a word.</summary>
    public static Packing? For(IReadOnlyList<int> demand) =>
        demand.Sum(BitsFor) <= WordBits ? new(demand) : null;

    /// <summary>One of a kind.</summary>
    public ulong One(int kind) => 1UL << shifts[kind];

    /// <summary>The bits that count a kind.</summary>
    public ulong Mask(int kind) => masks[kind] << shifts[kind];

    /// <summary>Whether there is one of a kind.</summary>
    public bool HasAny(ulong packed, int kind) => (packed & Mask(kind)) != 0;

    /// <summary>How many of a kind.</summary>
    public int Count(ulong packed, int kind) => (int)((packed >> shifts[kind]) & masks[kind]);

    /// <summary>The first kind there is any of; there must be one.</summary>
    public int FirstKind(ulong packed) => kindAt[BitOperations.TrailingZeroCount(packed)];

    /// <summary>Whether the first holds all of the second.</summary>
    public bool Holds(ulong whole, ulong part) => (((whole | guard) - part) & guard) == guard;

    private static int BitsFor(int count) => 33 - int.LeadingZeroCount(count);
}
