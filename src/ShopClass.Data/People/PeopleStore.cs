using Microsoft.EntityFrameworkCore;
using ShopClass.Data.Access;
using ShopClass.Data.Joining;
using ShopClass.Data.Store;

namespace ShopClass.Data.People;

/// <summary>The owner's side: who helps in a course and who stands in.</summary>
public sealed class PeopleStore(
    IDbContextFactory<ShopContext> factory,
    TimeProvider clock,
    ClassNews news
)
{
    /// <summary>How long an invitation holds.</summary>
    public static readonly TimeSpan InvitationHolds = TimeSpan.FromDays(7);

    /// <summary>People and open invitations of one course.</summary>
    public const int MostOfACourse = 40;

    /// <summary>Everybody, by name; null when the course is not the viewer's own.</summary>
    public async Task<PeopleView?> FindAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        if (
            !await shop
                .Courses.RunBy(viewer, Deed.ChoosePeople)
                .AnyAsync(c => c.Id == courseId, cancel)
        )
            return null;
        var people = await shop
            .People.IgnoreQueryFilters()
            .Where(p => p.CourseId == courseId)
            .Select(p => new PersonView(
                p.Id,
                shop.Users.Where(u => u.Id == p.AccountId).Select(u => u.UserName!).Single(),
                p.Role,
                p.Lesson == null ? "" : p.Lesson.Title,
                p.Lesson == null ? null : p.Lesson.Date
            ))
            .ToListAsync(cancel);
        var invitations = await shop
            .Invitations.Where(i => i.CourseId == courseId && i.UntilUtc > Now)
            .OrderBy(i => i.UntilUtc)
            .Select(i => new InvitationView(
                i.Id,
                i.Role,
                i.Lesson == null ? null : i.Lesson.Date,
                i.UntilUtc
            ))
            .ToListAsync(cancel);
        return new(
            [
                .. people
                    .OrderBy(p => p.Role)
                    .ThenBy(p => p.Day)
                    .ThenBy(p => p.Name, Ordering.OfNames),
            ],
            invitations
        );
    }

    /// <summary>A one-time code for a helper.</summary>
    public Task<Outcome<NewInvitation>> InviteHelperAsync(
        Viewer viewer,
        Guid courseId,
        CancellationToken cancel = default
    ) => InviteAsync(viewer, courseId, CourseRole.Helper, null, cancel);

    /// <summary>A one-time code for whoever takes this lesson. It may be used until the lesson is over.</summary>
    public Task<Outcome<NewInvitation>> InviteStandInAsync(
        Viewer viewer,
        Guid courseId,
        Guid lessonId,
        CancellationToken cancel = default
    ) => InviteAsync(viewer, courseId, CourseRole.StandIn, lessonId, cancel);

    /// <summary>Takes an invitation back: its code makes nobody anything any more.</summary>
    public async Task<Outcome<bool>> TakeBackAsync(
        Viewer viewer,
        Guid invitationId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        if (viewer is not InstructorViewer owner)
            return Outcome<bool>.NotFound();
        var row = await shop
            .Invitations.In(i => i.Course!, owner, Deed.ChoosePeople)
            .SingleOrDefaultAsync(i => i.Id == invitationId, cancel);
        if (row is null)
            return Outcome<bool>.NotFound();
        shop.Remove(row);
        await shop.SaveChangesAsync(cancel);
        return Outcome<bool>.Saved(true);
    }

    /// <summary>
    /// Ends somebody's role. They are signed out everywhere, and every page they have open ends at once; their account
    /// stays, for courses of their own.
    /// </summary>
    public async Task<Outcome<bool>> RemoveAsync(
        Viewer viewer,
        Guid personId,
        CancellationToken cancel = default
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        if (viewer is not InstructorViewer owner)
            return Outcome<bool>.NotFound();
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var row = await shop
            .People.IgnoreQueryFilters()
            .In(p => p.Course!, owner, Deed.ChoosePeople)
            .SingleOrDefaultAsync(p => p.Id == personId, cancel);
        if (row is null)
            return Outcome<bool>.NotFound();
        var (course, account) = (row.CourseId, row.AccountId);
        shop.Remove(row);
        await shop.SaveChangesAsync(cancel);
        var stamp = Guid.NewGuid().ToString("N");
        await shop
            .Users.Where(u => u.Id == account)
            .ExecuteUpdateAsync(u => u.SetProperty(x => x.SecurityStamp, stamp), cancel);
        await writing.CommitAsync(cancel);
        news.Tell(new(NewsKind.Ended, course) { AccountId = account });
        return Outcome<bool>.Saved(true);
    }

    private DateTime Now => clock.GetUtcNow().UtcDateTime;

    private async Task<Outcome<NewInvitation>> InviteAsync(
        Viewer viewer,
        Guid courseId,
        CourseRole role,
        Guid? lessonId,
        CancellationToken cancel
    )
    {
        await using var shop = await factory.CreateDbContextAsync(cancel);
        await using var writing = await shop.Database.BeginTransactionAsync(cancel);
        var course = await shop
            .Courses.RunBy(viewer, Deed.ChoosePeople)
            .Where(c => c.Id == courseId)
            .Select(c => new { c.IsArchived })
            .SingleOrDefaultAsync(cancel);
        var day = await shop
            .Lessons.Where(l => l.Id == lessonId && l.CourseId == courseId)
            .Select(l => (DateOnly?)l.Date)
            .SingleOrDefaultAsync(cancel);
        if (course is null || (lessonId is not null && day is null))
            return Outcome<NewInvitation>.NotFound();
        if (course.IsArchived)
            return Outcome<NewInvitation>.Refused(Wording.CourseIsArchived);
        if (day < shop.Today)
            return Outcome<NewInvitation>.Refused(
                new FieldProblem("Lesson", "That lesson is over. Choose one that is still to come.")
            );
        if (await CountAsync(shop, courseId, cancel) >= MostOfACourse)
            return Outcome<NewInvitation>.Refused(
                new FieldProblem(
                    "",
                    $"A course has {MostOfACourse} helpers, stand-ins and open invitations at most. Remove one first."
                )
            );
        var code = Invitations.MakeCode();
        var row = new InvitationRow
        {
            Id = Guid.NewGuid(),
            CourseId = courseId,
            Role = role,
            LessonId = lessonId,
            CodeHash = Secret.HashOf(code),
            UntilUtc = Now + InvitationHolds,
        };
        shop.Add(row);
        await shop.SaveChangesAsync(cancel);
        await writing.CommitAsync(cancel);
        return Outcome<NewInvitation>.Saved(new(code, new(row.Id, role, day, row.UntilUtc)));
    }

    private async Task<int> CountAsync(ShopContext shop, Guid courseId, CancellationToken cancel) =>
        await shop.People.IgnoreQueryFilters().CountAsync(p => p.CourseId == courseId, cancel)
        + await shop.Invitations.CountAsync(
            i => i.CourseId == courseId && i.UntilUtc > Now,
            cancel
        );
}
