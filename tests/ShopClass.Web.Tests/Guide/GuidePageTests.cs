using Bunit;
using ShopClass.Core.Planning.Guide;
using ShopClass.Data.Access;
using ShopClass.Web.Features.Guide;

namespace ShopClass.Web.Tests.Guide;

public sealed class GuidePageTests : IAsyncLifetime
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private Classroom _room = default!;

    public async ValueTask InitializeAsync() => _room = await Classroom.OpenAsync();

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    [Fact]
    public async Task The_smallest_boards_are_drawn_and_listed_as_the_core_works_them_out()
    {
        var page = Open();
        page.WaitForElement(".guide-table", Patience);

        var cancel = Xunit.TestContext.Current.CancellationToken;
        var project = await _room.Store.Projects.FindAsync(
            _room.Instructor,
            _room.Project.Id,
            cancel
        );
        var guide = StockGuide.Make(project!.ToProject(), _room.Course.Rules, cancel: cancel);
        var group = Assert.Single(guide.Groups);
        Assert.Equal(
            group.Options.Select(o => GuideWords.Ask(o, _room.Course.Rules.Unit)),
            page.FindAll(".guide-table")[0]
                .QuerySelectorAll("tbody th[scope=row]")
                .Select(th => th.TextContent)
        );
        Assert.Equal(2, page.FindAll("svg").Count);
    }

    [Fact]
    public void It_offers_the_note_for_the_seller_on_both_papers()
    {
        var page = Open();
        page.WaitForElement(".guide-table", Patience);

        Assert.Equal(
            [
                $"/sheets/guide/{_room.Project.Id}?paper=a4",
                $"/sheets/guide/{_room.Project.Id}?paper=letter",
            ],
            page.FindAll("a[href^='/sheets/']").Select(a => a.GetAttribute("href"))
        );
    }

    [Fact]
    public void Sensitising_and_strongly_ringed_woods_are_cautioned_of_in_words()
    {
        var page = Open();
        page.WaitForElement(".guide-table", Patience);

        string Row(string species) =>
            page.FindAll(".guide-species th[scope=row]")
                .Select(th => th.TextContent)
                .Single(t => t.Contains(species, StringComparison.Ordinal));
        Assert.Contains(
            "Dust known to sensitise",
            Row("western redcedar"),
            StringComparison.Ordinal
        );
        Assert.Contains("the saw jumps", Row("loblolly pine"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_student_of_the_course_sees_it_too()
    {
        var page = Open(new StudentViewer(_room.Student.Id, _room.Course.Id));
        page.WaitForElement(".guide-table", Patience);

        Assert.Contains("Small shelf", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void A_student_of_another_course_finds_nothing()
    {
        var page = Open(new StudentViewer(Guid.NewGuid(), Guid.NewGuid()));

        Assert.DoesNotContain("Small shelf", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_project_without_parts_has_nothing_to_buy_for()
    {
        var empty = (
            await _room.Store.Projects.CreateAsync(
                _room.Instructor,
                _room.Course.Id,
                "Next thing",
                Xunit.TestContext.Current.CancellationToken
            )
        ).Value!;

        var page = Open(project: empty.Id);

        Assert.Contains("no parts yet", page.Markup, StringComparison.Ordinal);
    }

    private IRenderedComponent<GuidePage> Open(Viewer? viewer = null, Guid? project = null) =>
        _room.Open<GuidePage>(
            p =>
                p.Add(x => x.CourseId, _room.Course.Id)
                    .Add(x => x.ProjectId, project ?? _room.Project.Id),
            viewer
        );
}
