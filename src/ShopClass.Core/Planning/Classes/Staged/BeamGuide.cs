namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>What makes a half-done packing promising: little waste, and big pieces gone first. Smaller is better.</summary>
/// <param name="Start">Added to the waste, so that early packings without any are told apart by their pieces.</param>
/// <param name="Power">Whether the mean size of the pieces packed counts: 0 not, 1 fully, else by its root.</param>
/// <param name="IsSquared">Whether the mean is weighted by size.</param>
internal readonly record struct BeamGuide(double Start, int Power, bool IsSquared = false)
{
    /// <summary>Those that do well on many kinds of cases, best first.</summary>
    public static IReadOnlyList<BeamGuide> Usual { get; } =
    [new(0.1, 1), new(0, 1), new(0.1, 2), new(0, 0), new(0.3, 1), new(0.03, 2, true)];

    /// <summary>The same for packings of very few boards, where an early waste is made good by nothing later.</summary>
    public static IReadOnlyList<BeamGuide> FewBoards { get; } =
    [new(0.03, 1), new(0.03, 2), new(0.03, 1, true), new(0, 1), new(0.1, 2), new(0.1, 1)];

    /// <summary>The same for finding boards that others go well with.</summary>
    public static IReadOnlyList<BeamGuide> ForPool { get; } = [.. Usual, new(1, 1, true)];

    public double Of(double wasted, double meanShare) =>
        Power switch
        {
            0 => wasted + Start,
            1 => (wasted + Start) / meanShare,
            _ => (wasted + Start) / Math.Sqrt(meanShare),
        };
}

/// <summary>Random words that name what is packed: the sum over pieces is the same in whatever order they came.</summary>
internal static class BeamKeys
{
    public static ulong[][] For(IReadOnlyList<Piece> pieces)
    {
        var state = 0x5DEECE66DUL;
        return
        [
            .. pieces.Select(p =>
                (ulong[])[.. Enumerable.Range(0, p.Count + 1).Select(_ => Next(ref state))]
            ),
        ];
    }

    // SplitMix64 (Steele, Lea, Flood 2014): a fixed sequence that no library update changes.
    private static ulong Next(ref ulong state)
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15;
            var z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }
}

/// <summary>Turns the record of what was laid into boards.</summary>
internal static class BeamLog
{
    public static IReadOnlyList<CutBoard> Boards(
        IReadOnlyList<(int Before, Laid Laid)> log,
        int last
    )
    {
        var moves = new Stack<Laid>();
        for (var at = last; at >= 0; at = log[at].Before)
            moves.Push(log[at].Laid);
        var boards = new List<CutBoard>();
        var one = new List<Laid>();
        foreach (var move in moves)
        {
            if (move.Level < 0 && one.Count > 0)
            {
                boards.Add(Board(one));
                one.Clear();
            }

            one.Add(move);
        }

        if (one.Count > 0)
            boards.Add(Board(one));
        return boards;
    }

    /// <summary>What was laid on one board, as a board cut up.</summary>
    public static CutBoard Board(IReadOnlyList<Laid> laid)
    {
        var sections = new List<List<List<(int, Way)>>>();
        foreach (var move in laid)
        {
            if (move.Level <= 0)
                sections.Add([]);
            if (move.Level <= 1)
                sections[^1].Add([]);
            sections[^1][^1].Add((move.Piece, move.Way));
        }

        return new(
            laid[0].Plank,
            [.. sections.Select(s => new CutSection([.. s.Select(strip => new CutStrip(strip))]))]
        );
    }
}
