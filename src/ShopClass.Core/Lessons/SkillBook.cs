using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons;

/// <summary>What an instructor shows of a skill, and looks for (common practice; the minutes are our proposal).</summary>
/// <param name="Skill">The skill.</param>
/// <param name="Name">Its name, as in a heading.</param>
/// <param name="Minutes">About how long the demonstration takes.</param>
/// <param name="Show">What to show, in a sentence.</param>
/// <param name="WatchFor">What commonly goes wrong, in a sentence.</param>
/// <param name="CheckPoint">What to look at before a student goes on, in a sentence.</param>
/// <param name="Meanwhile">What a student can do while waiting for a place to do it, in a sentence.</param>
public sealed record SkillEntry(
    Skill Skill,
    string Name,
    int Minutes,
    string Show,
    string WatchFor,
    string CheckPoint,
    string Meanwhile
);

/// <summary>The skills of the bench, in the usual order they are taught.</summary>
public static class SkillBook
{
    /// <summary>All of them, in the order of <see cref="Skill"/>.</summary>
    public static IReadOnlyList<SkillEntry> Entries { get; } =
    [
        new(
            Skill.MarkingOut,
            "Marking out",
            10,
            "Hook the tape once and mark running positions; carry a line round with the square.",
            "A tape that is moved and hooked anew for every part, and lines that do not meet round the board.",
            "Look the marked board over against the plan before anything is sawn.",
            "Measure the board again and compare with what was logged; ring its bad places."
        ),
        new(
            Skill.Crosscutting,
            "Rough crosscutting",
            10,
            "Knee on the work, forearm in line with the blade, a few short strokes to begin; hold the waste up at the end.",
            "A saw that leans, a stance across the cut, and waste that tears off at the last strokes.",
            "See the stance and the first inch of the first cut.",
            "Carry the pencil lines round with the square, shade the waste, and set out the saw."
        ),
        new(
            Skill.Ripping,
            "Ripping",
            12,
            "A flatter start, then long strokes with the grain; look along both sides of the blade, and free a kerf that closes.",
            "Drifting off the line and forcing the saw back; better to lower the angle and let it find its way.",
            "See that the line is still left on the wood after the first few inches.",
            "Go over the rip line so that it can be seen while sawing, and mark the waste side."
        ),
        new(
            Skill.Planing,
            "Planing",
            15,
            "Set the iron fine, press on the toe at the start and the heel at the end; try with a straightedge and winding sticks.",
            "Planing against the grain, and ends that fall away.",
            "Try the face with a straightedge and the edge with a square before they are marked as references.",
            "Read the grain on the edge, draw its direction on the face, and set out straightedge and winding sticks."
        ),
        new(
            Skill.EdgeGluing,
            "Edge gluing",
            12,
            "Try the joint dry against the light, thin glue on both edges, clamps turn about above and below, wipe the squeeze-out.",
            "Clamps too tight, boards that creep, and a panel pulled hollow.",
            "See the joint dry before any glue is opened.",
            "Mark the mating edges, choose which faces show, and set out clamps, glue and a damp rag."
        ),
        new(
            Skill.FineCrosscutting,
            "Knife line and bench hook",
            12,
            "Knife all round from face and edge, pare a shallow step on the waste side, start the back saw in it.",
            "A square that rocks on a sawn edge, and sawing the knife line away.",
            "See that the knife lines meet at the corner they started from.",
            "Mark reference face and edge, check the square against itself, and touch up the knife."
        ),
        new(
            Skill.Gauging,
            "Gauging",
            8,
            "Set the gauge from the work itself, keep its stock tight to the reference face, several light strokes.",
            "A gauge used from the wrong face, or set again halfway through a batch.",
            "See that all parts of a batch are gauged before the setting is changed.",
            "Lay the batch out with all reference faces one way, and touch up the gauge's point."
        ),
        new(
            Skill.Joinery,
            "Sawing and paring joints",
            15,
            "Take sizes from the mate rather than the ruler, saw on the waste side, pare to the line from both sides.",
            "Cutting on the wrong side of the line, and paring right through from one side.",
            "See which side of each line is marked as waste before it is sawn.",
            "Practise a cut and a paring stroke on your own waste, and mark what is waste."
        ),
        new(
            Skill.Assembly,
            "Fitting and assembly",
            12,
            "Try everything dry, pare the fat side only, then put together in an order rehearsed without glue.",
            "Forcing a tight joint, and glue opened before the clamps are set.",
            "See it together dry, square and flat.",
            "Rehearse the order of putting together without glue, and soften edges that will be out of reach."
        ),
        new(
            Skill.Finishing,
            "Finishing",
            10,
            "Take off pencil marks and sharp corners, work with the grain, put on little and wipe off the rest; lay oily rags flat outdoors to dry.",
            "Finish over glue and pencil, and rags left in a heap.",
            "Look across the surface against the light before finish goes on.",
            "Take off pencil marks and sharp corners, and wipe the dust away."
        ),
    ];

    /// <summary>One skill's entry.</summary>
    public static SkillEntry Of(Skill skill) => Entries[(int)skill];
}
