using System.Text.Json;
using CsCheck;
using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Core.Tests.Lessons;

namespace ShopClass.Scheduling.Tests;

public class LessonImproverTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public void Every_improved_plan_passes_the_review_and_is_no_worse() =>
        MadeUp.Any.Sample(
            request =>
            {
                var rule = MadeUp.Plan(request);
                var better = LessonImprover.Improve(request, rule, progress: null, Cancel);
                Assert.Equal([], LessonReview.Findings(request, better));
                Assert.True(better.Score <= rule.Score, $"{rule.Score} became {better.Score}");
            },
            iter: 12
        );

    [Fact]
    public void The_same_class_gets_the_same_plan_to_the_byte()
    {
        var asked = MadeUp.Class(4, 6, 60, new(1, 2, 2, 1));

        Assert.Equal(Written(asked), Written(asked));
    }

    [Fact]
    public void More_gets_done_in_a_tight_course_than_by_the_rule()
    {
        var asked = MadeUp.Class(12, 8, 60, new(4, 6, 6, 2));
        var rule = MadeUp.Plan(asked);

        var better = LessonImprover.Improve(asked, rule, progress: null, Cancel);

        Assert.True(better.Score < rule.Score, $"{rule.Score} became {better.Score}");
    }

    [Fact]
    public void Two_students_and_one_saw_bench_the_short_job_goes_first()
    {
        // By hand: 12 minutes of demonstration, then 5 before 20 waits 5 in all; 20 before 5 waits 20.
        var asked = new LessonRequest
        {
            Shop = new(1, 1, 1, 1),
            Lessons = [MadeUp.Evening(0, 60, Skill.Ripping)],
            Students =
            [
                MadeUp.Student("Ann", MadeUp.Step(1, 20, Station.SawBench, Skill.Ripping)),
                MadeUp.Student("Bo", MadeUp.Step(1, 5, Station.SawBench, Skill.Ripping)),
            ],
        };

        var plan = LessonImprover.Plan(asked, progress: null, Cancel);

        Assert.Equal(new LessonScore(0, 5, 20), plan.Score);
    }

    [Fact]
    public void Progress_goes_up_to_a_hundred()
    {
        var heard = new List<int>();

        LessonImprover.Plan(MadeUp.Class(3, 4, 60, new(1, 1, 1, 1)), new Listener(heard), Cancel);

        Assert.Equal(heard.Order(), heard);
        Assert.InRange(heard[^1], 40, 100);
    }

    private static string Written(LessonRequest request) =>
        JsonSerializer.Serialize(LessonImprover.Plan(request, progress: null, Cancel));

    private sealed class Listener(List<int> heard) : IProgress<int>
    {
        public void Report(int value) => heard.Add(value);
    }
}
