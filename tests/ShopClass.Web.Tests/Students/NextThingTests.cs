using ShopClass.Core.Planning;
using ShopClass.Data.Plans;
using ShopClass.Data.Projects;
using ShopClass.Data.Students;
using ShopClass.Web.Features.Students;
using ShopClass.Web.Tests.Plans;

namespace ShopClass.Web.Tests.Students;

public class NextThingTests
{
    private static readonly ProjectSummary Project = new(Guid.NewGuid(), "Small shelf", 2, 3);
    private static readonly BoardView Board = new(
        Guid.NewGuid(),
        Guid.NewGuid(),
        Project.Id,
        Classroom.Pine,
        Guid.NewGuid()
    );

    [Fact]
    public void First_the_board_is_logged() =>
        Assert.Equal("Log your board", Next(boards: [], plan: null).Button);

    [Fact]
    public void Then_the_plan_is_made() =>
        Assert.Equal("Make your plan", Next([Board], plan: null).Button);

    [Fact]
    public void Then_the_first_cut_is_looked_at() =>
        Assert.Equal(
            "Go to your first step",
            Next([Board], HandMade.Stored(HandMade.Made())).Button
        );

    [Fact]
    public void A_plan_that_misses_a_part_sends_to_the_instructor_and_not_to_the_saw()
    {
        var next = Next([Board], HandMade.Stored(HandMade.Made(missing: [new("A", 1)])));

        Assert.Contains("Talk to your instructor", next.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_project_there_is_nothing_to_press() =>
        Assert.Null(
            NextThing.For(new([], null, [], null, null), Guid.NewGuid(), Guid.NewGuid()).Button
        );

    private static NextThing Next(IReadOnlyList<BoardView> boards, StoredPlan? plan) =>
        NextThing.For(
            new([Project], Project, boards, HandMade.Request, plan),
            Guid.NewGuid(),
            Guid.NewGuid()
        );
}
