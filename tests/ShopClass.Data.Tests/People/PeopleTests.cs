using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Lessons;
using ShopClass.Core.Measure;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Lessons;
using ShopClass.Data.People;
using Xunit;

namespace ShopClass.Data.Tests.People;

public sealed class PeopleTests : IAsyncLifetime
{
    private readonly StoppedClock _clock = new();
    private ThrowAwayStore _store = default!;
    private InstructorViewer _owner = default!;
    private InstructorViewer _other = default!;
    private CourseView _course = default!;
    private LessonView _lesson = default!;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private PeopleStore People => _store.Services.GetRequiredService<PeopleStore>();

    private Invitations Door => _store.Services.GetRequiredService<Invitations>();

    private DateOnly Today => DateOnly.FromDateTime(_clock.GetLocalNow().DateTime);

    public async ValueTask InitializeAsync()
    {
        _store = await ThrowAwayStore.MakeAsync(clock: _clock);
        _owner = await _store.AddInstructorAsync("owner");
        _other = await _store.AddInstructorAsync("other");
        _course = (await _store.Courses.CreateAsync(_owner, "Evenings", UnitSystem.Inch)).Value!;
        _lesson = (
            await _store.Lessons.AddAsync(
                _owner,
                _course.Id,
                new()
                {
                    Title = "Third evening",
                    Date = Today.AddDays(2),
                    Minutes = 120,
                }
            )
        ).Value!;
    }

    [Fact]
    public async Task An_invitation_works_once_and_survives_a_restart()
    {
        var made = (await People.InviteHelperAsync(_owner, _course.Id, Cancel)).Value!;
        await using var restarted = _store.Restarted();
        var typed = Invitations.Read(Invitations.Write(made.Code).ToLowerInvariant())!;

        Assert.True((await Door.UseAsync(_other, typed, Cancel)).IsSaved);
        var third = await _store.AddInstructorAsync("third");
        var again = await Door.UseAsync(third, typed, Cancel);

        Assert.Equal(OutcomeKind.Refused, again.Kind);
        var courses = restarted.GetRequiredService<CourseStore>();
        Assert.Equal(
            CourseRole.Helper,
            (await courses.FindAsync(_other, _course.Id, Cancel))?.Role
        );
        Assert.Null(await courses.FindAsync(third, _course.Id, Cancel));
    }

    [Fact]
    public async Task An_invitation_runs_out_and_can_be_taken_back()
    {
        var late = (await People.InviteHelperAsync(_owner, _course.Id, Cancel)).Value!;
        _clock.Advance(PeopleStore.InvitationHolds + TimeSpan.FromMinutes(1));
        Assert.Null(await Door.LookUpAsync(late.Code, Cancel));

        var back = (await People.InviteHelperAsync(_owner, _course.Id, Cancel)).Value!;
        Assert.True((await People.TakeBackAsync(_owner, back.Invitation.Id, Cancel)).IsSaved);
        Assert.Equal(OutcomeKind.Refused, (await Door.UseAsync(_other, back.Code, Cancel)).Kind);
    }

    [Fact]
    public async Task Only_the_hash_of_a_code_is_kept()
    {
        var made = (await People.InviteHelperAsync(_owner, _course.Id, Cancel)).Value!;
        await using var shop = _store.Open();
        var row = await shop.Invitations.SingleAsync(Cancel);

        Assert.DoesNotContain(made.Code, row.CodeHash, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(64, row.CodeHash.Length);
    }

    [Fact]
    public async Task A_stand_in_is_there_on_the_lesson_s_day_alone_and_moves_with_the_lesson()
    {
        var made = (await People.InviteStandInAsync(_owner, _course.Id, _lesson.Id, Cancel)).Value!;
        await Door.UseAsync(_other, made.Code, Cancel);
        Assert.Equal(_lesson.Lesson.Date, Assert.Single(await Door.DaysAsync(_other, Cancel)).Day);
        Assert.Empty(await _store.Courses.ListAsync(_other, Cancel));

        _clock.Advance(TimeSpan.FromDays(2));
        Assert.Equal(
            CourseRole.StandIn,
            Assert.Single(await _store.Courses.ListAsync(_other, Cancel)).Role
        );

        var moved = _lesson.Lesson with { Date = Today.AddDays(7) };
        await _store.Lessons.SaveAsync(
            _owner,
            _course.Id,
            _lesson.Id,
            moved,
            _lesson.Version,
            Cancel
        );
        Assert.Null(await _store.Courses.FindAsync(_other, _course.Id, Cancel));
        _clock.Advance(TimeSpan.FromDays(7));
        Assert.NotNull(await _store.Courses.FindAsync(_other, _course.Id, Cancel));
        _clock.Advance(TimeSpan.FromDays(1));
        Assert.Null(await _store.Courses.FindAsync(_other, _course.Id, Cancel));
    }

    [Fact]
    public async Task A_lesson_that_is_over_and_a_lesson_of_another_course_get_no_stand_in()
    {
        _clock.Advance(TimeSpan.FromDays(3));
        var over = await People.InviteStandInAsync(_owner, _course.Id, _lesson.Id, Cancel);
        Assert.Equal("Lesson", Assert.Single(over.Problems).Field);

        var theirs = (
            await _store.Courses.CreateAsync(_other, "Mornings", UnitSystem.Inch, Cancel)
        ).Value!;
        var elsewhere = await People.InviteStandInAsync(_other, theirs.Id, _lesson.Id, Cancel);
        Assert.Equal(OutcomeKind.NotFound, elsewhere.Kind);
    }

    [Fact]
    public async Task Removing_somebody_tells_their_pages_and_ends_their_sign_ins()
    {
        var made = (await People.InviteHelperAsync(_owner, _course.Id, Cancel)).Value!;
        await Door.UseAsync(_other, made.Code, Cancel);
        var before = await StampAsync();
        List<News> heard = [];
        using var listening = _store.Services.GetRequiredService<ClassNews>().Listen(heard.Add);
        var person = Assert.Single((await People.FindAsync(_owner, _course.Id, Cancel))!.People);
        Assert.Equal("other", person.Name);

        Assert.True((await People.RemoveAsync(_owner, person.Id, Cancel)).IsSaved);

        Assert.Null(await _store.Courses.FindAsync(_other, _course.Id, Cancel));
        Assert.Equal(_other.UserId, Assert.Single(heard).AccountId);
        Assert.NotEqual(before, await StampAsync());
    }

    [Fact]
    public async Task The_owner_s_own_code_is_not_for_the_owner()
    {
        var made = (await People.InviteHelperAsync(_owner, _course.Id, Cancel)).Value!;
        var own = await Door.UseAsync(_owner, made.Code, Cancel);
        Assert.Equal("Code", Assert.Single(own.Problems).Field);
        Assert.NotNull(await Door.LookUpAsync(made.Code, Cancel));
    }

    public async ValueTask DisposeAsync() => await _store.DisposeAsync();

    private async Task<string?> StampAsync()
    {
        await using var shop = _store.Open();
        return await shop
            .Users.Where(u => u.Id == _other.UserId)
            .Select(u => u.SecurityStamp)
            .SingleAsync(Cancel);
    }
}
