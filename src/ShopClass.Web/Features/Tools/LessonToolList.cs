using ShopClass.Core.Tools;
using ShopClass.Data.Lessons;

namespace ShopClass.Web.Features.Tools;

/// <summary>What one lesson of a stored plan needs in tools.</summary>
/// <param name="Plan">The plan of lessons.</param>
/// <param name="Lesson">Which lesson, from 0.</param>
/// <param name="Tools">What it needs, against what there is.</param>
public sealed record LessonToolList(
    StoredLessonPlan Plan,
    int Lesson,
    IReadOnlyList<LessonTool> Tools
)
{
    public string Title => Plan.Request.Lessons[Lesson].Title;

    public DateOnly Date => Plan.Request.Lessons[Lesson].Date;

    /// <summary>Tools wanting at the worst moments.</summary>
    public int Wanting => Tools.Sum(t => t.Wanting);

    public static IEnumerable<LessonToolList> Of(StoredLessonPlan plan, ToolChest chest) =>
        plan.Request.Lessons.Select(
            (_, lesson) =>
                new LessonToolList(
                    plan,
                    lesson,
                    LessonTools.For(plan.Request, plan.Plan, lesson, chest)
                )
        );
}
