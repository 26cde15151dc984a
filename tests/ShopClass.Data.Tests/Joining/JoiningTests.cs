using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopClass.Core.Measure;
using ShopClass.Data.Access;
using ShopClass.Data.Courses;
using ShopClass.Data.Joining;
using ShopClass.Data.Students;
using Xunit;

namespace ShopClass.Data.Tests.Joining;

public sealed class JoiningTests : IAsyncLifetime
{
    private readonly StoppedClock clock = new();
    private ThrowAwayStore store = default!;
    private InstructorViewer instructor = default!;
    private CourseView course = default!;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        store = await ThrowAwayStore.MakeAsync(clock: clock);
        instructor = await store.AddInstructorAsync();
        course = (
            await store.Courses.CreateAsync(instructor, "Evenings", UnitSystem.Inch, Cancel)
        ).Value!;
    }

    public ValueTask DisposeAsync() => store.DisposeAsync();

    [Theory]
    [InlineData("Ada Holm")]
    [InlineData("ada holm")]
    [InlineData(" Heron ")]
    public async Task A_listed_name_comes_straight_in(string name)
    {
        var ada = await AddAsync("Ada Holm", "Heron");
        var door = await OpenAsync();

        var arrival = await AskAsync(door, name);

        Assert.True(arrival.IsIn);
        var device = await store.JoinDesk.FindAsync(arrival.Token, Cancel);
        Assert.Equal(
            (ada.Id, course.Id, "Heron"),
            (device!.StudentId, device.CourseId, device.Shown)
        );
    }

    [Fact]
    public async Task A_listed_name_that_is_taken_or_borne_by_two_waits()
    {
        await AddAsync("Ada", "");
        await AddAsync("Bo", "");
        await AddAsync("bo", "");
        var door = await OpenAsync();
        await AskAsync(door, "Ada");

        Assert.False((await AskAsync(door, "Ada")).IsIn);
        Assert.False((await AskAsync(door, "Bo")).IsIn);
    }

    [Fact]
    public async Task A_door_that_asks_about_everybody_lets_nobody_straight_in()
    {
        await AddAsync("Ada", "");
        var door = await OpenAsync(listedComeIn: false);

        Assert.False((await AskAsync(door, "Ada")).IsIn);
    }

    [Fact]
    public async Task Who_waits_is_let_in_as_a_new_student_of_that_name()
    {
        var door = await OpenAsync();
        var arrival = await AskAsync(door, "<script>alert(1)</script>");
        Assert.Null((await store.JoinDesk.FindAsync(arrival.Token, Cancel))!.StudentId);

        var admitted = await store.Doors.AdmitAsync(instructor, await WaitingAsync(), null, Cancel);

        var device = await store.JoinDesk.FindAsync(arrival.Token, Cancel);
        Assert.Equal(admitted.Value, device!.StudentId);
        var student = Assert.Single(await store.Students.ListAsync(instructor, course.Id, Cancel));
        Assert.Equal("<script>alert(1)</script>", student.Shown);
    }

    [Fact]
    public async Task Nobody_is_let_in_as_a_student_of_another_course()
    {
        var other = (
            await store.Courses.CreateAsync(instructor, "Mornings", UnitSystem.Inch, Cancel)
        ).Value!;
        var elsewhere = (
            await store.Students.AddAsync(instructor, other.Id, new("Cleo", "", false), Cancel)
        ).Value!;
        await AskAsync(await OpenAsync(), "Cleo");

        var outcome = await store.Doors.AdmitAsync(
            instructor,
            await WaitingAsync(),
            elsewhere.Id,
            Cancel
        );

        Assert.Equal(OutcomeKind.NotFound, outcome.Kind);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("a\u0001b")]
    public async Task A_name_that_is_none_is_refused_with_a_sentence(string name)
    {
        var outcome = await store.JoinDesk.AskAsync((await OpenAsync()).Code, name, "x", Cancel);

        Assert.Equal("Name", Assert.Single(outcome.Problems).Field);
        Assert.Empty(await store.Doors.DevicesAsync(instructor, course.Id, Cancel));
    }

    [Fact]
    public async Task A_name_of_300_characters_is_refused_with_its_length()
    {
        var outcome = await store.JoinDesk.AskAsync(
            (await OpenAsync()).Code,
            new string('x', 300),
            "x",
            Cancel
        );

        Assert.Contains("300", Assert.Single(outcome.Problems).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_code_that_ran_out_was_turned_off_replaced_or_archived_opens_nothing()
    {
        var first = await OpenAsync();
        var second = await OpenAsync();
        Assert.Equal(CodeOpens.Nothing, await OpensAsync(first.Code));
        Assert.Equal(CodeOpens.Class, await OpensAsync(second.Code));

        clock.Advance(TimeSpan.FromDays(8));
        Assert.Equal(CodeOpens.NothingNow, await OpensAsync(second.Code));
        Assert.False((await store.JoinDesk.AskAsync(second.Code, "Ada", "x", Cancel)).IsSaved);

        var third = await OpenAsync();
        await store.Doors.CloseAsync(instructor, course.Id, Cancel);
        Assert.Equal(CodeOpens.NothingNow, await OpensAsync(third.Code));

        var fourth = await OpenAsync();
        await store.Courses.ArchiveAsync(instructor, course.Id, true, course.Version, Cancel);
        Assert.Equal(CodeOpens.NothingNow, await OpensAsync(fourth.Code));
    }

    [Fact]
    public async Task A_one_time_code_works_once_and_the_lost_phone_is_out()
    {
        var ada = await AddAsync("Ada", "");
        var lost = await AskAsync(await OpenAsync(), "Ada");

        var code = (
            await store.Doors.NewStudentCodeAsync(instructor, ada.Id, endsOthers: true, Cancel)
        ).Value!;
        Assert.Null(await store.JoinDesk.FindAsync(lost.Token, Cancel));
        Assert.Equal(CodeOpens.Student, await OpensAsync(code));
        var found = (await store.JoinDesk.UseStudentCodeAsync(code, "x", Cancel)).Value!;

        Assert.Equal(ada.Id, (await store.JoinDesk.FindAsync(found.Token, Cancel))!.StudentId);
        Assert.Equal(CodeOpens.Nothing, await OpensAsync(code));
        Assert.False((await store.JoinDesk.UseStudentCodeAsync(code, "x", Cancel)).IsSaved);
    }

    [Fact]
    public async Task A_one_time_code_holds_for_a_day()
    {
        var ada = await AddAsync("Ada", "");
        var code = (
            await store.Doors.NewStudentCodeAsync(instructor, ada.Id, false, Cancel)
        ).Value!;

        clock.Advance(TimeSpan.FromHours(25));

        Assert.Equal(CodeOpens.NothingNow, await OpensAsync(code));
        Assert.False((await store.JoinDesk.UseStudentCodeAsync(code, "x", Cancel)).IsSaved);
    }

    [Fact]
    public async Task Two_phones_with_the_same_one_time_code_at_once_let_one_in()
    {
        var ada = await AddAsync("Ada", "");
        var code = (
            await store.Doors.NewStudentCodeAsync(instructor, ada.Id, false, Cancel)
        ).Value!;

        var outcomes = await Task.WhenAll(
            Enumerable
                .Range(0, 8)
                .Select(_ => Task.Run(() => store.JoinDesk.UseStudentCodeAsync(code, "x", Cancel)))
        );

        Assert.Single(outcomes, o => o.IsSaved);
        Assert.Single(await store.Doors.DevicesAsync(instructor, course.Id, Cancel));
    }

    [Fact]
    public async Task A_device_ends_with_its_student_its_own_leave_and_its_instructor_s_word()
    {
        List<News> told = [];
        using var listening = store.Services.GetRequiredService<ClassNews>().Listen(told.Add);
        var door = await OpenAsync();
        var ada = await AddAsync("Ada", "");
        await AddAsync("Bo", "");
        await AddAsync("Cy", "");
        var (one, two, three) = (
            await AskAsync(door, "Ada"),
            await AskAsync(door, "Bo"),
            await AskAsync(door, "Cy")
        );
        var known = (await store.JoinDesk.FindAsync(three.Token, Cancel))!;

        await store.Students.RemoveAsync(instructor, ada.Id, Cancel);
        await store.JoinDesk.LeaveAsync(two.Token, Cancel);
        await store.Doors.EndAsync(instructor, known.DeviceId, Cancel);

        foreach (var gone in (Arrival[])[one, two, three])
            Assert.Null(await store.JoinDesk.FindAsync(gone.Token, Cancel));
        Assert.False(await store.JoinDesk.HoldsAsync(known.DeviceId, Cancel));
        Assert.Equal(3, told.Count(n => n.Kind is NewsKind.Ended));
    }

    [Fact]
    public async Task A_token_is_kept_as_its_hash_alone()
    {
        var arrival = await AskAsync(await OpenAsync(), "Ada");
        await using var shop = store.Open();

        var row = await shop.Set<DeviceRow>().SingleAsync(Cancel);

        Assert.Equal(64, arrival.Token.Length);
        Assert.NotEqual(arrival.Token, row.TokenHash);
        Assert.Null(await store.JoinDesk.FindAsync(row.TokenHash, Cancel));
    }

    [Fact]
    public async Task A_phone_nobody_used_for_four_months_must_join_anew()
    {
        await AddAsync("Ada", "");
        var arrival = await AskAsync(await OpenAsync(), "Ada");
        clock.Advance(TimeSpan.FromDays(100));
        Assert.NotNull(await store.JoinDesk.FindAsync(arrival.Token, Cancel));
        clock.Advance(TimeSpan.FromDays(100));
        Assert.NotNull(await store.JoinDesk.FindAsync(arrival.Token, Cancel));
        clock.Advance(TimeSpan.FromDays(121));
        Assert.Null(await store.JoinDesk.FindAsync(arrival.Token, Cancel));
    }

    [Fact]
    public async Task Only_so_many_may_wait_at_a_door()
    {
        var door = await OpenAsync();
        for (var i = 0; i < JoinDesk.MostWaiting; i++)
            await AskAsync(door, $"Guest {i}");

        var outcome = await store.JoinDesk.AskAsync(door.Code, "One more", "x", Cancel);

        Assert.Contains(
            "waiting",
            Assert.Single(outcome.Problems).Sentence,
            StringComparison.Ordinal
        );
    }

    private async Task<StudentView> AddAsync(string name, string alias) =>
        (
            await store.Students.AddAsync(instructor, course.Id, new(name, alias, false), Cancel)
        ).Value!;

    private async Task<DoorView> OpenAsync(bool listedComeIn = true) =>
        (await store.Doors.OpenAsync(instructor, course.Id, 7, listedComeIn, Cancel)).Value!;

    private async Task<Arrival> AskAsync(DoorView door, string name) =>
        (await store.JoinDesk.AskAsync(door.Code, name, "Some device", Cancel)).Value!;

    private async Task<CodeOpens> OpensAsync(string code) =>
        (await store.JoinDesk.LookUpAsync(code, Cancel)).Opens;

    private async Task<Guid> WaitingAsync() =>
        (await store.Doors.DevicesAsync(instructor, course.Id, Cancel))
            .First(d => d.StudentId is null)
            .Id;
}
