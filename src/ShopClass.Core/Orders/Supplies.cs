using ShopClass.Core.Measure;

namespace ShopClass.Core.Orders;

/// <summary>What sort of thing goes into a kit beside the wood.</summary>
public enum SupplyKind
{
    /// <summary>Screws, nails, hinges.</summary>
    Hardware,

    /// <summary>Glue.</summary>
    Glue,

    /// <summary>Oil, wax, paint.</summary>
    Finish,

    /// <summary>Abrasive paper.</summary>
    Abrasive,

    /// <summary>Anything else.</summary>
    Other,
}

/// <summary>A line of a project's list of supplies.</summary>
/// <param name="Name">What it is: "No. 8 × 1 1/4 in wood screw".</param>
/// <param name="Kind">Its sort.</param>
/// <param name="Amount">How much one kit gets, in words: "6", "a spoonful".</param>
/// <param name="CostPerKit">What one kit's worth costs; null where it is not reckoned.</param>
public sealed record Supply(string Name, SupplyKind Kind, string Amount, Money? CostPerKit = null);

/// <summary>What is wrong with a line of supplies. Fields: Name, Amount, Cost.</summary>
public static class SupplyChecks
{
    /// <summary>Most lines for one project.</summary>
    public const int MostSupplies = 40;

    /// <summary>Most characters in an amount.</summary>
    public const int LongestAmount = 40;

    /// <summary>Problems as field and sentence; empty when the line is right.</summary>
    public static IReadOnlyList<(string Field, string Sentence)> ProblemsIn(Supply supply)
    {
        var found = new List<(string, string)>();
        if (TypedText.NameProblem(supply.Name) is { } name)
            found.Add(("Name", name));
        if (TypedText.NotesProblem(supply.Amount, LongestAmount) is { } amount)
            found.Add(("Amount", amount));
        if (
            supply.CostPerKit is { } cost
            && (cost.MinorUnits < 0 || Currencies.Find(cost.Currency) is null)
        )
            found.Add(("Cost", "Write what one kit's worth costs, zero or more."));
        return found;
    }
}
