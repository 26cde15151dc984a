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
internal sealed record JointOnPiece(Joint Joint, bool OnMate, JointStand Stand);

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
            select new JointOnPiece(
                found.Joint,
                found.OnMate,
                s.Number < step.Number ? JointStand.Done
                    : s.Kind is StepKind.CutJoint ? JointStand.Cutting
                    : JointStand.Marking
            ),
        ];
    }

    // A step is named after what is cut and what it meets ("mark:dado:A:B", "dado:A1:B").
    private static IEnumerable<(Joint Joint, bool OnMate)> JointOf(
        Project project,
        Step step,
        string letter
    )
    {
        var words = step.Id.Split(':', '~');
        var at = words[0] == "mark" ? 1 : 0;
        if (words.Length < at + 3)
            return [];
        var (word, with) = (words[at], words[at + 2]);
        return from joint in project.Joints
            where Word(joint.Kind, onMate: false) == word || Word(joint.Kind, onMate: true) == word
            let onMate = joint.Mate == letter && Word(joint.Kind, onMate: true) == word
            let own = onMate ? joint.Mate : joint.Part
            let other = onMate ? joint.Part : joint.Mate ?? "alone"
            where own == letter && other == with
            select (joint, onMate);
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
