using CsCheck;
using ShopClass.Core.Lessons;
using ShopClass.Core.Paces;
using ShopClass.Core.Progress;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;
using Xunit;

namespace ShopClass.Core.Tests.Lessons;

public class PlanStandingTests
{
    private static readonly LessonRequest Asked = MadeUp.Class(4, 8, 120, new(4, 6, 6, 2));

    private static readonly LessonPlan Plan = MadeUp.Plan(Asked);

    [Fact]
    public void Whoever_did_what_was_planned_is_neither_behind_nor_ahead()
    {
        foreach (var student in Asked.Students)
        {
            var by = PlannedUntil(student, 2);
            var standing = Stand(student, by, 3)!;

            Assert.Equal((0, 0), (standing.Behind, standing.Ahead));
            Assert.Equal(0, standing.TodayDone);
        }
    }

    [Fact]
    public void Whoever_missed_a_lesson_is_behind_by_its_minutes()
    {
        var student = Asked.Students[0];
        var standing = Stand(student, PlannedUntil(student, 0), 2)!;
        var missed = PlannedUntil(student, 1).Except(PlannedUntil(student, 0)).ToList();

        Assert.Equal(missed, standing.Overdue.Select(s => s.Id));
        Assert.Equal(
            (missed.Sum(id => student.Work!.Steps.Single(s => s.Id == id).Time.Busy) + 59) / 60,
            standing.Behind
        );
    }

    [Fact]
    public void Whoever_has_done_next_week_s_steps_is_ahead()
    {
        var student = Asked.Students[1];
        var standing = Stand(student, PlannedUntil(student, 1), 0)!;

        Assert.Equal(
            PlannedUntil(student, 1).Except(PlannedUntil(student, 0)),
            standing.Early.Select(s => s.Id)
        );
        Assert.Equal(standing.Today.Count, standing.TodayDone);
        Assert.True(standing.IsFreeToday);
    }

    [Fact]
    public void Every_step_is_overdue_of_today_or_early_or_as_planned_and_never_two_of_them() =>
        Gen.Select(MadeUp.Any, Gen.Int[0, 60], Gen.Int[0, 1000])
            .Sample(
                (request, days, mask) =>
                {
                    var plan = MadeUp.Plan(request);
                    foreach (var student in request.Students.Where(s => s.Work is not null))
                    {
                        var done = student
                            .Work!.Steps.Where(s => (mask >> (s.Number % 10) & 1) == 1)
                            .Select(s => s.Id)
                            .ToList();
                        var standing = PlanStanding.Of(
                            request,
                            plan,
                            student.StudentId,
                            ProgressOf(student, done),
                            MadeUp.FirstDay.AddDays(days)
                        )!;
                        string[] ids =
                        [
                            .. standing.Overdue.Select(s => s.Id),
                            .. standing.Today.Select(s => s.Id),
                            .. standing.Early.Select(s => s.Id),
                        ];
                        Assert.Equal(ids.Distinct(), ids);
                        Assert.DoesNotContain(standing.Overdue, s => done.Contains(s.Id));
                        Assert.All(standing.Early, s => Assert.Contains(s.Id, done));
                        Assert.Equal(
                            standing.Today.Count(s => done.Contains(s.Id)),
                            standing.TodayDone
                        );
                    }
                },
                iter: 100
            );

    [Fact]
    public void An_absent_student_catches_up_with_exactly_what_they_would_have_done()
    {
        // The second student is away in the second lesson; the plan knows it and moves their steps.
        var student = Asked.Students[1];
        var away = Asked with
        {
            Lessons =
            [
                .. Asked.Lessons.Select(
                    (l, i) => i == 1 ? l with { Absent = [student.StudentId] } : l
                ),
            ],
        };
        var plan = MadeUp.Plan(away);
        var there = LessonPlanner.Quick(Asked, TurnMaker.Of(Asked.Students));
        var expected = Planned(there, student, 1);
        var done = Planned(there, student, 0);

        var missed = CatchUp.For(away, plan, student.StudentId, ProgressOf(student, done), 1);

        Assert.NotEmpty(missed);
        Assert.Equal(expected.Except(done), missed.Select(m => m.Step.Id));
    }

    [Fact]
    public void A_skill_shown_while_away_is_shown_first_and_one_that_was_used_is_not()
    {
        var student = MadeUp.Student(
            "s",
            MadeUp.Step(1, 10),
            MadeUp.Step(2, 10, Station.SawBench, Skill.Crosscutting),
            MadeUp.Step(3, 10)
        );
        var request = new LessonRequest
        {
            Shop = new(2, 2, 2, 1),
            Lessons = [MadeUp.Evening(0, 120, Skill.MarkingOut, Skill.Crosscutting)],
            Students = [student],
        };
        var missed = CatchUp.For(
            request,
            MadeUp.Plan(request),
            "s",
            ProgressOf(student, ["step:1"]),
            0
        );

        Assert.Equal([2, 3], missed.Select(m => m.Step.Number));
        Assert.Equal([true, false], missed.Select(m => m.NeedsShowing));
    }

    [Fact]
    public void Whoever_has_done_nothing_of_an_earlier_lesson_is_shown_its_skills_again()
    {
        var student = MadeUp.Student("s", MadeUp.Step(1, 60), MadeUp.Step(2, 60));
        var request = new LessonRequest
        {
            Shop = new(2, 2, 2, 1),
            Lessons = [MadeUp.Evening(0, 75, Skill.MarkingOut), MadeUp.Evening(1, 75)],
            Students = [student],
        };
        var plan = MadeUp.Plan(request);

        bool NeedsShowing(params string[] done) =>
            CatchUp.For(request, plan, "s", ProgressOf(student, done), 1)[^1].NeedsShowing;

        Assert.True(NeedsShowing());
        Assert.False(NeedsShowing("step:1"));
    }

    [Fact]
    public void A_helper_pre_cuts_rough_cuts_that_wait_for_nothing_else()
    {
        static Step Cut(int number, CutClass cut, params int[] after) =>
            MadeUp.Step(
                number,
                5,
                Station.SawBench,
                Skill.Crosscutting,
                kind: StepKind.Crosscut,
                after: after
            ) with
            {
                Class = cut,
            };
        var student = MadeUp.Student(
            "s",
            MadeUp.Step(1, 5),
            Cut(2, CutClass.Third, 1),
            Cut(3, CutClass.Third, 2),
            MadeUp.Step(4, 5, Station.Vise, Skill.Planing, kind: StepKind.FlattenFace, after: 3),
            Cut(5, CutClass.Third, 4),
            Cut(6, CutClass.Second, 3)
        );
        var request = new LessonRequest
        {
            Shop = new(2, 2, 2, 1),
            Lessons = [MadeUp.Evening(0)],
            Students = [student],
        };

        var missed = CatchUp.For(request, MadeUp.Plan(request), "s", ProgressOf(student, []), 0);

        Assert.Equal([2, 3], missed.Where(m => m.CanBePreCut).Select(m => m.Step.Number));
    }

    [Fact]
    public void Minutes_behind_and_to_catch_up_with_go_by_the_pace_learned_since()
    {
        var student = Asked.Students[0];
        var twice = new StepPace(
            new([.. Enum.GetValues<StepKind>().Select(k => new KindPace(k, new(200, 30)))], []),
            PaceFactor.Usual
        );
        var progress = ProgressOf(student, []);
        var day = Asked.Lessons[^1].Date.AddDays(1);

        var usual = PlanStanding.Of(Asked, Plan, student.StudentId, progress, day)!;
        var slower = PlanStanding.Of(
            Asked,
            Plan,
            student.StudentId,
            progress,
            day,
            s => twice.At(s, [])
        )!;
        var missed = CatchUp.For(Asked, Plan, student.StudentId, progress, 1, s => twice.At(s, []));

        Assert.True(usual.Behind > 0);
        // Seconds go up to the next ten, step by step.
        Assert.InRange(
            slower.Behind,
            2 * usual.Behind - 1,
            2 * usual.Behind + 1 + slower.Overdue.Count / 3
        );
        Assert.Equal(usual.Overdue.Select(s => s.Id), slower.Overdue.Select(s => s.Id));
        Assert.NotEmpty(missed);
        Assert.All(
            missed,
            m =>
                Assert.True(
                    m.Step.Time.Busy == 0
                        || m.Step.Time.Busy >= 2 * progress.Find(m.Step.Id)!.Step.Time.Busy
                )
        );
    }

    private static PlanStanding? Stand(
        StudentWork student,
        IReadOnlyList<string> done,
        int lesson
    ) =>
        PlanStanding.Of(
            Asked,
            Plan,
            student.StudentId,
            ProgressOf(student, done),
            Asked.Lessons[lesson].Date
        );

    private static IReadOnlyList<string> PlannedUntil(StudentWork student, int lesson) =>
        Planned(Plan, student, lesson);

    // Counted anew from the turns: a step is planned until a lesson when no share of it comes later or falls off.
    private static IReadOnlyList<string> Planned(LessonPlan plan, StudentWork student, int lesson)
    {
        var later = plan
            .Lessons.Skip(lesson + 1)
            .SelectMany(l => l.Turns.Select(t => t.Turn))
            .Concat(plan.Left)
            .Where(t => t.StudentId == student.StudentId)
            .SelectMany(t => t.Steps)
            .ToHashSet();
        return [.. student.Work!.Steps.Where(s => !later.Contains(s.Number)).Select(s => s.Id)];
    }

    private static WorkProgress ProgressOf(StudentWork student, IReadOnlyList<string> done) =>
        WorkProgress.Of(
            student.Work!.Steps,
            done.Select(id => new StepAction(Guid.NewGuid(), id, StepActionKind.Tick))
        );
}
