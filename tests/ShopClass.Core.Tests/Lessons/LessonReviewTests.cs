using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing.Steps;
using Xunit;

namespace ShopClass.Core.Tests.Lessons;

/// <summary>A good plan, and one thing wrong with it at a time: the review must say which.</summary>
public class LessonReviewTests
{
    private static readonly LessonRequest Asked = new()
    {
        Shop = new(1, 1, 1, 1),
        Lessons =
        [
            MadeUp.Evening(0, 60, Skill.Crosscutting),
            MadeUp.Evening(1, 60) with
            {
                Absent = ["Ann"],
            },
        ],
        Students =
        [
            MadeUp.Student(
                "Ann",
                MadeUp.Step(1, 5, Station.SawBench, Skill.Crosscutting, kind: StepKind.Practise),
                MadeUp.Step(2, 5, Station.SawBench, Skill.Crosscutting, 30, StepKind.Crosscut, 1)
            ),
            MadeUp.Student("Bo", MadeUp.Step(1, 10, Station.SawBench, Skill.Crosscutting)),
        ],
    };

    private static readonly LessonPlan Good = MadeUp.Plan(Asked);

    [Fact]
    public void The_plan_is_good_to_begin_with() =>
        Assert.Equal([], LessonReview.Findings(Asked, Good));

    public static TheoryData<string, Func<LessonProgram, LessonProgram>> Spoiled { get; } =
        new()
        {
            { "outside", p => Each(p, "Bo", t => t with { Start = 55 }) },
            { "two things at once", p => Each(p, "Ann", t => t with { Start = 12 }) },
            { "share Saw bench 1", p => Each(p, "Bo", t => t with { Start = 12 }) },
            { "has no place", p => Each(p, "Bo", t => t with { Place = 2 }) },
            { "has no place", p => Each(p, "Bo", t => t with { Place = null }) },
            { "without having seen", p => p with { Showings = [] } },
            { "is not shown", p => p with { Showings = [] } },
            { "too briefly", p => p with { Showings = [p.Showings[0] with { Minutes = 3 }] } },
            { "overlap", p => p with { Showings = [p.Showings[0], p.Showings[0]] } },
            {
                "in the plan 0 times",
                p => p with { Turns = [.. p.Turns.Where(t => t.Turn.StudentId != "Bo")] }
            },
            {
                "in the plan 2 times",
                p => p with { Turns = [.. p.Turns, p.Turns[^1] with { Start = 50 }] }
            },
            {
                "gets 1 minutes",
                p => Each(p, "Bo", t => t with { Turn = t.Turn with { Minutes = 1 } })
            },
            {
                "not done where",
                p => Each(p, "Bo", t => t with { Turn = t.Turn with { Station = Station.Vise } })
            },
            {
                "does not exist",
                p => Each(p, "Bo", t => t with { Turn = t.Turn with { Steps = [1, 2] } })
            },
            { "the real cut comes first", Swapped },
            { "begins before step 1 is done", Swapped },
        };

    [Theory]
    [MemberData(nameof(Spoiled))]
    public void A_spoiled_plan_is_found_out(
        string finding,
        Func<LessonProgram, LessonProgram> spoil
    ) =>
        Assert.Contains(
            LessonReview.Findings(
                Asked,
                Good with
                {
                    Lessons = [spoil(Good.Lessons[0]), Good.Lessons[1]],
                }
            ),
            f => f.Contains(finding, StringComparison.Ordinal)
        );

    [Fact]
    public void A_turn_in_a_lesson_the_student_misses_is_found_out()
    {
        var moved = Good.Lessons[0].Turns.Where(t => t.Turn.StudentId == "Ann").ToList();
        var plan = Good with
        {
            Lessons =
            [
                Good.Lessons[0] with
                {
                    Turns = [.. Good.Lessons[0].Turns.Where(t => t.Turn.StudentId == "Bo")],
                },
                new([], moved),
            ],
        };
        Assert.Contains(
            "Ann is absent from lesson 2 and has a turn.",
            LessonReview.Findings(Asked, plan)
        );
    }

    [Fact]
    public void Glue_that_is_touched_too_soon_is_found_out()
    {
        var asked = Asked with
        {
            Students =
            [
                MadeUp.Student(
                    "Cy",
                    MadeUp.Step(1, 5, Station.Gluing, Skill.EdgeGluing, 60, StepKind.GlueUp),
                    MadeUp.Step(2, 5, after: 1)
                ),
            ],
        };
        var plan = MadeUp.Plan(asked);
        Assert.Equal([], LessonReview.Findings(asked, plan));
        // The second step waits for the next evening; pulled into the first it comes too soon.
        var early = plan.Lessons[1].Turns.Single() with
        {
            Start = 50,
        };
        var spoiled = plan with
        {
            Lessons =
            [
                plan.Lessons[0] with
                {
                    Turns = [.. plan.Lessons[0].Turns, early],
                },
                plan.Lessons[1] with
                {
                    Turns = [],
                },
            ],
        };
        Assert.Contains(
            LessonReview.Findings(asked, spoiled),
            f => f.Contains("left alone", StringComparison.Ordinal)
        );
    }

    private static LessonProgram Each(
        LessonProgram program,
        string student,
        Func<PlacedTurn, PlacedTurn> change
    ) =>
        program with
        {
            Turns = [.. program.Turns.Select(t => t.Turn.StudentId == student ? change(t) : t)],
        };

    private static LessonProgram Swapped(LessonProgram program)
    {
        var own = program.Turns.Where(t => t.Turn.StudentId == "Ann").ToList();
        return program with
        {
            Turns =
            [
                .. program.Turns.Where(t => t.Turn.StudentId != "Ann"),
                own[0] with
                {
                    Start = own[1].Start,
                },
                own[1] with
                {
                    Start = own[0].Start,
                },
            ],
        };
    }
}
