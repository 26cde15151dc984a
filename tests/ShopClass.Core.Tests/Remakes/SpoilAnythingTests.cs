using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Remakes;
using ShopClass.Core.Tests.Planning;

namespace ShopClass.Core.Tests.Remakes;

/// <summary>Every part of every demo project is spoiled after every cut: what is offered is legal, what is not is said why.</summary>
public class SpoilAnythingTests
{
    [Theory]
    [InlineData("bench hook", UnitSystem.Inch)]
    [InlineData("tool tote", UnitSystem.Inch)]
    [InlineData("wall shelf", UnitSystem.Metric)]
    [InlineData("planter", UnitSystem.Metric)]
    [InlineData("peg rail", UnitSystem.Inch)]
    public void Whatever_is_spoiled_whenever_is_had_again_by_the_rehearsal_or_said_why_not(
        string project,
        UnitSystem unit
    )
    {
        var plan = CheckedPlan.Make(
            DemoProjects.Find(project, unit),
            null,
            TestContext.Current.CancellationToken
        );
        var rack = plan.Request.Boards[0] with { Id = "rack 1", Name = "the long one" };
        for (var cuts = 0; cuts <= plan.Sequence.Cuts.Count; cuts++)
        {
            foreach (var (_, _, blank) in PiecesAtHand.Placed(plan.Plan))
            {
                var mishap = new Mishap
                {
                    Plan = plan,
                    CutsMade = cuts,
                    Spoiled = blank.Key,
                };
                var answer = Remaker.Options(mishap, new() { Rack = [rack] });

                Assert.All(answer.Options, o => IsLegal(o, blank.Key));
                Assert.All(answer.WhyNot, c => Assert.EndsWith(".", c.Sentence));
                Assert.Equal(
                    [
                        RemakeWay.Offcut,
                        RemakeWay.GluedUp,
                        RemakeWay.LaidOutAgain,
                        RemakeWay.Rack,
                        RemakeWay.ClassSpare,
                        RemakeWay.NewBoard,
                    ],
                    answer
                        .Options.Select(o => o.Way)
                        .Concat(answer.WhyNot.Select(c => c.Way))
                        .Where(w => w is not RemakeWay.SmallerDesign)
                        .Order()
                );
            }
        }
    }

    [Fact]
    public void The_same_mishap_has_the_same_answer()
    {
        var plan = CheckedPlan.Make(
            DemoProjects.Find("planter", UnitSystem.Inch),
            null,
            TestContext.Current.CancellationToken
        );
        var mishap = new Mishap
        {
            Plan = plan,
            CutsMade = 4,
            Spoiled = new("C", 2),
        };

        string Answer() =>
            string.Join(
                "|",
                Remaker.Options(mishap, new()).Options.Select(o => $"{o.Way} {o.Sentence}")
            );

        Assert.Equal(Answer(), Answer());
    }

    private static void IsLegal(RemakeOption option, BlankKey spoiled)
    {
        if (option.Way is RemakeWay.ClassSpare)
            return;
        var plan = option.Plan!;
        Assert.True(plan.Rehearsal.Passed, option.Sentence);
        Assert.True(plan.Plan.IsComplete, option.Sentence);
        Assert.Contains(option.Blanks, b => b.InFirstPlan == spoiled);
        // A blank of the remake that is glued up is placed strip by strip.
        Assert.Equal(
            option.Blanks.Select(b => b.Here).Order(),
            PiecesAtHand
                .Placed(plan.Plan)
                .Select(b => b.Blank.Key with { Strip = 0 })
                .Distinct()
                .Order()
        );
    }
}
