using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing.Steps;
using Xunit;

namespace ShopClass.Core.Tests.Lessons;

public class RemedyTests
{
    // One saw bench, half an hour, two students of 17 minutes each after a demonstration of 12: one does not fit.
    private static readonly LessonRequest Tight = new()
    {
        Shop = new(1, 1, 1, 1),
        Lessons = [MadeUp.Evening(0, 30, Skill.Ripping)],
        Students =
        [
            MadeUp.Student(
                "Ann",
                MadeUp.Step(1, 17, Station.SawBench, Skill.Ripping, kind: StepKind.Rip)
            ),
            MadeUp.Student(
                "Bo",
                MadeUp.Step(1, 17, Station.SawBench, Skill.Ripping, kind: StepKind.Rip)
            ),
        ],
    };

    [Fact]
    public void What_falls_off_comes_back_by_longer_lessons_another_bench_or_sawn_blanks()
    {
        var remedies = Remedies.For(
            Tight,
            MadeUp.Plan(Tight),
            TestContext.Current.CancellationToken
        );

        Assert.Equal(
            [
                "Blanks crosscut and ripped beforehand: everybody finishes; it brings back 17 minutes.",
                "Each lesson 20 minutes longer: everybody finishes; it brings back 17 minutes.",
                "One more lesson like the last: everybody finishes; it brings back 17 minutes.",
                "One more saw bench: everybody finishes; it brings back 17 minutes.",
            ],
            remedies.Select(r => r.Sentence).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void Where_all_fits_another_bench_is_counted_in_minutes_of_waiting()
    {
        var roomy = Tight with { Lessons = [MadeUp.Evening(0, 60, Skill.Ripping)] };

        var remedies = Remedies.For(
            roomy,
            MadeUp.Plan(roomy),
            TestContext.Current.CancellationToken
        );

        Assert.Contains(
            "One more saw bench: 17 minutes less waiting, over all students.",
            remedies.Select(r => r.Sentence)
        );
    }

    [Fact]
    public void Steps_done_before_the_course_pass_on_what_they_waited_for()
    {
        var turns = TurnMaker.Of(
            [
                MadeUp.Student(
                    "Ann",
                    MadeUp.Step(1, 5),
                    MadeUp.Step(
                        2,
                        9,
                        Station.SawBench,
                        Skill.Ripping,
                        kind: StepKind.Rip,
                        after: 1
                    ),
                    MadeUp.Step(3, 5, Station.BenchHook, Skill.FineCrosscutting, after: 2)
                ),
            ],
            s => s.Kind is StepKind.Rip
        );

        Assert.Equal(
            [
                [1],
                [3],
            ],
            turns.Select(t => t.Turn.Steps)
        );
        Assert.Equal([0], turns[1].After);
    }
}
