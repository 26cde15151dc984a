using ShopClass.Core.Lessons;
using ShopClass.Core.Tests.Lessons;
using ShopClass.Print.Sheets;

namespace ShopClass.Print.Tests;

public class LessonSheetTests
{
    private static readonly LessonRequest Asked = MadeUp.Class(12, 8, 120, new(4, 6, 6, 2));

    private static readonly LessonPlan Plan = LessonPlanner.Plan(
        Asked,
        progress: null,
        CancellationToken.None
    );

    private static readonly LessonSheetContent Content = new(
        "Evenings",
        "Wall shelf",
        Asked,
        Plan,
        3,
        new DateTime(2027, 1, 2, 0, 0, 0, DateTimeKind.Utc),
        new DateOnly(2027, 1, 5),
        IsOutOfDate: false
    );

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void A_students_checklist_has_every_step_in_its_order_with_station_and_time(Paper paper)
    {
        var student = Asked.Students[2];
        var text = new PrintedSheet(LessonChecklist.Make(Content, student.StudentId, paper)).Text;

        Assert.Contains("Student 3", text, StringComparison.Ordinal);
        var at = 0;
        foreach (var line in Checklists.For(Asked, Plan, student).SelectMany(l => l.Lines))
        {
            at = text.IndexOf(line.Title, at, StringComparison.Ordinal);
            Assert.True(at >= 0, line.Title);
            Assert.Contains(line.Where, text, StringComparison.Ordinal);
        }

        Assert.Contains("eye protection", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void The_instructors_sheet_has_demonstrations_rotation_and_check_points(Paper paper)
    {
        var text = new PrintedSheet(InstructorSheet.Make(Content, 1, paper)).Text;

        foreach (var showing in Plan.Lessons[1].Showings)
            Assert.Contains(SkillBook.Of(showing.Skill).Name, text, StringComparison.Ordinal);
        foreach (var point in Checklists.CheckPoints(Asked, Plan, 1))
        foreach (var (student, _) in point.First)
            Assert.Contains(student, text, StringComparison.Ordinal);
        Assert.Contains("Prepare", text, StringComparison.Ordinal);
        Assert.Contains("Saw bench", text, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("Plan of lessons 3", text, StringComparison.Ordinal);
    }

    // A rotation of 70 students is higher than a page: it stands on three, and nobody falls off the foot.
    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void A_big_classes_rotation_stands_on_several_pages(Paper paper)
    {
        var asked = MadeUp.Class(70, 1, 90, new(30, 70, 70, 2));
        var plan = LessonPlanner.Plan(asked, progress: null, TestContext.Current.CancellationToken);
        var content = Content with { Request = asked, Plan = plan };
        var sheet = new PrintedSheet(InstructorSheet.Make(content, 0, paper));
        foreach (var page in sheet.Words)
            Assert.All(page, w => Assert.InRange(w.BoundingBox.Bottom, 30, 800));
        // In the picture a name stands at the left edge by itself, as its row's head.
        var heads = sheet
            .Words.SelectMany(p => p)
            .Where(w => w.BoundingBox.Left < 45 && w.Text == "Student")
            .ToList();
        Assert.True(heads.Count >= 70, $"{heads.Count}");
    }

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void The_wall_sheet_is_one_page_with_every_student_and_their_next_steps(Paper paper)
    {
        var sheet = new PrintedSheet(WallSheet.Make(Content, 0, paper));

        Assert.Single(sheet.Pages);
        foreach (var line in Checklists.Wall(Asked, Plan, 0))
        {
            Assert.Contains(line.Student, sheet.Text, StringComparison.Ordinal);
            Assert.Contains(line.Next[0], sheet.Text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_plan_that_is_out_of_date_says_so_on_every_sheet()
    {
        var old = Content with { IsOutOfDate = true };
        byte[][] sheets =
        [
            LessonChecklist.Make(old, Asked.Students[0].StudentId, Paper.A4),
            InstructorSheet.Make(old, 0, Paper.A4),
            WallSheet.Make(old, 0, Paper.A4),
        ];

        Assert.All(
            sheets,
            s => Assert.Contains("Out of date", new PrintedSheet(s).Text, StringComparison.Ordinal)
        );
    }
}
