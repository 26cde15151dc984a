using Bunit;
using ShopClass.Core.Measure;
using ShopClass.Data.CourseFiles;
using ShopClass.Web.Features.Courses;

namespace ShopClass.Web.Tests.Courses;

public sealed class CourseListTests : IAsyncLifetime
{
    private static CancellationToken Cancel => Xunit.TestContext.Current.CancellationToken;

    private Office office = default!;

    public async ValueTask InitializeAsync() => office = await Office.OpenAsync();

    public ValueTask DisposeAsync() => office.DisposeAsync();

    [Fact]
    public async Task A_new_course_opens_with_its_unit()
    {
        var page = office.Open<CourseListPage>();
        await page.Find("#course-name").ChangeAsync(new() { Value = "Saturday class" });
        await page.Find("#course-unit").ChangeAsync(new() { Value = "Metric" });

        await page.Find("section[aria-labelledby=new-course] form").SubmitAsync();

        var courses = await office.Store.Courses.ListAsync(office.Instructor, Cancel);
        var made = courses.Single(c => c.Name == "Saturday class");
        Assert.EndsWith($"/courses/{made.Id}", office.Address, StringComparison.Ordinal);
        var stored = await office.Store.Courses.FindAsync(office.Instructor, made.Id, Cancel);
        Assert.Equal(UnitSystem.Metric, stored!.Rules.Unit);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    public async Task A_course_without_a_name_is_asked_for_one_at_the_field(string typed)
    {
        var page = office.Open<CourseListPage>();
        await page.Find("#course-name").ChangeAsync(new() { Value = typed });

        await page.Find("section[aria-labelledby=new-course] form").SubmitAsync();

        Assert.StartsWith(
            "A name is missing.",
            page.Find("#course-name-problem").TextContent,
            StringComparison.Ordinal
        );
        Assert.Single(await office.Store.Courses.ListAsync(office.Instructor, Cancel));
    }

    [Fact]
    public async Task A_course_is_renamed_where_it_stands()
    {
        var page = office.Open<CourseListPage>();

        await page.Find("button[aria-label='Rename Evening class']").ClickAsync(new());
        await page.Find(".row-title input").ChangeAsync(new() { Value = "Monday class" });
        await page.Find(".row-title form").SubmitAsync();

        Assert.Equal("Monday class", page.Find(".ruled a").TextContent);
    }

    [Fact]
    public async Task An_archived_course_moves_to_the_archive_and_back()
    {
        var page = office.Open<CourseListPage>();

        await page.Find("button[aria-label='Archive Evening class']").ClickAsync(new());
        Assert.Contains(
            "1 archived course",
            page.Find("details summary").TextContent,
            StringComparison.Ordinal
        );
        await page.Find("button[aria-label='Take Evening class out of the archive']")
            .ClickAsync(new());

        Assert.Empty(page.FindAll("details"));
        Assert.False(
            (await office.Store.Courses.ListAsync(office.Instructor, Cancel))[0].IsArchived
        );
    }

    [Fact]
    public void A_file_of_20_MB_is_refused_before_it_is_fetched()
    {
        var page = office.Open<CourseListPage>();
        var big = InputFileContent.CreateFromBinary(new byte[20 * 1024 * 1024], "big.json");

        page.FindComponent<Microsoft.AspNetCore.Components.Forms.InputFile>().UploadFiles(big);

        Assert.Contains(
            "The file has 20 MB. A course file has at most 4 MB",
            page.Find("[role=alert].note").TextContent,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("this is no JSON")]
    [InlineData("{\n \"shopclass\": 1,\n \"kind\": \"course\",\n \"course\": { \"name\": 7 }\n}")]
    public async Task A_bad_file_is_refused_with_its_line_and_changes_nothing(string text)
    {
        var page = office.Open<CourseListPage>();

        page.FindComponent<Microsoft.AspNetCore.Components.Forms.InputFile>()
            .UploadFiles(InputFileContent.CreateFromText(text, "bad.json"));

        page.WaitForAssertion(() =>
            Assert.Contains(
                "Line ",
                page.Find(".problem-lines").TextContent,
                StringComparison.Ordinal
            )
        );
        Assert.Single(await office.Store.Courses.ListAsync(office.Instructor, Cancel));
    }

    [Fact]
    public async Task A_good_file_makes_a_course_and_opens_it()
    {
        var text = await office.Store.Files.ExportCourseAsync(
            office.Instructor,
            office.Course.Id,
            Cancel
        );
        var page = office.Open<CourseListPage>();

        page.FindComponent<Microsoft.AspNetCore.Components.Forms.InputFile>()
            .UploadFiles(InputFileContent.CreateFromText(text!, "good.json"));

        page.WaitForAssertion(() => Assert.Matches("/courses/[0-9a-f-]{36}$", office.Address));
        Assert.Equal(2, (await office.Store.Courses.ListAsync(office.Instructor, Cancel)).Count);
    }
}
