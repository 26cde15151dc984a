using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Remakes;

/// <summary>A mishap with what lies at hand, and the planner that lays single parts out on it.</summary>
internal sealed record RemakeBench(Mishap Mishap, PiecesAtHand Pieces)
{
    /// <summary>Steps each trial may take: a remake is answered while the student waits.</summary>
    private const int TrialSteps = 5_000;

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

    /// <summary>A whole plan for these parts on these boards that the rehearsal passes, or nothing.</summary>
    public CheckedPlan? Plan(RemakeParts parts, IReadOnlyList<Board> boards)
    {
        if (boards.Count == 0)
            return null;
        var request = Request with
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

    /// <summary>The project with every part in one piece.</summary>
    public static Project WithoutGlueUp(Project project) =>
        project with
        {
            Parts = [.. project.Parts.Select(p => p with { GlueUpAllowed = false })],
        };

    /// <summary>The boards of a plan with their sizes, in words.</summary>
    public static string From(CheckedPlan plan) =>
        string.Join(
            " and ",
            plan.Plan.Boards.Select(l => plan.Request.Boards.First(b => b.Id == l.BoardId))
                .Select(b => $"{b.Name} ({Size(b, plan.Request.Rules.Precision)})")
        );

    private static string Size(Board board, Precision precision) =>
        $"{LengthWriter.Write(board.SmallestWidth, precision)} x {LengthWriter.WriteWithUnit(board.Length, precision)}";

    /// <summary>Says so where a plan takes another wood than the spoiled part's.</summary>
    public string OtherSpecies(CheckedPlan plan)
    {
        var own = Mishap.Plan.Request.Boards.First(b => b.Id == Pieces.Place.BoardId).SpeciesId;
        return plan.Plan.Boards.All(l =>
            plan.Request.Boards.First(b => b.Id == l.BoardId).SpeciesId == own
        )
            ? ""
            : " It is another wood than the rest.";
    }
}
