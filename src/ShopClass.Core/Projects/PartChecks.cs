using ShopClass.Core.Courses;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Projects;

/// <summary>
/// What is wrong with a part, field by field. Field names: Letter, Name, Thickness, Width, Length, Quantity, JointNotes,
/// Open.Thickness, Open.Width, Open.Length.
/// </summary>
public static class PartChecks
{
    /// <summary>Most rows in a parts list.</summary>
    public const int MostParts = 60;

    /// <summary>Most pieces of one part.</summary>
    public const int MostOfOne = 50;

    /// <summary>The longest length accepted anywhere: 20 ft boards are the longest commonly sold.</summary>
    public static Length Longest { get; } = Length.FromInches(240);

    /// <summary>Problems as field and sentence; empty when the part is right. <paramref name="others"/> are the other rows, for letters used twice.</summary>
    public static IReadOnlyList<(string Field, string Sentence)> ProblemsIn(
        Part part,
        IReadOnlyList<Part> others,
        CourseRules rules
    ) => throw new NotImplementedException();
}
