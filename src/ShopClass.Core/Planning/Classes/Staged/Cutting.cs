namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>A kind of board as the search sees it, kerf included.</summary>
/// <param name="Length">Usable length and one kerf.</param>
/// <param name="Width">Width and one kerf.</param>
/// <param name="Cost">What one costs.</param>
/// <param name="Copies">How many there are; <see cref="int.MaxValue"/> for no end of them.</param>
/// <param name="KeepsEdges">Whether both its edges came straight, so that a piece of the full width may be narrower.</param>
/// <param name="IsNowhere">Whether it stands for what is left over.</param>
internal sealed record Plank(
    int Length,
    int Width,
    long Cost,
    int Copies,
    bool KeepsEdges,
    bool IsNowhere = false
)
{
    public long Area => (long)Length * Width;
    public bool IsEndless => Copies == int.MaxValue;
}

/// <summary>One way a piece may lie, kerf included.</summary>
/// <param name="Along">Along the board.</param>
/// <param name="Across">Across the board, with sawn edges.</param>
/// <param name="Bare">Across the board where it keeps both the board's straight edges.</param>
/// <param name="Turned">Whether its length runs across.</param>
internal readonly record struct Way(int Along, int Across, int Bare, bool Turned = false)
{
    /// <summary>What it takes across this board; more than the board's width where it does not fit.</summary>
    public int AcrossOn(Plank plank) =>
        Across > plank.Width && plank.KeepsEdges && Bare <= plank.Width ? plank.Width : Across;

    public bool Fits(Plank plank) => Along <= plank.Length && AcrossOn(plank) <= plank.Width;
}

/// <summary>Pieces that are alike.</summary>
/// <param name="Ways">The ways they may lie; one or two.</param>
/// <param name="Count">How many.</param>
/// <param name="Suits">Which kinds of board are right for them; null for all.</param>
internal sealed record Piece(IReadOnlyList<Way> Ways, int Count, IReadOnlyList<bool>? Suits)
{
    /// <summary>The least area it takes, whichever way it lies.</summary>
    public long Area { get; } = Ways.Min(w => (long)w.Along * Math.Min(w.Across, w.Bare));

    public bool Suit(int plank) => Suits is null || Suits[plank];
}

/// <summary>What is to be cut, and from what.</summary>
internal sealed class Cutting
{
    public Cutting(IReadOnlyList<Plank> planks, IReadOnlyList<Piece> pieces)
    {
        Planks = planks;
        Pieces = pieces;
        Ways =
        [
            .. planks.Select(
                (plank, p) =>
                    (Fit[])
                        [
                            .. pieces.SelectMany(
                                (piece, k) =>
                                    piece
                                        .Ways.Where(way => piece.Suit(p) && way.Fits(plank))
                                        .Select(way => new Fit(
                                            k,
                                            way.Along,
                                            way.AcrossOn(plank),
                                            way
                                        ))
                            ),
                        ]
            ),
        ];
    }

    private Cutting(
        IReadOnlyList<Plank> planks,
        IReadOnlyList<Piece> pieces,
        IReadOnlyList<IReadOnlyList<Fit>> ways
    )
    {
        Planks = planks;
        Pieces = pieces;
        Ways = ways;
    }

    public IReadOnlyList<Plank> Planks { get; }
    public IReadOnlyList<Piece> Pieces { get; }

    /// <summary>Whether a strip gives one piece, so that boards are cut in two stages.</summary>
    public bool OnePerStrip { get; init; }

    /// <summary>For each kind of board, every way a piece can lie on it.</summary>
    public IReadOnlyList<IReadOnlyList<Fit>> Ways { get; }

    /// <summary>The same with other counts.</summary>
    public Cutting With(IReadOnlyList<int> counts, IReadOnlyList<int> copies) =>
        new(
            [.. Planks.Select((p, i) => p with { Copies = copies[i] })],
            [.. Pieces.Select((p, i) => p with { Count = counts[i] })],
            Ways
        )
        {
            OnePerStrip = OnePerStrip,
        };

    /// <summary>
    /// The same with boards that there are few of kept for pieces that go on no others: beams would fill them with whatever fits
    /// best.
    /// </summary>
    public Cutting SparingTheScarce()
    {
        bool IsCommon(int plank) => Planks[plank] is { IsEndless: true, IsNowhere: false };
        bool HasCommon(int piece) =>
            Ways.Where((_, p) => IsCommon(p)).Any(list => list.Any(f => f.Piece == piece));
        return new(
            Planks,
            [
                .. Pieces.Select(
                    (piece, k) =>
                        HasCommon(k)
                            ? piece with
                            {
                                Suits = [.. Planks.Select((_, p) => IsCommon(p) && piece.Suit(p))],
                            }
                            : piece
                ),
            ]
        )
        {
            OnePerStrip = OnePerStrip,
        };
    }

    /// <summary>What some boards cost.</summary>
    public long CostOf(IEnumerable<CutBoard> boards) => boards.Sum(b => Planks[b.Plank].Cost);

    /// <summary>Whether every piece has some kind of board it fits on.</summary>
    public bool EachHasABoard =>
        Enumerable
            .Range(0, Pieces.Count)
            .All(k => Pieces[k].Count == 0 || Ways.Any(list => list.Any(f => f.Piece == k)));
}

/// <summary>A piece on a kind of board that can hold it.</summary>
internal readonly record struct Fit(int Piece, int Along, int Across, Way Way);

/// <summary>A piece laid down.</summary>
/// <param name="Piece">Which.</param>
/// <param name="Way">How it lies.</param>
/// <param name="Plank">On which kind of board.</param>
/// <param name="Level">Where: 2 in the strip at hand, 1 in a new strip, 0 in a new section, -1 on a new board.</param>
internal readonly record struct Laid(int Piece, Way Way, int Level, int Plank);

/// <summary>A strip, a section and a board as they are built.</summary>
internal sealed record CutStrip(IReadOnlyList<(int Piece, Way Way)> Pieces);

/// <summary>A section: strips beside each other.</summary>
internal sealed record CutSection(IReadOnlyList<CutStrip> Strips);

/// <summary>A board cut up.</summary>
internal sealed record CutBoard(int Plank, IReadOnlyList<CutSection> Sections)
{
    public IEnumerable<int> Pieces =>
        Sections.SelectMany(s => s.Strips).SelectMany(s => s.Pieces).Select(p => p.Piece);
}
