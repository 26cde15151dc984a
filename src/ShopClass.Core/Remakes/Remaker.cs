using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Remakes;

/// <summary>Finds every legal way to get a spoiled part back, and says why the other ways are closed.</summary>
/// <remarks>
/// Each way that saws wood is a whole plan of its own, laid out by the planner on the pieces at hand and passed by the
/// rehearsal; a layout the rehearsal refuses is not offered.
/// </remarks>
public static class Remaker
{
    /// <summary>Steps each trial may take: a remake is answered while the student waits.</summary>
    private const int TrialSteps = 5_000;

    /// <summary>At most this many boards for sale are tried, cheapest first.</summary>
    private const int MostBoardsTried = 24;

    /// <summary>All ways, least disturbance first.</summary>
    /// <exception cref="ArgumentException">The plan has no such blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">More cuts are said to be made than the plan has.</exception>
    public static RemakeAnswer Options(Mishap mishap, Supplies supplies)
    {
        var bench = new Bench(mishap, new(mishap));
        Tried[] tried =
        [
            FromOffcut(bench),
            GluedUp(bench),
            LaidOutAgain(bench),
            FromRack(bench, supplies),
            ClassSpare(bench, supplies),
            NewBoard(bench, supplies),
        ];
        var smaller = tried[0].Option is null ? Smaller(bench) : null;
        Tried[] all = smaller is null ? tried : [.. tried, smaller];
        return new(
            [.. all.Select(t => t.Option).OfType<RemakeOption>()],
            [.. all.Select(t => t.Closed).OfType<ClosedWay>()]
        );
    }

    private sealed record Bench(Mishap Mishap, PiecesAtHand Pieces)
    {
        /// <summary>What the first plan was asked, with the sizes a smaller remake has changed since.</summary>
        public PlanningRequest Request { get; } =
            Mishap.First is not { } first
                ? Mishap.Plan.Request
                : first.Request with
                {
                    Project = Resized(first.Request.Project, Mishap.Plan.Request.Project),
                };

        public BlankKey Spoiled => Mishap.Spoiled;

        public Part Part => Request.Project.Parts.First(p => p.Letter == Spoiled.Part);

        private static Project Resized(Project first, Project remade) =>
            first with
            {
                Parts =
                [
                    .. first.Parts.Select(p =>
                        remade.Parts.FirstOrDefault(r => r.Letter == p.Letter) is { } now
                            ? p with
                            {
                                Finished = now.Finished,
                            }
                            : p
                    ),
                ],
            };

        /// <summary>The spoiled blank alone, with these finished sizes.</summary>
        public RemakeParts Alone(Project project) =>
            RemakeParts.Of(project, Request.Rules, [(Spoiled, Pieces.Place.Blank.Needed)]);
    }

    private sealed record Tried(RemakeOption? Option, ClosedWay? Closed);

    private static Tried FromOffcut(Bench bench)
    {
        var parts = bench.Alone(WithoutGlueUp(bench.Request.Project));
        foreach (var (boards, note) in FreeInTurn(bench))
        {
            if (Plan(bench, parts, boards) is { } plan)
                return Open(
                    RemakeWay.Offcut,
                    $"Saw {bench.Spoiled} again from {From(plan)}.{note}",
                    plan,
                    parts
                );
        }

        return Closed(
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
    private static IEnumerable<(IReadOnlyList<Board> Boards, string Note)> FreeInTurn(Bench bench)
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

    private static Tried GluedUp(Bench bench)
    {
        if (!bench.Request.Rules.EdgeGluingTaught)
            return Closed(RemakeWay.GluedUp, "This course teaches no edge gluing.");
        if (!bench.Part.GlueUpAllowed || bench.Spoiled.Strip > 0)
            return Closed(
                RemakeWay.GluedUp,
                bench.Spoiled.Strip > 0
                    ? $"{bench.Spoiled} is a strip of a glue-up already."
                    : $"The parts list asks for {bench.Part.Letter} in one piece."
            );
        var parts = bench.Alone(bench.Request.Project);
        return
            Plan(bench, parts, bench.Pieces.Free) is { } plan
            && plan.Plan.GlueUps.TryGetValue(bench.Part.Letter, out var strips)
            ? Open(
                RemakeWay.GluedUp,
                $"Glue {bench.Spoiled} up from {strips} strips out of {From(plan)}.",
                plan,
                parts
            )
            : Closed(
                RemakeWay.GluedUp,
                $"The offcuts do not yield {bench.Spoiled} as a glue-up that would be any use."
            );
    }

    private static Tried LaidOutAgain(Bench bench)
    {
        var unsawn = bench.Pieces.Unsawn;
        if (unsawn.Count == 0)
            return Closed(
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
        return Plan(bench, parts, [.. unsawn, .. bench.Pieces.Free]) is { } plan
            ? Open(
                RemakeWay.LaidOutAgain,
                $"Lay out what is not sawn yet once more, with {bench.Spoiled} among it: from {From(plan)}.",
                plan,
                parts
            )
            : Closed(
                RemakeWay.LaidOutAgain,
                $"What is not sawn yet has no room for {bench.Spoiled} beside the parts it must still yield."
            );
    }

    private static Tried FromRack(Bench bench, Supplies supplies)
    {
        var parts = bench.Alone(WithoutGlueUp(bench.Request.Project));
        if (Plan(bench, parts, supplies.Rack) is { } plan)
            return Open(
                RemakeWay.Rack,
                $"Take {From(plan)} from the rack and saw {bench.Spoiled} from it.{OtherSpecies(bench, plan)}",
                plan,
                parts
            );
        return Closed(
            RemakeWay.Rack,
            supplies.Rack.Count == 0
                ? "Nothing on the rack is free to take."
                : $"Nothing on the rack yields {bench.Spoiled}."
        );
    }

    private static Tried ClassSpare(Bench bench, Supplies supplies)
    {
        var letter = bench.Part.Letter;
        if (bench.Spoiled.Strip > 0)
            return Closed(RemakeWay.ClassSpare, "A spare is a whole part, not a strip of one.");
        return supplies.ClassSpares.Contains(letter, StringComparer.Ordinal)
            ? new(
                new()
                {
                    Way = RemakeWay.ClassSpare,
                    Sentence =
                        $"Take the class's spare {letter} in place of {bench.Spoiled}. What is left of the old one goes on the rack.",
                },
                null
            )
            : Closed(RemakeWay.ClassSpare, $"The class has no spare {letter}.");
    }

    private static Tried NewBoard(Bench bench, Supplies supplies)
    {
        var parts = bench.Alone(WithoutGlueUp(bench.Request.Project));
        var tried = supplies
            .ForSale.Where(b => b.Price is not null)
            .OrderBy(b => b.Price!.Value.MinorUnits)
            .ThenBy(b => b.Id, StringComparer.Ordinal)
            .Take(MostBoardsTried);
        foreach (var board in tried)
        {
            if (Plan(bench, parts, [board]) is { } plan)
            {
                var open = Open(
                    RemakeWay.NewBoard,
                    $"Buy {board.Name} and saw {bench.Spoiled} from it.{OtherSpecies(bench, plan)}",
                    plan,
                    parts
                );
                return open with { Option = open.Option! with { Cost = board.Price } };
            }
        }

        return Closed(
            RemakeWay.NewBoard,
            supplies.ForSale.Count == 0
                ? "No seller’s list is known here."
                : $"No board on the sellers' lists yields {bench.Spoiled}."
        );
    }

    private static Tried Smaller(Bench bench)
    {
        var letter = bench.Part.Letter;
        if (bench.Spoiled.Strip > 0)
            return Closed(
                RemakeWay.SmallerDesign,
                "A strip of a glue-up is remade, not the design changed for it."
            );
        var found = SmallerDesigns.Least(
            bench.Request,
            letter,
            project =>
                Plan(bench, bench.Alone(WithoutGlueUp(project)), bench.Pieces.Free) is not null
        );
        if (found is not { } smaller)
            return Closed(
                RemakeWay.SmallerDesign,
                $"No small change to the length or width of {letter} lets {bench.Spoiled} come from what is left with every joint still fitting."
            );
        var parts = bench.Alone(WithoutGlueUp(smaller.Project));
        var open = Open(
            RemakeWay.SmallerDesign,
            $"Make the piece a little smaller: {smaller.InWords(bench.Request.Rules.Precision)}. Then {bench.Spoiled} can be sawn from what is left.",
            Plan(bench, parts, bench.Pieces.Free)!,
            parts
        );
        return open with { Option = open.Option! with { Changes = smaller.Changes } };
    }

    /// <summary>A whole plan for these parts on these boards that the rehearsal passes, or nothing.</summary>
    private static CheckedPlan? Plan(Bench bench, RemakeParts parts, IReadOnlyList<Board> boards)
    {
        if (boards.Count == 0)
            return null;
        var request = bench.Request with
        {
            Project = parts.Project,
            Boards = boards,
            StepLimit = TrialSteps,
        };
        if (!Planning.Search.FitSearch.Fits(request))
            return null;
        var plan = CheckedPlan.Make(request);
        return plan.Plan.IsComplete && plan.Rehearsal.Passed ? plan : null;
    }

    private static Project WithoutGlueUp(Project project) =>
        project with
        {
            Parts = [.. project.Parts.Select(p => p with { GlueUpAllowed = false })],
        };

    private static string From(CheckedPlan plan) =>
        string.Join(
            " and ",
            plan.Plan.Boards.Select(l => plan.Request.Boards.First(b => b.Id == l.BoardId))
                .Select(b => $"{b.Name} ({Size(b, plan.Request.Rules.Precision)})")
        );

    private static string Size(Board board, Precision precision) =>
        $"{LengthWriter.Write(board.SmallestWidth, precision)} x {LengthWriter.WriteWithUnit(board.Length, precision)}";

    private static string OtherSpecies(Bench bench, CheckedPlan plan)
    {
        var own = bench
            .Mishap.Plan.Request.Boards.First(b => b.Id == bench.Pieces.Place.BoardId)
            .SpeciesId;
        return plan.Plan.Boards.All(l =>
            plan.Request.Boards.First(b => b.Id == l.BoardId).SpeciesId == own
        )
            ? ""
            : " It is another wood than the rest.";
    }

    private static Tried Open(
        RemakeWay way,
        string sentence,
        CheckedPlan plan,
        RemakeParts parts
    ) =>
        new(
            new()
            {
                Way = way,
                Sentence = sentence,
                Plan = plan,
                Blanks = parts.Blanks,
            },
            null
        );

    private static Tried Closed(RemakeWay way, string sentence) => new(null, new(way, sentence));
}
