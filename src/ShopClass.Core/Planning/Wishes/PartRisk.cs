using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning.Wishes;

/// <summary>How much can go wrong with a part before it is done (common practice; the order is our proposal).</summary>
/// <param name="Part">The part.</param>
/// <param name="Joints">Joints sawn in each piece of it: first-class cuts, of which one that fails spoils the piece.</param>
/// <param name="HasShortGrain">Whether its grain runs the shorter way, so that it snaps easily.</param>
/// <param name="IsThin">Whether it is thinner than <see cref="Thin"/>: it bends under the saw and splits at a nail.</param>
public sealed record PartRisk(Part Part, int Joints, bool HasShortGrain, bool IsThin)
{
    /// <summary>Thinner than 1/2 in counts as thin: our proposal.</summary>
    public static Length Thin { get; } = Length.FromInches(0, 1, 2);

    /// <summary>
    /// The parts, riskiest first: most joints sawn in it, then short grain, then thin, then longest, because the most sawing
    /// is lost with it; else in the order of the parts list.
    /// </summary>
    public static IReadOnlyList<PartRisk> Ranked(Project project) =>
        [
            .. project
                .Parts.Where(p => p.Quantity > 0)
                .Select(p => Of(p, project))
                .OrderByDescending(r => r.Joints)
                .ThenByDescending(r => r.HasShortGrain)
                .ThenByDescending(r => r.IsThin)
                .ThenByDescending(r => r.Part.Finished.Length),
        ];

    /// <summary>Why it is risky, as clauses; empty where nothing but its length speaks for it.</summary>
    public IReadOnlyList<string> Why
    {
        get
        {
            var why = new List<string>();
            if (Joints > 0)
                why.Add(
                    Joints == 1
                        ? "a joint is sawn in it"
                        : $"{Joints} joints are sawn in each piece"
                );
            if (HasShortGrain)
                why.Add("its grain is short");
            if (IsThin)
                why.Add("it is thin");
            return why;
        }
    }

    private static PartRisk Of(Part part, Project project) =>
        new(
            part,
            project.Joints.Sum(j => SawnIn(part, j)),
            part.Grain is GrainDirection.AlongLength && part.Finished.Length < part.Finished.Width,
            part.Finished.Thickness < Thin
        );

    /// <summary>The joints of one row of the list that are sawn in a piece of this part.</summary>
    private static int SawnIn(Part part, Joint joint)
    {
        if (joint.Kind is JointKind.Nailed)
            return 0;
        var places = Math.Max(1, joint.Positions.Count) * (joint.Side is JointSide.Both ? 2 : 1);
        var received = joint.Part == part.Letter ? places : 0;
        // A mate that only enters a trench or a step is sawn square and no more.
        var entersSawn =
            joint.Kind
            is JointKind.MortiseAndTenon
                or JointKind.Dovetail
                or JointKind.HalfLap
                or JointKind.ThroughPeg;
        return received + (entersSawn && joint.Mate == part.Letter ? 1 : 0);
    }
}
