using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Lessons;
using ShopClass.Data.Lessons;
using ShopClass.Data.Plans;
using ShopClass.Data.Progress;
using ShopClass.Data.Store;
using ShopClass.Data.Students;

namespace ShopClass.Data.Keeping;

/// <summary>
/// Takes the names of students, and the names they gave their boards, out of a course: out of rows and out of everything
/// packed. Students become "Student 1", boards "Board 1"; figures stay. What was put on the rack is called after the new name.
/// </summary>
internal static class NameForgetting
{
    public static async Task ForgetAsync(
        ShopContext shop,
        Guid courseId,
        IReadOnlyList<StudentRow> students,
        CancellationToken cancel
    )
    {
        var shown = new Dictionary<string, string>(StringComparer.Ordinal);
        var renamings = new Dictionary<string, Renaming>(StringComparer.Ordinal);
        var onTheRack = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (student, number) in students.Select((s, i) => (s, i + 1)))
        {
            var neutral = $"Student {number}";
            onTheRack.TryAdd(student.Name, neutral);
            onTheRack.TryAdd(student.Alias, neutral);
            renamings[student.Id.ToString()] = await ForgetBoardsAsync(
                shop,
                student,
                neutral,
                onTheRack,
                cancel
            );
            shown[student.Id.ToString()] = neutral;
            (student.Name, student.Alias, student.Version) = (neutral, "", Guid.NewGuid());
            // What they agreed to is over.
            student.Take(null);
        }

        var rack = new Renaming(onTheRack);
        await RackForgetting.ForgetAsync(shop, courseId, rack, cancel);
        await ForgetInRemakesAsync(shop, courseId, renamings, rack, cancel);
        await ForgetInLessonsAsync(shop, courseId, shown, renamings, cancel);
        await OrderForgetting.ForgetAsync(
            shop,
            courseId,
            id => shown.GetValueOrDefault(id.ToString(), OrderForgetting.Gone),
            rack,
            cancel
        );
    }

    private static async Task<Renaming> ForgetBoardsAsync(
        ShopContext shop,
        StudentRow student,
        string neutral,
        Dictionary<string, string> onTheRack,
        CancellationToken cancel
    )
    {
        var boards = await shop
            .Boards.Where(b => b.StudentId == student.Id)
            .OrderBy(b => b.Position)
            .ToListAsync(cancel);
        var plans = await shop
            .Plans.Where(p => p.StudentId == student.Id)
            .OrderBy(p => p.MadeUtc)
            .ToListAsync(cancel);
        var names = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var name in boards.Select(b => b.Name).Concat(plans.SelectMany(BoardNames)))
            names.TryAdd(name, $"Board {names.Count + 1}");
        names.TryAdd(student.Name, neutral);
        names.TryAdd(student.Alias, neutral);
        var renaming = new Renaming(names);
        foreach (
            var (old, other) in await RackForgetting.NamesAsync(
                shop,
                student.Id,
                renaming.In,
                cancel
            )
        )
            onTheRack.TryAdd(old, other);
        foreach (var board in boards)
            (board.Name, board.Version) = (renaming.In(board.Name), Guid.NewGuid());
        foreach (var plan in plans)
        {
            plan.Snapshot = renaming.In(plan.Snapshot);
            plan.Work = plan.Work is { } work ? renaming.In(work) : null;
            plan.Sentence = renaming.In(plan.Sentence);
            // A remake is stored for the plan of this fingerprint, and names are part of it.
            plan.PlanFingerprint = PlanSnapshot.Fingerprint(PlanSnapshot.Unpack(plan.Snapshot));
        }

        foreach (
            var said in await shop.Set<StepActionRow>()
                .Where(a => a.Plan!.StudentId == student.Id && a.Text != "")
                .ToListAsync(cancel)
        )
            said.Text = renaming.In(said.Text);
        return renaming;
    }

    private static IEnumerable<string> BoardNames(PlanRow plan) =>
        PlanSnapshot.Unpack(plan.Snapshot).Request.Boards.Select(b => b.Name);

    // Somebody may have made a part again from a piece that was another's. The rack's names are the longer ones, so they go
    // first.
    private static async Task ForgetInRemakesAsync(
        ShopContext shop,
        Guid courseId,
        Dictionary<string, Renaming> renamings,
        Renaming rack,
        CancellationToken cancel
    )
    {
        foreach (
            var remake in await shop
                .Remakes.Include(r => r.Plan)
                .Where(r => r.Plan!.Student!.CourseId == courseId)
                .ToListAsync(cancel)
        )
            remake.Option = renamings[remake.Plan!.StudentId.ToString()].In(rack.In(remake.Option));
    }

    private static async Task ForgetInLessonsAsync(
        ShopContext shop,
        Guid courseId,
        Dictionary<string, string> shown,
        Dictionary<string, Renaming> renamings,
        CancellationToken cancel
    )
    {
        foreach (
            var row in await shop.LessonPlans.Where(p => p.CourseId == courseId).ToListAsync(cancel)
        )
        {
            var (request, plan) = LessonSnapshot.Unpack(row.Snapshot);
            var students = request.Students.Select(s =>
                shown.TryGetValue(s.StudentId, out var name)
                    ? Renamed(s, name, renamings[s.StudentId])
                    : s
            );
            row.Snapshot = LessonSnapshot.Pack(request with { Students = [.. students] }, plan);
        }
    }

    private static StudentWork Renamed(StudentWork student, string name, Renaming renaming) =>
        student with
        {
            Name = name,
            Board = renaming.In(student.Board),
            Work = student.Work is { } work ? renaming.In(work) : null,
            // Who it was made for may have had another name by then.
            WithoutWork = student.WithoutWork.Replace(student.Name, name, StringComparison.Ordinal),
        };
}
