using ShopClass.Core.Orders;
using ShopClass.Core.Paces;
using ShopClass.Data.Access;
using ShopClass.Data.Orders;
using ShopClass.Data.Plans;
using ShopClass.Data.Students;
using ShopClass.Print.Pages;
using ShopClass.Print.Sheets;

namespace ShopClass.Web.Features.Printing;

/// <summary>Makes a print set, sheet after sheet, and tells how far it is.</summary>
public sealed class PrintRun(
    PrintSource source,
    PrintChoice choice,
    PlanStore plans,
    Viewer viewer,
    DateOnly today
)
{
    private readonly List<string> _leftOut = [];
    private readonly Dictionary<Guid, StoredPlan?> _plans = [];

    /// <summary>Sheets made so far.</summary>
    public int Done { get; private set; }

    /// <summary>Sheets to be made; 0 until that is known.</summary>
    public int Expected { get; private set; }

    /// <summary>What could not be printed, a sentence each.</summary>
    public IReadOnlyList<string> LeftOut => _leftOut;

    private List<StudentView> Chosen =>
        [.. source.Students.Where(s => choice.Students.Contains(s.Id))];

    /// <summary>The set as one file, or null when nothing in it can be printed.</summary>
    public async Task<byte[]?> MakeAsync(Func<Task> onProgress, CancellationToken cancel)
    {
        var sheets = await SheetsAsync(cancel);
        Expected = sheets.Count;
        var title = $"{source.Project.Name}, {source.Course.Name}";
        return sheets.Count == 0
            ? null
            : await Task.Run(
                () =>
                    PrintSet.Make(
                        title,
                        sheets,
                        done =>
                        {
                            Done = done;
                            _ = onProgress();
                        },
                        cancel
                    ),
                cancel
            );
    }

    /// <summary>Everything chosen that can be printed, written and not printed yet.</summary>
    public async Task<IReadOnlyList<Manuscript>> SheetsAsync(CancellationToken cancel)
    {
        var sheets = new List<Manuscript>();
        foreach (var kind in choice.Sheets)
        {
            if (PrintChoice.NeedsOrder(kind) && source.Order is null)
                LeaveOut(kind, $"no order is kept for {source.Project.Name} yet.");
            else if (PrintChoice.NeedsLessons(kind) && source.Lessons is null)
                LeaveOut(kind, $"no lessons are planned for {source.Project.Name} yet.");
            else if (kind is SheetKind.LessonChecklists)
                sheets.AddRange(Checklists());
            else if (PrintChoice.IsForEachStudent(kind))
                sheets.AddRange(await ForStudentsAsync(kind, cancel));
            else
                sheets.AddRange(await Task.Run(() => ForTheClass(kind), cancel));
        }

        return sheets;
    }

    private async Task<List<Manuscript>> ForStudentsAsync(SheetKind kind, CancellationToken cancel)
    {
        var (sheets, without) = (new List<Manuscript>(), new List<string>());
        foreach (var student in Chosen)
        {
            if (await PlanOfAsync(student, cancel) is { } plan)
                sheets.Add(ForStudent(kind, student, plan));
            else
                without.Add(student.Shown);
        }

        if (without.Count > 0)
            LeaveOut(kind, $"no plan yet for {string.Join(", ", without)}.");
        return sheets;
    }

    private Manuscript ForStudent(SheetKind kind, StudentView student, StoredPlan plan)
    {
        var pace = StepPace.Of(source.Pace, student.Id.ToString());
        if (kind is SheetKind.StepCards)
            return StepSheet.Of(
                new(
                    source.Course.Name,
                    student.Shown,
                    plan.Checked,
                    pace.Of(plan.Work, plan.Checked.Request.Boards),
                    plan.Number,
                    plan.MadeUtc,
                    today,
                    plan.IsOutOfDate
                )
                {
                    Basis = pace.Basis,
                },
                choice.Paper
            );
        var content = new KitSheetContent(
            source.Course.Name,
            student.Shown,
            student.Card.IsLeftHanded,
            plan.Checked,
            plan.Number,
            plan.MadeUtc,
            today,
            plan.IsOutOfDate
        );
        return kind is SheetKind.KitSheets
            ? KitSheet.Of(content, choice.Paper)
            : StoryStick.Of(content, choice.Paper);
    }

    private async Task<StoredPlan?> PlanOfAsync(StudentView student, CancellationToken cancel)
    {
        if (!_plans.TryGetValue(student.Id, out var plan))
            _plans[student.Id] = plan = await plans.NewestAsync(
                viewer,
                student.Id,
                source.Project.Id,
                cancel
            );
        return plan;
    }

    private List<Manuscript> Checklists()
    {
        var planned = source.Lessons!.Request.Students.Select(s => s.StudentId).ToHashSet();
        var without = Chosen.Where(s => !planned.Contains(s.Id.ToString())).ToList();
        if (without.Count > 0)
            LeaveOut(
                SheetKind.LessonChecklists,
                $"the plan of lessons does not know {string.Join(", ", without.Select(s => s.Shown))}; make a new one."
            );
        return
        [
            .. Chosen
                .Except(without)
                .Select(s => LessonChecklist.Of(LessonContent(), s.Id.ToString(), choice.Paper)),
        ];
    }

    private List<Manuscript> ForTheClass(SheetKind kind) =>
        kind switch
        {
            SheetKind.ProjectSheet =>
            [
                ProjectSheet.Of(
                    new(source.Course.Name, source.Project.ToProject(), source.Course.Rules, today),
                    choice.Paper
                ),
            ],
            SheetKind.StockGuide =>
            [
                StockNote.Of(new(source.Course.Name, source.Guide(), today), choice.Paper),
            ],
            SheetKind.ClassOverview =>
            [
                ClassOverview.Of(
                    source.Course.Name,
                    source.Project.Name,
                    Overview(),
                    today,
                    choice.Paper
                ),
            ],
            SheetKind.MaterialsOrder => [MaterialsOrder.Of(OrderContent(), choice.Paper)],
            SheetKind.Receiving => [ReceivingSheet.Of(OrderContent(), choice.Paper)],
            SheetKind.Preparation =>
            [
                PreparationList.Of(
                    OrderContent(),
                    source.Kits.Supplies,
                    source.Tools.Sets,
                    choice.Paper
                ),
            ],
            SheetKind.Costs => [CostSheet.Of(OrderContent(), source.Kits.Supplies, choice.Paper)],
            SheetKind.LessonTools =>
            [
                ToolSheet.Of(LessonContent(), source.Tools, source.Saws, choice.Paper),
            ],
            SheetKind.LessonSheets => ForEachLesson(InstructorSheet.Of),
            SheetKind.WallSheets => ForEachLesson(WallSheet.Of),
            SheetKind.Labels => Labels(),
            _ => throw new ArgumentOutOfRangeException(
                nameof(kind),
                kind,
                "Not a sheet of the whole class."
            ),
        };

    private List<Manuscript> ForEachLesson(
        Func<LessonSheetContent, int, Paper, Manuscript> sheet
    ) =>
        [
            .. Enumerable
                .Range(0, source.Lessons!.Request.Lessons.Count)
                .Select(lesson => sheet(LessonContent(), lesson, choice.Paper)),
        ];

    private LessonSheetContent LessonContent() =>
        new(
            source.Course.Name,
            source.Project.Name,
            source.Lessons!.Request,
            source.Lessons.Plan,
            source.Lessons.Number,
            source.Lessons.MadeUtc,
            today,
            source.Lessons.IsOutOfDate
        );

    private OrderSheetContent OrderContent() =>
        new(
            source.Course.Name,
            source.Order!.Order,
            source.Order.Number,
            source.Order.MadeUtc,
            today
        );

    private IReadOnlyList<OverviewLine> Overview() =>
        [
            .. source.Students.Select(
                (s, i) =>
                {
                    var state = source.States.FirstOrDefault(p =>
                        p.StudentId == s.Id && p.ProjectId == source.Project.Id
                    );
                    return new OverviewLine(
                        i + 1,
                        s.Shown,
                        s.Card.IsLeftHanded ? "left-handed" : "",
                        state?.Boards ?? 0,
                        state?.PlanNumber is null
                            ? "none yet"
                            : $"{state.PlanNumber}{(state.IsOutOfDate ? ", out of date" : "")}: {state.Sentence}",
                        KitWords.Of(source.Kits.StateOf(s.Id))
                    );
                }
            ),
        ];

    private List<Manuscript> Labels()
    {
        var (sheets, notes) = new LabelRun(source, choice).Make();
        _leftOut.AddRange(notes);
        return sheets;
    }

    private void LeaveOut(SheetKind kind, string why) =>
        _leftOut.Add($"{PrintChoice.Name(kind)}: {why}");
}
