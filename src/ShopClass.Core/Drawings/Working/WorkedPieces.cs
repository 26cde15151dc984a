using System.Globalization;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Drawings.Working;

/// <summary>A piece as it is worked in one step.</summary>
/// <param name="Name">As written on the wood.</param>
/// <param name="Before">Its size before the step.</param>
/// <param name="After">Its size after it.</param>
/// <param name="IsReferenced">Whether reference face and edge are marked on it by now.</param>
/// <param name="Joints">What is cut in it by now, and what is being marked or cut.</param>
internal sealed record WorkedPiece(
    string Name,
    PieceLeft Before,
    PieceLeft After,
    bool IsReferenced,
    IReadOnlyList<JointOnPiece> Joints
);

/// <summary>A joint on a piece.</summary>
/// <param name="Joint">The joint.</param>
/// <param name="OnMate">Whether it is the tongue, not the hole.</param>
/// <param name="Stand">How far it has come.</param>
/// <param name="Along">How much of the receiving part's length it takes.</param>
/// <param name="Reach">From where to where it reaches across the receiving part; null for what has no place across.</param>
/// <param name="PartWidth">How wide the receiving part is in the end.</param>
/// <param name="IsStopped">Whether it is a dado that ends inside the receiving part.</param>
internal sealed record JointOnPiece(
    Joint Joint,
    bool OnMate,
    JointStand Stand,
    Length? Along,
    (Length Near, Length Far)? Reach,
    Length PartWidth,
    bool IsStopped
)
{
    /// <summary>Whether it goes on to the edge opposite the reference edge.</summary>
    public bool GoesToTheEdge => Reach is not { } reach || reach.Far >= PartWidth;
}

/// <summary>How far a joint has come.</summary>
internal enum JointStand
{
    /// <summary>Marked in this step.</summary>
    Marking,

    /// <summary>Cut in this step.</summary>
    Cutting,

    /// <summary>Cut before.</summary>
    Done,
}

/// <summary>The pieces of a step with their sizes before and after it.</summary>
internal static class WorkedPieces
{
    public static IReadOnlyList<WorkedPiece> Of(CheckedPlan plan, WorkSequence work, Step step) =>
        [.. step.Pieces.Select(name => OneOf(plan, work, step, name)).OfType<WorkedPiece>()];

    private static WorkedPiece? OneOf(CheckedPlan plan, WorkSequence work, Step step, string name)
    {
        var before = work
            .Steps.Take(step.Number - 1)
            .SelectMany(s => s.Leaves)
            .LastOrDefault(l => l.Name == name);
        var after = step.Leaves.FirstOrDefault(l => l.Name == name);
        if ((before ?? after) is not { } first)
            return null;
        return new(
            name,
            first,
            after ?? first,
            work.Steps.Take(step.Number).Any(s => MarksReference(s, name)),
            JointsOn(plan.Request.Project, work, step, name)
        );
    }

    private static bool MarksReference(Step step, string name) =>
        step.Kind is StepKind.MarkReference && step.Pieces.Contains(name, StringComparer.Ordinal);

    private static IReadOnlyList<JointOnPiece> JointsOn(
        Project project,
        WorkSequence work,
        Step step,
        string name
    )
    {
        var letter = LetterOf(name);
        return
        [
            .. from s in work.Steps.Take(step.Number)
            where
                s.Kind is StepKind.CutJoint
                || (s.Kind is StepKind.MarkJoint && s.Number == step.Number)
            where s.Pieces.Contains(name, StringComparer.Ordinal)
            from found in JointOf(project, s, letter)
            select OnPiece(
                project,
                found.Joint,
                found.OnMate,
                s.Number < step.Number ? JointStand.Done
                    : s.Kind is StepKind.CutJoint ? JointStand.Cutting
                    : JointStand.Marking
            ),
        ];
    }

    private static JointOnPiece OnPiece(Project project, Joint joint, bool onMate, JointStand stand)
    {
        var part = PartOf(project, joint.Part);
        var mate = PartOf(project, joint.Mate);
        return new(
            joint,
            onMate,
            stand,
            joint.Along(mate),
            part is null ? null : joint.Reach(part, mate),
            part?.Finished.Width ?? Length.Zero,
            part is not null && joint.IsStopped(part, mate)
        );
    }

    private static Part? PartOf(Project project, string? letter) =>
        project.Parts.FirstOrDefault(p => p.Letter == letter);

    // A step is named after what is cut and what it meets ("mark:dado:A:B", "dado:A1:B"); the second joint of a kind
    // between the same parts has a mark to tell it by ("mark:mortise:A:D~2").
    private static IEnumerable<(Joint Joint, bool OnMate)> JointOf(
        Project project,
        Step step,
        string letter
    )
    {
        var id = step.Id.Split('~');
        var words = id[0].Split(':');
        var which = id.Length > 1 ? int.Parse(id[1], CultureInfo.InvariantCulture) : 1;
        var at = words[0] == "mark" ? 1 : 0;
        if (words.Length < at + 3)
            return [];
        var (word, with) = (words[at], words[at + 2]);
        var all = (
            from joint in project.Joints
            where Words(project, joint).Contains(word)
            let onMate = joint.Mate == letter && Words(project, joint)[1] == word
            let own = onMate ? joint.Mate : joint.Part
            let other = onMate ? joint.Part : joint.Mate ?? "alone"
            where own == letter && other == with
            select (joint, onMate)
        ).ToList();
        return all.Skip(Math.Min(which, all.Count) - 1).Take(1);
    }

    /// <summary>What is cut for it in the receiving part, and in its mate.</summary>
    private static string?[] Words(Project project, Joint joint)
    {
        var (part, mate) = (PartOf(project, joint.Part), PartOf(project, joint.Mate));
        return part is not null && joint.IsStopped(part, mate)
            ? ["stopped dado", joint.NeedsShoulder(part, mate) ? "shoulder" : null]
            : [Word(joint.Kind, onMate: false), Word(joint.Kind, onMate: true)];
    }

    private static string? Word(JointKind kind, bool onMate) =>
        (kind, onMate) switch
        {
            (JointKind.Dado, false) => "dado",
            (JointKind.Rabbet, false) => "rabbet",
            (JointKind.Notch, false) => "notch",
            (JointKind.HalfLap, _) => "half lap",
            (JointKind.MortiseAndTenon, false) => "mortise",
            (JointKind.MortiseAndTenon, true) => "tenon",
            (JointKind.Dovetail, false) => "sockets",
            (JointKind.Dovetail, true) => "tails",
            (JointKind.ThroughPeg, false) => "hole",
            (JointKind.ThroughPeg, true) => "peg",
            _ => null,
        };

    private static string LetterOf(string name) =>
        string.Concat(name.TakeWhile(char.IsAsciiLetterUpper));
}
