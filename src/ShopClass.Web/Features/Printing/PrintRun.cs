using ShopClass.Core.Orders;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Orders;
using ShopClass.Data.Plans;
using ShopClass.Data.Projects;
using ShopClass.Data.Students;
using ShopClass.Print.Labels;
using ShopClass.Print.Sheets;

namespace ShopClass.Web.Features.Printing;

/// <summary>Everything a print set is made from, read once.</summary>
public sealed record PrintSource(
    CourseView Course,
    ProjectView Project,
    IReadOnlyList<StudentView> Students,
    IReadOnlyList<PlanState> States,
    StoredOrder? Order,
    KitsView Kits,
    PrintDeskView Desk
);

/// <summary>Makes a print set, sheet after sheet, and tells how far it is.</summary>
public sealed class PrintRun(
    PrintSource source,
    PrintChoice choice,
    PlanStore plans,
    Viewer viewer,
    DateOnly today
)
{
    private readonly List<byte[]> _sheets = [];
    private readonly List<string> _leftOut = [];

    /// <summary>Sheets made so far.</summary>
    public int Done => _sheets.Count;

    /// <summary>What could not be printed, a sentence each.</summary>
    public IReadOnlyList<string> LeftOut => _leftOut;

    private List<StudentView> Chosen =>
        [.. source.Students.Where(s => choice.Students.Contains(s.Id))];

    /// <summary>The set as one file, or null when nothing in it can be printed.</summary>
    public async Task<byte[]?> MakeAsync(Func<Task> onProgress, CancellationToken cancel)
    {
        foreach (var kind in choice.Sheets)
        {
            await foreach (var sheet in SheetsAsync(kind, cancel))
            {
                _sheets.Add(sheet);
                await onProgress();
            }
        }

        var title = $"{source.Project.Name}, {source.Course.Name}";
        return _sheets.Count == 0
            ? null
            : await Task.Run(() => PrintSet.Join(title, _sheets), cancel);
    }

    private async IAsyncEnumerable<byte[]> SheetsAsync(
        SheetKind kind,
        [System.Runtime.CompilerServices.EnumeratorCancellation] CancellationToken cancel
    )
    {
        if (PrintChoice.NeedsOrder(kind) && source.Order is null)
        {
            _leftOut.Add(
                $"{PrintChoice.Name(kind)}: no order is kept for {source.Project.Name} yet."
            );
            yield break;
        }

        if (kind is SheetKind.KitSheets or SheetKind.StorySticks)
        {
            var without = new List<string>();
            foreach (var student in Chosen)
            {
                if (await PlanOfAsync(student, cancel) is { } content)
                    yield return await Task.Run(
                        () =>
                            kind is SheetKind.KitSheets
                                ? KitSheet.Make(content, choice.Paper)
                                : StoryStick.Make(content, choice.Paper),
                        cancel
                    );
                else
                    without.Add(student.Shown);
            }

            if (without.Count > 0)
                _leftOut.Add(
                    $"{PrintChoice.Name(kind)}: no plan yet for {string.Join(", ", without)}."
                );
        }
        else if (await Task.Run(() => ForTheClass(kind), cancel) is { } sheet)
        {
            yield return sheet;
        }
    }

    private byte[]? ForTheClass(SheetKind kind) =>
        kind switch
        {
            SheetKind.ProjectSheet => ProjectSheet.Make(
                new(source.Course.Name, source.Project.ToProject(), source.Course.Rules, today),
                choice.Paper
            ),
            SheetKind.ClassOverview => ClassOverview.Make(
                source.Course.Name,
                source.Project.Name,
                Overview(),
                today,
                choice.Paper
            ),
            SheetKind.MaterialsOrder => MaterialsOrder.Make(OrderContent(), choice.Paper),
            SheetKind.Receiving => ReceivingSheet.Make(OrderContent(), choice.Paper),
            SheetKind.Preparation => PreparationList.Make(
                OrderContent(),
                source.Kits.Supplies,
                choice.Paper
            ),
            SheetKind.Costs => CostSheet.Make(OrderContent(), source.Kits.Supplies, choice.Paper),
            SheetKind.Labels => Labels(),
            _ => throw new ArgumentOutOfRangeException(
                nameof(kind),
                kind,
                "Not a sheet of the whole class."
            ),
        };

    private OrderSheetContent OrderContent() =>
        new(
            source.Course.Name,
            source.Order!.Order,
            source.Order.Number,
            source.Order.MadeUtc,
            today
        );

    private async Task<KitSheetContent?> PlanOfAsync(StudentView student, CancellationToken cancel)
    {
        var plan = await plans.NewestAsync(viewer, student.Id, source.Project.Id, cancel);
        return plan is null
            ? null
            : new(
                source.Course.Name,
                student.Shown,
                student.Card.IsLeftHanded,
                plan.Checked,
                plan.Number,
                plan.MadeUtc,
                today,
                plan.IsOutOfDate
            );
    }

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

    private byte[]? Labels()
    {
        var grid = LabelSheet.Find(source.Desk.Labels.SheetId) ?? LabelSheet.All[0];
        if (grid.Problem(source.Desk.Labels.Right, source.Desk.Labels.Down) is { } problem)
        {
            _leftOut.Add($"Kit labels: {problem}");
            return null;
        }

        var letters = string.Join(
            ", ",
            source
                .Project.Parts.Select(p => p.Part)
                .Select(p => p.Quantity == 1 ? p.Letter : $"{p.Letter} × {p.Quantity}")
        );
        var labels = source
            .Students.Index()
            .Where(s => choice.Students.Contains(s.Item.Id))
            .Select(s => new KitLabel(
                s.Item.Shown,
                source.Course.Name,
                source.Project.Name,
                s.Index + 1,
                letters,
                source.Desk.Address.Length == 0
                    ? null
                    : $"{source.Desk.Address}/courses/{source.Course.Id}/students/{s.Item.Id}?project={source.Project.Id}"
            ))
            .ToList();
        return labels.Count == 0
            ? null
            : KitLabels.Make(
                labels,
                grid,
                source.Desk.Labels.Right,
                source.Desk.Labels.Down,
                Math.Clamp(choice.Skip, 0, grid.Count - 1)
            );
    }
}

/// <summary>How far a kit is, in words.</summary>
public static class KitWords
{
    public static string Of(KitState state) =>
        state switch
        {
            KitState.ToPrepare => "to prepare",
            KitState.Ready => "ready",
            KitState.HandedOver => "handed over",
            _ => throw new ArgumentOutOfRangeException(
                nameof(state),
                state,
                "Not a state of a kit."
            ),
        };
}
