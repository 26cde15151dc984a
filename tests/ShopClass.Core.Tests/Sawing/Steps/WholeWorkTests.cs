using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Core.Tests.Planning;

namespace ShopClass.Core.Tests.Sawing.Steps;

public class WholeWorkTests
{
    public static TheoryData<string, UnitSystem> All =>
        new MatrixTheoryData<string, UnitSystem>(
            ["bench hook", "tool tote", "wall shelf", "planter", "peg rail"],
            [UnitSystem.Inch, UnitSystem.Metric]
        );

    [Theory]
    [MemberData(nameof(All))]
    public void Every_step_comes_after_those_it_waits_for_and_has_a_name_of_its_own(
        string name,
        UnitSystem unit
    )
    {
        var work = Work(name, unit);
        Assert.Equal(Enumerable.Range(1, work.Steps.Count), work.Steps.Select(s => s.Number));
        Assert.Equal(work.Steps.Count, work.Steps.Select(s => s.Id).Distinct().Count());
        Assert.All(work.Steps, s => Assert.All(s.After, a => Assert.InRange(a, 1, s.Number - 1)));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Every_part_is_at_its_finished_size_when_the_work_is_done(
        string name,
        UnitSystem unit
    )
    {
        var request = DemoProjects.Find(name, unit);
        var last = Work(name, unit).Steps[^1];
        Assert.Equal(StepKind.Finish, last.Kind);
        Assert.Equal(
            request
                .Project.Parts.SelectMany(p =>
                    Enumerable
                        .Range(1, p.Quantity)
                        .Select(i => (Name: $"{p.Letter}{i}", p.Finished.Width, p.Finished.Length))
                )
                .OrderBy(p => p.Name),
            last.Leaves.Select(l => (l.Name, l.Width, l.Length)).OrderBy(l => l.Name)
        );
    }

    [Theory]
    [MemberData(nameof(All))]
    public void The_rehearsal_agrees_to_the_whole_work(string name, UnitSystem unit)
    {
        var plan = CheckedPlan.Make(
            DemoProjects.Find(name, unit),
            cancel: TestContext.Current.CancellationToken
        );
        var work = WorkWriter.Write(plan, Hand.Left);
        var report = StepRehearsal.Replay(plan, work);
        Assert.Equal([], report.Findings);
        Assert.Equal(work.Steps.Count + 1, report.States.Count);
    }

    // Wood Handbook (FPL-GTR-282), Table 4-2 at 70 °F: 65 % air 12.0, 30 % air 6.2 % moisture. Table 13-5: eastern white pine
    // 0.00212 a per cent, so 9 1/4 in loses about 0.114 in; read here to a 64th.
    [Theory]
    [InlineData(65, 30, "shrinks by about 7/64 in")]
    [InlineData(30, 65, "swells by about 7/64 in")]
    public void What_is_fitted_early_says_how_it_moves_from_the_shops_air_to_the_rooms(
        int shop,
        int room,
        string said
    )
    {
        var request = WorkCases.OnSurfacedPine.Request;
        var shelf = request.Project;
        var wide = request with
        {
            Rules = request.Rules with { ShopHumidity = shop, RoomHumidity = room },
            Boards =
            [
                request.Boards[0] with
                {
                    WidthAtStart = WorkCases.In(11),
                    WidthAtMiddle = WorkCases.In(11),
                    WidthAtEnd = WorkCases.In(11),
                },
            ],
            Project = shelf with
            {
                Parts =
                [
                    .. shelf.Parts.Select(p =>
                        p.Letter == "C"
                            ? p
                            : p with
                            {
                                Open = [],
                                Finished = p.Finished with { Width = WorkCases.In(9.25) },
                            }
                    ),
                ],
            },
        };
        var steps = WorkWriter
            .Write(
                CheckedPlan.Make(
                    wide with
                    {
                        StepLimit = 500,
                    },
                    cancel: TestContext.Current.CancellationToken
                ),
                Hand.Right
            )
            .Steps;
        Assert.Contains(
            steps,
            s => s.Kind is StepKind.Fit && s.Caution.Contains(said, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void The_pegs_are_crosscut_from_their_strip_when_it_is_at_width()
    {
        var steps = Work("peg rail", UnitSystem.Inch).Steps;
        var width = Assert.Single(
            steps,
            s => s.Kind is StepKind.BringToWidth && s.Pieces.Contains("B1")
        );
        Assert.Equal(["B1", "B2", "B3", "B4"], width.Pieces);
        var apart = steps.Where(s => s.Cut is not null && s.Number > width.Number).ToList();
        Assert.Equal(3, apart.Count);
        Assert.All(
            apart,
            s => Assert.Contains(s.Leaves, l => l.Width == Length.FromInches(0, 3, 4))
        );
    }

    private static WorkSequence Work(string name, UnitSystem unit) =>
        WorkWriter.Write(
            CheckedPlan.Make(
                DemoProjects.Find(name, unit),
                cancel: TestContext.Current.CancellationToken
            ),
            Hand.Right
        );
}
