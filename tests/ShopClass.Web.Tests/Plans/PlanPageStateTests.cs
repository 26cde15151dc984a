using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;
using ShopClass.Data.Access;
using ShopClass.Data.Plans;
using ShopClass.Web.Features.Plans;

namespace ShopClass.Web.Tests.Plans;

public class PlanPageStateTests
{
    [Fact]
    public void A_plan_whose_rehearsal_broke_a_must_is_refused_with_its_sentences()
    {
        var state = new PlanPageState();

        var accepted = state.Accepts(HandMade.Made(findings: [HandMade.Broken, HandMade.Noted]));

        Assert.False(accepted);
        Assert.Equal([HandMade.Broken.Sentence], state.Refusals);
        Assert.Null(state.Shown);
        Assert.False(state.ShouldMake);
    }

    [Fact]
    public void A_note_of_the_rehearsal_is_no_refusal() =>
        Assert.True(new PlanPageState().Accepts(HandMade.Made(findings: [HandMade.Noted])));

    [Fact]
    public void A_stored_plan_that_did_not_pass_is_not_shown_either()
    {
        var state = new PlanPageState();

        state.Found(HandMade.Request, HandMade.Stored(HandMade.Made(findings: [HandMade.Broken])));

        Assert.Null(state.Shown);
        Assert.Equal([HandMade.Broken.Sentence], state.Refusals);
    }

    [Fact]
    public void A_plan_is_made_by_itself_only_when_there_is_none_and_there_is_wood_and_a_parts_list()
    {
        var state = new PlanPageState();
        state.Found(HandMade.Request, newest: null);
        Assert.True(state.ShouldMake);

        state.Found(HandMade.Request with { Boards = [] }, newest: null);
        Assert.False(state.ShouldMake);
        Assert.True(state.HasNoBoards);

        state.Found(HandMade.Request, HandMade.Stored(HandMade.Made()));
        Assert.False(state.ShouldMake);
    }

    [Fact]
    public void A_plan_that_could_not_be_stored_says_why()
    {
        var state = new PlanPageState();

        state.Take(Outcome<StoredPlan>.Refused(new FieldProblem("", "The course is archived.")));

        Assert.Equal("The course is archived.", state.Trouble);
    }

    [Fact]
    public void Wood_that_changed_while_the_plan_was_made_is_noticed() =>
        Assert.True(
            PlanPageState.IsOvertaken(
                Outcome<StoredPlan>.Refused(new FieldProblem("Request", "Changed since."))
            )
        );

    [Fact]
    public void The_next_plan_puts_first_what_the_plan_on_show_does()
    {
        PlanGoal[] goals = [.. PlanGoals.Usual.Reverse()];
        var state = new PlanPageState();
        state.Found(HandMade.Request, null);
        Assert.Equal(PlanGoals.Usual, state.RequestToMake!.Goals);

        var chosen = HandMade.Made() with { Request = HandMade.Request with { Goals = goals } };
        state.Found(HandMade.Request, HandMade.Stored(chosen));

        Assert.Equal(goals, state.RequestToMake!.Goals);
        Assert.Equal(PlanGoals.Usual, state.Request!.Goals);
    }
}
