using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning.Classes;

/// <summary>A size of board that a seller lists. Sizes are actual, never nominal.</summary>
public sealed record StockSize
{
    /// <summary>A key of its own among the request's sizes.</summary>
    public required string Id { get; init; }

    /// <summary>Whose list it is on.</summary>
    public required string SellerId { get; init; }

    /// <summary>What to ask for: <c>1x10, 8 ft</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The species, as a key of <see cref="SpeciesTable"/>.</summary>
    public required string SpeciesId { get; init; }

    /// <summary>How it comes from the mill.</summary>
    public required Surfacing Surfacing { get; init; }

    /// <summary>Actual thickness.</summary>
    public required Length Thickness { get; init; }

    /// <summary>Actual width.</summary>
    public required Length Width { get; init; }

    /// <summary>Actual length.</summary>
    public required Length Length { get; init; }

    /// <summary>Wood to saw off each end; the course's usual end trim where it is not said.</summary>
    public Length? EndTrim { get; init; }

    /// <summary>What one costs, in the currency's minor units; not negative.</summary>
    public required long Price { get; init; }

    /// <summary>How many there are; null for as many as are asked for.</summary>
    public int? Available { get; init; }

    /// <summary>One such board.</summary>
    public Board ToBoard(string id, string name, CourseRules rules) =>
        new()
        {
            Id = id,
            Name = name,
            SpeciesId = SpeciesId,
            Surfacing = Surfacing,
            Thickness = Thickness,
            WidthAtStart = Width,
            WidthAtMiddle = Width,
            WidthAtEnd = Width,
            Length = Length,
            TrimStart = EndTrim ?? rules.UsualEndTrim,
            TrimEnd = EndTrim ?? rules.UsualEndTrim,
        };
}

/// <summary>A board or offcut that is there already.</summary>
/// <param name="Board">The board, as measured; its Id is unique on the rack.</param>
/// <param name="Value">What using it counts for, in the currency's minor units; zero for wood that is free. Not negative.</param>
public sealed record RackBoard(Board Board, long Value = 0);

/// <summary>How kits come to their wood.</summary>
public enum KitWay
{
    /// <summary>The blanks of all kits are laid out over all boards together. Least wood; the shop breaks the boards down.</summary>
    Pooled,

    /// <summary>Every kit has boards of its own, so that a student saws a whole project out of whole boards.</summary>
    WholeBoards,
}

/// <summary>Everything the wood for a class depends on. The same request gives the same answer, to the byte.</summary>
public sealed record ClassRequest
{
    /// <summary>What each student makes.</summary>
    public required Project Project { get; init; }

    /// <summary>The course's settings.</summary>
    public required CourseRules Rules { get; init; }

    /// <summary>How many students need a kit.</summary>
    public required int Kits { get; init; }

    /// <summary>Whole kits to have in hand.</summary>
    public int SpareKits { get; init; }

    /// <summary>Single parts to have in hand: how many of each letter.</summary>
    public IReadOnlyDictionary<string, int> SpareParts { get; init; } =
        new SortedDictionary<string, int>(StringComparer.Ordinal);

    /// <summary>What can be bought; every size fit to be used (species and surfacing are the caller's choice).</summary>
    public required IReadOnlyList<StockSize> Stock { get; init; }

    /// <summary>What is there already.</summary>
    public IReadOnlyList<RackBoard> Rack { get; init; } = [];

    /// <summary>How kits come to their wood.</summary>
    public KitWay Way { get; init; } = KitWay.Pooled;

    /// <summary>Steps of search allowed: a count, not a clock. A step is a thousand looks at a place for a piece.</summary>
    public int StepLimit { get; init; } = 8_000;

    /// <summary>Kits and spare kits together.</summary>
    public int AllKits => Kits + SpareKits;

    /// <summary>The project as if the class were one maker: every part as often as all kits and spares need it.</summary>
    /// <remarks>Copies are numbered kit by kit; spare parts come after the last kit.</remarks>
    public Project WholeClass =>
        Project with
        {
            Parts =
            [
                .. Project
                    .Parts.Select(p =>
                        p with
                        {
                            Quantity =
                                p.Quantity * AllKits + SpareParts.GetValueOrDefault(p.Letter),
                        }
                    )
                    .Where(p => p.Quantity > 0),
            ],
        };

    /// <summary>Which kit a blank belongs to, from 1, spare kits last; 0 for a spare part.</summary>
    public int KitOf(BlankKey key)
    {
        var quantity = Project.Parts.First(p => p.Letter == key.Part).Quantity;
        var kit = quantity == 0 ? 0 : (key.Copy - 1) / quantity + 1;
        return kit > AllKits ? 0 : kit;
    }
}
