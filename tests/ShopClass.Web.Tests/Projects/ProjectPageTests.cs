using AngleSharp.Dom;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor.Services;
using ShopClass.Data.Access;
using ShopClass.Data.Students;
using ShopClass.Web.Features.Projects;
using Xunit;

namespace ShopClass.Web.Tests.Projects;

public sealed class ProjectPageTests : BunitContext, IAsyncLifetime
{
    private Shop shop = default!;

    public async ValueTask InitializeAsync()
    {
        shop = await Shop.OpenAsync(
            Shop.Part("A", "side"),
            Shop.Part("B", "<script>alert('shelf')</script>")
        );
        JSInterop.Mode = JSRuntimeMode.Loose;
        JSInterop.SetupModule("./Features/Projects/PartsEditor.razor.js").Mode =
            JSRuntimeMode.Loose;
        Services.AddMudServices();
        Services.AddSingleton(shop.Store.Projects);
        Services.AddSingleton(shop.Store.Courses);
    }

    public new async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        await shop.DisposeAsync();
    }

    [Fact]
    public async Task A_length_typed_as_woodworkers_write_it_is_stored_and_said_to_be()
    {
        var page = Open(shop.Instructor);

        Field(page, "Width of A, side").Change("5-1/2\"");

        page.WaitForAssertion(() =>
            Assert.Equal("Saved", Row(page, 0).QuerySelector(".row-state")?.TextContent)
        );
        Assert.Equal(
            Core.Measure.Length.FromInches(5, 1, 2),
            (await shop.StoredAsync())[0].Part.Finished.Width
        );
        Assert.Contains(
            "5 1/2",
            page.Find(".drawing-view svg").TextContent,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_bad_length_gets_its_sentence_at_the_field_and_stays_as_typed()
    {
        var page = Open(shop.Instructor);

        Field(page, "Width of A, side").Change("six");

        page.WaitForAssertion(() =>
            Assert.Equal("true", Field(page, "Width of A, side").GetAttribute("aria-invalid"))
        );
        var field = Field(page, "Width of A, side");
        var sentence = page.Find($"#{field.GetAttribute("aria-describedby")}");
        Assert.Contains("“six”", sentence.TextContent, StringComparison.Ordinal);
        Assert.Equal("six", field.GetAttribute("value"));
        Assert.Contains(
            "Not saved",
            Row(page, 0).QuerySelector(".row-state")!.TextContent,
            StringComparison.Ordinal
        );
        Assert.Equal(
            Core.Measure.Length.FromInches(6),
            (await shop.StoredAsync())[0].Part.Finished.Width
        );
    }

    [Fact]
    public void A_new_row_proposes_the_next_letter_and_tells_what_it_lacks()
    {
        var page = Open(shop.Instructor);

        page.Find("#add-part").Click();
        page.WaitForAssertion(() =>
            Assert.Equal("C", Field(page, "Mark of C").GetAttribute("value"))
        );
        Field(page, "Part name of C").Change("rail");

        page.WaitForAssertion(() =>
            Assert.Equal(
                "Not saved yet. Still needs the thickness, the width, the length.",
                Row(page, 2).QuerySelector(".row-state")?.TextContent
            )
        );
        Assert.Empty(Row(page, 2).QuerySelectorAll(".field-problem"));
    }

    [Fact]
    public async Task A_row_changed_in_another_tab_says_so_and_asks()
    {
        var page = Open(shop.Instructor);
        var row = shop.Project.Parts[0];
        await shop.Store.Projects.SavePartAsync(
            shop.Instructor,
            shop.Project.Id,
            row.Id,
            row.Part with
            {
                Name = "end",
            },
            row.Version,
            Xunit.TestContext.Current.CancellationToken
        );

        Field(page, "Quantity of A, side").Change("4");
        page.WaitForAssertion(() =>
            Assert.Contains(
                "changed elsewhere. It is now: A, end",
                page.Find("[role=alert].conflict").TextContent,
                StringComparison.Ordinal
            )
        );
        Button(page, "Keep yours").Click();

        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".conflict")));
        var stored = (await shop.StoredAsync())[0].Part;
        Assert.Equal(("side", 4), (stored.Name, stored.Quantity));
    }

    [Fact]
    public async Task Name_and_notes_changed_in_another_tab_ask_as_well()
    {
        var page = Open(shop.Instructor);
        await shop.Store.Projects.SaveAsync(
            shop.Instructor,
            shop.Project.Id,
            "Bookshelf",
            "",
            shop.Project.Version,
            Xunit.TestContext.Current.CancellationToken
        );

        page.Find("#project-notes").Change("Bring a pencil.");
        page.WaitForAssertion(() =>
            Assert.Contains("now called “Bookshelf”", page.Markup, StringComparison.Ordinal)
        );
        Button(page, "Keep yours").Click();

        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".note.warn")));
        var stored = await shop.Store.Projects.FindAsync(
            shop.Instructor,
            shop.Project.Id,
            Xunit.TestContext.Current.CancellationToken
        );
        Assert.Equal(("Wall shelf", "Bring a pencil."), (stored!.Name, stored.Notes));
    }

    [Fact]
    public void A_project_without_a_name_is_not_saved_and_says_so_at_the_field()
    {
        var page = Open(shop.Instructor);

        page.Find("#project-name").Change(" ");

        page.WaitForAssertion(() =>
            Assert.Equal("true", page.Find("#project-name").GetAttribute("aria-invalid"))
        );
        Assert.NotEqual("", page.Find("#project-name-problem").TextContent);
        Assert.Equal("Wall shelf", page.Find("h1").TextContent);
    }

    [Fact]
    public void Names_are_words_and_never_markup()
    {
        var page = Open(shop.Instructor);

        Assert.Empty(page.FindAll("script"));
        Assert.Equal(
            "<script>alert('shelf')</script>",
            Row(page, 1).QuerySelector("[data-column=name] input")!.GetAttribute("value")
        );
    }

    [Fact]
    public async Task A_student_reads_the_same_list_and_can_change_nothing()
    {
        var student = await shop.Store.Students.AddAsync(
            shop.Instructor,
            shop.Course.Id,
            new StudentCard("Robin Example", "", IsLeftHanded: false),
            Xunit.TestContext.Current.CancellationToken
        );

        var page = Open(new StudentViewer(student.Value!.Id, shop.Course.Id));

        Assert.Empty(page.FindAll("input, textarea, select, button"));
        Assert.Empty(page.FindAll("script"));
        Assert.Contains(
            "3/4 × 6 × 14 in",
            page.Find("table").TextContent,
            StringComparison.Ordinal
        );
        Assert.NotEmpty(page.FindAll("svg"));
        Assert.Contains(
            "4 pieces, 1.75 board feet",
            page.Find(".total").TextContent,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task An_archived_course_is_read_and_not_changed()
    {
        await shop.Store.Courses.ArchiveAsync(
            shop.Instructor,
            shop.Course.Id,
            archived: true,
            shop.Course.Version,
            Xunit.TestContext.Current.CancellationToken
        );

        var page = Open(shop.Instructor);

        Assert.Empty(page.FindAll("input, textarea, select, button"));
    }

    [Fact]
    public async Task Somebody_elses_project_is_not_there()
    {
        var stranger = await shop.Store.AddInstructorAsync("stranger");

        var page = Render(stranger);

        Assert.DoesNotContain("Wall shelf", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_field_has_a_name_and_every_name_is_its_own()
    {
        var page = Open(shop.Instructor);

        var names = page.FindAll(".rows input:not([type=checkbox]), .rows select, .rows button")
            .Select(f => f.GetAttribute("aria-label") ?? "")
            .ToList();

        Assert.DoesNotContain("", names);
        Assert.Equal(names.Distinct().Count(), names.Count);
    }

    private IRenderedComponent<ProjectPage> Open(Viewer viewer)
    {
        var page = Render(viewer);
        page.WaitForElement("#parts-heading");
        return page;
    }

    private IRenderedComponent<ProjectPage> Render(Viewer viewer) =>
        Render<ProjectPage>(p =>
            p.Add(x => x.CourseId, shop.Course.Id)
                .Add(x => x.ProjectId, shop.Project.Id)
                .AddCascadingValue(viewer)
        );

    private static IElement Field(IRenderedComponent<ProjectPage> page, string label) =>
        page.Find($"[aria-label='{label}']");

    private static IElement Row(IRenderedComponent<ProjectPage> page, int at) =>
        page.FindAll(".part-row")[at];

    private static IElement Button(IRenderedComponent<ProjectPage> page, string words) =>
        page.FindAll("button").Single(b => b.TextContent.Trim() == words);
}
