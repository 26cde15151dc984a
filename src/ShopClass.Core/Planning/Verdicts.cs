using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning;

/// <summary>Judges boards against a project.</summary>
public static class Verdicts
{
    /// <summary>The verdict on the request's boards, given the plan that was made for them.</summary>
    public static Verdict Judge(PlanningRequest request, CutPlan plan)
    {
        if (request.Boards.Count == 0)
            return Nothing("There is no board to judge yet.");
        if (request.Project.Parts.All(p => p.Quantity < 1))
            return Nothing("The project has no parts yet.");
        var cautions = BoardCautions.Of(request, plan);
        if (!plan.IsComplete)
            return TooSmall(request, plan, cautions);
        var routes = Routes(request, plan);
        return routes.Count == 0
            ? new(VerdictKind.Fits, $"Everything fits on {Names(request, plan)}.", [], [], cautions)
            : new(
                VerdictKind.FitsByRoute,
                $"Everything fits on {Names(request, plan)}, with more work: {string.Join("; ", routes.Select(LowerFirst))}.",
                routes,
                [],
                cautions
            );
    }

    private static Verdict Nothing(string sentence) =>
        new(VerdictKind.NothingToJudge, sentence, [], [], []);

    private static string Names(PlanningRequest request, CutPlan plan) =>
        InWords(
            [.. plan.Boards.Select(l => request.Boards.First(b => b.Id == l.BoardId).Name)],
            "and"
        );

    /// <summary>The work a plan adds: glue-ups, faces to plane, thickness to plane away.</summary>
    private static List<string> Routes(PlanningRequest request, CutPlan plan)
    {
        var routes = plan.GlueUps.Select(g => $"Glue up {g.Key} from {g.Value} strips").ToList();
        foreach (var layout in plan.Boards)
        {
            var board = request.Boards.First(b => b.Id == layout.BoardId);
            if (!board.HasPlanedFaces)
                routes.Add($"Plane both faces of {board.Name}");
            else
                routes.AddRange(PlanedFlatOrThinner(request, board, layout));
        }

        return routes;
    }

    private static IEnumerable<string> PlanedFlatOrThinner(
        PlanningRequest request,
        Board board,
        BoardLayout layout
    )
    {
        var letters = layout
            .Sections.SelectMany(s => s.Strips)
            .SelectMany(s => s.Blanks)
            .Select(b => b.Key.Part)
            .ToHashSet(StringComparer.Ordinal);
        foreach (var part in request.Project.Parts.Where(p => letters.Contains(p.Letter)))
        {
            var thick = BlankNeeds.OnePiece(part, request.Rules, board.Surfacing).Thickness;
            if (BlankNeeds.LostToFlattening(part, request.Rules, board) > Length.Zero)
                yield return $"Plane {part.Letter} flat, from {BlankNeeds.WriteExact(board.Thickness, request.Rules)} to {BlankNeeds.WriteExact(thick, request.Rules)}";
            else if (board.Thickness - thick > request.Rules.ThicknessLeeway)
            {
                yield return $"Plane {part.Letter} from {BlankNeeds.WriteExact(board.Thickness, request.Rules)} to {BlankNeeds.WriteExact(thick, request.Rules)}";
            }
        }
    }

    private static Verdict TooSmall(
        PlanningRequest request,
        CutPlan plan,
        IReadOnlyList<string> cautions
    )
    {
        var shortfalls = Shortfalls.Of(request);
        var missing = InWords([.. plan.Missing.Select(m => m.ToString())], "and");
        var fits = string.Join(", or ", shortfalls.Select(s => $"with {Bigger(request, s)}"));
        var thickness = ThicknessProblems(request);
        var sentence = (shortfalls.Count, thickness.Count) switch
        {
            (> 0, _) when request.Boards.Count == 1 =>
                $"Too {Small(shortfalls[0])} by {Write(request, shortfalls[0].Amount)}: {fits}, everything fits.",
            (> 0, _) => $"Too small: {fits}, everything fits.",
            (_, > 0) => string.Join(" ", thickness),
            _ =>
                "Too small: no single board made longer or wider lets everything fit; another board is needed.",
        };
        return new(
            VerdictKind.TooSmall,
            plan.IsProvenImpossible
                ? $"{sentence} As it is, not everything fits, and that is proven; the layout shown leaves out {missing}."
                : $"{sentence} As it is, no room was found for {missing}.",
            [],
            shortfalls,
            cautions
        )
        {
            IsProven = plan.IsProvenImpossible,
            Proofs = [.. Reasons.Impossibilities.Of(request).Select(i => i.Sentence)],
        };
    }

    /// <summary>Why parts that suit no board's thickness do not.</summary>
    private static List<string> ThicknessProblems(PlanningRequest request) =>
        [
            .. request
                .Project.Parts.Select(p =>
                    request
                        .Boards.Select(b => BlankNeeds.ThicknessProblem(p, request.Rules, b))
                        .ToList()
                )
                .Where(problems => problems.All(p => p is not null))
                .Select(problems => problems[0]!)
                .Distinct(),
        ];

    private static string Small(Shortfall shortfall) =>
        shortfall.Direction switch
        {
            PartDimension.Length => "short",
            PartDimension.Width => "narrow",
            _ => "thin",
        };

    private static string Bigger(PlanningRequest request, Shortfall shortfall)
    {
        var name =
            request.Boards.Count == 1
                ? "a board"
                : request.Boards.First(b => b.Id == shortfall.BoardId).Name;
        var how = shortfall.Direction switch
        {
            PartDimension.Length => "longer",
            PartDimension.Width => "wider",
            _ => "thicker",
        };
        return $"{name} {Write(request, shortfall.Amount)} {how}";
    }

    private static string Write(PlanningRequest request, Length length) =>
        LengthWriter.WriteWithUnit(length, request.Rules.Precision);

    private static string LowerFirst(string text) => char.ToLowerInvariant(text[0]) + text[1..];

    private static string InWords(IReadOnlyList<string> names, string last) =>
        names.Count switch
        {
            0 => "",
            1 => names[0],
            _ => $"{string.Join(", ", names.SkipLast(1))} {last} {names[^1]}",
        };
}
