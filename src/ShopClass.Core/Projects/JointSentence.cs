using ShopClass.Core.Measure;

namespace ShopClass.Core.Projects;

/// <summary>A joint told in a sentence.</summary>
public static class JointSentence
{
    /// <summary>
    /// "B enters A in dados 1/4 in deep and 3/4 in wide, at 2 in and 10 in from the reference end." Lengths are exact.
    /// </summary>
    public static string Of(Joint joint, UnitSystem unit)
    {
        if (joint.Kind.CutsNothing())
            return $"{joint.Mate} is nailed or screwed to {joint.Part}.";
        var begins = joint.Mate is { } mate
            ? $"{mate} enters {joint.Part} in"
            : $"{joint.Part} gets";
        return $"{begins} {What(joint)} {Sizes(joint, unit)}{Side(joint)}{Where(joint, unit)}.";
    }

    private static string What(Joint joint)
    {
        var word = joint.Kind.CutWords();
        if (joint.Kind is JointKind.Dovetail)
            return "dovetail sockets";
        return IsMany(joint) ? Many(word) : $"a {word}";
    }

    private static bool IsMany(Joint joint) =>
        joint.Positions.Count > 1 || joint.Side is JointSide.Both;

    private static string Many(string word) => word is "notch" ? "notches" : $"{word}s";

    private static string Sizes(Joint joint, UnitSystem unit)
    {
        List<string> sizes = [$"{Said.Exactly(joint.Depth, unit)} deep"];
        if (joint.Width is { } width)
            sizes.Add($"{Said.Exactly(width, unit)} wide");
        if (joint.Across is { } across)
            sizes.Add($"{Said.Exactly(across, unit)} across");
        return Listed(sizes);
    }

    private static string Side(Joint joint)
    {
        var place = joint.Kind.IsInEdge() ? "edge" : "face";
        return joint.Side switch
        {
            JointSide.Both => $" in both {place}s",
            JointSide.Opposite => $" in the {place} opposite the reference {place}",
            _ => "",
        };
    }

    private static string Where(Joint joint, UnitSystem unit)
    {
        if (!joint.Kind.HasPlace())
            return ", at the end";
        var along =
            joint.Positions.Count == 0
                ? ", at the reference end"
                : $", at {Listed([.. joint.Positions.Select(p => Said.Exactly(p, unit))])} from the reference end";
        return along + PlaceAcross(joint, unit);
    }

    private static string PlaceAcross(Joint joint, UnitSystem unit) =>
        joint switch
        {
            { FromEdge: { Ticks: 0 } } => ", from the reference edge on",
            { FromEdge: { } edge, Across: null } when !joint.Kind.MayGoThrough() =>
                $", from {Said.Exactly(edge, unit)} off the reference edge to the other edge",
            { FromEdge: { } edge } => $", {Said.Exactly(edge, unit)} from the reference edge",
            { Across: not null } when joint.Kind.HasPlaceAcross() => ", in the middle of the width",
            _ => "",
        };

    private static string Listed(List<string> items) =>
        items.Count == 1 ? items[0] : $"{string.Join(", ", items.SkipLast(1))} and {items[^1]}";
}
