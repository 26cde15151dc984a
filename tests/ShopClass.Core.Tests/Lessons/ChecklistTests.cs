using ShopClass.Core.Drawings;
using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing.Steps;
using Xunit;

namespace ShopClass.Core.Tests.Lessons;

public class ChecklistTests
{
    private static readonly LessonRequest Asked = MadeUp.Class(4, 5, 90, new(2, 2, 2, 1)) with
    {
        Lessons =
        [
            .. Enumerable
                .Range(0, 5)
                .Select(l => MadeUp.Evening(l, 90) with { Absent = l == 1 ? ["Student 2"] : [] }),
        ],
    };

    private static readonly LessonPlan Plan = MadeUp.Plan(Asked);

    [Fact]
    public void A_students_checklist_has_every_step_or_says_that_it_falls_off()
    {
        foreach (var student in Asked.Students)
        {
            var ticked = Checklists
                .For(Asked, Plan, student)
                .SelectMany(l => l.Lines)
                .Select(l => l.Number)
                .Distinct()
                .ToList();
            var left = Plan
                .Left.Where(t => t.StudentId == student.StudentId)
                .SelectMany(t => t.Steps);
            Assert.Equal(
                Enumerable.Range(1, student.Work!.Steps.Count),
                ticked.Concat(left).Distinct().Order()
            );
        }
    }

    [Fact]
    public void Times_on_a_checklist_follow_each_other_and_stay_within_the_lesson()
    {
        foreach (var student in Asked.Students)
        foreach (var lesson in Checklists.For(Asked, Plan, student))
        {
            Assert.All(lesson.Lines, l => Assert.True(l.Start <= l.End && l.End <= 90));
            Assert.All(
                lesson.Lines.Zip(lesson.Lines.Skip(1)),
                p => Assert.True(p.First.End <= p.Second.Start)
            );
        }
    }

    [Fact]
    public void The_absent_student_is_marked_so_and_has_nothing_to_do()
    {
        var lesson = Checklists.For(Asked, Plan, Asked.Students[1])[1];

        Assert.True(lesson.IsAbsent);
        Assert.Empty(lesson.Lines);
    }

    [Fact]
    public void The_wall_has_each_students_next_three_steps_and_the_first_ones_station()
    {
        var wall = Checklists.Wall(Asked, Plan, 0);

        Assert.Equal(Asked.Students.Select(s => s.Name), wall.Select(w => w.Student));
        Assert.All(
            wall,
            w => Assert.Equal(["1. Do number 1", "2. Do number 2", "3. Do number 3"], w.Next)
        );
        Assert.All(wall, w => Assert.Equal("Bench top", w.Station));
    }

    [Fact]
    public void The_wall_goes_by_what_is_ticked_and_by_the_plan_for_who_has_ticked_nothing()
    {
        var student = Asked.Students[0];
        IReadOnlySet<string> done = new HashSet<string>(
            [student.Step(1).Id, student.Step(3).Id],
            StringComparer.Ordinal
        );
        var ticked = new Dictionary<string, IReadOnlySet<string>>(StringComparer.Ordinal)
        {
            [student.StudentId] = done,
        };
        var byPlan = Checklists.Wall(Asked, Plan, 4);

        var wall = Checklists.Wall(Asked, Plan, 4, ticked);

        // Behind the plan: what is open comes first, whatever lesson it was planned for.
        Assert.Equal(["2. Do number 2", "4. Do number 4"], wall[0].Next.Take(2).Select(Whole));
        Assert.Equal(byPlan.Skip(1).SelectMany(w => w.Next), wall.Skip(1).SelectMany(w => w.Next));

        static string Whole(string line) => line.Split(" (")[0];
    }

    [Fact]
    public void Times_are_by_the_clock_where_a_lesson_has_an_hour()
    {
        Assert.Equal("0:05", RotationWords.At(Asked.Lessons[0], 5));
        var evening = Asked with
        {
            Lessons = [.. Asked.Lessons.Select(l => l with { Start = new TimeOnly(18, 30) })],
        };
        Assert.Equal("18:35", RotationWords.At(evening.Lessons[0], 5));
        Assert.Equal(
            "0:10",
            RotationWords.At(evening.Lessons[0] with { Start = new TimeOnly(23, 50) }, 20)
        );
        Assert.Contains("18:30 to ", RotationWords.Of(evening, Plan, 0), StringComparison.Ordinal);
        Assert.Contains(
            "by the clock",
            RotationWords.Of(evening, Plan, 0),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Each_skill_is_a_check_point_once_for_each_student_in_the_whole_course()
    {
        var seen = Enumerable
            .Range(0, 5)
            .SelectMany(l => Checklists.CheckPoints(Asked, Plan, l))
            .SelectMany(p => p.First.Select(f => (p.Skill.Skill, f.Student)))
            .ToList();

        Assert.Equal(seen.Count, seen.Distinct().Count());
        Assert.Equal(4, seen.Count(s => s.Skill is Skill.Crosscutting));
    }

    [Fact]
    public void Free_spells_fill_exactly_the_time_nobody_planned()
    {
        for (var l = 0; l < 5; l++)
            foreach (
                var student in Asked.Students.Where(s => Asked.Lessons[l].IsAttendedBy(s.StudentId))
            )
            {
                var program = Plan.Lessons[l];
                var busy = program
                    .Turns.Where(t => t.Turn.StudentId == student.StudentId)
                    .Sum(t => t.Turn.Minutes);
                var watching = program
                    .Showings.Where(s => s.StudentId is null || s.StudentId == student.StudentId)
                    .Sum(s => s.Minutes);
                var free = Spells
                    .In(Asked, Plan, l)
                    .Where(s => s.StudentId == student.StudentId)
                    .Sum(s => s.Minutes);
                // Breaths under five minutes are left alone, so a little may be missing and nothing may be counted twice.
                Assert.InRange(busy + watching + free, 90 - 4 * program.Turns.Count, 90);
            }
    }

    [Fact]
    public void What_is_set_out_is_never_more_than_the_shop_has()
    {
        for (var l = 0; l < 5; l++)
            Assert.All(
                SetOut.For(Asked, Plan, l).Stations,
                s => Assert.InRange(s.Count, 1, Asked.Shop.PlacesAt(s.Station)!.Value)
            );
    }

    [Theory]
    [InlineData(960, 13, false)]
    [InlineData(358, 13, true)]
    [InlineData(515, 7.5, false)]
    public void A_rotation_is_drawn_within_its_frame_and_told_in_words(
        double width,
        double text,
        bool upright
    )
    {
        var drawing = RotationDrawing.Of(Asked, Plan, 1, new(width, text, upright));

        Assert.All(
            drawing.Shapes.OfType<Box>(),
            b =>
            {
                Assert.InRange(b.X, 0, width);
                Assert.InRange(b.X + b.Width, 0, width);
                Assert.InRange(b.Y + b.Height, 0, drawing.Height);
            }
        );
        Assert.Contains("Student 2: absent.", drawing.TextTwin, StringComparison.Ordinal);
        foreach (var turn in Plan.Lessons[1].Turns)
            Assert.Contains(
                $"{RotationWords.At(turn.Start)} to {RotationWords.At(turn.End)} {StationWords.Place(turn.Turn.Station, turn.Place)}",
                drawing.TextTwin,
                StringComparison.Ordinal
            );
    }
}
