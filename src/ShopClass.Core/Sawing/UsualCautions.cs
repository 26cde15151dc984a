namespace ShopClass.Core.Sawing;

/// <summary>
/// The usual cautions of a hand-tool shop (common practice), on every screen that leads to a saw and on every sheet. A
/// shop's own rules come first, and the first of them says so.
/// </summary>
public static class UsualCautions
{
    /// <summary>The cautions, in the order they are read out.</summary>
    public static IReadOnlyList<string> Sentences { get; } =
    [
        "Your shop's rules, your school's policy and your instructor come before anything written here. Saw only under qualified supervision.",
        "Wear eye protection and closed shoes; tie back hair and loose clothing. No gloves near a moving saw.",
        "Hold the work firmly, and keep the free hand out of the line of cut. Start gently; support the waste at the end.",
        "Cover the teeth of a saw that is not in use. Know where the first-aid kit is.",
        "Do not saw painted, treated or unknown wood; look for nails, staples and hidden splits first.",
        "Keep dust down: sweep wet or use a vacuum cleaner, and follow your local limits for wood dust.",
    ];
}
