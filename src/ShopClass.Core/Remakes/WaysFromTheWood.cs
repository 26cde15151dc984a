using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Remakes;

/// <summary>Ways to get a part back from the student's own wood.</summary>
internal static class WaysFromTheWood
{
    /// <summary>From what lies free, in one piece: the spare's wood for the part it is kept for.</summary>
    public static TriedWay FromOffcut(RemakeBench bench)
    {
        var parts = bench.Alone(RemakeBench.WithoutGlueUp(bench.Request.Project));
        foreach (var (boards, note) in FreeInTurn(bench))
        {
            if (bench.Plan(parts, boards) is { } plan)
                return TriedWay.Open(
                    RemakeWay.Offcut,
                    $"Saw {bench.Spoiled} again from {RemakeBench.From(plan)}.{note}",
                    plan,
                    parts
                );
        }

        return TriedWay.Closed(
            RemakeWay.Offcut,
            bench.Pieces.Free.Count == 0
                ? $"Nothing lies free yet that {bench.Spoiled} could be sawn from."
                : $"No offcut has room for {bench.Spoiled} in one piece."
        );
    }

    /// <summary>
    /// The free pieces in the order they are tried: the spare's wood first for the part it is kept for, and last for any
    /// other.
    /// </summary>
    private static IEnumerable<(IReadOnlyList<Board> Boards, string Note)> FreeInTurn(
        RemakeBench bench
    )
    {
        var free = bench.Pieces.Free;
        if (bench.Pieces is not { Spare: { } spare, ReservedId: { } id })
            return [(free, "")];
        var kept = free.Where(b => b.Id == id).ToList();
        return bench.Part.Letter == spare.Letter
            ? [(kept, $" It is the wood kept for a spare {spare.Letter}."), (free, "")]
            :
            [
                (free.Except(kept).ToList(), ""),
                (free, $" That uses the wood kept for a spare {spare.Letter}."),
            ];
    }

    /// <summary>From what lies free, glued up.</summary>
    public static TriedWay GluedUp(RemakeBench bench)
    {
        if (!bench.Request.Rules.EdgeGluingTaught)
            return TriedWay.Closed(RemakeWay.GluedUp, "This course teaches no edge gluing.");
        if (!bench.Part.GlueUpAllowed || bench.Spoiled.Strip > 0)
            return TriedWay.Closed(
                RemakeWay.GluedUp,
                bench.Spoiled.Strip > 0
                    ? $"{bench.Spoiled} is a strip of a glue-up already."
                    : $"The parts list asks for {bench.Part.Letter} in one piece."
            );
        var parts = bench.Alone(bench.Request.Project);
        return
            bench.Plan(parts, bench.Pieces.Free) is { } plan
            && plan.Plan.GlueUps.TryGetValue(bench.Part.Letter, out var strips)
            ? TriedWay.Open(
                RemakeWay.GluedUp,
                $"Glue {bench.Spoiled} up from {strips} strips out of {RemakeBench.From(plan)}.",
                plan,
                parts
            )
            : TriedWay.Closed(
                RemakeWay.GluedUp,
                $"The offcuts do not yield {bench.Spoiled} as a glue-up that would be any use."
            );
    }

    /// <summary>What is not sawn yet laid out once more.</summary>
    public static TriedWay LaidOutAgain(RemakeBench bench)
    {
        var unsawn = bench.Pieces.Unsawn;
        if (unsawn.Count == 0)
            return TriedWay.Closed(
                RemakeWay.LaidOutAgain,
                "Every blank is sawn out already: nothing is left to lay out again."
            );
        var needs = PiecesAtHand
            .Placed(bench.Mishap.Plan.Plan)
            .ToDictionary(b => b.Blank.Key, b => b.Blank.Needed);
        var parts = RemakeParts.Of(
            bench.Request.Project,
            bench.Request.Rules,
            bench.Pieces.StillToSaw.Append(bench.Spoiled).Select(k => (k, needs[k]))
        );
        return bench.Plan(parts, [.. unsawn, .. bench.Pieces.Free]) is { } plan
            ? TriedWay.Open(
                RemakeWay.LaidOutAgain,
                $"Lay out what is not sawn yet once more, with {bench.Spoiled} among it: from {RemakeBench.From(plan)}.",
                plan,
                parts
            )
            : TriedWay.Closed(
                RemakeWay.LaidOutAgain,
                $"What is not sawn yet has no room for {bench.Spoiled} beside the parts it must still yield."
            );
    }

    /// <summary>A design a little smaller, so that what is left yields the part.</summary>
    public static TriedWay Smaller(RemakeBench bench)
    {
        var letter = bench.Part.Letter;
        if (bench.Spoiled.Strip > 0)
            return TriedWay.Closed(
                RemakeWay.SmallerDesign,
                "A strip of a glue-up is remade, not the design changed for it."
            );
        var found = SmallerDesigns.Least(
            bench.Request,
            letter,
            project =>
                bench.Plan(bench.Alone(RemakeBench.WithoutGlueUp(project)), bench.Pieces.Free)
                    is not null
        );
        if (found is not { } smaller)
            return TriedWay.Closed(
                RemakeWay.SmallerDesign,
                $"No small change to the length or width of {letter} lets {bench.Spoiled} come from what is left with every joint still fitting."
            );
        var parts = bench.Alone(RemakeBench.WithoutGlueUp(smaller.Project));
        var open = TriedWay.Open(
            RemakeWay.SmallerDesign,
            $"Make the piece a little smaller: {smaller.InWords(bench.Request.Rules.Precision)}. Then {bench.Spoiled} can be sawn from what is left.",
            bench.Plan(parts, bench.Pieces.Free)!,
            parts
        );
        return open with { Option = open.Option! with { Changes = smaller.Changes } };
    }
}
