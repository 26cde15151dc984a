using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning.Guide;

/// <summary>The smallest boards for the parts of one thickness.</summary>
internal static class GroupSearch
{
    private const int MostBoards = 2;

    /// <summary>Tries every width of the right thickness, one board and two, in one piece and glued up.</summary>
    public static StockGroup Over(
        Project parts,
        CourseRules rules,
        Action<int> tell,
        CancellationToken cancel
    )
    {
        var finished = parts.Parts[0].Finished.Thickness;
        if (StockThickness.For(parts.Parts, rules) is not { } thickness)
            return new(finished, parts.Parts, null, Thicknessing.PreparedByInstructor, [], []);
        var all = Found(parts, rules, thickness, tell, cancel);
        var found = all.ConvertAll(o => IsForOffcuts(o, all) ? o with { Sold = null } : o);
        var options = found.Where(o => !found.Any(other => Beats(other, o))).ToList();
        return new(
            finished,
            parts.Parts,
            thickness.Bought,
            thickness.How,
            InOrder(options),
            InOrder(found.Except(options))
        );
    }

    /// <summary>Taught work first, then one board before two, fewer joints before more, narrow before wide.</summary>
    private static IReadOnlyList<StockOption> InOrder(IEnumerable<StockOption> options) =>
        [
            .. options
                .OrderBy(o => o.IsPrepared)
                .ThenBy(o => o.Boards)
                .ThenBy(o => o.Joints)
                .ThenBy(o => o.Size.Width),
        ];

    private static List<StockOption> Found(
        Project parts,
        CourseRules rules,
        (Length Bought, Length OnBench, Thicknessing How) thickness,
        Action<int> tell,
        CancellationToken cancel
    )
    {
        var sizes = SellerSizes
            .For(rules.Unit)
            .Where(s => s.Thickness == thickness.Bought)
            .ToList();
        bool[] glued = parts.Parts.Any(p => p.GlueUpAllowed) ? [false, true] : [false];
        var found = new List<StockOption>();
        var (done, all) = (0, MostBoards * glued.Length * sizes.Count);
        for (var boards = 1; boards <= MostBoards; boards++)
        {
            foreach (var mayGlue in glued)
            {
                var search = new LengthSearch(
                    parts,
                    rules with
                    {
                        EdgeGluingTaught = mayGlue,
                    },
                    cancel
                );
                Length? known = null;
                foreach (var size in sizes)
                {
                    var plan = search.Shortest(thickness.OnBench, size.Width, boards, known);
                    var isProven = plan is not null && search.NoShorterDoes(plan);
                    // What fits on a board fits on a wider one.
                    known = plan?.Request.Boards[0].Length ?? known;
                    if (plan is not null)
                        found.Add(Option(size, boards, plan, isProven, rules, thickness.How));
                    tell(100 * ++done / all);
                }
            }
        }

        // Where gluing up saves nothing, the glued search finds the plan in one piece again.
        return [.. found.DistinctBy(o => (o.Size, o.Boards, o.Shortest, o.Joints))];
    }

    private static StockOption Option(
        SellerSize size,
        int boards,
        CheckedPlan plan,
        bool isProven,
        CourseRules rules,
        Thicknessing how
    )
    {
        var shortest = plan.Request.Boards[0].Length;
        return new()
        {
            Size = size,
            Boards = boards,
            Shortest = shortest,
            IsProvenShortest = isProven,
            Sold = SellerSizes.LengthsFor(rules.Unit).First(l => l >= shortest),
            Plan = plan,
            IsPrepared =
                how is Thicknessing.PreparedByInstructor
                || (plan.Plan.GlueUps.Count > 0 && !rules.EdgeGluingTaught),
        };
    }

    private static bool IsForOffcuts(StockOption two, List<StockOption> all) =>
        two.Boards > 1
        && all.Exists(one =>
            one.Boards == 1
            && one.Size == two.Size
            && one.Sold <= two.Sold
            && one.Joints <= two.Joints
        );

    /// <summary>Whether the one is nowhere bigger or more work than the other, and somewhere smaller or less.</summary>
    private static bool Beats(StockOption one, StockOption other) =>
        one.Boards <= other.Boards
        && one.Size.Width <= other.Size.Width
        && one.Shortest <= other.Shortest
        && one.Joints <= other.Joints
        && (!one.IsPrepared || other.IsPrepared)
        && (
            one.Boards < other.Boards
            || one.Size.Width < other.Size.Width
            || one.Shortest < other.Shortest
            || one.Joints < other.Joints
            || (!one.IsPrepared && other.IsPrepared)
        );
}
