using ShopClass.Core.Lumber;
using ShopClass.Core.Planning;

namespace ShopClass.Core.Remakes;

/// <summary>A blank that will not do any more: sawn short, split, or with a knot found late.</summary>
public sealed record Mishap
{
    /// <summary>The plan that was being followed.</summary>
    public required CheckedPlan Plan { get; init; }

    /// <summary>How many of its cuts are made, from none to all. The pieces then are those the rehearsal knows.</summary>
    public required int CutsMade { get; init; }

    /// <summary>The blank that is spoiled.</summary>
    public required BlankKey Spoiled { get; init; }

    /// <summary>
    /// The wood that is lost, in the board's own coordinates; null takes the whole of the blank. What is left of the blank
    /// beside it may still serve.
    /// </summary>
    public BoardRect? Lost { get; init; }

    /// <summary>The plan followed first, where the blank was remade since; null when <see cref="Plan"/> is that plan.</summary>
    public CheckedPlan? First { get; init; }

    /// <summary>Other plans whose pieces lie on the bench too: remakes, and the first plan beside a remade blank.</summary>
    public IReadOnlyList<PlanAtHand> Others { get; init; } = [];
}

/// <summary>What else can be had besides the student's own wood.</summary>
public sealed record Supplies
{
    /// <summary>Boards and offcuts of the shop that are free to take.</summary>
    public IReadOnlyList<Board> Rack { get; init; } = [];

    /// <summary>Boards that can be bought, with their prices.</summary>
    public IReadOnlyList<Board> ForSale { get; init; } = [];

    /// <summary>Letters of parts of which the class has a finished spare, one entry for each.</summary>
    public IReadOnlyList<string> ClassSpares { get; init; } = [];
}
