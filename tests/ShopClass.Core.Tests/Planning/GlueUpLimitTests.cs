using ShopClass.Core.Courses;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Tests.Planning;

public class GlueUpLimitTests
{
    /// <summary>A part 250 wide from boards 70 wide: four strips.</summary>
    private static PlanningRequest Wide(int most) =>
        Wood.Ask(
            Wood.Bare(Wood.Mm(0)) with
            {
                MostGlueUpStrips = most,
            },
            [Wood.Board("1", Wood.Mm(20), Wood.Mm(70), Wood.Mm(2000))],
            [
                Wood.Part("A", 1, Wood.Mm(20), Wood.Mm(250), Wood.Mm(400)) with
                {
                    GlueUpAllowed = true,
                },
            ]
        );

    [Theory]
    [InlineData(6, true)]
    [InlineData(4, true)]
    [InlineData(3, false)]
    public void A_part_is_glued_up_from_no_more_strips_than_the_course_allows(int most, bool fits)
    {
        var plan = Wood.Plan(Wide(most));
        Assert.Equal(fits, plan.IsComplete);
        Assert.All(plan.GlueUps, g => Assert.InRange(g.Value, 2, most));
    }

    [Fact]
    public void The_rehearsal_refuses_a_strip_more_than_the_course_allows()
    {
        var plan = Wood.Plan(Wide(4));
        var stricter = Wide(3);
        var report = Rehearsal.Replay(stricter, plan, Sequencer.Order(Wide(4), plan));
        Assert.False(report.Passed);
        Assert.Contains(
            report.Findings,
            f => f.Sentence == "A is glued up from 4 strips; the course allows 3 at most."
        );
        Assert.True(Rehearsal.Replay(Wide(4), plan, Sequencer.Order(Wide(4), plan)).Passed);
    }

    [Theory]
    [InlineData(1, true)]
    [InlineData(2, false)]
    [InlineData(6, false)]
    [InlineData(7, true)]
    public void Fewer_than_two_strips_or_more_than_six_is_a_problem_of_the_settings(
        int most,
        bool refused
    ) =>
        Assert.Equal(
            refused,
            RuleBook
                .ProblemsIn(Wood.Bare(Wood.Mm(1)) with { MostGlueUpStrips = most })
                .Any(p => p.Key == RuleBook.MostGlueUpStripsKey)
        );
}
