using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Tests.Planning;

/// <summary>The musts of a layout, checked straight from the measured board: nothing of the planner is used.</summary>
internal static class LayoutProblems
{
    public static IReadOnlyList<string> In(PlanningRequest request, CutPlan plan)
    {
        var problems = new List<string>();
        var expected = request
            .Project.Parts.SelectMany(p =>
                Enumerable
                    .Range(1, p.Quantity)
                    .SelectMany(copy =>
                        plan.GlueUps.TryGetValue(p.Letter, out var strips)
                            ? Enumerable
                                .Range(1, strips)
                                .Select(s => new BlankKey(p.Letter, copy, s))
                            : [new BlankKey(p.Letter, copy)]
                    )
            )
            .Order()
            .ToList();
        var placed = plan
            .Boards.SelectMany(b => b.Sections)
            .SelectMany(s => s.Strips)
            .SelectMany(s => s.Blanks)
            .Select(b => b.Key);
        if (!placed.Concat(plan.Missing).Order().SequenceEqual(expected))
            problems.Add("each blank must be placed once or named as missing");
        foreach (var layout in plan.Boards)
            problems.AddRange(OnBoard(request, plan, layout));
        foreach (var letter in plan.GlueUps.Keys)
        {
            if (!request.Project.Parts.Single(p => p.Letter == letter).GlueUpAllowed)
                problems.Add($"{letter} may not be glued up");
        }

        return problems;
    }

    private static IEnumerable<string> OnBoard(
        PlanningRequest request,
        CutPlan plan,
        BoardLayout layout
    )
    {
        var board = request.Boards.Single(b => b.Id == layout.BoardId);
        var rules = request.Rules;
        var free = board.TrimStart;
        foreach (var section in layout.Sections)
        {
            if (section.From < free || section.To > board.Length - board.TrimEnd)
                yield return $"section at {section.From} leaves the usable length or has no kerf";
            free = section.To + rules.CrosscutKerf;
            var edge = Length.Zero;
            foreach (var strip in section.Strips)
            {
                if (strip.Near < edge || strip.Far > board.SmallestWidth)
                    yield return $"strip at {strip.Near} leaves the board or has no kerf";
                edge = strip.Far + rules.RipKerf;
                var at = section.From;
                foreach (var blank in strip.Blanks)
                {
                    if (blank.From < at || blank.To > section.To)
                        yield return $"{blank.Key} leaves its section or has no kerf";
                    at = blank.To + rules.CrosscutKerf;
                    foreach (var problem in OnBlank(request, plan, board, strip, blank))
                        yield return problem;
                }
            }
        }
    }

    private static IEnumerable<string> OnBlank(
        PlanningRequest request,
        CutPlan plan,
        Board board,
        Strip strip,
        PlacedBlank blank
    )
    {
        var part = request.Project.Parts.Single(p => p.Letter == blank.Key.Part);
        var rules = request.Rules;
        var width = part.Finished.Width + part.ExtraFor(PartDimension.Width);
        var whole =
            board.Surfacing is Surfacing.S4S
            && strip.Near == Length.Zero
            && strip.Far == board.SmallestWidth;
        if (plan.GlueUps.TryGetValue(part.Letter, out var n))
        {
            var sum = width + rules.WidthAllowance + rules.EdgeJointAllowance * (2 * (n - 1));
            width = Length.FromTicks((sum.Ticks + n - 1) / n);
        }
        else if (!whole || blank.Turned)
        {
            width += rules.WidthAllowance;
        }

        var length =
            part.Finished.Length + part.ExtraFor(PartDimension.Length) + rules.LengthAllowance;
        var rect = blank.In(strip);
        var (along, across) = blank.Turned ? (width, length) : (length, width);
        if (rect.Along < along || rect.Across < across)
            yield return $"{blank.Key} is smaller than it needs to be";
        if (blank.Turned && part.Grain is not GrainDirection.Any)
            yield return $"{blank.Key} is turned against its grain";
        if (blank.Needed.Length != length || blank.Needed.Width < width)
            yield return $"{blank.Key} states a need of {blank.Needed}";
        if (BlankNeeds.ThicknessProblem(part, rules, board) is { } thick)
            yield return thick;
        var touched = board.Defects.Where(d => d.Place.Overlaps(rect)).Select(d => d.Reach);
        var faces = touched.Distinct().ToList();
        if (faces.Count > 0 && (!part.AcceptsHiddenDefect || faces.Count > 1))
            yield return $"{blank.Key} covers a bad place";
        if (faces.Contains(DefectReach.Through))
            yield return $"{blank.Key} covers a through defect";
    }
}
