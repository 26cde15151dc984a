using ShopClass.Core.Courses;
using ShopClass.Core.Lessons;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Guide;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Core.Tests.Lessons;
using ShopClass.Core.Tests.Planning;
using ShopClass.Core.Tools;
using ShopClass.Print.Labels;
using ShopClass.Print.Pages;
using ShopClass.Print.Sheets;

namespace ShopClass.Bench;

/// <summary>Everything that can be printed for a made-up class of wall shelves: each kind of sheet, for everybody.</summary>
internal sealed class ClassSet
{
    private const string Course = "Evening class";
    private const int Lessons = 8;
    private static readonly DateOnly Today = new(2026, 1, 1);

    private readonly int students;
    private readonly OrderSheetContent order;
    private readonly CheckedPlan plan;
    private readonly WorkSequence work;
    private readonly LessonSheetContent lessons;

    public ClassSet(int students, ClassOrder order)
    {
        this.students = students;
        this.order = new(Course, order, 1, DateTime.UnixEpoch, Today);
        plan = CheckedPlan.Make(DemoProjects.Find("wall shelf", UnitSystem.Inch));
        work = WorkWriter.Write(plan, Hand.Right);
        var request = MadeUp.Class(
            students,
            Lessons,
            120,
            new(students / 3 + 1, students, students, 2)
        );
        lessons = new(
            Course,
            plan.Request.Project.Name,
            request,
            LessonPlanner.Plan(request),
            1,
            DateTime.UnixEpoch,
            Today,
            false
        );
    }

    public IReadOnlyList<Manuscript> OrderSheets() =>
        [
            MaterialsOrder.Of(order, Paper.A4),
            ReceivingSheet.Of(order, Paper.A4),
            PreparationList.Of(order, [], [], Paper.A4),
            CostSheet.Of(order, [], Paper.A4),
        ];

    public IReadOnlyList<Manuscript> KitSheets() =>
        [.. Numbers.Select(i => KitSheet.Of(Kit(i), Paper.A4))];

    public IReadOnlyList<Manuscript> All() =>
        [
            .. OfTheClass(),
            .. OrderSheets(),
            ToolSheet.Of(lessons, ToolChest.Empty, [], Paper.A4),
            .. Enumerable.Range(0, Lessons).Select(l => InstructorSheet.Of(lessons, l, Paper.A4)),
            .. Enumerable.Range(0, Lessons).Select(l => WallSheet.Of(lessons, l, Paper.A4)),
            .. KitSheets(),
            .. Numbers.Select(i => StepSheet.Of(Steps(i), Paper.A4)),
            .. lessons.Request.Students.Select(s =>
                LessonChecklist.Of(lessons, s.StudentId, Paper.A4)
            ),
            .. Numbers.Select(i => StoryStick.Of(Kit(i), Paper.A4)),
            KitLabels.Of([.. Numbers.Select(LabelOf)], LabelSheet.All[0], Length.Zero, Length.Zero),
        ];

    private IEnumerable<int> Numbers => Enumerable.Range(1, students);

    private IEnumerable<Manuscript> OfTheClass()
    {
        var (project, rules) = (plan.Request.Project, plan.Request.Rules);
        yield return ProjectSheet.Of(new(Course, project, rules, Today), Paper.A4);
        yield return StockNote.Of(new(Course, StockGuide.Make(project, rules), Today), Paper.A4);
        yield return ClassOverview.Of(
            Course,
            project.Name,
            [
                .. Numbers.Select(i => new OverviewLine(
                    i,
                    $"Student {i}",
                    "",
                    1,
                    "1: fits",
                    "ready"
                )),
            ],
            Today,
            Paper.A4
        );
    }

    private KitSheetContent Kit(int number) =>
        new(Course, $"Student {number}", false, plan, 1, DateTime.UnixEpoch, Today, false);

    private StepSheetContent Steps(int number) =>
        new(Course, $"Student {number}", plan, work, 1, DateTime.UnixEpoch, Today, false);

    private static KitLabel LabelOf(int number) =>
        new(
            $"Student {number}",
            Course,
            "Wall shelf",
            number,
            "A × 2, B × 2, C",
            "Plan 1 of 1 Jan 2026",
            $"http://192.168.1.20:5000/kit/{number:D32}"
        );
}
