using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Search;
using ShopClass.Core.Tests.Planning;

namespace ShopClass.Bench;

/// <summary>
/// Planning time of the demo projects as a ratio to sorting a fixed list of 100,000 numbers on the same machine in the same
/// run, so that figures from different machines and busy hours can be compared. The quickest of several rounds counts.
/// </summary>
internal static class RatioBench
{
    private static readonly string[] Projects =
    [
        "bench hook",
        "tool tote",
        "wall shelf",
        "planter",
        "peg rail",
    ];

    public static int Run(Arguments arguments)
    {
        var rounds = arguments.Number("rounds", 20);
        var sort = Yardstick.Sorting(rounds);
        Console.WriteLine($"sorting 100,000 numbers: {sort:0.00} ms");
        Console.WriteLine(
            "project, unit, clear ms, ratio, with a knot ms, ratio, ten inches short ms, ratio"
        );
        foreach (var (name, unit) in All)
            Print(name, unit, rounds, sort);
        Console.WriteLine("project, unit, search ms, search and wishes ms, ratio");
        var (searched, granted) = (0.0, 0.0);
        foreach (var (name, unit) in All)
        {
            var (without, with) = Wishes(DemoProjects.Find(name, unit), rounds);
            (searched, granted) = (searched + without, granted + with);
            Console.WriteLine(
                $"{name}, {unit}, {without:0.00}, {with:0.00}, {with / without:0.00}"
            );
        }

        Console.WriteLine($"all, {searched:0.00}, {granted:0.00}, {granted / searched:0.00}");
        return 0;
    }

    private static IEnumerable<(string Name, UnitSystem Unit)> All =>
        from name in Projects
        from unit in new[] { UnitSystem.Inch, UnitSystem.Metric }
        select (name, unit);

    /// <summary>The same plan searched for without granting wishes, and with.</summary>
    private static (double Without, double With) Wishes(PlanningRequest request, int rounds) =>
        (
            Yardstick.Quickest(rounds, () => new PlanSearch(request, null, default).Run()),
            Yardstick.Quickest(rounds, () => Planner.Plan(request))
        );

    private static void Print(string name, UnitSystem unit, int rounds, double sort)
    {
        var request = DemoProjects.Find(name, unit);
        double[] times =
        [
            Yardstick.Quickest(rounds, () => Judge(request)),
            Yardstick.Quickest(rounds, () => Judge(WithKnot(request))),
            Yardstick.Quickest(rounds, () => Judge(Shorter(request))),
        ];
        Console.WriteLine(
            $"{name}, {unit}, " + string.Join(", ", times.Select(t => $"{t:0.00}, {t / sort:0.00}"))
        );
    }

    private static void Judge(PlanningRequest request) =>
        Verdicts.Judge(request, Planner.Plan(request));

    private static PlanningRequest WithKnot(PlanningRequest request)
    {
        var first = request.Boards[0];
        var third = Length.FromTicks(first.Length.Ticks / 3);
        var knot = new Defect(
            DefectKind.Knot,
            new(third, third + Wood.Mm(20), Length.Zero, Wood.Mm(20))
        );
        var longer = first.Length + Length.FromTicks(first.Length.Ticks / 2);
        return request with
        {
            Boards = [first with { Length = longer, Defects = [knot] }, .. request.Boards.Skip(1)],
        };
    }

    private static PlanningRequest Shorter(PlanningRequest request) =>
        request with
        {
            Boards =
            [
                request.Boards[0] with
                {
                    Length = request.Boards[0].Length - Length.FromInches(10),
                },
                .. request.Boards.Skip(1),
            ],
        };
}
