using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning.Classes;

/// <summary>So many of a size to buy.</summary>
/// <param name="Size">What.</param>
/// <param name="Count">How many.</param>
public sealed record Purchase(StockSize Size, int Count)
{
    /// <summary>What they cost together, in minor units.</summary>
    public long Cost => Size.Price * Count;
}

/// <summary>A board the class cuts up.</summary>
/// <param name="Board">The board, as bought or as it lies on the rack.</param>
/// <param name="StockSizeId">The size it is bought as; null for a board from the rack.</param>
/// <param name="Layout">How it is divided.</param>
/// <param name="Kit">The kit it belongs to where kits have boards of their own, from 1; 0 for spare parts; null where blanks are pooled.</param>
public sealed record ClassBoard(Board Board, string? StockSizeId, BoardLayout Layout, int? Kit)
{
    /// <summary>The blanks it yields.</summary>
    public IEnumerable<PlacedBlank> Blanks =>
        Layout.Sections.SelectMany(s => s.Strips).SelectMany(s => s.Blanks);
}

/// <summary>What to buy for a class, and where everything comes from.</summary>
public sealed record ClassPlan
{
    /// <summary>What to buy, in the order of the list.</summary>
    public required IReadOnlyList<Purchase> Purchases { get; init; }

    /// <summary>Every board that is cut; boards of the rack that are left alone are not listed.</summary>
    public required IReadOnlyList<ClassBoard> Boards { get; init; }

    /// <summary>Blanks that no board yields, in order.</summary>
    public required IReadOnlyList<BlankKey> Missing { get; init; }

    /// <summary>How many strips each glued-up part is made of, by letter; parts in one piece are not listed.</summary>
    public required IReadOnlyDictionary<string, int> GlueUps { get; init; }

    /// <summary>What the boards bought cost and what those taken from the rack count for, in minor units.</summary>
    public required long Cost { get; init; }

    /// <summary>A cost no way of cutting all kits goes below, in minor units; proven in whole numbers.</summary>
    public required long Bound { get; init; }

    /// <summary>Steps of search it took.</summary>
    public required int StepsTaken { get; init; }

    /// <summary>Whether all kits and spares are complete.</summary>
    public bool IsComplete => Missing.Count == 0;

    /// <summary>How much cheaper it might be at most, in minor units.</summary>
    public long Gap => Cost - Bound;

    /// <summary>Whether nothing can be cheaper.</summary>
    public bool IsBestPossible => IsComplete && Gap == 0;

    /// <summary>The class as one maker's request and plan, for the sequencer and the rehearsal.</summary>
    public (PlanningRequest Request, CutPlan Plan) AsOneMaker(ClassRequest request) =>
        (
            new()
            {
                Project = request.WholeClass,
                Boards = [.. Boards.Select(b => b.Board)],
                Rules = request.Rules,
            },
            new()
            {
                Boards = [.. Boards.Select(b => b.Layout)],
                Missing = Missing,
                GlueUps = GlueUps,
                Goals = [],
                StepsTaken = StepsTaken,
            }
        );
}

/// <summary>What a class planner tells while it runs.</summary>
/// <param name="StepsTaken">Steps so far.</param>
/// <param name="Cost">The cheapest so far, of the sort of wood at hand.</param>
/// <param name="Bound">Its bound so far.</param>
public sealed record ClassProgress(int StepsTaken, long Cost, long Bound);
