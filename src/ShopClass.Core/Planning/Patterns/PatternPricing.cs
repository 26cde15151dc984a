using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace ShopClass.Core.Planning.Patterns;

/// <summary>
/// The most valuable way to fill a board when each size has a worth: an exact knapsack by lengths, each size taken at most
/// as often as it is wanted. Worths are whole numbers, so the greatest sum is exact.
/// </summary>
internal sealed class PatternPricing : IPricing
{
    private const int Wide = 8;
    private readonly List<(int Kind, int Copies)> blocks = [];
    private readonly Lengths lengths;
    private readonly int width;
    private readonly int[] best;
    private readonly byte[] taken;

    public PatternPricing(Lengths lengths)
    {
        this.lengths = lengths;
        for (var i = 0; i < lengths.Sizes.Length; i++)
        {
            var most = Math.Min(lengths.Counts[i], lengths.Board / lengths.Sizes[i]);
            for (var copies = 1; most > 0; most -= copies, copies = Math.Min(2 * copies, most))
                blocks.Add((i, copies));
        }

        width = (lengths.Board + Wide) / Wide * Wide;
        best = new int[width];
        taken = new byte[(long)blocks.Count * width / Wide];
    }

    /// <inheritdoc />
    public int? Best(int[] worth, int atLeast, Work work)
    {
        work.Take((long)blocks.Count * width / Wide);
        Array.Clear(best);
        Array.Clear(taken);
        for (var b = 0; b < blocks.Count; b++)
        {
            var (kind, copies) = blocks[b];
            if (worth[kind] > 0)
                Put(b, lengths.Sizes[kind] * copies, worth[kind] * copies);
        }

        return best[lengths.Board];
    }

    /// <summary>A board of the greatest worth found by the last call.</summary>
    public Pattern Cut()
    {
        var counts = new int[lengths.Sizes.Length];
        var room = lengths.Board;
        for (var b = blocks.Count - 1; b >= 0; b--)
        {
            var (kind, copies) = blocks[b];
            var at = (b * (long)width / Wide) + (room / Wide);
            if ((taken[at] >> (room % Wide) & 1) == 0)
                continue;
            counts[kind] += copies;
            room -= copies * lengths.Sizes[kind];
        }

        return Pattern.Of(counts);
    }

    /// <summary>Offers one block to every room, greatest first, so that it is used once at most.</summary>
    private void Put(int block, int size, int worth)
    {
        var add = Vector256.Create(worth);
        ref var rooms = ref MemoryMarshal.GetArrayDataReference(best);
        var row = (int)(block * (long)width / Wide);
        var at = width - Wide;
        for (; at >= size; at -= Wide)
        {
            var old = Vector256.LoadUnsafe(ref rooms, (nuint)at);
            var with = Vector256.LoadUnsafe(ref rooms, (nuint)(at - size)) + add;
            var better = Vector256.GreaterThan(with, old);
            taken[row + (at / Wide)] = (byte)better.ExtractMostSignificantBits();
            Vector256.Max(old, with).StoreUnsafe(ref rooms, (nuint)at);
        }

        for (var room = Math.Min(at + Wide - 1, width - 1); room >= size; room--)
        {
            var with = best[room - size] + worth;
            if (with <= best[room])
                continue;
            best[room] = with;
            taken[row + (room / Wide)] |= (byte)(1 << (room % Wide));
        }
    }
}
