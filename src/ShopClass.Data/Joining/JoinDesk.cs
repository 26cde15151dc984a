using Microsoft.EntityFrameworkCore;
using ShopClass.Data.Access;
using ShopClass.Data.Store;

namespace ShopClass.Data.Joining;

/// <summary>
/// The student's side of joining, for people nobody knows yet: what a code opens, asking to come in, and the device
/// behind a cookie. How often somebody may try is the web's to limit.
/// </summary>
public sealed class JoinDesk(
    IDbContextFactory<ShopContext> factory,
    TimeProvider clock,
    ClassNews news
)
{
    /// <summary>How long somebody may wait to be let in.</summary>
    public static readonly TimeSpan WaitingHolds = TimeSpan.FromHours(12);

    /// <summary>A device nobody has used for this long must join anew.</summary>
    public static readonly TimeSpan UnusedHolds = TimeSpan.FromDays(120);

    /// <summary>How many may stand before one door.</summary>
    public const int MostWaiting = 60;

    private static readonly FieldProblem NotNow = new(
        "Code",
        "This code opens nothing any more. Ask your instructor for the new one."
    );

    /// <summary>What a code opens now.</summary>
    public async Task<CodeFound> LookUpAsync(string code, CancellationToken cancel = default)
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        if (await DoorAsync(shop, code, cancel) is { } door)
            return IsOpen(door)
                ? new(CodeOpens.Class, door.Course!.Name)
                : new(CodeOpens.NothingNow, "");
        if (await StudentCodeAsync(shop, code, cancel) is { } one)
            return one.UntilUtc > Now && !one.Student!.Course!.IsArchived
                ? new(CodeOpens.Student, one.Student!.ToView().Shown)
                : new(CodeOpens.NothingNow, "");
        return new(CodeOpens.Nothing, "");
    }

    /// <summary>
    /// The class code a kit's label stands for now: it lets somebody ask, as the code on the board does. Null when there is no
    /// such student, or the door is not open.
    /// </summary>
    public async Task<string?> CodeOfKitAsync(Guid studentId, CancellationToken cancel = default)
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var door = await shop.Set<DoorRow>()
            .AsNoTracking()
            .Include(d => d.Course)
            .SingleOrDefaultAsync(d => d.Course!.Students.Any(s => s.Id == studentId), cancel);
        return door is not null && IsOpen(door) ? JoinCode.Write(door.Code) : null;
    }

    /// <summary>
    /// Comes with the class code and a name. A listed name that has no device yet is let in where the door says so; any
    /// other waits. Refuses a code that opens nothing (field "Code") and a name that is none (field "Name").
    /// </summary>
    public async Task<Outcome<Arrival>> AskAsync(
        string code,
        string? name,
        string kind,
        CancellationToken cancel = default
    )
    {
        var tidy = Wording.Tidy(name);
        if (Wording.ProblemWithName(tidy) is { } problem)
            return Outcome<Arrival>.Refused(new FieldProblem("Name", problem));
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        if (await DoorAsync(shop, code, cancel) is not { } door || !IsOpen(door))
            return Outcome<Arrival>.Refused(NotNow);
        var since = Now - WaitingHolds;
        var waiting = await shop.Set<DeviceRow>()
            .CountAsync(
                d => d.CourseId == door.CourseId && d.StudentId == null && d.AskedUtc > since,
                cancel
            );
        if (waiting >= MostWaiting)
            return Outcome<Arrival>.Refused(
                new FieldProblem("", "Too many are waiting at the door. Tell your instructor.")
            );
        var student = door.ListedComeIn
            ? await FreeListedAsync(shop, door.CourseId, tidy, cancel)
            : null;
        var token = Add(shop, door.CourseId, student, tidy, kind, out var device);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        news.Tell(new(NewsKind.Joining, door.CourseId, student, device));
        return Outcome<Arrival>.Saved(new(token, student is not null));
    }

    /// <summary>Comes with a one-time code; it is used up.</summary>
    public async Task<Outcome<Arrival>> UseStudentCodeAsync(
        string code,
        string kind,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        if (
            await StudentCodeAsync(shop, code, cancel) is not { } one
            || one.UntilUtc <= Now
            || one.Student!.Course!.IsArchived
        )
            return Outcome<Arrival>.Refused(NotNow);
        var student = one.Student;
        shop.Remove(one);
        var token = Add(shop, student.CourseId, student.Id, student.Name, kind, out var device);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        news.Tell(new(NewsKind.Joining, student.CourseId, student.Id, device));
        return Outcome<Arrival>.Saved(new(token, IsIn: true));
    }

    /// <summary>The device behind a token, or null: ended, turned away, never known, or unused for too long.</summary>
    public async Task<KnownDevice?> FindAsync(string token, CancellationToken cancel = default)
    {
        if (token.Length != 64)
            return null;
        var hash = Secret.HashOf(token);
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var found = await shop.Set<DeviceRow>()
            .AsNoTracking()
            .Include(d => d.Student)
            .SingleOrDefaultAsync(d => d.TokenHash == hash, cancel);
        if (found is null || found.SeenUtc < Now - UnusedHolds)
            return null;
        if (found.StudentId is null && found.AskedUtc < Now - WaitingHolds)
            return null;
        if (found.SeenUtc < Now.AddDays(-1))
            await shop.Set<DeviceRow>()
                .Where(d => d.Id == found.Id)
                .ExecuteUpdateAsync(d => d.SetProperty(x => x.SeenUtc, Now), cancel);
        return new(
            found.Id,
            found.CourseId,
            found.StudentId,
            found.Student?.ToView().Shown ?? found.AskedName
        );
    }

    /// <summary>Whether this device may still be here.</summary>
    public async Task<bool> HoldsAsync(Guid deviceId, CancellationToken cancel = default)
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        return await shop.Set<DeviceRow>()
            .AnyAsync(d => d.Id == deviceId && d.StudentId != null, cancel);
    }

    /// <summary>The holder signs out: the token opens nothing from now on.</summary>
    public async Task LeaveAsync(string token, CancellationToken cancel = default)
    {
        var hash = Secret.HashOf(token);
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var device = await shop.Set<DeviceRow>()
            .SingleOrDefaultAsync(d => d.TokenHash == hash, cancel);
        if (device is null)
            return;
        shop.Remove(device);
        await shop.SaveChangesAsync(cancel);
        news.Tell(new(NewsKind.Ended, device.CourseId, device.StudentId, device.Id));
    }

    private DateTime Now => clock.GetUtcNow().UtcDateTime;

    private bool IsOpen(DoorRow door) =>
        door is { IsOpen: true, Course.IsArchived: false } && door.CodeUntilUtc > Now;

    private string Add(
        ShopContext shop,
        Guid courseId,
        Guid? studentId,
        string name,
        string kind,
        out Guid device
    )
    {
        var token = Secret.Make();
        var row = new DeviceRow
        {
            Id = device = Guid.NewGuid(),
            CourseId = courseId,
            StudentId = studentId,
            AskedName = name,
            TokenHash = Secret.HashOf(token),
            Kind = kind,
            AskedUtc = Now,
            AdmittedUtc = studentId is null ? null : Now,
            SeenUtc = Now,
        };
        shop.Add(row);
        return token;
    }

    /// <summary>The one student of that name or alias who has no device; null when there is none, or more than one.</summary>
    private static async Task<Guid?> FreeListedAsync(
        ShopContext shop,
        Guid courseId,
        string name,
        CancellationToken cancel
    )
    {
        var students = await shop
            .Students.Where(s => s.CourseId == courseId)
            .Select(s => new
            {
                s.Id,
                s.Name,
                s.Alias,
                IsTaken = shop.Set<DeviceRow>().Any(d => d.StudentId == s.Id),
            })
            .ToListAsync(cancel);
        var named = students.Where(s => Same(s.Name) || Same(s.Alias)).ToList();
        return named is [{ IsTaken: false } only] ? only.Id : null;

        bool Same(string listed) => string.Equals(listed, name, StringComparison.OrdinalIgnoreCase);
    }

    private static Task<DoorRow?> DoorAsync(
        ShopContext shop,
        string code,
        CancellationToken cancel
    ) =>
        shop.Set<DoorRow>()
            .AsNoTracking()
            .Include(d => d.Course)
            .SingleOrDefaultAsync(d => d.Code == code, cancel);

    private static Task<StudentCodeRow?> StudentCodeAsync(
        ShopContext shop,
        string code,
        CancellationToken cancel
    )
    {
        var hash = Secret.HashOf(code);
        return shop.Set<StudentCodeRow>()
            .Include(c => c.Student!.Course)
            .SingleOrDefaultAsync(c => c.CodeHash == hash, cancel);
    }
}
