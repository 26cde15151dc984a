using System.Text.Json;
using CsCheck;
using ShopClass.Core.Lessons;
using Xunit;

namespace ShopClass.Core.Tests.Lessons;

/// <summary>Laws over random classes. A failure prints the seed that repeats it.</summary>
public class LessonLaws
{
    private const int Runs = 400;

    [Fact]
    public void Every_plan_of_lessons_passes_the_review() =>
        MadeUp.Any.Sample(
            request => Assert.Equal([], LessonReview.Findings(request, MadeUp.Plan(request))),
            iter: Runs
        );

    [Fact]
    public void No_plan_leaves_less_than_the_bound() =>
        MadeUp.Any.Sample(
            request =>
            {
                var plan = MadeUp.Plan(request);
                Assert.True(
                    plan.Score.Left >= plan.LeastLeft,
                    $"{plan.Score.Left} < {plan.LeastLeft}"
                );
            },
            iter: Runs
        );

    [Fact]
    public void The_same_class_gets_the_same_plan_to_the_byte() =>
        MadeUp.Any.Sample(request => Assert.Equal(Written(request), Written(request)), iter: 60);

    [Fact]
    public void What_is_placed_and_what_is_left_is_all_the_work() =>
        MadeUp.Any.Sample(
            request =>
            {
                var plan = MadeUp.Plan(request);
                var placed = plan.Lessons.SelectMany(l => l.Turns).Sum(t => t.Turn.Minutes);
                var all = TurnMaker.Of(request.Students).Sum(t => t.Turn.Minutes);
                Assert.Equal(all, placed + plan.Score.Left);
            },
            iter: 100
        );

    private static string Written(LessonRequest request) =>
        JsonSerializer.Serialize(MadeUp.Plan(request));
}
