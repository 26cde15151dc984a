using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing.Steps;
using Xunit;

namespace ShopClass.Core.Tests.Lessons;

public class LessonPlannerTests
{
    private static readonly StationCounts Roomy = new(9, 9, 9, 9);

    [Fact]
    public void Twelve_students_finish_a_shelf_in_eight_evenings_with_four_saw_benches()
    {
        var asked = MadeUp.Class(12, 8, 120, new(4, 6, 6, 2));
        var plan = MadeUp.Plan(asked);
        Assert.True(plan.Score.EverybodyFinishes, plan.Score.ToString());
        Assert.Equal([], LessonReview.Findings(asked, plan));
    }

    [Fact]
    public void One_saw_bench_is_used_by_one_student_at_a_time()
    {
        var saw = MadeUp.Step(1, 20, Station.SawBench, Skill.Ripping);
        var plan = MadeUp.Plan(
            Asked(
                new(1, 1, 1, 1),
                [MadeUp.Evening(0, 60)],
                MadeUp.Student("Ann", saw),
                MadeUp.Student("Bo", saw)
            )
        );
        Assert.Equal([12, 32], plan.Lessons[0].Turns.Select(t => t.Start));
        Assert.Equal(20, plan.Score.Spread);
        Assert.Equal(20, plan.Score.Waiting);
    }

    [Fact]
    public void What_the_instructor_shows_later_is_not_used_earlier()
    {
        var plan = MadeUp.Plan(
            Asked(
                Roomy,
                [MadeUp.Evening(0), MadeUp.Evening(1, 120, Skill.Ripping)],
                MadeUp.Student("Ann", MadeUp.Step(1, 20, Station.SawBench, Skill.Ripping))
            )
        );
        Assert.Empty(plan.Lessons[0].Turns);
        Assert.Single(plan.Lessons[1].Turns);
    }

    [Fact]
    public void Who_was_absent_is_shown_it_again_before_doing_it()
    {
        var saw = MadeUp.Step(1, 20, Station.SawBench, Skill.Ripping);
        var plan = MadeUp.Plan(
            Asked(
                Roomy,
                [
                    MadeUp.Evening(0, 60, Skill.Ripping) with
                    {
                        Absent = ["Bo"],
                    },
                    MadeUp.Evening(1, 60),
                ],
                MadeUp.Student("Ann", saw),
                MadeUp.Student("Bo", saw)
            )
        );
        Assert.Equal(
            new Showing(Skill.Ripping, 0, 12, "Bo"),
            Assert.Single(plan.Lessons[1].Showings)
        );
        Assert.True(plan.Score.EverybodyFinishes);
    }

    [Fact]
    public void Glue_dries_within_a_lesson_where_there_is_time_and_over_the_week_where_not()
    {
        Step[] glued =
        [
            MadeUp.Step(1, 5, Station.Gluing, Skill.EdgeGluing, 60, StepKind.GlueUp),
            MadeUp.Step(2, 5, after: 1),
        ];
        var asked = Asked(
            Roomy,
            [MadeUp.Evening(0, 120), MadeUp.Evening(1, 60)],
            MadeUp.Student("Ann", glued)
        );
        var within = MadeUp.Plan(asked);
        Assert.Equal(2, within.Lessons[0].Turns.Count);
        var over = MadeUp.Plan(
            asked with
            {
                Lessons = [MadeUp.Evening(0, 60), MadeUp.Evening(1, 60)],
            }
        );
        Assert.Single(over.Lessons[1].Turns);
        Assert.True(over.Score.EverybodyFinishes);
    }

    [Fact]
    public void A_long_rip_is_cut_into_shares_and_a_glue_up_is_not()
    {
        var turns = TurnMaker.Of([
            MadeUp.Student(
                "Ann",
                MadeUp.Step(1, 50, Station.SawBench, Skill.Ripping, kind: StepKind.Rip),
                MadeUp.Step(
                    2,
                    50,
                    Station.Gluing,
                    Skill.EdgeGluing,
                    kind: StepKind.GlueUp,
                    after: 1
                )
            ),
        ]);
        Assert.Equal([17, 17, 17, 50], turns.Select(t => t.Turn.Minutes));
        Assert.Equal(
            [
                [],
                [0],
                [1],
                [2],
            ],
            turns.Select(t => t.After)
        );
    }

    [Fact]
    public void A_cut_is_practised_just_before_it_is_needed_and_not_weeks_ahead()
    {
        var turns = TurnMaker.Of([
            MadeUp.Student(
                "Ann",
                MadeUp.Step(1, 5),
                MadeUp.Step(2, 9, Station.Vise, Skill.Planing, after: 1),
                MadeUp.Step(3, 8, Station.Vise, Skill.Joinery, kind: StepKind.Practise),
                MadeUp.Step(4, 2, Station.BenchTop, Skill.Gauging, kind: StepKind.SetGauge),
                MadeUp.Step(5, 9, Station.Vise, Skill.Joinery, 0, StepKind.CutJoint, 2, 3, 4)
            ),
        ]);

        // By hand: the practice waits for the planing that the real joint waits for; so does the gauge, and the practice.
        Assert.Equal(
            [
                [],
                [0],
                [1],
                [1, 2],
                [1, 2, 3],
            ],
            turns.Select(t => t.After)
        );
    }

    [Fact]
    public void Without_a_saw_bench_the_sawing_falls_off_and_the_rest_is_planned()
    {
        var asked = Asked(
            new(0, 1, 1, 1),
            [MadeUp.Evening(0)],
            MadeUp.Student(
                "Ann",
                MadeUp.Step(1, 5),
                MadeUp.Step(2, 9, Station.SawBench, Skill.Ripping, after: 1)
            ),
            new StudentWork("Bo", "Bo", "", null, "Bo has no board yet.")
        );
        var plan = MadeUp.Plan(asked);
        Assert.Equal(9, plan.Score.Left);
        Assert.Equal(9, plan.LeastLeft);
        Assert.Single(plan.Lessons[0].Turns);
        Assert.Equal(
            [
                "Bo has no board yet.",
                "There is no saw bench in the shop, and 1 step is done at one. They and what follows them fall off the end.",
            ],
            LessonChecks.Obstacles(asked)
        );
    }

    [Theory]
    [InlineData(0, "A lesson has from 10 to 600 minutes; this one has 0.")]
    [InlineData(601, "A lesson has from 10 to 600 minutes; this one has 601.")]
    public void A_lesson_of_no_minutes_is_a_sentence_at_its_field(int minutes, string sentence) =>
        Assert.Equal(
            [(nameof(Lesson.Minutes), sentence)],
            LessonChecks.ProblemsIn(MadeUp.Evening(0, minutes))
        );

    [Fact]
    public void No_lessons_and_no_students_is_an_empty_plan()
    {
        var asked = Asked(Roomy, []);
        Assert.Empty(MadeUp.Plan(asked).Lessons);
        Assert.Equal(["There are no lessons yet. Add the first."], LessonChecks.Obstacles(asked));
    }

    private static LessonRequest Asked(
        StationCounts shop,
        IReadOnlyList<Lesson> lessons,
        params StudentWork[] students
    ) =>
        new()
        {
            Shop = shop,
            Lessons = lessons,
            Students = students,
        };
}
