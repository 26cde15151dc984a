namespace ShopClass.Core.Planning.Patterns;

/// <summary>So many pieces of one length.</summary>
/// <param name="Length">Length of a piece, in any whole unit; more than zero.</param>
/// <param name="Count">How many are wanted; zero or more.</param>
public sealed record LengthWanted(long Length, int Count);

/// <summary>
/// Pieces as wide as the boards (or strips of one width) that are to be crosscut from boards of one length.
/// </summary>
/// <param name="Board">Clear length of a board, in the pieces' unit; more than zero.</param>
/// <param name="Kerf">What each crosscut between two pieces takes, in the same unit; zero or more.</param>
/// <param name="Wanted">The pieces.</param>
public sealed record LengthsRequest(long Board, long Kerf, IReadOnlyList<LengthWanted> Wanted)
{
    /// <summary>How much work may be done, in steps of about a thousand simple looks; the answer depends on it, never on a clock.</summary>
    public int StepLimit { get; init; } = 1_000_000;
}

/// <summary>Boards to crosscut, and the fewest that could ever do.</summary>
/// <param name="Boards">For each board the pieces it yields, as numbers into the wanted list, longest piece first.</param>
/// <param name="Bound">No way of cutting needs fewer boards.</param>
/// <param name="StepsTaken">Work done, in steps.</param>
public sealed record LengthsPlan(
    IReadOnlyList<IReadOnlyList<int>> Boards,
    int Bound,
    int StepsTaken
)
{
    /// <summary>Whether no way of cutting needs fewer boards than this one.</summary>
    public bool IsFewest => Boards.Count == Bound;
}
