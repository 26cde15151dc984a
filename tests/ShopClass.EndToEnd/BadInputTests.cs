using System.Text;
using Microsoft.Playwright;

namespace ShopClass.EndToEnd;

/// <summary>Slips and mischief at the real pages: a sentence at the place, what was typed stays, nothing half-saved.</summary>
[Collection(OneApp.Name)]
public sealed class BadInputTests(RunningApp app)
{
    [Theory]
    [InlineData("six")]
    [InlineData("0")]
    [InlineData("-3")]
    [InlineData("5280'")]
    public async Task A_width_nobody_can_read_stays_in_its_field_with_a_sentence(string typed)
    {
        await using var instructor = await Person.AtADesk(app);
        await OpenProject(instructor);
        var width = instructor.Page.GetByLabel("Width of A, side");
        await width.FillAsync(typed);
        await width.BlurAsync();
        await Assertions.Expect(width).ToHaveAttributeAsync("aria-invalid", "true");
        await Assertions.Expect(width).ToHaveValueAsync(typed);

        await instructor.Page.ReloadAsync();
        await instructor.Settle();
        await Assertions
            .Expect(instructor.Page.GetByLabel("Width of A, side"))
            .ToHaveValueAsync("6");
    }

    [Fact]
    public async Task Two_tabs_on_the_same_part_see_each_other()
    {
        await using var one = await Person.AtADesk(app);
        await OpenProject(one);
        await using var two = await Person.AtADesk(app);
        await OpenProject(two);

        await SetLength(one, "20 1/8");
        await Assertions
            .Expect(one.Page.GetByText("Saved", new() { Exact = true }))
            .ToBeVisibleAsync();
        await SetLength(two, "20 1/4");
        await Assertions.Expect(two.Page.GetByText("changed elsewhere")).ToBeVisibleAsync();
        await Assertions
            .Expect(two.Page.GetByLabel("Length of C, rail"))
            .ToHaveValueAsync("20 1/4");

        await SetLength(one, "20");
    }

    [Fact]
    public async Task A_paste_of_five_thousand_rows_is_refused_and_adds_nothing()
    {
        await using var instructor = await Person.AtADesk(app);
        await OpenProject(instructor);
        var rows = new StringBuilder();
        for (var i = 0; i < 5000; i++)
            rows.Append("part\t1\t3/4\t6\t14\n");
        await instructor
            .Page.GetByRole(AriaRole.Button, new() { Name = "Paste from a spreadsheet" })
            .ClickAsync();
        await instructor
            .Page.GetByLabel("Rows of the parts list")
            .EvaluateAsync("(area, text) => { area.value = text; }", rows.ToString());
        await instructor
            .Page.GetByRole(AriaRole.Button, new() { Name = "Show what it says" })
            .ClickAsync();
        await Assertions
            .Expect(instructor.Page.Locator("#paste .note.bad"))
            .ToContainTextAsync("60");
        await Assertions.Expect(instructor.Page.GetByText("5 pieces")).ToBeVisibleAsync();
    }

    [Theory]
    [InlineData("not-json.json", "Dear course, hello", 0)]
    [InlineData("huge.json", "", 20)]
    public async Task A_file_that_is_no_course_file_is_refused_and_changes_nothing(
        string name,
        string text,
        int megabytes
    )
    {
        await using var instructor = await Person.AtADesk(app);
        await instructor.OpenDemoAsInstructor();
        await instructor.Open("/courses");
        var before = await instructor.Page.Locator("a[href*='/courses/']").CountAsync();
        var content =
            megabytes > 0 ? new byte[megabytes * 1024 * 1024] : Encoding.UTF8.GetBytes(text);
        await instructor
            .Page.Locator("input[type=file]")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = name,
                    MimeType = "application/json",
                    Buffer = content,
                }
            );
        await Assertions
            .Expect(instructor.Page.GetByText("nothing was changed"))
            .ToBeVisibleAsync();
        await instructor.Open("/courses");
        Assert.Equal(before, await instructor.Page.Locator("a[href*='/courses/']").CountAsync());
    }

    [Fact]
    public async Task A_board_typed_as_its_sellers_name_gets_a_question()
    {
        await using var instructor = await Person.AtADesk(app);
        await instructor.OpenDemoAsInstructor();
        await instructor.Open(
            (await DemoPages.All(instructor)).Single(p => p.Name == "new-board").Path
        );
        var page = instructor.Page;
        await page.GetByLabel("Wood", new() { Exact = true }).FillAsync("sugar pine");
        await page.GetByLabel("Thickness, at the thinnest place").FillAsync("1");
        await page.GetByLabel("Length", new() { Exact = true }).FillAsync("8'");
        await page.GetByLabel("Same width all along").SetCheckedAsync(true);
        await page.GetByLabel("Width", new() { Exact = true }).FillAsync("10");
        await page.GetByRole(AriaRole.Button, new() { Name = "Log this board" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Alertdialog)).ToContainTextAsync("9 1/4");
        await page.GetByRole(AriaRole.Button, new() { Name = "Use 3/4" }).ClickAsync();
        await Assertions
            .Expect(page.GetByLabel("Width", new() { Exact = true }))
            .ToHaveValueAsync("9 1/4");
    }

    private static async Task OpenProject(Person instructor)
    {
        await instructor.OpenDemoAsInstructor();
        await instructor.Open(
            (await DemoPages.All(instructor)).Single(p => p.Name == "project").Path
        );
    }

    private static async Task SetLength(Person person, string typed)
    {
        var length = person.Page.GetByLabel("Length of C, rail");
        await length.FillAsync(typed);
        await length.BlurAsync();
    }
}
