using ShopClass.Core.Planning.Classes.Staged;

namespace ShopClass.Core.Planning.Classes;

/// <summary>A kind of board to pack onto, in any whole unit. Sections are crosscut from its length, strips ripped from those.</summary>
/// <param name="Width">Across the board.</param>
/// <param name="Length">Along the board.</param>
/// <param name="Cost">What one costs; not negative.</param>
/// <param name="Copies">How many there are; null for as many as are needed.</param>
public sealed record StagedStock(int Width, int Length, long Cost, int? Copies = null);

/// <summary>Rectangles to be cut, never turned.</summary>
/// <param name="Width">Across the board.</param>
/// <param name="Length">Along the board.</param>
/// <param name="Count">How many.</param>
public sealed record StagedItem(int Width, int Length, int Count);

/// <summary>One rectangle in its place.</summary>
/// <param name="Item">Its place in the list of items.</param>
/// <param name="From">Where it begins along the board.</param>
/// <param name="Near">Its edge nearest the board's near edge.</param>
public readonly record struct StagedPlace(int Item, int From, int Near);

/// <summary>A strip of a section.</summary>
/// <param name="Near">Its near edge.</param>
/// <param name="Far">Its far edge.</param>
/// <param name="Places">What is crosscut from it.</param>
public sealed record StagedStrip(int Near, int Far, IReadOnlyList<StagedPlace> Places);

/// <summary>A section of a board.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Strips">What is ripped from it.</param>
public sealed record StagedSection(int From, int To, IReadOnlyList<StagedStrip> Strips);

/// <summary>One board as it is cut.</summary>
/// <param name="Stock">Its kind's place in the list of stock.</param>
/// <param name="Sections">Its sections, from its start.</param>
public sealed record StagedBoard(int Stock, IReadOnlyList<StagedSection> Sections);

/// <summary>What a packing came to.</summary>
/// <param name="Boards">The boards, each cut in three stages with trims; empty when not everything could be packed.</param>
/// <param name="Cost">What they cost together.</param>
/// <param name="Bound">A cost no packing in three stages goes below.</param>
/// <param name="IsComplete">Whether everything is packed.</param>
/// <param name="StepsTaken">Steps of search it took.</param>
public sealed record StagedResult(
    IReadOnlyList<StagedBoard> Boards,
    long Cost,
    long Bound,
    bool IsComplete,
    int StepsTaken
)
{
    /// <summary>Whether nothing can be cheaper.</summary>
    public bool IsProven => IsComplete && Cost == Bound;
}

/// <summary>What a packing tells while it runs.</summary>
/// <param name="StepsTaken">Steps so far.</param>
/// <param name="Cost">The cheapest packing so far.</param>
/// <param name="Bound">The bound so far.</param>
public sealed record StagedProgress(int StepsTaken, long Cost, long Bound);

/// <summary>
/// Packs rectangles onto boards at the least cost, in three stages with trims: crosscut into sections, rip into strips,
/// crosscut into pieces; every piece may be shorter and narrower than its place by a last trim.
/// </summary>
/// <remarks>A kerf is packed by adding it to both sizes of every item and of every board.</remarks>
public static class StagedPacking
{
    /// <summary>The usual step limit: some seconds of search on a hundred items, where nothing is proven before.</summary>
    public const int UsualSteps = 200_000;

    /// <summary>The cheapest packing found within the step limit, and a proven bound. The same question gives the same answer.</summary>
    /// <param name="stock">The kinds of board.</param>
    /// <param name="items">What is to be cut.</param>
    /// <param name="stepLimit">Steps of search allowed; a step is a thousand looks at a place for a piece.</param>
    /// <param name="onePerStrip">Whether every strip gives one piece: two stages, crosscut and rip, and a trim.</param>
    /// <param name="progress">Told of cheaper packings.</param>
    /// <param name="cancel">Stops the search; the cheapest packing so far is returned.</param>
    public static StagedResult Pack(
        IReadOnlyList<StagedStock> stock,
        IReadOnlyList<StagedItem> items,
        int stepLimit = UsualSteps,
        bool onePerStrip = false,
        IProgress<StagedProgress>? progress = null,
        CancellationToken cancel = default
    )
    {
        var cutting = new Cutting(
            [
                .. stock.Select(s => new Plank(
                    s.Length,
                    s.Width,
                    s.Cost,
                    s.Copies ?? int.MaxValue,
                    KeepsEdges: false
                )),
            ],
            [
                .. items.Select(i => new Piece(
                    [new Way(i.Length, i.Width, i.Width)],
                    i.Count,
                    Suits: null
                )),
            ]
        )
        {
            OnePerStrip = onePerStrip,
        };
        var effort = new Effort(stepLimit, cancel);
        var (boards, cost, bound, isComplete) = new Packer(
            cutting,
            cutting,
            effort,
            progress
        ).Run();
        return new(
            [.. boards.Select(b => Written.Board(cutting, b))],
            cost,
            bound,
            isComplete,
            effort.Taken
        );
    }
}
