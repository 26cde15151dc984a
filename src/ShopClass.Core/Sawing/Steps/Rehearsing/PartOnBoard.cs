using ShopClass.Core.Lumber;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps.Rehearsing;

/// <summary>A blank where the plan has it.</summary>
internal sealed record PartOnBoard(
    BlankKey Key,
    Part? Part,
    string BoardId,
    BoardRect Rect,
    bool IsTurned
)
{
    /// <summary>Every blank of the plan; one that is placed twice counts once.</summary>
    public static IEnumerable<PartOnBoard> In(CheckedPlan plan) =>
        (
            from layout in plan.Plan.Boards
            from section in layout.Sections
            from strip in section.Strips
            from blank in strip.Blanks
            select new PartOnBoard(
                blank.Key,
                plan.Request.Project.Parts.FirstOrDefault(p => p.Letter == blank.Key.Part),
                layout.BoardId,
                new(blank.From, blank.To, strip.Near, strip.Far),
                blank.Turned
            )
        ).DistinctBy(b => b.Key);
}
