using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Orders;
using ShopClass.Data.Orders;
using ShopClass.Data.Plans;
using ShopClass.Data.Store;

namespace ShopClass.Data.Keeping;

/// <summary>
/// Takes names of students, and those they gave their boards, off the rack: a piece that was put there from a student's plan
/// is called after their board. The pieces and their sizes stay.
/// </summary>
internal static class RackForgetting
{
    /// <summary>
    /// What pieces on the rack are called after these of the student's boards, each with the other name. To be asked while
    /// the plans still have the old names.
    /// </summary>
    public static async Task<IReadOnlyList<KeyValuePair<string, string>>> NamesAsync(
        ShopContext shop,
        Guid studentId,
        Func<string, string> other,
        CancellationToken cancel
    )
    {
        var returned = await shop
            .Plans.Where(p =>
                p.StudentId == studentId && shop.Set<ReturnRow>().Any(r => r.SourceId == p.Id)
            )
            .Select(p => p.Snapshot)
            .ToListAsync(cancel);
        return
        [
            .. returned
                .SelectMany(s => PlanSnapshot.Unpack(s).Request.Boards)
                .Select(b => b.Name)
                .Distinct(StringComparer.Ordinal)
                .Select(n =>
                    KeyValuePair.Create(LeftForRack.NameOf(n), LeftForRack.NameOf(other(n)))
                ),
        ];
    }

    /// <summary>Renames what lies on the rack of a course, and where it is written to lie.</summary>
    public static async Task ForgetAsync(
        ShopContext shop,
        Guid courseId,
        Renaming renaming,
        CancellationToken cancel
    )
    {
        foreach (
            var row in await shop.Set<RackRow>()
                .Where(r => r.CourseId == courseId)
                .ToListAsync(cancel)
        )
        {
            var (name, place) = (renaming.In(row.Board.Name), renaming.In(row.Place));
            if (name == row.Board.Name && place == row.Place)
                continue;
            (row.Board, row.Place) = (row.Board with { Name = name }, place);
            row.Version = Guid.NewGuid();
        }
    }
}
