namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>
/// The most valuable way to cut each of a group of boards that suit the same pieces, by dynamic programming: strips, then
/// sections of every length, then whole boards. One run serves all lengths and widths.
/// </summary>
internal sealed class PriceGroup
{
    private readonly Cutting cutting;
    private readonly Grid along;
    private readonly Grid across;
    private readonly int longest;
    private readonly Fit[] ways;
    private readonly int[] widths;
    private readonly StripValues[] strips;
    private readonly BoardValues[] boards;
    private readonly long[] row;
    private readonly SectionValues sections;

    public PriceGroup(Cutting cutting, IReadOnlyList<int> planks, bool roundUp)
    {
        this.cutting = cutting;
        Planks = planks;
        // Zero pieces take no room in a rounded-down grid; the sizes of real pieces are far above a step.
        ways =
        [
            .. planks
                .SelectMany(p => cutting.Ways[p])
                .Select(f => f with { Across = f.Way.Across })
                .Distinct()
                .OrderBy(f => f.Across)
                .ThenBy(f => f.Along)
                .ThenBy(f => f.Piece)
                .ThenBy(f => f.Way.Turned),
        ];
        along = Grid.For(
            ways.Select(w => w.Along),
            planks.Max(p => cutting.Planks[p].Length),
            roundUp
        );
        across = Grid.For(
            ways.Select(w => w.Across),
            planks.Max(p => cutting.Planks[p].Width),
            roundUp
        );
        longest = planks.Max(p => along.Room(cutting.Planks[p].Length));
        widths = [.. ways.Select(w => across.Piece(w.Across)).Distinct().Order()];
        strips = new StripValues[widths.Length];
        boards = BoardValues.For(cutting, planks, along, across);
        sections = new(widths, boards.Max(b => b.Width));
        row = new long[widths.Length];
    }

    /// <summary>The boards of the group.</summary>
    public IReadOnlyList<int> Planks { get; }

    /// <summary>Whether no size is rounded.</summary>
    public bool IsExact => along.IsExact && across.IsExact;

    /// <summary>Looks one run takes, about.</summary>
    public long Looks { get; private set; }

    /// <summary>Works everything out for these values of the pieces.</summary>
    public void Run(IReadOnlyList<long> values)
    {
        Looks = 0;
        FillStrips(values);
        foreach (var board in boards)
            board.Begin(FullStrip(board, values));
        for (var length = 1; length <= longest; length++)
        {
            var isNew = Row(length);
            var best = isNew ? sections.MostPerWidth(row) : 0;
            var filled = false;
            foreach (var board in boards)
            {
                if (length > board.Length)
                    continue;
                Looks += board.Step(length);
                if (isNew && board.CouldGain(length, best))
                {
                    if (!filled)
                        Looks += sections.Fill(row);
                    filled = true;
                    board.Try(length, sections.At(board.Width));
                }

                board.TryFull(length);
            }
        }
    }

    /// <summary>The value of the best way to cut this board.</summary>
    public long ValueOf(int plank) => Board(plank).At(along.Room(cutting.Planks[plank].Length));

    /// <summary>The best way to cut this board.</summary>
    public CutBoard BestFor(int plank)
    {
        var board = Board(plank);
        var cut = new List<CutSection>();
        foreach (var (length, isFull) in board.Sections(along.Room(cutting.Planks[plank].Length)))
        {
            _ = Row(length);
            cut.Add(
                isFull
                    ? new CutSection([Strip(board.Full!, length)])
                    : new CutSection([
                        .. sections.Strips(row, board.Width).Select(s => Strip(strips[s], length)),
                    ])
            );
        }

        return new(plank, cut);
    }

    private BoardValues Board(int plank) => boards.First(b => b.Planks.Contains(plank));

    private CutStrip Strip(StripValues values, int length)
    {
        var pieces = new List<(int Piece, Way Way)>();
        for (var x = length; values.Last[x] >= 0; )
        {
            var way = ways[values.Last[x]];
            pieces.Add((way.Piece, way.Way));
            x = cutting.OnePerStrip ? 0 : x - along.Piece(way.Along);
        }

        return new([.. pieces.OrderByDescending(p => p.Way.Across).ThenBy(p => p.Piece)]);
    }

    private void FillStrips(IReadOnlyList<long> values)
    {
        var growing = StripValues.Empty(longest);
        var w = 0;
        for (var s = 0; s < widths.Length; s++)
        {
            for (; w < ways.Length && across.Piece(ways[w].Across) == widths[s]; w++)
            {
                growing.Allow(
                    (short)w,
                    along.Piece(ways[w].Along),
                    values[ways[w].Piece],
                    cutting.OnePerStrip
                );
                Looks += longest / 8;
            }

            strips[s] = growing.Copy();
        }
    }

    /// <summary>A strip of the board's full width, for boards whose straight edges a piece may keep.</summary>
    private StripValues? FullStrip(BoardValues board, IReadOnlyList<long> values)
    {
        if (!board.KeepsEdges)
            return null;
        var full = StripValues.Empty(longest);
        var plank = cutting.Planks[board.Planks[0]];
        for (var w = 0; w < ways.Length; w++)
        {
            if (ways[w].Way.AcrossOn(plank) <= plank.Width)
                full.Allow(
                    (short)w,
                    along.Piece(ways[w].Along),
                    values[ways[w].Piece],
                    cutting.OnePerStrip
                );
        }

        Looks += longest;
        return full;
    }

    /// <summary>The strips' values at one length; false where none is more than a step shorter.</summary>
    private bool Row(int length)
    {
        var isNew = false;
        for (var s = 0; s < widths.Length; s++)
        {
            row[s] = strips[s].Most[length];
            isNew |= row[s] > strips[s].Most[length - 1];
        }

        return isNew;
    }
}
