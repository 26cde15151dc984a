using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Tests.Sawing.Steps;

/// <summary>Open dimensions that wait for an event chosen among the project's own (common practice for each of them).</summary>
public class OpenEventTests
{
    private static readonly OpenEvent SidesAndShelves = new(OpenEventKind.JointFitted, "A", "B");

    [Fact]
    public void A_project_offers_its_glue_ups_its_joints_and_its_assembly()
    {
        var shelf = WorkCases.Shelf;
        Part[] others = [shelf.Parts[0] with { GlueUpAllowed = true }, shelf.Parts[1]];
        Assert.Equal(
            [
                "A is glued up",
                "B is glued up",
                "B is fitted to A",
                "everything is fitted dry",
                "the rest stands",
                "everything is put together",
            ],
            OpenEventList.Of(others, shelf.Joints, "C").Select(e => e.Words)
        );
        // Without the part that enters, its joint is no event.
        Assert.DoesNotContain(SidesAndShelves, OpenEventList.Of([others[0]], shelf.Joints, "C"));
    }

    [Fact]
    public void A_joint_that_was_chosen_is_waited_for_and_the_dry_fit_is_not()
    {
        var steps = Work(new(OpenEventKind.JointFitted, "A", "B")).Steps;
        var fit = steps.Single(s => s.Id == "fit:dado:A-B");
        var taken = steps.Single(s => s.Id == "take:length:C");
        var dry = steps.Single(s => s.Id == "dryfit");
        Assert.Contains(fit.Number, taken.After);
        Assert.True(taken.Number < dry.Number);
        // The dry fit then has every piece in it.
        Assert.Contains("C1", dry.Pieces);
        Assert.True(
            Work(new(OpenEventKind.DryFit)).Steps.Single(s => s.Id == "take:length:C").Number
                > Work(new(OpenEventKind.DryFit)).Steps.Single(s => s.Id == "dryfit").Number
        );
    }

    [Fact]
    public void The_rest_stands_and_put_together_wait_for_their_assembly()
    {
        var stands = Work(new(OpenEventKind.RestStands)).Steps;
        Assert.True(Number(stands, "assemble") < Number(stands, "take:length:C"));
        Assert.True(Number(stands, "take:length:C") < Number(stands, "assemble:rest"));
        var together = Work(new(OpenEventKind.Together)).Steps;
        Assert.True(Number(together, "assemble") < Number(together, "close:length:C1"));
    }

    [Fact]
    public void A_glue_up_that_was_chosen_is_waited_for()
    {
        var plan = Narrow(new(OpenEventKind.GluedUp, "A"));
        var work = WorkWriter.Write(plan, Hand.Right);
        Assert.Equal([], StepRehearsal.Replay(plan, work).Findings);
        var taken = work.Steps.Single(s => s.Id == "take:length:C");
        Assert.Equal(
            work.Steps.Where(s => s.Id.StartsWith("glue:A", StringComparison.Ordinal))
                .Select(s => s.Number),
            taken.After.Where(n => work.Steps[n - 1].Kind is StepKind.GlueUp)
        );
    }

    [Theory]
    [InlineData("take:length:C")]
    [InlineData("close:length:C1")]
    public void The_rehearsal_finds_a_dimension_closed_before_the_event_that_was_chosen(string id)
    {
        var plan = Plan(SidesAndShelves);
        var work = WorkWriter.Write(plan, Hand.Right);
        Assert.Equal([], StepRehearsal.Replay(plan, work).Findings);
        var length = Number(work.Steps, "length:C1");
        var early = work with
        {
            Steps = [.. work.Steps.Select(s => s.Id == id ? s with { After = [length] } : s)],
        };
        Assert.Contains(
            "OpenDimensionsMustWaitForTheirEvent",
            StepRehearsal.Replay(plan, early).Findings.Select(f => f.Rule)
        );
    }

    [Fact]
    public void An_event_that_does_not_happen_any_more_waits_for_all_that_is_fitted()
    {
        var plan = Plan(new(OpenEventKind.JointFitted, "B", "C"));
        var work = WorkWriter.Write(plan, Hand.Right);
        Assert.Equal([], StepRehearsal.Replay(plan, work).Findings);
        Assert.Contains(
            Number(work.Steps, "fit:dado:A-B"),
            work.Steps.Single(s => s.Id == "take:length:C").After
        );
        Assert.Contains(
            "No joint of B and C",
            OpenEventList.Gone(PartDimension.Length, new(OpenEventKind.JointFitted, "B", "C")),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Parts_that_each_hold_a_joint_of_the_other_are_fitted_when_both_joints_are()
    {
        var request = WorkCases.OnSurfacedPine.Request;
        var notch = new Joint
        {
            Kind = JointKind.Notch,
            Part = "B",
            Mate = "A",
            Depth = Length.FromInches(0, 1, 4),
            Width = Length.FromInches(0, 3, 4),
        };
        var plan = CheckedPlan.Make(
            request with
            {
                Project = Waiting(
                    request.Project with
                    {
                        Joints = [.. request.Project.Joints, notch],
                    },
                    SidesAndShelves
                ),
            },
            cancel: TestContext.Current.CancellationToken
        );
        var work = WorkWriter.Write(plan, Hand.Right);
        Assert.DoesNotContain(
            "OpenDimensionsMustWaitForTheirEvent",
            StepRehearsal.Replay(plan, work).Findings.Select(f => f.Rule)
        );
        var taken = work.Steps.Single(s => s.Id == "take:length:C");
        Assert.Contains(Number(work.Steps, "fit:dado:A-B"), taken.After);
        Assert.Contains(Number(work.Steps, "fit:notch:B-A"), taken.After);
    }

    [Fact]
    public void An_event_follows_its_parts_to_their_new_letters()
    {
        var open = new OpenDimension(
            PartDimension.Length,
            Length.FromInches(1),
            SidesAndShelves.Words
        )
        {
            Event = SidesAndShelves,
            TakenFrom = "B",
        };
        var followed = open.Follow("B", "F");
        Assert.Equal(
            ("F", "F", "F is fitted to A"),
            (followed.TakenFrom, followed.Event!.Mate, followed.Until)
        );
        Assert.Equal(open, open.Follow("Q", "F"));
    }

    private static int Number(IReadOnlyList<Step> steps, string id) =>
        steps.Single(s => s.Id == id).Number;

    private static WorkSequence Work(OpenEvent chosen)
    {
        var plan = Plan(chosen);
        var work = WorkWriter.Write(plan, Hand.Right);
        Assert.Equal([], StepRehearsal.Replay(plan, work).Findings);
        return work;
    }

    private static CheckedPlan Plan(OpenEvent chosen) =>
        CheckedPlan.Make(
            WorkCases.OnSurfacedPine.Request with
            {
                Project = Waiting(WorkCases.OnSurfacedPine.Request.Project, chosen),
            },
            cancel: TestContext.Current.CancellationToken
        );

    private static CheckedPlan Narrow(OpenEvent chosen) =>
        CheckedPlan.Make(
            WorkCases.OnNarrowPine.Request with
            {
                Project = Waiting(WorkCases.OnNarrowPine.Request.Project, chosen),
            },
            cancel: TestContext.Current.CancellationToken
        );

    /// <summary>The rail's length waits for this event instead of for words.</summary>
    private static Project Waiting(Project project, OpenEvent chosen) =>
        project with
        {
            Parts =
            [
                .. project.Parts.Select(p =>
                    p.Letter == "C"
                        ? p with
                        {
                            Open =
                            [
                                .. p.Open.Select(o =>
                                    o with
                                    {
                                        Event = chosen,
                                        Until = chosen.Words,
                                    }
                                ),
                            ],
                        }
                        : p
                ),
            ],
        };
}
