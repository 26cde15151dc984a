using AngleSharp.Dom;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor.Services;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Data.Access;
using ShopClass.Data.Students;
using ShopClass.Web.Features.Projects;
using Xunit;

namespace ShopClass.Web.Tests.Projects;

/// <summary>Joints and sizes that must agree, on the project page.</summary>
public sealed class LinksEditorTests : BunitContext, IAsyncLifetime
{
    private Shop shop = default!;

    private static CancellationToken Cancel => Xunit.TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        shop = await Shop.OpenAsync(Shop.Part("A", "side"), Shop.Part("B", "shelf"));
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
    public async Task A_joint_is_stored_once_it_is_complete_and_read_back_as_a_sentence()
    {
        var page = Open(shop.Instructor);
        page.Find("#add-joint").Click();

        Field(page, "Cut in: ").Change("A");
        Field(page, "Takes: ").Change("B");
        Field(page, "Deep: ").Change("1/4");
        page.WaitForAssertion(() =>
            Assert.Contains("Still needs where", page.Find(".links .row-state").TextContent)
        );
        Assert.Empty((await ProjectAsync()).Joints);
        Field(page, "At, ").Change("2; 10 1/4");

        page.WaitForAssertion(() =>
            Assert.Equal("Saved", page.Find(".links .row-state").TextContent)
        );
        Assert.Equal(
            "B enters A in dados 1/4 in deep, at 2 in and 10 1/4 in from the reference end.",
            page.Find(".link-says").TextContent
        );
        var joint = Assert.Single((await ProjectAsync()).Joints);
        Assert.Equal([Length.FromInches(2), Length.FromInches(10, 1, 4)], joint.Positions);
    }

    [Fact]
    public async Task A_joint_deeper_than_the_wood_is_told_at_its_field_and_not_stored()
    {
        await PutDadoAsync();
        var page = Open(shop.Instructor);

        Field(page, "Deep: ").Change("3/4");

        page.WaitForAssertion(() =>
            Assert.Contains("leaves nothing of A", Problem(page, Field(page, "Deep: ")))
        );
        Assert.Equal(
            Length.FromInches(0, 1, 4),
            Assert.Single((await ProjectAsync()).Joints).Depth
        );
    }

    [Fact]
    public async Task A_place_across_is_stored_and_one_off_the_part_is_told_at_its_field()
    {
        await PutDadoAsync();
        var page = Open(shop.Instructor);
        var edge = "From the reference edge to the near side";

        Field(page, edge).Change("100");
        page.WaitForAssertion(() =>
            Assert.Contains("is off A, which is", Problem(page, Field(page, edge)))
        );
        Assert.Null(Assert.Single((await ProjectAsync()).Joints).FromEdge);

        Field(page, edge).Change("1/2");
        page.WaitForAssertion(() =>
            Assert.Contains(
                "from 1/2 in off the reference edge to the other edge",
                page.Find(".link-says").TextContent,
                StringComparison.Ordinal
            )
        );
        Assert.Equal(
            Length.FromInches(0, 1, 2),
            Assert.Single((await ProjectAsync()).Joints).FromEdge
        );
    }

    [Fact]
    public async Task A_joint_to_a_part_that_was_taken_out_says_so_and_the_rest_still_works()
    {
        await PutDadoAsync();
        var page = Open(shop.Instructor);

        page.FindAll("button")
            .First(b => b.GetAttribute("aria-label") == "Take out of B, shelf")
            .Click();

        page.WaitForAssertion(() =>
            Assert.Contains("No part is marked B.", Problem(page, Field(page, "Takes: ")))
        );
        Field(page, "Width of A, side").Change("5");
        page.WaitForAssertion(() => Assert.Equal("Saved", page.Find(".row-state").TextContent));
    }

    [Fact]
    public async Task An_open_dimension_waits_for_an_event_of_the_project_and_says_when_that_is_gone()
    {
        await PutDadoAsync();
        var page = Open(shop.Instructor);
        var until = "Until: Width stays oversize, B, shelf";
        Field(page, "Width over its finished size, B, shelf").Change("1/16");
        Assert.Contains(
            "B is fitted to A",
            Field(page, until).TextContent,
            StringComparison.Ordinal
        );

        Field(page, until).Change("JointFitted:A:B");

        page.WaitForAssertion(() =>
            Assert.Contains(page.FindAll(".part-row .row-state"), s => s.TextContent == "Saved")
        );
        var open = Assert.Single((await shop.StoredAsync())[1].Part.Open);
        Assert.Equal(new OpenEvent(OpenEventKind.JointFitted, "A", "B"), open.Event);
        Assert.Equal("B is fitted to A", open.Until);

        page.FindAll(".links button")
            .First(b =>
                b.GetAttribute("aria-label")!.StartsWith("Take out", StringComparison.Ordinal)
            )
            .Click();
        page.WaitForAssertion(() =>
            Assert.Contains(
                "No joint of A and B is in the list any more",
                Problem(page, Field(page, until))
            )
        );
        Field(page, until).Change("words");
        Field(page, "Until, in words: ").Change("the ends dry-fit");
        page.WaitForAssertion(() =>
            Assert.Contains(page.FindAll(".part-row .row-state"), r => r.TextContent == "Saved")
        );
        var told = (await shop.StoredAsync())[1].Part.Open[0];
        Assert.Equal((null, "the ends dry-fit"), (told.Event, told.Until));
    }

    [Fact]
    public async Task Joints_follow_a_part_to_its_new_letter_and_can_still_be_changed()
    {
        await PutDadoAsync();
        var page = Open(shop.Instructor);

        Field(page, "Mark of A, side").Change("E");
        page.WaitForAssertion(() =>
            Assert.Contains("B enters E", page.Find(".link-says").TextContent)
        );
        Field(page, "Deep: ").Change("3/8");

        page.WaitForAssertion(() =>
            Assert.Equal("Saved", page.Find(".links .row-state").TextContent)
        );
        Assert.Equal("E", Assert.Single((await ProjectAsync()).Joints).Part);
    }

    [Fact]
    public async Task A_sum_that_does_not_come_out_is_shown_with_its_figures_until_it_does()
    {
        await shop.Store.Projects.PutSizeCheckAsync(
            shop.Instructor,
            shop.Project.Id,
            was: null,
            new(
                "B",
                PartDimension.Length,
                [
                    new(1, null, default, Length.FromInches(20), "clear"),
                    new(2, null, default, Length.FromInches(0, 1, 4), "dado"),
                ]
            ),
            Cancel
        );
        var page = Open(shop.Instructor);
        Assert.Equal(
            "Does not agree. The length of B is 14 in, but 20 in clear + 2 × 1/4 in dado = 20 1/2 in.",
            page.Find(".link-says.bad").TextContent
        );
        Assert.Contains("One sum does not come out.", page.Find(".links .note").TextContent);

        Field(page, "Length of B, shelf").Change("20 1/2");

        page.WaitForAssertion(() =>
            Assert.StartsWith("Agrees.", page.Find(".link-says.ok").TextContent)
        );
        Assert.Empty(page.FindAll(".link-says.bad"));
    }

    [Fact]
    public async Task A_sum_is_written_term_by_term()
    {
        var page = Open(shop.Instructor);
        page.Find("#add-sum").Click();

        Field(page, "Part: ").Change("B");
        Field(page, "Of part, term 1").Change("A");
        page.FindAll("button").First(b => b.TextContent == "Add a term").Click();
        Field(page, "Times, term 2").Change("-2");
        Field(page, "Size, term 2").Change("1/4");
        Field(page, "Which is, term 2").Change("gap");

        page.WaitForAssertion(() =>
            Assert.StartsWith(
                "Does not agree. The length of B is 14 in, but 14 in length of A − 2 × 1/4 in gap",
                page.Find(".link-says").TextContent
            )
        );
        Assert.Equal(2, Assert.Single((await ProjectAsync()).SizeChecks).Terms.Count);
    }

    [Fact]
    public async Task A_student_reads_the_joints_and_changes_nothing()
    {
        await PutDadoAsync();
        var student = (
            await shop.Store.Students.AddAsync(
                shop.Instructor,
                shop.Course.Id,
                new("Ada", "", false),
                Cancel
            )
        ).Value!;

        var page = Open(new StudentViewer(student.Id, shop.Course.Id));

        Assert.Contains("B enters A in a dado", page.Find(".links").TextContent);
        Assert.Empty(page.FindAll(".links input, .links select"));
    }

    [Fact]
    public async Task Two_who_change_the_same_joint_do_not_write_over_each_other()
    {
        await PutDadoAsync();
        var page = Open(shop.Instructor);
        var stored = Assert.Single((await ProjectAsync()).Joints);
        await shop.Store.Projects.PutJointAsync(
            shop.Instructor,
            shop.Project.Id,
            stored,
            stored with
            {
                Note = "theirs",
            },
            Cancel
        );

        Field(page, "Deep: ").Change("3/8");
        page.WaitForAssertion(() =>
            Assert.Contains("changed or taken out elsewhere", page.Find(".conflict").TextContent)
        );
        page.FindAll("button").First(b => b.TextContent == "Show what is stored").Click();

        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".conflict")));
        Assert.Equal("theirs", Field(page, "Note: ").GetAttribute("value"));
        Assert.Equal("theirs", Assert.Single((await ProjectAsync()).Joints).Note);
    }

    private Task<Outcome<Joint>> PutDadoAsync() =>
        shop.Store.Projects.PutJointAsync(
            shop.Instructor,
            shop.Project.Id,
            was: null,
            new()
            {
                Kind = JointKind.Dado,
                Part = "A",
                Mate = "B",
                Depth = Length.FromInches(0, 1, 4),
                Positions = [Length.FromInches(2)],
            },
            Cancel
        );

    private async Task<Data.Projects.ProjectView> ProjectAsync() =>
        (await shop.Store.Projects.FindAsync(shop.Instructor, shop.Project.Id))!;

    private IRenderedComponent<ProjectPage> Open(Viewer viewer) =>
        Render<ProjectPage>(p =>
            p.AddCascadingValue(viewer)
                .Add(page => page.CourseId, shop.Course.Id)
                .Add(page => page.ProjectId, shop.Project.Id)
        );

    private static IElement Field(IRenderedComponent<ProjectPage> page, string label) =>
        page.FindAll("input, select, textarea")
            .First(f =>
                f.GetAttribute("aria-label")?.StartsWith(label, StringComparison.Ordinal) is true
            );

    private static string Problem(IRenderedComponent<ProjectPage> page, IElement field) =>
        page.Find($"#{field.GetAttribute("aria-describedby")}").TextContent;
}
