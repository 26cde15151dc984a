using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Guide;
using ShopClass.Core.Projects;
using Xunit;
using static ShopClass.Core.Tests.Planning.Wood;

namespace ShopClass.Core.Tests.Planning.Guide;

public class StockGuideTests
{
    public static TheoryData<string, UnitSystem> Demo { get; } =
        new MatrixTheoryData<string, UnitSystem>(
            ["bench hook", "tool tote", "wall shelf", "planter", "peg rail"],
            [UnitSystem.Inch, UnitSystem.Metric]
        );

    [Theory]
    [MemberData(nameof(Demo))]
    public void Every_size_listed_does_and_one_step_shorter_does_not(string name, UnitSystem unit)
    {
        var guide = GuideFor(name, unit);

        Assert.NotEmpty(guide.Groups);
        foreach (var option in guide.Groups.SelectMany(g => g.Options))
        {
            Assert.True(option.Plan.Plan.IsComplete);
            Assert.True(option.Plan.Rehearsal.Passed);
            // Without glue-ups every layout of these few parts can be looked through.
            if (!option.Plan.Request.Project.Parts.Any(p => p.GlueUpAllowed))
                Assert.True(option.IsProvenShortest, $"{option.Boards} of {option.Size.Name}");
            if (option.Sold is { } sold)
            {
                Assert.True(option.Shortest <= sold);
                Assert.Contains(sold, SellerSizes.LengthsFor(unit));
            }

            var request = option.Plan.Request;
            Assert.All(
                request.Boards,
                b =>
                {
                    Assert.Equal(option.Size.Width, b.SmallestWidth);
                    Assert.Equal(request.Rules.UsualEndTrim, b.TrimStart);
                    Assert.Equal(request.Rules.UsualEndTrim, b.TrimEnd);
                }
            );
            var shorter = option.Shortest - request.Rules.Precision.Step();
            Assert.False(
                Planner
                    .Plan(
                        request with
                        {
                            Boards = [.. request.Boards.Select(b => b with { Length = shorter })],
                            StepLimit = 20_000,
                        },
                        cancel: TestContext.Current.CancellationToken
                    )
                    .IsComplete,
                $"{option.Boards} of {option.Size.Name} would do a step shorter than {option.Shortest}."
            );
        }
    }

    [Theory]
    [MemberData(nameof(Demo))]
    public void No_size_listed_is_bigger_than_another_that_is_no_more_work(
        string name,
        UnitSystem unit
    )
    {
        foreach (var group in GuideFor(name, unit).Groups)
        {
            // The frontier: with the same number of boards and joints, wider means strictly shorter.
            foreach (var same in group.Options.GroupBy(o => (o.Boards, o.Joints, o.IsPrepared)))
            {
                var byWidth = same.OrderBy(o => o.Size.Width).ToList();
                Assert.All(
                    byWidth.Zip(byWidth.Skip(1)),
                    pair =>
                    {
                        Assert.True(pair.First.Size.Width < pair.Second.Size.Width);
                        Assert.True(pair.First.Shortest > pair.Second.Shortest);
                    }
                );
            }

            // What fits on a board fits on a wider one: the outermost strip, or the blank that takes the whole width,
            // only grows. So a wider size is never left out of both lists.
            foreach (var all in group.Options.Concat(group.AlsoDo).GroupBy(o => o.Boards))
            {
                var narrowest = all.Min(o => o.Size.Width);
                var wider = SellerSizes
                    .For(unit)
                    .Where(s => s.Thickness == group.Stock && s.Width >= narrowest);
                Assert.All(wider, size => Assert.Contains(all, o => o.Size == size));
            }
        }
    }

    [Fact]
    public void The_length_for_a_case_small_enough_to_work_by_hand()
    {
        // Two parts of 10 in on a board too narrow for two strips. Each end is trimmed by 1 in, the trim's cut within it
        // (ours), each blank is 11 in with its allowance, and one crosscut kerf of 1/16 lies between: 2 + 22 + 1/16.
        var guide = StockGuide.Make(
            Of(Part("A", 2, In(0, 3, 4), In(3), In(10))),
            CourseRules.DefaultsFor(UnitSystem.Inch),
            cancel: TestContext.Current.CancellationToken
        );

        var narrow = Assert.Single(guide.Groups).Options.First(o => o.Boards == 1);

        Assert.Equal("1x4", narrow.Size.Name);
        Assert.Equal(In(24, 1, 16), narrow.Shortest);
        Assert.Equal(In(72), narrow.Sold);
    }

    [Fact]
    public void Two_boards_are_bought_only_where_one_of_that_length_would_not_do()
    {
        // Two boards of 13 in do what one of 24 1/16 in does, and both are cut from 6 ft: so one is bought, or two offcuts.
        var short2 = StockGuide.Make(
            Of(Part("A", 2, In(0, 3, 4), In(3), In(10))),
            CourseRules.DefaultsFor(UnitSystem.Inch),
            cancel: TestContext.Current.CancellationToken
        );
        // Three of 60 in take 2 + 3 x 61 + 2/16 in = 185 1/8 in: a 16 ft board, or two of 12 ft.
        var long2 = StockGuide.Make(
            Of(Part("A", 3, In(0, 3, 4), In(3), In(60))),
            CourseRules.DefaultsFor(UnitSystem.Inch),
            cancel: TestContext.Current.CancellationToken
        );

        Assert.Equal(["1x4, 6 ft", "2 offcuts of 1x4"], Asked(short2, "1x4"));
        Assert.Equal(["1x4, 16 ft", "2 of 1x4, 12 ft each"], Asked(long2, "1x4"));
    }

    [Theory]
    [MemberData(nameof(Demo))]
    public void Each_finished_thickness_has_boards_of_its_own(string name, UnitSystem unit)
    {
        var guide = GuideFor(name, unit);

        Assert.Equal(
            guide.Project.Parts.Select(p => p.Finished.Thickness).Distinct().OrderDescending(),
            guide.Groups.Select(g => g.Finished)
        );
        Assert.Equal(
            guide.Project.Parts.Select(p => p.Letter).Order(StringComparer.Ordinal),
            guide
                .Groups.SelectMany(g => g.Parts)
                .Select(p => p.Letter)
                .Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void The_same_project_gives_the_same_guide()
    {
        string Listed() =>
            string.Join(
                '\n',
                GuideFor("tool tote", UnitSystem.Inch)
                    .Groups.SelectMany(g => g.Options.Concat(g.AlsoDo))
                    .Select(o => $"{o.Boards} {o.Size} {o.Shortest} {GuideWords.Work(o)}")
            );

        Assert.Equal(Listed(), Listed());
    }

    [Fact]
    public void It_stops_when_asked()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        var wanted = DemoProjects.Find("planter", UnitSystem.Inch);

        Assert.Throws<OperationCanceledException>(() =>
            StockGuide.Make(wanted.Project, wanted.Rules, cancel: stop.Token)
        );
    }

    private static IEnumerable<string> Asked(StockGuide guide, string name) =>
        guide
            .Groups[0]
            .Options.Where(o => o.Size.Name == name)
            .Select(o => GuideWords.Ask(o, UnitSystem.Inch));

    internal static Project Of(params Part[] parts) => new() { Name = "trial", Parts = parts };

    private static StockGuide GuideFor(string name, UnitSystem unit)
    {
        var wanted = DemoProjects.Find(name, unit);
        return StockGuide.Make(
            wanted.Project,
            wanted.Rules,
            cancel: TestContext.Current.CancellationToken
        );
    }
}
