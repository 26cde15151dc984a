using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning.Guide;
using ShopClass.Core.Projects;
using ShopClass.Web.Features.Guide;

namespace ShopClass.Web.Tests.Guide;

public class GuideShelfTests
{
    private static readonly CourseRules Rules = CourseRules.DefaultsFor(UnitSystem.Metric);

    private static Project Named(string name) => new() { Name = name, Parts = [] };

    private static StockGuide Guide(Project project, CourseRules rules) =>
        StockGuide.Make(project, rules, cancel: Xunit.TestContext.Current.CancellationToken);

    [Fact]
    public void A_guide_is_found_again_for_the_same_project_and_settings_only()
    {
        var shelf = new GuideShelf();
        var guide = Guide(Named("Box"), Rules);
        Assert.Null(shelf.Find(Named("Box"), Rules));

        shelf.Keep(guide);

        Assert.Same(guide, shelf.Find(Named("Box"), Rules with { }));
        Assert.Null(shelf.Find(Named("Tray"), Rules));
        Assert.Null(shelf.Find(Named("Box"), Rules with { MostGlueUpStrips = 2 }));
    }

    [Fact]
    public void The_longest_unused_makes_room()
    {
        var shelf = new GuideShelf();
        for (var i = 0; i < 41; i++)
        {
            shelf.Keep(Guide(Named($"{i}"), Rules));
            _ = shelf.Find(Named("0"), Rules);
        }

        Assert.NotNull(shelf.Find(Named("0"), Rules));
        Assert.Null(shelf.Find(Named("1"), Rules));
        Assert.NotNull(shelf.Find(Named("40"), Rules));
    }
}
