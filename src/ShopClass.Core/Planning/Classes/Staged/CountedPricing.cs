using System.Runtime.InteropServices;

namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>
/// The most valuable ways to cut one board at given prices, no piece more often than it is asked for: a depth-first search
/// that tables of what the rest can yield at most keep short (<see cref="CountedTables"/>). For one kind of board without end
/// and pieces that lie one way.
/// </summary>
internal sealed class CountedPricing
{
    private const int MostCells = 4_000_000;
    private const int FirstNodes = 4_000;
    private const int Kept = 6;
    private readonly Lone[] all;
    private readonly int length;
    private readonly int width;
    private readonly bool onePerStrip;
    private readonly CountedTables tables;
    private readonly List<Lone> pieces = [];
    private readonly List<Laid> laid = [];
    private readonly List<Laid[]> found = [];
    private readonly bool[] used;
    private long least;
    private int limit;
    private int nodes;

    private CountedPricing(Cutting cutting, Lone[] all, Grid along, Grid across)
    {
        this.all = all;
        length = along.Room(cutting.Planks[0].Length);
        width = across.Room(cutting.Planks[0].Width);
        onePerStrip = cutting.OnePerStrip;
        tables = new(length, width, onePerStrip);
        used = new bool[cutting.Pieces.Sum(p => p.Count)];
        IsExact = along.IsExact && across.IsExact;
    }

    /// <summary>Whether no size is rounded.</summary>
    public bool IsExact { get; }

    /// <summary>The search for what is to be cut; null where it is not made for that.</summary>
    public static CountedPricing? For(Cutting cutting)
    {
        if (
            cutting.Planks is not [{ IsEndless: true, Cost: > 0 } plank]
            || cutting.Pieces.Any(p => p.Ways.Count > 1)
        )
            return null;
        Fit[] fits = [.. cutting.Ways[0].Where(f => cutting.Pieces[f.Piece].Count > 0)];
        var along = Grid.For(fits.Select(f => f.Along), plank.Length, up: true);
        var across = Grid.For(fits.Select(f => f.Across), plank.Width, up: true);
        var cells = CountedTables.Cells(
            fits.Sum(f => cutting.Pieces[f.Piece].Count),
            along.Room(plank.Length),
            across.Room(plank.Width)
        );
        if (cells > MostCells)
            return null;
        Lone[] each =
        [
            .. fits.Select(f => new Lone(
                    f.Piece,
                    f.Way,
                    along.Piece(f.Along),
                    across.Piece(f.Across),
                    0
                ))
                .OrderByDescending(p => p.Across)
                .ThenByDescending(p => p.Along)
                .ThenBy(p => p.Piece),
        ];
        return Array.TrueForAll(
            each,
            p => p.Along <= along.Room(plank.Length) && p.Across <= across.Room(plank.Width)
        )
            ? new(cutting, each, along, across)
            : null;
    }

    /// <summary>Boards that yield more than a limit, the best last; none is found where there is none.</summary>
    /// <param name="prices">The price of each piece.</param>
    /// <param name="left">How many of each there are.</param>
    /// <param name="than">The limit.</param>
    /// <param name="mostNodes">How long one is looked for.</param>
    /// <param name="most">What no board yields more than.</param>
    /// <param name="effort">Counts the looks.</param>
    public IReadOnlyList<CutBoard> Better(
        IReadOnlyList<long> prices,
        IReadOnlyList<int> left,
        long than,
        int mostNodes,
        Effort effort,
        out long most
    )
    {
        pieces.Clear();
        foreach (var lone in all)
        {
            for (var n = 0; n < left[lone.Piece] && prices[lone.Piece] > 0; n++)
                pieces.Add(lone with { Price = prices[lone.Piece] });
        }

        tables.Fill(CollectionsMarshal.AsSpan(pieces));
        effort.Take(tables.Looks);
        found.Clear();
        // Any board that gains will do; only where none turns up is it worth making sure that there is none.
        for (limit = FirstNodes; ; limit *= 8)
        {
            nodes = 0;
            least = than;
            Sections(0, length, 0);
            var goesOn = effort.Take(2L * nodes);
            if (nodes <= limit || found.Count > 0 || limit >= mostNodes || !goesOn)
                break;
        }

        most = nodes > limit ? tables.Board(0, length) : least;
        return [.. found.Skip(found.Count - Kept).Select(BeamLog.Board)];
    }

    /// <summary>Cuts one more section, begun with this piece or a later one, from what is left along the board.</summary>
    private void Sections(int from, int room, long value)
    {
        if (nodes++ > limit)
            return;
        if (value > least)
        {
            least = value;
            found.Add([.. laid]);
        }

        for (var first = from; first < pieces.Count; first++)
        {
            if (value + tables.Board(first, room) <= least)
                return;
            var piece = pieces[first];
            if (piece.Along > room || !IsFree(first, from))
                continue;
            Lay(first, laid.Count == 0 ? -1 : 0);
            for (var l = piece.Along; l <= room; l++)
            {
                var rest = tables.Board(first + 1, room - l);
                if (tables.IsReached(l) && value + tables.Opened(l, first) + rest > least)
                    Strips(
                        new(first, l, room - l, first, width - piece.Across),
                        first + 1,
                        l - piece.Along,
                        value + piece.Price,
                        piece.Along == l
                    );
            }

            Lift(first);
        }
    }

    /// <summary>Lays one more piece in the strip at hand, begins the next strip, or closes the section.</summary>
    private void Strips(Place at, int from, int room, long value, bool isReached)
    {
        if (nodes++ > limit)
            return;
        var behind = tables.Board(at.First + 1, at.Room);
        var beside = behind + tables.Section(at.Length, at.Leader + 1, at.Across);
        for (var p = from; p < pieces.Count && !onePerStrip; p++)
        {
            if (value + tables.Strip(p, room) + beside <= least)
                break;
            var piece = pieces[p];
            if (piece.Along > room || !IsFree(p, from))
                continue;
            Lay(p, 2);
            var reaches = isReached || piece.Along == room;
            Strips(at, p + 1, room - piece.Along, value + piece.Price, reaches);
            Lift(p);
        }

        for (var p = at.Leader + 1; p < pieces.Count; p++)
        {
            if (value + tables.Section(at.Length, p, at.Across) + behind <= least)
                break;
            var piece = pieces[p];
            if (piece.Across > at.Across || piece.Along > at.Length || !IsFree(p, at.Leader + 1))
                continue;
            Lay(p, 1);
            Strips(
                at with
                {
                    Leader = p,
                    Across = at.Across - piece.Across,
                },
                p + 1,
                at.Length - piece.Along,
                value + piece.Price,
                isReached || piece.Along == at.Length
            );
            Lift(p);
        }

        // A section longer than all its strips is looked at as the shorter one it could be.
        if (isReached && value + behind > least)
            Sections(at.First + 1, at.Room, value);
    }

    /// <summary>Whether a piece is not laid yet, nor one just like it before it, which would come to the same.</summary>
    private bool IsFree(int piece, int from) =>
        !used[piece]
        && (piece == from || used[piece - 1] || pieces[piece - 1].Piece != pieces[piece].Piece);

    private void Lay(int piece, int level)
    {
        used[piece] = true;
        laid.Add(new(pieces[piece].Piece, pieces[piece].Way, level, 0));
    }

    private void Lift(int piece)
    {
        used[piece] = false;
        laid.RemoveAt(laid.Count - 1);
    }

    /// <summary>Where a strip is being filled.</summary>
    /// <param name="First">The piece its section began with.</param>
    /// <param name="Length">The section's length.</param>
    /// <param name="Room">What is left along the board behind it.</param>
    /// <param name="Leader">The piece the strip began with.</param>
    /// <param name="Across">What is left across the section.</param>
    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Place(int First, int Length, int Room, int Leader, int Across);
}
