using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Progress;
using ShopClass.Core.Remakes;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Core.Tests.Planning;
using ShopClass.Core.Tests.Sawing.Steps;

namespace ShopClass.Core.Tests.Remakes;

/// <summary>A remake's steps in the student's list, and mishaps to parts that were remade.</summary>
public class RemakeStepsTests
{
    private static readonly BlankKey Second = new("A", 2);

    [Theory]
    [InlineData("wall shelf", UnitSystem.Inch)]
    [InlineData("tool tote", UnitSystem.Inch)]
    [InlineData("planter", UnitSystem.Metric)]
    [InlineData("shelf with joints, surfaced pine", UnitSystem.Inch)]
    [InlineData("shelf with joints, rough birch", UnitSystem.Inch)]
    public void Whenever_a_part_is_spoiled_the_joined_list_can_be_worked_to_its_end(
        string project,
        UnitSystem unit
    )
    {
        var plan = Plan(project, unit);
        var first = WorkWriter.Write(plan, Hand.Right);
        var rack = plan.Request.Boards[0] with { Id = "rack 1", Name = "the long one" };
        foreach (var key in Blanks(plan))
        {
            foreach (var share in (int[])[0, 1, 2, 3, 4])
            {
                var done = first.Steps.Take(first.Steps.Count * share / 4).ToList();
                var cuts = done.Count(s => s.Cut is not null);
                var answer = Remaker.Options(
                    Mishaps.Now(plan, [], key, cuts),
                    new() { Rack = [rack], ClassSpares = [key.Part] }
                );
                foreach (var option in answer.Options)
                {
                    var made = new RemakeMade(1, key, cuts, option);
                    var ids = done.Select(s => s.Id).ToHashSet();
                    var joined = RemakeSteps.Join(first, [made], _ => ids);

                    Assert.Equal(
                        first.Steps.Select(s => (s.Id, s.Number)),
                        joined.Steps.Take(first.Steps.Count).Select(s => (s.Id, s.Number))
                    );
                    Assert.Equal(
                        Enumerable.Range(1, joined.Steps.Count),
                        joined.Steps.Select(s => s.Number)
                    );
                    Assert.Equal(
                        joined.Steps.Count,
                        joined.Steps.Select(s => s.Id).Distinct().Count()
                    );
                    WorkToTheEnd(joined, ids, $"{project} {key} {share} {option.Way}");
                }
            }
        }
    }

    [Fact]
    public void Sawing_that_lay_behind_the_mishap_does_not_wait_for_the_new_piece_though_nothing_was_ticked()
    {
        var plan = WorkCases.OnSurfacedPine;
        var first = WorkWriter.Write(plan, Hand.Right);
        var cuts = plan.Sequence.Cuts.Count;
        var option = Remaker.Options(Mishaps.Now(plan, [], Second, cuts), new()).Options[0];

        var joined = RemakeSteps.Join(
            first,
            [new(1, Second, cuts, option)],
            _ => new HashSet<string>()
        );

        var begin = first.Steps.Count;
        Assert.Contains(joined.Steps.Take(begin), s => s.After.Any(n => n > begin));
        Assert.All(
            joined.Steps.Take(begin).Where(s => s.Kind <= StepKind.Rip),
            s => Assert.DoesNotContain(s.After, n => n > begin)
        );
    }

    [Fact]
    public void What_was_done_to_the_joints_of_the_spoiled_part_is_done_again()
    {
        var plan = WorkCases.OnSurfacedPine;
        var first = WorkWriter.Write(plan, Hand.Right);
        var done = first.Steps.Select(s => s.Id).ToHashSet();
        var cuts = plan.Sequence.Cuts.Count;
        var option = Remaker
            .Options(
                Mishaps.Now(plan, [], Second, cuts),
                new() { Rack = [plan.Request.Boards[0] with { Id = "r", Name = "rack" }] }
            )
            .Options[0];

        var joined = RemakeSteps.Join(first, [new(1, Second, cuts, option)], _ => done);

        var added = joined.Steps.Skip(first.Steps.Count).ToList();
        Assert.Contains(first.Steps, s => s.Kind is StepKind.CutJoint && s.Pieces.Contains("A2"));
        foreach (
            var step in first.Steps.Where(s =>
                s.Kind is StepKind.MarkJoint or StepKind.CutJoint or StepKind.Fit
                && s.Pieces.Contains("A2")
            )
        )
            Assert.Single(added, s => s.Id == $"remake1/{step.Id}");
        Assert.DoesNotContain(
            added,
            s => s.Kind is StepKind.CutJoint && s.Pieces.All(p => p == "A1")
        );
        Assert.Contains(added, s => s.Kind is StepKind.CutToLength && s.Pieces.Contains("A2"));
        // The piece keeps the name that is written on it and its mates know it by.
        Assert.Equal("A1", option.Blanks[0].Here.ToString());
        Assert.All(
            added.Where(s => s.Kind is StepKind.SquareEnd or StepKind.CutToLength),
            s => Assert.Equal(["A2"], s.Pieces)
        );
    }

    [Fact]
    public void A_second_mishap_begins_with_the_pieces_of_the_remake()
    {
        var plan = Plan("wall shelf", UnitSystem.Inch);
        var cuts = plan.Sequence.Cuts.Count;
        var rack = plan.Request.Boards[0] with { Id = "rack 1", Name = "the long one" };
        var option = Remaker
            .Options(Mishaps.Now(plan, [], Second, cuts), new() { Rack = [rack] })
            .Options.First(o => o.Way is RemakeWay.Rack or RemakeWay.Offcut);
        RemakeMade[] made = [new(1, Second, cuts, option)];

        var again = Mishaps.Now(plan, made, Second, made[0].Plan!.Sequence.Cuts.Count);

        Assert.Same(made[0].Plan, again.Plan);
        Assert.Same(plan, again.First);
        var used = option.Plan!.Plan.Boards.Select(b => b.BoardId).ToHashSet();
        var free = new PiecesAtHand(again).Free;
        Assert.DoesNotContain(free, b => used.Contains(b.Id));
        // What the remake left of its own board lies on the bench now.
        Assert.Contains(
            free,
            b => used.Any(u => b.Id.StartsWith($"free {u} ", StringComparison.Ordinal))
        );
        var answer = Remaker.Options(again, new() { Rack = [rack] });
        Assert.All(answer.Options, o => Assert.True(o.Plan!.Rehearsal.Passed));
        Assert.Contains(answer.Options, o => o.Blanks.Any(b => b.InFirstPlan == Second));
    }

    [Fact]
    public void An_offcut_used_once_is_not_offered_for_another_part()
    {
        var plan = Plan("planter", UnitSystem.Metric);
        var cuts = plan.Sequence.Cuts.Count;
        var found = (
            from key in Blanks(plan)
            let option = Remaker
                .Options(Mishaps.Now(plan, [], key, cuts), new())
                .Options.FirstOrDefault(o => o.Way is RemakeWay.Offcut or RemakeWay.GluedUp)
            where option is not null
            select new RemakeMade(1, key, cuts, option)
        ).ToList();
        Assert.NotEmpty(found);
        foreach (var made in found)
        {
            var used = made.Option.Plan!.Plan.Boards.Select(b => b.BoardId).ToHashSet();
            foreach (var other in Blanks(plan).Where(b => !made.Makes(b)))
            {
                var pieces = new PiecesAtHand(Mishaps.Now(plan, [made], other, cuts));
                Assert.DoesNotContain(pieces.Free, b => used.Contains(b.Id));
                Assert.Equal(pieces.Free.Count, pieces.Free.Select(b => b.Id).Distinct().Count());
            }
        }
    }

    // Ticks whatever may be ticked until nothing may be any more: then everything must be done.
    private static void WorkToTheEnd(RemadeWork work, HashSet<string> done, string what)
    {
        var said = done.Concat(work.Settled)
            .Select(id => new StepAction(Guid.NewGuid(), id, StepActionKind.Tick))
            .ToList();
        while (WorkProgress.Of(work.Steps, said).Next is { } next)
            said.Add(new(Guid.NewGuid(), next.Step.Id, StepActionKind.Tick));
        var open = WorkProgress.Of(work.Steps, said).Steps.Where(s => !s.IsDone).ToList();
        Assert.True(open.Count == 0, $"{what}: {string.Join("; ", open.Select(o => o.Step.Id))}");
    }

    private static CheckedPlan Plan(string project, UnitSystem unit) =>
        project switch
        {
            "shelf with joints, surfaced pine" => WorkCases.OnSurfacedPine,
            "shelf with joints, rough birch" => WorkCases.OnRoughBirch,
            _ => CheckedPlan.Make(
                DemoProjects.Find(project, unit),
                null,
                TestContext.Current.CancellationToken
            ),
        };

    private static List<BlankKey> Blanks(CheckedPlan plan) =>
        [.. PiecesAtHand.Placed(plan.Plan).Select(b => b.Blank.Key)];
}
