using Bunit;
using ShopClass.Data.Access;
using ShopClass.Web.Features.Students;

namespace ShopClass.Web.Tests.Students;

public sealed class StudentPageTests : IAsyncLifetime
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private Classroom _room = default!;

    public async ValueTask InitializeAsync() => _room = await Classroom.OpenAsync();

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    [Fact]
    public async Task A_board_is_drawn_described_and_judged_at_once()
    {
        await _room.LogAsync(Classroom.Pine);

        var page = Open();

        Assert.Contains(
            "3/4 × 7 1/4 × 72 in · eastern white pine",
            page.Find(".board-line").TextContent,
            StringComparison.OrdinalIgnoreCase
        );
        Assert.NotEmpty(page.FindAll(".wide-only svg"));
        Assert.Equal("Fits", page.WaitForElement(".verdict .mark", Patience).TextContent);
    }

    [Fact]
    public async Task Removing_says_what_goes_before_it_does()
    {
        await _room.LogAsync(Classroom.Pine);
        var page = Open();

        await Press(page, "Remove student");
        Assert.Contains("with 1 board.", page.Markup, StringComparison.Ordinal);
        Assert.NotNull(await StoredAsync());

        await Press(page, "Remove Juno Alder");
        Assert.Null(await StoredAsync());
    }

    [Fact]
    public async Task A_card_is_changed_where_it_stands()
    {
        var page = Open();
        await Press(page, "Change card");
        page.Find("#student-alias").Change("Jun");
        page.Find(".student-card-form input[type=checkbox]").Change(true);
        page.Find("#student-consent").Change("no");
        page.Find("#student-consent-on").Change("2026-01-07");

        await page.Find(".student-card-form").SubmitAsync();

        Assert.Equal("Jun", page.Find("h1").TextContent);
        Assert.True((await StoredAsync())!.Card.IsLeftHanded);
        Assert.Equal(new(false, new(2026, 1, 7)), (await StoredAsync())!.Card.Consent);
        Assert.Contains("no, 7 January 2026", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_name_that_is_left_empty_is_refused_at_its_field_and_nothing_is_saved()
    {
        var page = Open();
        await Press(page, "Change card");
        page.Find("#student-name").Change("");

        await page.Find(".student-card-form").SubmitAsync();

        Assert.NotEmpty(page.Find(".student-card-form .problem").TextContent);
        Assert.Equal("Juno Alder", (await StoredAsync())!.Card.Name);
    }

    [Fact]
    public void A_student_sees_their_own_page_without_the_instructors_tools()
    {
        var page = Open(new StudentViewer(_room.Student.Id, _room.Course.Id));

        Assert.Equal("Juno Alder", page.Find("h1").TextContent);
        Assert.DoesNotContain("Remove student", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void Home_asks_for_the_one_thing_to_do_next()
    {
        var home = _room.Open<MyPage>(
            _ => { },
            new StudentViewer(_room.Student.Id, _room.Course.Id)
        );

        Assert.Equal(
            $"/my/board/new/{_room.Project.Id}/length",
            home.Find(".next-thing a").GetAttribute("href")
        );
    }

    private Task<Data.Students.StudentView?> StoredAsync() =>
        _room.Store.Students.FindAsync(_room.Instructor, _room.Student.Id);

    private IRenderedComponent<StudentPage> Open(Viewer? viewer = null) =>
        _room.Open<StudentPage>(
            p => p.Add(x => x.CourseId, _room.Course.Id).Add(x => x.StudentId, _room.Student.Id),
            viewer
        );

    private static Task Press(IRenderedComponent<StudentPage> page, string button) =>
        page.FindAll("button").First(b => b.TextContent.Trim() == button).ClickAsync(new());
}
