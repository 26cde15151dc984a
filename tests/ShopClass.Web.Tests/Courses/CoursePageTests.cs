using Bunit;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Data.Access;
using ShopClass.Data.Projects;
using ShopClass.Data.Students;
using ShopClass.Web.Features.Courses;

namespace ShopClass.Web.Tests.Courses;

public sealed class CoursePageTests : IAsyncLifetime
{
    private static CancellationToken Cancel => Xunit.TestContext.Current.CancellationToken;

    private Office office = default!;

    public async ValueTask InitializeAsync() => office = await Office.OpenAsync();

    public ValueTask DisposeAsync() => office.DisposeAsync();

    [Fact]
    public async Task A_student_is_added_with_alias_and_hand()
    {
        var page = Open();
        await page.Find("#student-name").ChangeAsync(new() { Value = "Mira Ash" });
        await page.Find("#student-alias").ChangeAsync(new() { Value = "Heron" });
        await page.Find("input[type=checkbox]").ChangeAsync(new() { Value = true });

        await page.Find("section[aria-labelledby=class] form").SubmitAsync();

        var added = Assert.Single(
            await office.Store.Students.ListAsync(office.Instructor, office.Course.Id, Cancel)
        );
        Assert.Equal(new StudentCard("Mira Ash", "Heron", IsLeftHanded: true), added.Card);
        Assert.Contains(
            "Heron",
            page.Find("section[aria-labelledby=class]").TextContent,
            StringComparison.Ordinal
        );
        Assert.Equal("", page.Find("#student-name").GetAttribute("value") ?? "");
    }

    [Fact]
    public async Task A_student_without_a_name_is_asked_for_one_at_the_field()
    {
        var page = Open();

        await page.Find("section[aria-labelledby=class] form").SubmitAsync();

        Assert.NotEqual("", page.Find("#student-name-problem").TextContent);
        Assert.Empty(
            await office.Store.Students.ListAsync(office.Instructor, office.Course.Id, Cancel)
        );
    }

    [Fact]
    public async Task Removing_a_project_first_says_what_goes_with_it()
    {
        var (project, _) = await AddBoardAsync();
        var page = Open();

        await page.Find($"button[aria-label='Remove {project.Name}']").ClickAsync(new());

        Assert.Contains(
            "1 row of parts, 1 board",
            page.Find(".confirm p").TextContent,
            StringComparison.Ordinal
        );
        Assert.NotNull(
            await office.Store.Projects.FindAsync(office.Instructor, project.Id, Cancel)
        );
        await page.Find(".confirm button").ClickAsync(new());
        Assert.Null(await office.Store.Projects.FindAsync(office.Instructor, project.Id, Cancel));
    }

    [Fact]
    public async Task Plan_everyone_plans_who_has_a_board_and_stores_it()
    {
        var (project, student) = await AddBoardAsync();
        await office.Store.Students.AddAsync(
            office.Instructor,
            office.Course.Id,
            new("No Board", "", IsLeftHanded: false),
            Cancel
        );
        var page = Open();

        var button = page.FindAll("button")
            .Single(b => b.TextContent.Contains("Plan everyone (1)", StringComparison.Ordinal));
        await button.ClickAsync(new());

        page.WaitForAssertion(
            () => Assert.Contains("1 plan made", page.Markup, StringComparison.Ordinal),
            TimeSpan.FromSeconds(20)
        );
        var plan = await office.Store.Plans.NewestAsync(
            office.Instructor,
            student.Id,
            project.Id,
            Cancel
        );
        Assert.Equal(1, plan!.Number);
        Assert.Contains("Plan 1", page.Markup, StringComparison.Ordinal);
        Assert.Contains($"/sheets/kit/{plan.Id}", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_student_sees_their_line_and_none_of_the_instructor_s_tools()
    {
        var (_, student) = await AddBoardAsync();
        await office.Store.Students.AddAsync(
            office.Instructor,
            office.Course.Id,
            new("Somebody Else", "", IsLeftHanded: false),
            Cancel
        );

        var page = Open(new StudentViewer(student.Id, office.Course.Id));

        Assert.Contains("Your boards", page.Markup, StringComparison.Ordinal);
        Assert.DoesNotContain("Somebody Else", page.Markup, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("form, .title-tools a, button"));
    }

    private IRenderedComponent<CoursePage> Open(Viewer? viewer = null) =>
        office.Open<CoursePage>(p => p.Add(x => x.CourseId, office.Course.Id), viewer);

    private async Task<(ProjectView Project, StudentView Student)> AddBoardAsync()
    {
        var (store, me, course) = (office.Store, office.Instructor, office.Course.Id);
        var project = (await store.Projects.CreateAsync(me, course, "Bench hook", Cancel)).Value!;
        var part = new Part
        {
            Letter = "A",
            Name = "base",
            Quantity = 1,
            Finished = new(Length.FromInches(0, 3, 4), Length.FromInches(6), Length.FromInches(10)),
        };
        await store.Projects.AddPartsAsync(me, project.Id, [part], Cancel);
        var student = (
            await store.Students.AddAsync(
                me,
                course,
                new("Mira Ash", "", IsLeftHanded: false),
                Cancel
            )
        ).Value!;
        var width = Length.FromInches(7, 1, 4);
        var board = new Board
        {
            Id = "new",
            Name = "Board 1",
            SpeciesId = "eastern-white-pine",
            Surfacing = Surfacing.S4S,
            Thickness = Length.FromInches(0, 3, 4),
            WidthAtStart = width,
            WidthAtMiddle = width,
            WidthAtEnd = width,
            Length = Length.FromInches(48),
        };
        Assert.True(
            (await store.Boards.AddAsync(me, student.Id, project.Id, board, Cancel)).IsSaved
        );
        return (project, student);
    }
}
