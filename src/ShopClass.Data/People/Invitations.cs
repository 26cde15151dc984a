using Microsoft.EntityFrameworkCore;
using ShopClass.Data.Access;
using ShopClass.Data.Joining;
using ShopClass.Data.Store;

namespace ShopClass.Data.People;

/// <summary>
/// The invited one's side: what a code makes of them, and using it. How often somebody may try is the web's to limit.
/// </summary>
public sealed class Invitations(IDbContextFactory<ShopContext> factory, TimeProvider clock)
{
    /// <summary>Letters and figures of a code: two of a class's, 74 bits.</summary>
    public const int CodeLength = 2 * JoinCode.Length;

    private static readonly FieldProblem NotNow = new(
        "Code",
        "This invitation has run out, was used or was taken back. Ask for a new one."
    );

    /// <summary>As it is handed on: <c>CDFG-HJKM-NPQR-TVWX</c>.</summary>
    public static string Write(string code) =>
        $"{JoinCode.Write(code[..JoinCode.Length])}-{JoinCode.Write(code[JoinCode.Length..])}";

    /// <summary>What was typed, as a code; null when it cannot be one.</summary>
    public static string? Read(string? typed)
    {
        var kept = string.Concat((typed ?? "").Where(char.IsAsciiLetterOrDigit));
        return
            kept.Length == CodeLength
            && JoinCode.Read(kept[..JoinCode.Length]) is { } first
            && JoinCode.Read(kept[JoinCode.Length..]) is { } second
            ? first + second
            : null;
    }

    /// <summary>What it makes of whoever uses it; null when it makes nothing, or not any more.</summary>
    public async Task<InvitationFound?> LookUpAsync(string code, CancellationToken cancel = default)
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        return await OpenAsync(shop, code, cancel) is { } row
            ? new(row.Course!.Name, row.Role, row.Lesson?.Date)
            : null;
    }

    /// <summary>
    /// Makes the viewer what the code says; it is used up. Refuses a code that makes nothing (field "Code"), and the
    /// course's own instructor.
    /// </summary>
    public async Task<Outcome<Guid>> UseAsync(
        Viewer viewer,
        string code,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        if (
            viewer is not InstructorViewer instructor
            || !await shop.Users.AnyAsync(u => u.Id == instructor.UserId, cancel)
        )
            return Outcome<Guid>.NotFound();
        if (await OpenAsync(shop, code, cancel) is not { } invitation)
            return Outcome<Guid>.Refused(NotNow);
        if (invitation.Course!.OwnerId == instructor.UserId)
            return Outcome<Guid>.Refused(
                new FieldProblem(
                    "Code",
                    "This is your own course. Hand the code on to somebody else."
                )
            );
        var isThere = await shop
            .People.IgnoreQueryFilters()
            .AnyAsync(
                p =>
                    p.CourseId == invitation.CourseId
                    && p.AccountId == instructor.UserId
                    && p.Role == invitation.Role
                    && p.LessonId == invitation.LessonId,
                cancel
            );
        if (!isThere)
            shop.Add(
                new PersonRow
                {
                    Id = Guid.NewGuid(),
                    CourseId = invitation.CourseId,
                    AccountId = instructor.UserId,
                    Role = invitation.Role,
                    LessonId = invitation.LessonId,
                    SinceUtc = Now,
                }
            );
        shop.Remove(invitation);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<Guid>.Saved(invitation.CourseId);
    }

    /// <summary>The days, from today, on which the viewer stands in somewhere.</summary>
    public async Task<IReadOnlyList<StandInDay>> DaysAsync(
        Viewer viewer,
        CancellationToken cancel = default
    )
    {
        if (viewer is not InstructorViewer instructor)
            return [];
        await using var shop = await factory.CreateDbContextAsync(cancel);
        var today = shop.Today;
        return await shop
            .People.IgnoreQueryFilters()
            .Where(p => p.AccountId == instructor.UserId && p.Lesson!.Date >= today)
            .OrderBy(p => p.Lesson!.Date)
            .Select(p => new StandInDay(p.Course!.Name, p.Lesson!.Title, p.Lesson.Date))
            .ToListAsync(cancel);
    }

    internal static string MakeCode() => JoinCode.Make() + JoinCode.Make();

    private DateTime Now => clock.GetUtcNow().UtcDateTime;

    private Task<InvitationRow?> OpenAsync(ShopContext shop, string code, CancellationToken cancel)
    {
        var hash = Secret.HashOf(code);
        var (now, today) = (Now, shop.Today);
        return shop
            .Invitations.Include(i => i.Course)
            .Include(i => i.Lesson)
            .SingleOrDefaultAsync(
                i =>
                    i.CodeHash == hash
                    && i.UntilUtc > now
                    && !i.Course!.IsArchived
                    && (i.Lesson == null || i.Lesson.Date >= today),
                cancel
            );
    }
}
