using ShopClass.Core.Courses;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>The saws, as they are set out. Points are common practice; kerfs are the course's own.</summary>
internal static class Saws
{
    public static SawChoice For(SawKind saw, CourseRules rules) =>
        saw switch
        {
            SawKind.HandRip => new(saw, 5, rules.RipKerf),
            SawKind.HandCrosscut => new(saw, 8, rules.CrosscutKerf),
            _ => new(saw, 13, rules.BackSawKerf),
        };

    public static string Name(SawKind saw) =>
        saw switch
        {
            SawKind.HandRip => "hand rip saw",
            SawKind.HandCrosscut => "hand crosscut saw",
            _ => "back saw",
        };
}
