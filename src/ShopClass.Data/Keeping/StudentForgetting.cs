using Microsoft.EntityFrameworkCore;
using ShopClass.Data.Lessons;
using ShopClass.Data.Orders;
using ShopClass.Data.Store;
using ShopClass.Data.Students;

namespace ShopClass.Data.Keeping;

/// <summary>
/// Takes one student who is removed out of what stays in the course: plans of lessons, the rack, remakes of classmates who
/// used a piece of theirs, orders and kit states. Their own rows go with them.
/// </summary>
internal static class StudentForgetting
{
    public static async Task ForgetAsync(
        ShopContext shop,
        StudentRow student,
        CancellationToken cancel
    )
    {
        var course = student.CourseId;
        var rack = await NamesAsync(shop, student, cancel);
        await RackForgetting.ForgetAsync(shop, course, rack, cancel);
        foreach (
            var remake in await shop
                .Remakes.Where(r =>
                    r.Plan!.Student!.CourseId == course && r.Plan.StudentId != student.Id
                )
                .ToListAsync(cancel)
        )
            remake.Option = rack.In(remake.Option);
        await OrderForgetting.ForgetAsync(
            shop,
            course,
            id => id == student.Id ? OrderForgetting.Gone : null,
            rack,
            cancel
        );
        foreach (
            var kits in await shop.Set<KitsRow>()
                .Where(k => k.Project!.CourseId == course)
                .ToListAsync(cancel)
        )
        {
            if (kits.Marks.Any(m => m.StudentId == student.Id))
                (kits.Marks, kits.Version) = (
                    [.. kits.Marks.Where(m => m.StudentId != student.Id)],
                    Guid.NewGuid()
                );
        }

        await LessonForgetting.ForgetAsync(shop, course, student.Id, cancel);
    }

    // Classmates keep their names: who is called the same, or by a name this one is part of, is not renamed along.
    private static async Task<Renaming> NamesAsync(
        ShopContext shop,
        StudentRow student,
        CancellationToken cancel
    )
    {
        var names = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (
            var mate in await shop
                .Students.Where(s => s.CourseId == student.CourseId && s.Id != student.Id)
                .Select(s => new { s.Name, s.Alias })
                .ToListAsync(cancel)
        )
        {
            names.TryAdd(mate.Name, mate.Name);
            names.TryAdd(mate.Alias, mate.Alias);
        }

        foreach (
            var (old, other) in await RackForgetting.NamesAsync(
                shop,
                student.Id,
                _ => "a board",
                cancel
            )
        )
            names.TryAdd(old, other);
        names.TryAdd(student.Name, OrderForgetting.Gone);
        names.TryAdd(student.Alias, OrderForgetting.Gone);
        return new(names);
    }
}
