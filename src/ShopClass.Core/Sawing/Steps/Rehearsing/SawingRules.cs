using ShopClass.Core.Measure;

namespace ShopClass.Core.Sawing.Steps.Rehearsing;

/// <summary>What must hold where something is sawn.</summary>
internal static class SawingRules
{
    public static IEnumerable<Finding> PiecesMustBeThereWhenTheyAreWorked(StepRun run)
    {
        foreach (var done in run.Done)
        {
            foreach (var name in done.Unknown)
                yield return Noticed.Must(done.Step, $"no piece is called {name} at that point.");
            if (done.Step.Cut is not null && !done.IsSawn)
                yield return Noticed.Must(
                    done.Step,
                    "the piece it is to be sawn from does not lie there at that point, or the cut does not run through it from edge to edge."
                );
        }
    }

    public static IEnumerable<Finding> EveryCutOfThePlanMustBeMadeOnce(StepRun run)
    {
        var made = run.Work.Steps.Select(s => s.Cut).OfType<Cut>().ToList();
        foreach (var cut in run.Plan.Sequence.Cuts)
        {
            var times = made.Count(m => IsSame(m, cut));
            if (times != 1)
                yield return Noticed.Must(
                    $"cut {cut.Number}",
                    $"Cut {cut.Number} of the plan is made {times} times in the steps."
                );
        }

        foreach (var extra in run.Work.Steps.Where(s => s.Cut is not null))
        {
            if (!run.Plan.Sequence.Cuts.Any(c => IsSame(extra.Cut!, c)))
                yield return Noticed.Must(extra, "the plan has no such cut.");
        }
    }

    /// <summary>What every cut says it leaves, and its kerf, is the piece it is made in; so all of them together are the board.</summary>
    public static IEnumerable<Finding> AreasMustBalanceToTheTick(StepRun run) =>
        from done in run.Done
        where done.IsSawn
        let cut = done.Step.Cut!
        let piece = done.Before[0]
        // A strip that was planed meanwhile is narrower than it was on its board, and so is what the saw takes of it.
        let isPlaned = piece.Width < cut.Piece.Across && piece.Length == cut.Piece.Along
        let kerf = isPlaned ? cut.Kerf.Along * piece.Width : cut.Kerf.Area
        let whole = isPlaned ? piece.Length * piece.Width : cut.Piece.Area
        let said = done.Step.Leaves.Aggregate(Area.Zero, (sum, l) => sum + l.Width * l.Length)
        where said + kerf != whole
        select Noticed.Must(
            done.Step,
            "what it leaves and its kerf do not add up to the piece it is made in."
        );

    public static IEnumerable<Finding> HeldPiecesMustBeLongEnoughForTheirSupport(StepRun run)
    {
        foreach (var done in run.Done.Where(d => d.Step.Saw is not null && d.Before.Count > 0))
        {
            var (held, limit, where) = Held(run, done);
            if (held < limit)
                yield return Noticed.Must(
                    done.Step,
                    $"{Say(run, held)} to hold {where}, which takes {Say(run, limit)}; it belongs in the vise.",
                    limit - held
                );
            if (done.Step.Support is Support.BenchHook && IsRip(done.Step))
                yield return Noticed.Must(done.Step, "a bench hook cannot hold a rip.");
        }
    }

    public static IEnumerable<Finding> WasteMustFallOnTheSideOfTheSawingHand(StepRun run)
    {
        var hand = run.Work.Hand is Hand.Right ? Side.Right : Side.Left;
        return run
            .Work.Steps.Where(s => s.WasteSide is { } side && side != hand)
            .Select(s =>
                Noticed.Must(s, "the waste falls on the side of the hand that holds the work.")
            );
    }

    /// <summary>What is held, how long it has to be, and where: the whole piece on a saw bench, the kept side at a bench hook.</summary>
    private static (Length Held, Length Limit, string Where) Held(StepRun run, Done done)
    {
        var isCut = done.Step.Cut is not null;
        return done.Step.Support switch
        {
            Support.SawBench => (
                isCut ? done.Before[0].Rect!.Value.Along : done.Before[0].Length,
                run.Rules.SawBenchLimit,
                "on the saw bench"
            ),
            Support.BenchHook => (
                isCut && done.After.Count > 0
                    ? done.After.Max(p => p.Rect!.Value.Along)
                    : done.After.Min(p => p.Length),
                run.Rules.BenchHookLimit,
                "at the bench hook"
            ),
            _ => (Length.Zero, Length.Zero, ""),
        };
    }

    private static bool IsRip(Step step) =>
        step.Saw?.Kind is SawKind.HandRip || step.Cut?.Kind is CutKind.Rip;

    private static bool IsSame(Cut one, Cut other) =>
        one.BoardId == other.BoardId && one.Piece == other.Piece && one.Kerf == other.Kerf;

    private static string Say(StepRun run, Length length) =>
        LengthWriter.WriteWithUnit(length, run.Rules.Precision);
}
