namespace ShopClass.Core.Planning.Search;

/// <summary>
/// Looks for a layout of everything on several boards, some with bad places, without going through all choices: the blanks shared
/// out so that the scarcest board has the most wood to spare come first, then the next, as long as the looks last.
/// </summary>
/// <param name="lattice">The choices of blanks.</param>
/// <param name="boards">The boards, with what each would yield if it were clear, and how it is laid out as it is.</param>
/// <param name="steps">Counts the looks.</param>
internal sealed class SoonShares(
    Lattice lattice,
    IReadOnlyList<(Stock Stock, BoardTable Clear, SoonLayout Layout)> boards,
    Steps steps
)
{
    /// <summary>The most choices of blanks that are shared out.</summary>
    public const int MostChoices = 4096;

    /// <summary>The most sections placed on all boards together, and for one choice on one board.</summary>
    private const int MostPlaced = 1500;

    private const int MostPlacedAtOnce = 150;

    /// <summary>The most ways tried to share out what is left among the boards that are left.</summary>
    private const int MostShares = 40;
    private const long NoRoom = long.MinValue;
    private readonly long[][] spare = [.. boards.Select(_ => new long[lattice.Size])];
    private readonly long[][] spareFrom = [.. boards.Select(_ => new long[lattice.Size])];
    private readonly Dictionary<(int Board, int Code), IReadOnlyList<DraftSection>?> laid = [];
    private readonly List<DraftBoard> found = [];
    private readonly int[] parts = new int[lattice.Size];
    private int placed;

    /// <summary>Each of the boards laid out, or null where no layout was found.</summary>
    public IReadOnlyList<DraftBoard>? Find()
    {
        for (var board = boards.Count - 1; board >= 0; board--)
            WorkOutSpare(board);
        return Share(0, lattice.All) ? found : null;
    }

    /// <summary>Length to spare for each choice out of a board, and of the scarcest of it and those after it.</summary>
    private void WorkOutSpare(int board)
    {
        var (stock, clear, _) = boards[board];
        var isLast = board == boards.Count - 1;
        var bad = stock.Bad.Sum(b => b.To - b.From);
        for (var code = 1; code < lattice.Size; code++)
        {
            spare[board][code] =
                clear.Least(code, stock.Usable) is not { } least ? NoRoom
                : stock.IsClear ? long.MaxValue
                : stock.Usable - least.Length - bad;
        }

        if (isLast || board == 0)
        {
            spareFrom[board] = spare[board];
            return;
        }

        for (var code = 1; code < lattice.Size && steps.Take(1 + code / 32); code++)
        {
            var count = lattice.Parts(code, parts);
            var most = NoRoom;
            for (var i = 1; i < count - 1; i++)
                most = Math.Max(most, SpareOf(board, parts[i], code));
            spareFrom[board][code] = most;
        }
    }

    private long SpareOf(int board, int part, int code) =>
        Math.Min(spare[board][part], spareFrom[board + 1][code - part]);

    /// <summary>Shares a choice out among a board and all after it, and lays them out.</summary>
    private bool Share(int board, int code)
    {
        if (board == boards.Count - 1)
            return spare[board][code] != NoRoom && Lay(board, code);
        var count = lattice.Parts(code, parts);
        steps.Take(1 + count / 16);
        int[] likeliest =
        [
            .. parts[1..Math.Max(1, count - 1)]
                .Where(part => SpareOf(board, part, code) != NoRoom)
                .OrderByDescending(part => SpareOf(board, part, code))
                .ThenBy(part => part)
                .Take(MostShares),
        ];
        foreach (var part in likeliest)
        {
            if (placed > MostPlaced || steps.AreUp)
                return false;
            if (!Lay(board, part))
                continue;
            if (Share(board + 1, code - part))
                return true;
            found.RemoveAt(found.Count - 1);
        }

        return false;
    }

    private bool Lay(int board, int code)
    {
        var (stock, _, layout) = boards[board];
        if (!laid.TryGetValue((board, code), out var sections))
        {
            sections = layout.Find(code, MostPlacedAtOnce);
            placed += 1 + layout.Placed;
            laid.Add((board, code), sections);
        }

        if (sections is null)
            return false;
        found.Add(new(stock, sections));
        return true;
    }
}
