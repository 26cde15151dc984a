using ShopClass.Core.Lessons;
using ShopClass.Core.Measure;
using ShopClass.Core.Progress;
using ShopClass.Core.Tests.Lessons;
using ShopClass.Print.Sheets;

namespace ShopClass.Print.Tests;

public class ClassSheetTests
{
    private static readonly LessonRequest Asked = MadeUp.Class(12, 8, 120, new(4, 6, 6, 2));

    private static readonly LessonPlan Plan = LessonPlanner.Plan(
        Asked,
        progress: null,
        CancellationToken.None
    );

    private static readonly DateOnly Today = new(2027, 1, 19);

    private static readonly OpenStepContent Content = new(
        "Evenings",
        "Wall shelf",
        "Student 3",
        2,
        UnitSystem.Inch,
        Today
    );

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void The_state_of_a_class_of_twelve_is_one_page_with_everybody(Paper paper)
    {
        var state = new ClassState(
            "3. The saw and the line, Tue 19 Jan 2027",
            LessonWords.Prepare(Asked, Plan, 2),
            LessonWords.Demonstrate(Asked, Plan, 2),
            [
                .. Asked.Students.Select(
                    (s, i) =>
                        new ClassStateLine(
                            s.Name,
                            s.Board,
                            i,
                            30,
                            $"{i + 1}. {s.Work!.Steps[i].Title}",
                            "Saw bench",
                            i % 3 == 0 ? $"{i + 5} min behind: Crosscut A1" : "as planned",
                            i == 4 ? ["check 12", "needs help at 13"] : []
                        )
                ),
            ]
        );

        var sheet = new PrintedSheet(ClassStateSheet.Make("Evenings", state, Today, paper));

        Assert.Single(sheet.Pages);
        foreach (var line in state.Students)
        {
            Assert.Contains(line.Student, sheet.Text, StringComparison.Ordinal);
            Assert.Contains(line.Next, sheet.Text, StringComparison.Ordinal);
        }
        Assert.Contains("needs help at 13", sheet.Text, StringComparison.Ordinal);
        Assert.Contains("Tue 19 Jan 2027", sheet.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void Catching_up_lists_exactly_the_missed_steps_and_how(Paper paper)
    {
        var student = Asked.Students[2];
        var progress = WorkProgress.Of(student.Work!.Steps, []);
        var missed = CatchUp.For(Asked, Plan, student.StudentId, progress, 1);
        Assert.NotEmpty(missed);

        var text = new PrintedSheet(
            CatchUpSheet.Make(Content, "2. Second evening", missed, paper)
        ).Text;

        foreach (var step in student.Work.Steps)
            Assert.Equal(
                missed.Any(m => m.Step.Id == step.Id),
                text.Contains($"{step.Number} {step.Title}", StringComparison.Ordinal)
            );
        Assert.Contains("Watch the demonstration first", text, StringComparison.Ordinal);
        Assert.Contains("eye protection", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void The_take_home_sheet_has_every_open_step_and_warns(Paper paper)
    {
        var steps = Asked.Students[2].Work!.Steps;
        var open = steps.Skip(steps.Count - 6).ToList();

        var text = new PrintedSheet(TakeHomeSheet.Make(Content, open, paper)).Text;

        Assert.All(
            open,
            s => Assert.Contains($"{s.Number}. {s.Title}", text, StringComparison.Ordinal)
        );
        Assert.DoesNotContain($"1. {steps[0].Title}", text, StringComparison.Ordinal);
        Assert.Contains("There is no instructor at home.", text, StringComparison.Ordinal);
    }
}
