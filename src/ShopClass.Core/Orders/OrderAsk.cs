using ShopClass.Core.Courses;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Orders;

/// <summary>What an order favours.</summary>
public enum OrderWay
{
    /// <summary>Least cost; blanks of all kits may share boards.</summary>
    Cheapest,

    /// <summary>Everything from as few sellers as will do.</summary>
    FewestSellers,

    /// <summary>As few different boards to ask for as will do.</summary>
    FewestSizes,

    /// <summary>Every kit has whole boards of its own.</summary>
    WholeBoards,
}

/// <summary>Somebody who needs a kit.</summary>
/// <param name="StudentId">The student's key.</param>
/// <param name="Shown">What the class sees: the alias or the name.</param>
public sealed record OrderPerson(string StudentId, string Shown);

/// <summary>Everything an order depends on. The same ask gives the same order.</summary>
public sealed record OrderAsk
{
    /// <summary>What each student makes.</summary>
    public required Project Project { get; init; }

    /// <summary>The course's settings.</summary>
    public required CourseRules Rules { get; init; }

    /// <summary>Who needs a kit; kit 1 is the first one's.</summary>
    public required IReadOnlyList<OrderPerson> People { get; init; }

    /// <summary>Whole kits to have in hand.</summary>
    public int SpareKits { get; init; }

    /// <summary>Single parts to have in hand for practice or mishaps: how many of each letter.</summary>
    public IReadOnlyDictionary<string, int> SpareParts { get; init; } =
        new SortedDictionary<string, int>(StringComparer.Ordinal);

    /// <summary>Wood to practise on in every kit; null for none.</summary>
    public PracticePiece? Practice { get; init; }

    /// <summary>The sellers to choose from, all in <see cref="Currency"/>.</summary>
    public required IReadOnlyList<SellerList> Sellers { get; init; }

    /// <summary>The ISO 4217 code of every price.</summary>
    public required string Currency { get; init; }

    /// <summary>What is there already and is used first; empty when the rack is to be left alone.</summary>
    public IReadOnlyList<RackPiece> Rack { get; init; } = [];

    /// <summary>Wood that came with an earlier order, is paid for and not cut yet; it is used before more is bought.</summary>
    public IReadOnlyList<OrderLine> Here { get; init; } = [];

    /// <summary>The one species to take; null for whichever single species comes cheapest.</summary>
    public string? SpeciesId { get; init; }

    /// <summary>What to favour.</summary>
    public OrderWay Way { get; init; }

    /// <summary>Waste the rule of thumb reckons with, per cent.</summary>
    public int WastePercent { get; init; } = RuleOfThumb.UsualWastePercent;

    /// <summary>The project with its practice pieces as a part more.</summary>
    internal Project WithPractice =>
        Practice is { } practice
            ? Project with
            {
                Parts = [.. Project.Parts, practice.AsPart(Project)],
            }
            : Project;

    /// <summary>Kits and spare kits together.</summary>
    public int AllKits => People.Count + SpareKits;
}
