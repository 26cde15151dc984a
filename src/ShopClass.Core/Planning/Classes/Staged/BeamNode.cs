using System.Runtime.InteropServices;

namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>A half-done packing: the board at hand with its section and strip, and the costs of all before it.</summary>
[StructLayout(LayoutKind.Auto)]
internal struct BeamNode
{
    /// <summary>Cost of the boards before the one at hand.</summary>
    public long Closed;

    /// <summary>Area of the pieces packed.</summary>
    public long Packed;

    /// <summary>Squares of the areas of the pieces packed.</summary>
    public double Squared;

    /// <summary>Prices of the pieces packed, and of those on the boards before the one at hand.</summary>
    public double Price,
        ClosedPrice;

    /// <summary>Worth of the boards before the one at hand.</summary>
    public double ClosedWorth;

    /// <summary>Worth of the pieces packed, and what they cost at least.</summary>
    public double Worth,
        Least;

    /// <summary>Names what is packed, for finding the same again.</summary>
    public ulong Hash;

    /// <summary>The kind of board at hand; -1 before the first.</summary>
    public int Plank;

    /// <summary>The section at hand begins and ends here.</summary>
    public int SectionFrom,
        SectionTo;

    /// <summary>The strip at hand lies between these.</summary>
    public int Near,
        Far;

    /// <summary>The strip at hand is filled up to here.</summary>
    public int At;

    /// <summary>The piece laid last; the pieces of a strip lie in the order of the list.</summary>
    public int Last;

    /// <summary>How many pieces are packed.</summary>
    public int Count;

    /// <summary>Its place in the record of what was laid.</summary>
    public int Log;

    /// <summary>Whether everything the other still can do, this one can do as well on the same board.</summary>
    public readonly bool LeavesAtLeast(in BeamNode other)
    {
        if (SectionTo <= other.SectionFrom)
            return true;
        if (SectionFrom > other.SectionFrom || SectionTo > other.SectionTo)
            return false;
        return Far <= other.Near || (Near <= other.Near && Far <= other.Far && At <= other.At);
    }
}

/// <summary>A step from one half-done packing to the next.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct BeamMove(int Parent, int Fit, int Level, int Plank);

/// <summary>A move and how promising it is; the smaller the score, the better.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct ScoredMove(double Score, BeamMove Move) : IComparable<ScoredMove>
{
    /// <summary>By score, and where that is the same by the move itself, so that the order is the same every time.</summary>
    public int CompareTo(ScoredMove other)
    {
        if (Score < other.Score)
            return -1;
        if (Score > other.Score)
            return 1;
        var order = Move.Parent.CompareTo(other.Move.Parent);
        if (order == 0)
            order = other.Move.Level.CompareTo(Move.Level);
        return order == 0 ? Move.Fit.CompareTo(other.Move.Fit) : order;
    }

    public static bool operator <(ScoredMove a, ScoredMove b) => a.CompareTo(b) < 0;

    public static bool operator >(ScoredMove a, ScoredMove b) => a.CompareTo(b) > 0;

    public static bool operator <=(ScoredMove a, ScoredMove b) => a.CompareTo(b) <= 0;

    public static bool operator >=(ScoredMove a, ScoredMove b) => a.CompareTo(b) >= 0;

    /// <summary>Puts so many of the best in front, the worst of them last (Hoare's quickselect, from memory).</summary>
    public static void PutBestFirst(Span<ScoredMove> moves, int many)
    {
        var (low, high) = (0, moves.Length - 1);
        while (low < high)
        {
            var middle = moves[(low + high) / 2];
            var (i, j) = (low, high);
            while (i <= j)
            {
                while (moves[i] < middle)
                    i++;
                while (middle < moves[j])
                    j--;
                if (i > j)
                    break;
                (moves[i], moves[j]) = (moves[j], moves[i]);
                i++;
                j--;
            }

            if (many - 1 <= j)
                high = j;
            else if (many - 1 >= i)
                low = i;
            else
                return;
        }
    }
}
