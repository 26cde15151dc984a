using ShopClass.Core.Measure;

namespace ShopClass.Core.Projects;

/// <summary>Joints of one part that get in each other's way: two at the same place, or from both sides until they meet.</summary>
internal static class JointClashes
{
    /// <summary>The first clash of a joint with itself or another, as a sentence; null when there is none.</summary>
    public static string? Problem(
        Joint joint,
        IReadOnlyList<Joint> others,
        Part part,
        IReadOnlyList<Part> parts,
        UnitSystem unit
    )
    {
        if (!joint.Kind.HasPlace())
            return null;
        (Length From, Length To)[] own = [.. joint.Places(MateOf(joint, parts))];
        return Twice(joint, own, unit)
            ?? others
                .Where(o => o.Part == joint.Part && o.Kind.HasPlace())
                .Where(o => o.Kind.IsInEdge() == joint.Kind.IsInEdge())
                .Select(o => Between(joint, own, o, part, parts, unit))
                .FirstOrDefault(sentence => sentence is not null);
    }

    private static string? Twice(Joint joint, (Length From, Length To)[] own, UnitSystem unit)
    {
        var inOrder = own.OrderBy(p => p.From).ToArray();
        for (var i = 1; i < inOrder.Length; i++)
        {
            if (inOrder[i].From < inOrder[i - 1].To)
                return $"The {joint.Kind.CutWords()}s at {Said.Exactly(inOrder[i - 1].From, unit)} and {Said.Exactly(inOrder[i].From, unit)} overlap: each is {Said.Exactly(inOrder[i].To - inOrder[i].From, unit)} wide.";
        }

        return null;
    }

    private static string? Between(
        Joint joint,
        (Length From, Length To)[] own,
        Joint other,
        Part part,
        IReadOnlyList<Part> parts,
        UnitSystem unit
    )
    {
        var itsMate = MateOf(other, parts);
        if (!MeetAcross(joint.Reach(part, MateOf(joint, parts)), other.Reach(part, itsMate)))
            return null;
        var theirs = other.Places(itsMate);
        var meeting = (
            from mine in own
            from its in theirs
            where mine.From < its.To && its.From < mine.To
            select (Mine: mine, Its: its)
        ).FirstOrDefault();
        if (meeting == default)
            return null;
        var where =
            $"The {joint.Kind.CutWords()} at {Said.Exactly(meeting.Mine.From, unit)} and the {other.Kind.CutWords()} at {Said.Exactly(meeting.Its.From, unit)}";
        if (OnOneSide(joint.Side, other.Side))
            return $"{where} of {part.Letter} overlap. Move one of them.";
        var room = joint.Kind.GoesInto(part);
        return joint.Depth + other.Depth >= room
            ? $"{where} lie opposite each other and meet: {Said.Exactly(joint.Depth, unit)} and {Said.Exactly(other.Depth, unit)} of {Said.Exactly(room, unit)}."
            : null;
    }

    /// <summary>Whether the two lie over one another across the part; notches, which have no place across, are told by their edges.</summary>
    private static bool MeetAcross(
        (Length Near, Length Far)? mine,
        (Length Near, Length Far)? its
    ) => mine is not { } a || its is not { } b || (a.Near < b.Far && b.Near < a.Far);

    private static bool OnOneSide(JointSide a, JointSide b) =>
        a == b || a is JointSide.Both || b is JointSide.Both;

    private static Part? MateOf(Joint joint, IReadOnlyList<Part> parts) =>
        parts.FirstOrDefault(p => p.Letter == joint.Mate);
}
