using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps.Rehearsing;

/// <summary>What must hold of the sizes of pieces.</summary>
internal static class SizeRules
{
    public static IEnumerable<Finding> StepsMustLeaveWhatTheySay(StepRun run)
    {
        foreach (var done in run.Done)
        {
            var isTrue = done.Step switch
            {
                { Cut: not null } => !done.IsSawn || SaysTheHalves(done),
                { Kind: StepKind.GlueUp } => SaysThePanel(done),
                { Kind: StepKind.JointEdges } => TakesTheAllowance(run, done),
                { Saw: not null, Support: not Support.Bench } => SawnToTheTick(run, done),
                _ => TakesWoodOff(done.Step.Kind) || IsAsItWas(done),
            };
            if (!isTrue)
                yield return Noticed.Must(
                    done.Step,
                    "the sizes it says it leaves are not what is left of the wood."
                );
        }
    }

    public static IEnumerable<Finding> NoPieceMayGrow(StepRun run) =>
        from done in run.Done
        where done.Step.Kind is not StepKind.GlueUp && done.Step.Cut is null
        from pair in done.Before.Zip(done.After)
        where
            pair.Second.Thickness > pair.First.Thickness
            || pair.Second.Width > pair.First.Width
            || pair.Second.Length > pair.First.Length
        select Noticed.Must(done.Step, $"{pair.First.Name} would be bigger after it than before.");

    public static IEnumerable<Finding> NoPieceMayGoBelowItsFinishedSize(StepRun run) =>
        from done in run.Done
        from piece in done.After
        where piece.Part is not null && piece.Key is { Strip: 0 }
        from dimension in Enum.GetValues<PartDimension>()
        let least = StepRun.Wanted(piece.Part!, dimension, isClosed: true)
        where piece.SizeOf(dimension) < least
        select Noticed.Must(
            done.Step,
            $"the {Word(dimension)} of {piece.Name} goes below its finished size.",
            least - piece.SizeOf(dimension)
        );

    public static IEnumerable<Finding> PartsMustEndAtTheirFinishedSize(StepRun run)
    {
        foreach (var (key, part) in Expected(run))
        {
            var piece = run.Final.FirstOrDefault(p => p.Name == key);
            if (piece is null)
            {
                yield return Noticed.Must(key, $"{key} is not there in the end.");
                continue;
            }

            foreach (var dimension in Enum.GetValues<PartDimension>())
            {
                // Planed stock is used as thick as it comes, up to the course's leeway.
                var leeway =
                    dimension is PartDimension.Thickness ? run.Rules.ThicknessLeeway : Length.Zero;
                var isOpenForGood =
                    !run.Plan.Plan.IsComplete && part.Open.Any(o => o.Dimension == dimension);
                var wanted = StepRun.Wanted(part, dimension, isClosed: !isOpenForGood);
                var over = piece.SizeOf(dimension) - wanted;
                if (over < Length.Zero || over > leeway)
                    yield return Noticed.Must(
                        key,
                        $"The {Word(dimension)} of {key} ends {Say(run, over)} {(over < Length.Zero ? "under" : "over")} its finished size.",
                        over
                    );
            }
        }
    }

    /// <summary>A part from a board that was hollow has lost at least the hollow: else one of its faces still has it.</summary>
    public static IEnumerable<Finding> NoPartMayKeepTheHollowOfItsBoard(StepRun run)
    {
        foreach (var blank in run.Blanks.Where(b => b.Part is not null))
        {
            if (run.BoardOf(blank.BoardId) is not { } board)
                continue;
            var hollow = run.HollowOf(blank, blank.Rect, board);
            var piece = run.Final.FirstOrDefault(p =>
                p.Name == $"{blank.Key.Part}{blank.Key.Copy}" && p.Key is { Strip: 0 }
            );
            if (piece is not null && piece.Thickness > board.Thickness - hollow)
                yield return Noticed.Must(
                    piece.Name,
                    $"{piece.Name} is too thick to be flat on both faces: {board.Name} was hollow there by {Say(run, hollow)}.",
                    piece.Thickness - (board.Thickness - hollow)
                );
        }
    }

    /// <summary>Every part whose blanks the plan has on boards.</summary>
    private static IEnumerable<(string Name, Part Part)> Expected(StepRun run) =>
        from blank in run.Blanks
        where blank.Part is not null
        group blank by (blank.Key.Part, blank.Key.Copy) into copy
        let part = copy.First().Part!
        let strips = run.Plan.Plan.GlueUps.GetValueOrDefault(part.Letter, 1)
        where copy.Count() == strips
        select ($"{copy.Key.Part}{copy.Key.Copy}", part);

    private static bool SaysTheHalves(Done done)
    {
        var said = done.Step.Leaves.Select(l => (l.Width, l.Length)).Order();
        var left = done.After.Select(Across).Order();
        return said.SequenceEqual(left)
            && done.Step.Leaves.All(l => l.Thickness == done.Before[0].Thickness);
    }

    /// <summary>Width and length as the board lies; a turned blank is named the other way round.</summary>
    private static (Length, Length) Across(Wood piece) =>
        piece.Length == piece.Rect!.Value.Along
            ? (piece.Width, piece.Length)
            : (piece.Rect.Value.Across, piece.Rect.Value.Along);

    private static bool TakesWoodOff(StepKind kind) =>
        kind
            is StepKind.PlaneToThickness
                or StepKind.BringToWidth
                or StepKind.SquareEnd
                or StepKind.CutToLength
                or StepKind.CloseDimension;

    private static bool IsAsItWas(Done done) =>
        done
            .Before.Zip(done.After)
            .All(p =>
                (p.First.Thickness, p.First.Width, p.First.Length)
                == (p.Second.Thickness, p.Second.Width, p.Second.Length)
            );

    private static bool SaysThePanel(Done done) =>
        done.After is [var panel]
        && done.Step.Leaves is [var said]
        && (said.Name, said.Thickness, said.Width, said.Length)
            == (panel.Name, panel.Thickness, panel.Width, panel.Length);

    /// <summary>Each joint takes the allowance off two edges; no strip loses from more than two.</summary>
    private static bool TakesTheAllowance(StepRun run, Done done)
    {
        var off = done.Before.Zip(done.After).Select(p => p.First.Width - p.Second.Width).ToList();
        var each = run.Rules.EdgeJointAllowance;
        return off.TrueForAll(o => o >= Length.Zero && o <= each * 2)
            && off.Aggregate(Length.Zero, (sum, o) => sum + o) == each * (2 * (off.Count - 1));
    }

    /// <summary>What an end or an edge loses to a saw is kerf and waste, and where a plane follows, its shavings.</summary>
    private static bool SawnToTheTick(StepRun run, Done done)
    {
        if (
            done.Step.Leaves.FirstOrDefault(l => l.Use is PieceUse.Waste) is not { } waste
            || done.Before.Count != 1
        )
            return done.Step.Kind is StepKind.Practise or StepKind.CutJoint && IsAsItWas(done);
        var (before, after) = (done.Before[0], done.After[0]);
        var isRip = done.Step.Saw!.Kind is SawKind.HandRip;
        var off = isRip ? before.Width - after.Width : before.Length - after.Length;
        var kept = isRip ? waste.Width : waste.Length;
        var shavings = off - kept - done.Step.Saw.Kerf;
        return done.Step.Class is CutClass.Third
            ? shavings >= Length.Zero && kept >= Length.Zero
            : shavings == Length.Zero && kept >= Length.Zero;
    }

    private static string Word(PartDimension dimension) => dimension.ToString().ToLowerInvariant();

    private static string Say(StepRun run, Length over) =>
        LengthWriter.WriteExactWithUnit(over < Length.Zero ? -over : over, run.Rules.Unit);
}
