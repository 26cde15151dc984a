using Microsoft.EntityFrameworkCore;
using ShopClass.Data.Access;
using ShopClass.Data.Store;

namespace ShopClass.Data.Joining;

/// <summary>The instructor's side of joining: the class code, who waits, and which devices are in.</summary>
public sealed class DoorStore(
    IDbContextFactory<ShopContext> factory,
    TimeProvider clock,
    ClassNews news
)
{
    /// <summary>How long a one-time code holds.</summary>
    public static readonly TimeSpan StudentCodeHolds = TimeSpan.FromHours(24);

    /// <summary>The course's door; null where none was ever opened, or it is not the viewer's.</summary>
    public async Task<DoorView?> FindAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        if (!await shop.Courses.RunBy(viewer).AnyAsync(c => c.Id == courseId, cancel))
            return null;
        var row = await shop.Set<DoorRow>()
            .AsNoTracking()
            .SingleOrDefaultAsync(d => d.CourseId == courseId, cancel);
        return row is null ? null : View(row);
    }

    /// <summary>Opens the door for so many days with a new code; the old one opens nothing from now on.</summary>
    public Task<Outcome<DoorView>> OpenAsync(
        Viewer viewer,
        Guid courseId,
        int days,
        bool listedComeIn,
        CancellationToken cancel = default
    ) =>
        ChangeAsync(
            viewer,
            courseId,
            door =>
            {
                door.Code = JoinCode.Make();
                door.CodeUntilUtc = Now.AddDays(Math.Clamp(days, 1, 120));
                door.IsOpen = true;
                door.ListedComeIn = listedComeIn;
            },
            cancel
        );

    /// <summary>Turns the class code off. Who is in stays in.</summary>
    public Task<Outcome<DoorView>> CloseAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    ) => ChangeAsync(viewer, courseId, door => door.IsOpen = false, cancel);

    /// <summary>All devices of a course, those that wait first, each group in the order they came.</summary>
    public async Task<IReadOnlyList<DeviceView>> DevicesAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        if (!await shop.Courses.RunBy(viewer).AnyAsync(c => c.Id == courseId, cancel))
            return [];
        var waitingSince = Now - JoinDesk.WaitingHolds;
        return await shop.Set<DeviceRow>()
            .Where(d =>
                d.CourseId == courseId && (d.StudentId != null || d.AskedUtc > waitingSince)
            )
            .OrderBy(d => d.StudentId != null)
            .ThenBy(d => d.AskedUtc)
            .Select(d => new DeviceView(
                d.Id,
                d.StudentId,
                d.AskedName,
                d.Kind,
                d.AskedUtc,
                d.SeenUtc
            ))
            .ToListAsync(cancel);
    }

    /// <summary>Lets a waiting device in, as a student of the list or as a new one of the name it gave.</summary>
    /// <param name="viewer">The instructor.</param>
    /// <param name="deviceId">The device.</param>
    /// <param name="studentId">As whom; null for a new student.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<Outcome<Guid>> AdmitAsync(
        Viewer viewer,
        Guid deviceId,
        Guid? studentId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var device = await RunByAsync(shop, viewer, deviceId, cancel);
        if (device is null || (studentId is null && device.StudentId is not null))
            return Outcome<Guid>.NotFound();
        if (device.Course!.IsArchived)
            return Outcome<Guid>.Refused(Wording.CourseIsArchived);
        var admitted = await NewStudents.FindOrAddAsync(shop, device, studentId, cancel);
        if (!admitted.IsSaved)
            return admitted;
        (device.StudentId, device.AdmittedUtc) = (admitted.Value, Now);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        news.Tell(new(NewsKind.Joining, device.CourseId, admitted.Value, deviceId));
        return admitted;
    }

    /// <summary>Turns a waiting device away, or ends one that is in. Its open pages end at once.</summary>
    public async Task<Outcome<bool>> EndAsync(
        Viewer viewer,
        Guid deviceId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var device = await RunByAsync(shop, viewer, deviceId, cancel);
        if (device is null)
            return Outcome<bool>.NotFound();
        shop.Remove(device);
        await shop.SaveChangesAsync(cancel);
        news.Tell(new(NewsKind.Ended, device.CourseId, device.StudentId, deviceId));
        return Outcome<bool>.Saved(true);
    }

    /// <summary>
    /// A one-time code for a student's new phone, to be read out now: only its hash is kept. It takes the place of any code
    /// given before.
    /// </summary>
    /// <param name="viewer">The instructor.</param>
    /// <param name="studentId">For whom.</param>
    /// <param name="endsOthers">Whether their devices end now, as when a phone is lost.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<Outcome<string>> NewStudentCodeAsync(
        Viewer viewer,
        Guid studentId,
        bool endsOthers,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var student = await shop
            .Students.RunBy(viewer)
            .Where(s => s.Id == studentId)
            .Select(s => new { s.CourseId, s.Course!.IsArchived })
            .SingleOrDefaultAsync(cancel);
        if (student is null)
            return Outcome<string>.NotFound();
        if (student.IsArchived)
            return Outcome<string>.Refused(Wording.CourseIsArchived);
        var code = JoinCode.Make();
        var row = await shop.Set<StudentCodeRow>().FindAsync([studentId], cancel);
        if (row is null)
            shop.Add(row = new() { StudentId = studentId, CodeHash = "" });
        (row.CodeHash, row.UntilUtc) = (Secret.HashOf(code), Now + StudentCodeHolds);
        await shop.SaveChangesAsync(cancel);
        if (endsOthers)
            await shop.Set<DeviceRow>()
                .Where(d => d.StudentId == studentId)
                .ExecuteDeleteAsync(cancel);
        await writing.CommitAsync(cancel);
        news.Tell(new(endsOthers ? NewsKind.Ended : NewsKind.Joining, student.CourseId, studentId));
        return Outcome<string>.Saved(code);
    }

    private DateTime Now => clock.GetUtcNow().UtcDateTime;

    private async Task<Outcome<DoorView>> ChangeAsync(
        Viewer viewer,
        Guid courseId,
        Action<DoorRow> change,
        CancellationToken cancel
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var course = await shop
            .Courses.RunBy(viewer)
            .Where(c => c.Id == courseId)
            .Select(c => new { c.IsArchived })
            .SingleOrDefaultAsync(cancel);
        if (course is null)
            return Outcome<DoorView>.NotFound();
        if (course.IsArchived)
            return Outcome<DoorView>.Refused(Wording.CourseIsArchived);
        var door = await shop.Set<DoorRow>().FindAsync([courseId], cancel);
        if (door is null)
            shop.Add(door = new() { CourseId = courseId, Code = JoinCode.Make() });
        change(door);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        news.Tell(new(NewsKind.Joining, courseId));
        return Outcome<DoorView>.Saved(View(door));
    }

    private static DoorView View(DoorRow row) =>
        new(row.Code, row.CodeUntilUtc, row.IsOpen, row.ListedComeIn);

    private static Task<DeviceRow?> RunByAsync(
        ShopContext shop,
        Viewer viewer,
        Guid deviceId,
        CancellationToken cancel
    ) =>
        viewer is InstructorViewer instructor
            ? shop.Set<DeviceRow>()
                .Include(d => d.Course)
                .SingleOrDefaultAsync(
                    d => d.Id == deviceId && d.Course!.OwnerId == instructor.UserId,
                    cancel
                )
            : Task.FromResult<DeviceRow?>(null);
}
