namespace ShopClass.Core.Planning.Patterns;

/// <summary>A request without kerf and in its coarsest unit, and the way back to the request's own pieces.</summary>
internal sealed class ReducedLengths
{
    private readonly List<Queue<int>> pieces = [];

    private ReducedLengths(Lengths lengths, IEnumerable<IEnumerable<int>> bySize)
    {
        Lengths = lengths;
        pieces.AddRange(bySize.Select(p => new Queue<int>(p)));
    }

    public Lengths Lengths { get; }

    public static ReducedLengths Of(LengthsRequest request)
    {
        Refuse(request);
        var board = request.Board + request.Kerf;
        var sizes = request
            .Wanted.Select((w, i) => (Size: w.Length + request.Kerf, w.Count, Index: i))
            .Where(w => w.Count > 0)
            .GroupBy(w => w.Size)
            .OrderByDescending(g => g.Key)
            .ToList();
        var unit = sizes.Aggregate(board, (u, g) => Common(u, g.Key));
        return new(
            new(
                checked((int)(board / unit)),
                [.. sizes.Select(g => checked((int)(g.Key / unit)))],
                [.. sizes.Select(g => g.Sum(w => w.Count))]
            ),
            sizes.Select(g => g.SelectMany(w => Enumerable.Repeat(w.Index, w.Count)))
        );
    }

    /// <summary>The boards in the request's own numbers. Each piece is handed out once.</summary>
    public IReadOnlyList<IReadOnlyList<int>> Name(IReadOnlyList<Pattern> boards) =>
        [
            .. boards.Select(b =>
                (IReadOnlyList<int>)
                    [
                        .. b.Kinds.SelectMany(
                            (kind, k) =>
                                Enumerable.Range(0, b.Counts[k]).Select(_ => pieces[kind].Dequeue())
                        ),
                    ]
            ),
        ];

    private static void Refuse(LengthsRequest request)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(request.Board);
        ArgumentOutOfRangeException.ThrowIfNegative(request.Kerf);
        foreach (var wanted in request.Wanted)
        {
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(wanted.Length);
            ArgumentOutOfRangeException.ThrowIfNegative(wanted.Count);
            ArgumentOutOfRangeException.ThrowIfGreaterThan(wanted.Length, request.Board);
        }
    }

    private static long Common(long a, long b) => b == 0 ? a : Common(b, a % b);
}
