using ShopClass.Core.Measure;

namespace ShopClass.Core.Projects;

/// <summary>
/// What is wrong with a joint, field by field. Field names: Part, Mate, Depth, Width, Across, FromEdge, Positions, Note; empty for
/// what concerns the whole list.
/// </summary>
public static class JointChecks
{
    /// <summary>Most joints in a project.</summary>
    public const int MostJoints = 60;

    /// <summary>Most places of one joint.</summary>
    public const int MostPositions = 40;

    /// <summary>
    /// Problems as field and sentence; empty when the joint is right. <paramref name="others"/> are the project's other
    /// joints, for places that meet.
    /// </summary>
    public static IReadOnlyList<(string Field, string Sentence)> ProblemsIn(
        Joint joint,
        IReadOnlyList<Joint> others,
        IReadOnlyList<Part> parts,
        UnitSystem unit
    )
    {
        var part = parts.FirstOrDefault(p => p.Letter == joint.Part);
        var mate = parts.FirstOrDefault(p => p.Letter == joint.Mate);
        List<(string, string)> found =
        [
            .. Found("", CountProblem(others.Count)),
            .. Found("Part", part is null ? NotThere(joint.Part, parts) : null),
            .. Found("Mate", MateProblem(joint, part, mate, parts)),
            .. Found("Note", TypedText.NotesProblem(joint.Note)),
        ];
        if (part is not null && (mate is not null || joint.Mate is null))
            found.AddRange(SizesIn(joint, part, mate, unit));
        if (part is not null && found.Count == 0)
            found.AddRange(
                Found("Positions", JointClashes.Problem(joint, others, part, parts, unit))
            );
        return found;
    }

    /// <summary>The sentence for a letter that no part has.</summary>
    internal static string NotThere(string letter, IReadOnlyList<Part> parts)
    {
        if (parts.Count == 0)
            return "The parts list is empty. Write the parts first.";
        var there = parts.Count <= 12 ? string.Join(", ", parts.Select(p => p.Letter)) : "the list";
        return letter.Length == 0
            ? $"Choose a part: {there}."
            : $"No part is marked {letter}. Choose one of {there}.";
    }

    private static string? CountProblem(int others) =>
        others < MostJoints
            ? null
            : $"A project holds at most {MostJoints} joints. This would be number {others + 1}.";

    private static string? MateProblem(
        Joint joint,
        Part? part,
        Part? mate,
        IReadOnlyList<Part> parts
    )
    {
        if (joint.Mate is null)
            return joint.Kind.MayStandAlone() ? null : "Choose the part that enters it.";
        if (mate is null)
            return NotThere(joint.Mate, parts);
        return mate == part && part.Quantity == 1
            ? $"There is only one {part.Letter}, and it cannot be joined to itself. Choose another part."
            : null;
    }

    private static IEnumerable<(string, string)> SizesIn(
        Joint joint,
        Part part,
        Part? mate,
        UnitSystem unit
    ) =>
        [
            .. Found("Depth", DepthProblem(joint, part, unit)),
            .. Found("Width", WidthProblem(joint, mate, unit)),
            .. Across(joint, part, mate, unit),
            .. Found("Positions", PositionsProblem(joint, part, mate, unit)),
        ];

    private static IEnumerable<(string, string)> Across(
        Joint joint,
        Part part,
        Part? mate,
        UnitSystem unit
    ) =>
        AcrossChecks.ReachProblem(joint, part, mate, unit) is { } reach
            ? [("Across", reach)]
            : Found("FromEdge", AcrossChecks.PlaceProblem(joint, part, mate, unit));

    private static string? DepthProblem(Joint joint, Part part, UnitSystem unit)
    {
        var (kind, depth) = (joint.Kind, joint.Depth);
        if (kind.CutsNothing())
            return depth == Length.Zero
                ? null
                : "Nothing is cut for this joint. Leave the depth empty.";
        if (depth <= Length.Zero)
            return $"Write how deep the {kind.CutWords()} goes into {part.Letter}, more than zero.";
        var room = kind.GoesInto(part);
        if (kind is JointKind.ThroughPeg && depth != room)
            return $"A through peg goes right through: {part.Letter} is {Said.Exactly(room, unit)} thick, and the depth here is {Said.Exactly(depth, unit)}.";
        if (depth > room || (depth == room && !kind.MayGoThrough()))
            return $"{Said.Exactly(depth, unit)} deep leaves nothing of {part.Letter}, which is {Said.Exactly(room, unit)} {Measured(kind)} there.";
        return joint.Side is JointSide.Both && depth + depth >= room
            ? $"Cut from both sides, {Said.Exactly(depth, unit)} deep each, they meet: {part.Letter} is {Said.Exactly(room, unit)} {Measured(kind)}."
            : null;
    }

    private static string Measured(JointKind kind) =>
        kind switch
        {
            JointKind.Notch => "wide",
            JointKind.Dovetail => "long",
            _ => "thick",
        };

    private static string? WidthProblem(Joint joint, Part? mate, UnitSystem unit)
    {
        if (!joint.Kind.HasPlace())
            return null;
        if (joint.Along(mate) is not { } along)
            return $"Write how wide the {joint.Kind.CutWords()} is, since no part enters it.";
        if (SizeSentences.Problem("width of it", along, PartChecks.Longest, unit) is { } problem)
            return problem;
        return joint.Kind is JointKind.Dado && mate is not null && along > mate.Finished.Thickness
            ? $"The dado is {Said.Exactly(along, unit)} wide, but {mate.Letter} is only {Said.Exactly(mate.Finished.Thickness, unit)} thick: it would be loose."
            : null;
    }

    private static string? PositionsProblem(Joint joint, Part part, Part? mate, UnitSystem unit)
    {
        if (!joint.Kind.HasPlace())
            return joint.Positions.Count == 0
                ? null
                : "This joint lies at the end of the part. Leave the places empty.";
        if (joint.Positions.Count > MostPositions)
            return $"Here are {joint.Positions.Count} places; {MostPositions} is the most.";
        if (joint.Positions.Count == 0 && joint.Kind.NeedsPlace())
            return $"Write where it lies, from the reference end of {part.Letter} to its near side.";
        if (joint.Positions.FirstOrDefault(p => p < Length.Zero) is { Ticks: < 0 } before)
            return $"{Said.Exactly(before, unit)} is before the reference end of {part.Letter}.";
        var past = joint.Places(mate).FirstOrDefault(p => p.To > part.Finished.Length);
        return past == default
            ? null
            : $"The {joint.Kind.CutWords()} at {Said.Exactly(past.From, unit)} would end at {Said.Exactly(past.To, unit)}, but {part.Letter} is only {Said.Exactly(part.Finished.Length, unit)} long.";
    }

    private static IEnumerable<(string, string)> Found(string field, string? sentence) =>
        sentence is null ? [] : [(field, sentence)];
}
