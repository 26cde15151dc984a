using CsCheck;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Tests.Sawing.Steps;

/// <summary>The writer and the rehearsal of the steps were written apart; here they have to agree.</summary>
public class WorkLaws
{
    [Fact]
    public void The_rehearsal_agrees_to_every_sequence() => Agrees(120);

    /// <summary>The whole law of ten thousand; takes minutes, so it runs when asked for.</summary>
    [Fact(Explicit = true)]
    public void The_rehearsal_agrees_to_ten_thousand_sequences() => Agrees(10_000);

    private static void Agrees(int times) =>
        RandomWork.Any.Sample(
            request =>
            {
                var plan = CheckedPlan.Make(request with { StepLimit = 200 });
                var work = WorkWriter.Write(plan, Hand.Right);
                Assert.Equal([], StepRehearsal.Replay(plan, work).Findings);
                var left = Mirror.Of(work);
                Assert.Equal([], StepRehearsal.Replay(plan, left).Findings);
                Assert.Equal(Shown(work), Shown(Mirror.Of(left)));
            },
            iter: times,
            print: r =>
                string.Join(
                    '\n',
                    r.Project.Parts.Select(p => $"{p} {string.Join(",", p.Open)}")
                        .Concat(r.Project.Joints.Select(j => j.ToString()))
                        .Concat(r.Boards.Select(b => b.ToString()))
                )
        );

    private static IEnumerable<(string, Side?)> Shown(WorkSequence work) =>
        work.Steps.Select(s => (s.Hold, s.WasteSide));
}
