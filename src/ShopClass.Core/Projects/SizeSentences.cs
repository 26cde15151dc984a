using ShopClass.Core.Measure;

namespace ShopClass.Core.Projects;

/// <summary>What is wrong with one size of a part or a board.</summary>
internal static class SizeSentences
{
    /// <summary>The sentence for a size out of range; null when it is within.</summary>
    public static string? Problem(string size, Length value, Length most, UnitSystem unit)
    {
        if (value <= Length.Zero)
            return $"The {size} is {Said.Exactly(value, unit)}. Write the size, more than zero.";
        if (value < PartChecks.Smallest)
            return $"The {size} is {Said.Exactly(value, unit)}, too small to saw. The least is {Said.AtLeast(PartChecks.Smallest, unit)}.";
        return value > most
            ? $"The {size} is {Said.Exactly(value, unit)}. The most taken here is {Said.AtMost(most, unit)}; check the number and its unit."
            : null;
    }
}
