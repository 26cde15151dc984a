using CsCheck;
using ShopClass.Core.Measure;
using ShopClass.Core.Paces;
using ShopClass.Core.Planning;
using ShopClass.Core.Progress;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Core.Tests.Planning;
using Xunit;

namespace ShopClass.Core.Tests.Paces;

/// <summary>Three timed cuts start a student's pace. The numbers three and six are our proposal.</summary>
public sealed class FirstCutsTests
{
    private static readonly IReadOnlyList<Step> Work = WorkWriter
        .Write(CheckedPlan.Make(DemoProjects.Find("wall shelf", UnitSystem.Inch)), Hand.Right)
        .Steps;

    private static readonly Step[] Cuts =
    [
        .. Work.Where(s => s.Saw is not null && s.Time.Busy > 0 && s.Kind is not StepKind.Practise),
    ];

    [Fact]
    public void The_first_three_cuts_are_asked_for_from_the_beginning_in_their_order()
    {
        Assert.True(Cuts.Length > FirstCuts.LastAsked);

        Assert.Equal(Cuts.Take(3).Select((c, i) => (c.Id, i + 1)), Asked(After([])));
    }

    [Fact]
    public void Three_timed_cuts_are_enough()
    {
        var two = After([(Cuts[0], 9), (Cuts[1], 4)]);
        Assert.Equal([(Cuts[2].Id, 3)], Asked(two));
        Assert.Equal(new(2, 2), FirstCuts.Of(two));

        var three = After([(Cuts[0], 9), (Cuts[1], 4), (Cuts[2], 6)]);
        Assert.Empty(Asked(three));
        Assert.True(FirstCuts.Of(three).AreTimed);
    }

    [Fact]
    public void Who_forgets_the_clock_is_asked_at_the_next_cuts_and_after_six_no_more()
    {
        Assert.Equal(
            [(Cuts[1].Id, 1), (Cuts[2].Id, 2), (Cuts[3].Id, 3)],
            Asked(After([(Cuts[0], null)]))
        );
        // Five done without a time: one more is asked for, and then it is over.
        Assert.Equal(
            [(Cuts[5].Id, 1)],
            Asked(After([.. Cuts.Take(5).Select(c => (c, (int?)null))]))
        );
        Assert.Empty(Asked(After([.. Cuts.Take(6).Select(c => (c, (int?)null))])));
    }

    [Fact]
    public void Never_more_than_three_are_asked_for_and_none_that_is_done() =>
        Gen.Select(Gen.Int[0, Cuts.Length - 1], Gen.Int[0, 20])
            .List[0, 12]
            .Sample(said =>
            {
                var done = said.DistinctBy(s => s.Item1)
                    .Select(s => (Cuts[s.Item1], s.Item2 == 0 ? (int?)null : s.Item2))
                    .ToList();
                var progress = After(done);
                var asked = Asked(progress);

                var timed = done.Count(d => d.Item2 is not null);
                Assert.True(asked.Count <= Math.Max(0, FirstCuts.Wanted - timed));
                Assert.All(asked, a => Assert.False(progress.Find(a.Id)!.IsDone));
                // The numbers go on from what was timed.
                Assert.Equal(Enumerable.Range(timed + 1, asked.Count), asked.Select(a => a.Number));
            });

    private static IReadOnlyList<(string Id, int Number)> Asked(WorkProgress progress) =>
        [
            .. from step in Work
            let number = FirstCuts.NumberOf(progress, step)
            where number is not null
            select (step.Id, number.Value),
        ];

    private static WorkProgress After(IReadOnlyList<(Step Step, int? Minutes)> done) =>
        WorkProgress.Of(
            Work,
            done.Select(d => new StepAction(Guid.NewGuid(), d.Step.Id, StepActionKind.Tick)
            {
                Minutes = d.Minutes,
            })
        );
}
