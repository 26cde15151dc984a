namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>One single piece, kerf included, in steps of a grid, and its price.</summary>
internal readonly record struct Lone(int Piece, Way Way, int Along, int Across, long Price);

/// <summary>
/// What the rest of a strip, a section or a board can yield at most, for single pieces in a fixed order, widest first. Every
/// strip begins with its widest piece and every section with the widest of its strips, so within a strip no piece counts
/// twice, nor does one begin two strips of a section or two sections. It may still count once in each of those ways, so these
/// are limits from above.
/// </summary>
internal sealed class CountedTables(int length, int width, bool onePerStrip)
{
    private readonly bool[] isReached = new bool[length + 1];
    private long[] strips = [];
    private long[] sections = [];
    private long[] boards = [];
    private long[] opened = [];
    private int count;

    /// <summary>Looks the last filling took, about.</summary>
    public long Looks { get; private set; }

    /// <summary>How many figures there are for so many pieces.</summary>
    public static long Cells(int pieces, int length, int width) =>
        (long)(length + 1) * (pieces + 1) * (width + 1);

    /// <summary>What a strip's last stretch of this length yields at most, filled from this piece on.</summary>
    public long Strip(int from, int room) => strips[from * (length + 1) + room];

    /// <summary>What is left across a section yields at most, the next strip begun with this piece or a later one.</summary>
    public long Section(int stretch, int from, int room) =>
        sections[(stretch * (count + 1) + from) * (width + 1) + room];

    /// <summary>What is left along a board yields at most, the next section begun with this piece or a later one.</summary>
    public long Board(int from, int room) => boards[from * (length + 1) + room];

    /// <summary>What a whole section of this length begun with this piece yields at most.</summary>
    public long Opened(int stretch, int first) => opened[stretch * count + first];

    /// <summary>Whether a strip can be exactly this long.</summary>
    public bool IsReached(int stretch) => isReached[stretch];

    /// <summary>Works everything out for some pieces.</summary>
    public void Fill(ReadOnlySpan<Lone> pieces)
    {
        count = pieces.Length;
        Looks = 0;
        FillStrips(pieces);
        FillSections(pieces);
        FillBoards(pieces);
    }

    private void FillStrips(ReadOnlySpan<Lone> pieces)
    {
        Grow(ref strips, (count + 1) * (length + 1));
        Array.Clear(isReached);
        isReached[0] = true;
        Row(strips, count, length).Clear();
        for (var r = count - 1; r >= 0; r--)
        {
            var along = pieces[r].Along;
            Choose(Row(strips, r, length), Row(strips, r + 1, length), along, pieces[r].Price);
            for (var x = length; x >= along; x--)
                isReached[x] |= isReached[x - along] && !(onePerStrip && x > along);
        }

        if (onePerStrip)
            strips.AsSpan().Clear();
        Looks += (long)count * length / 4;
    }

    private void FillSections(ReadOnlySpan<Lone> pieces)
    {
        Grow(ref sections, (int)Cells(count, length, width));
        for (var l = 1; l <= length; l++)
        {
            if (!isReached[l])
                continue;
            var at = l * (count + 1);
            Row(sections, at + count, width).Clear();
            for (var r = count - 1; r >= 0; r--)
            {
                var row = Row(sections, at + r, width);
                var later = Row(sections, at + r + 1, width);
                if (pieces[r].Along > l)
                    later.CopyTo(row);
                else
                    Choose(
                        row,
                        later,
                        pieces[r].Across,
                        pieces[r].Price + Strip(r + 1, l - pieces[r].Along)
                    );
            }

            Looks += (long)count * width / 8;
        }
    }

    private void FillBoards(ReadOnlySpan<Lone> pieces)
    {
        Grow(ref boards, (count + 2) * (length + 1));
        Grow(ref opened, (length + 1) * Math.Max(1, count));
        Row(boards, count, length).Clear();
        for (var first = count - 1; first >= 0; first--)
        {
            var piece = pieces[first];
            var row = Row(boards, first, length);
            var later = Row(boards, first + 1, length);
            later.CopyTo(row);
            for (var l = piece.Along; l <= length; l++)
            {
                if (!isReached[l])
                    continue;
                var value =
                    piece.Price
                    + Strip(first + 1, l - piece.Along)
                    + Section(l, first + 1, width - piece.Across);
                opened[l * count + first] = value;
                for (var b = l; b <= length; b++)
                    row[b] = Math.Max(row[b], value + later[b - l]);
                Looks += (length - l) / 8;
            }
        }
    }

    /// <summary>The better of going without a piece and taking it, for every room.</summary>
    private static void Choose(Span<long> row, ReadOnlySpan<long> later, int size, long value)
    {
        later[..size].CopyTo(row);
        var with = later[..^size];
        var without = later[size..];
        var to = row[size..];
        for (var x = 0; x < to.Length && x < with.Length && x < without.Length; x++)
            to[x] = Math.Max(without[x], with[x] + value);
    }

    private static Span<long> Row(long[] table, int row, int last) =>
        table.AsSpan(row * (last + 1), last + 1);

    private static void Grow(ref long[] table, int cells)
    {
        if (table.Length < cells)
            table = new long[cells];
    }
}
