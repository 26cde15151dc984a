using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning.Guide;
using ShopClass.Core.Projects;
using Xunit;
using static ShopClass.Core.Tests.Planning.Wood;

namespace ShopClass.Core.Tests.Planning.Guide;

public class UntaughtSkillTests
{
    private static readonly CourseRules Usual = CourseRules.DefaultsFor(UnitSystem.Inch);

    // 14 in is wider than 1x12, the widest of PS 20's boards (11 1/4 in dressed): it has to be glued up.
    private static readonly Part WideTop = Part("A", 1, In(0, 3, 4), In(14), In(20)) with
    {
        GlueUpAllowed = true,
    };

    [Fact]
    public void Where_edge_gluing_is_taught_a_glue_up_is_the_students_own_work()
    {
        var group = GroupFor(WideTop, Usual);

        Assert.NotEmpty(group.Options);
        Assert.All(group.Options, o => Assert.NotEmpty(o.GlueUps));
        Assert.DoesNotContain(group.Options, o => o.IsPrepared);
    }

    [Fact]
    public void Where_it_is_not_a_glue_up_is_listed_only_as_prepared_and_the_guide_says_so()
    {
        var rules = Usual with { EdgeGluingTaught = false };
        var guide = GuideOf(WideTop, rules);
        var group = Assert.Single(guide.Groups);

        Assert.NotEmpty(group.Options);
        Assert.All(
            group.Options,
            o =>
            {
                Assert.True(o.IsPrepared);
                Assert.Equal(
                    "Only as prepared by the instructor: the glue-up.",
                    GuideWords.Prepared(o, group, rules)
                );
            }
        );
        Assert.Contains(
            GuideWords.Skills(guide),
            s => s.StartsWith("This course teaches no edge gluing", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_part_that_may_not_be_glued_up_has_no_board_when_none_is_wide_enough()
    {
        var group = GroupFor(WideTop with { GlueUpAllowed = false }, Usual);

        Assert.Empty(group.Options);
        Assert.Contains(
            "yield these parts",
            GuideWords.Thickness(group, Usual),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(true, Thicknessing.PlanedByStudents, false)]
    [InlineData(false, Thicknessing.PreparedByInstructor, true)]
    public void Half_inch_parts_from_three_quarter_stock_are_planed_by_whoever_may(
        bool isTaught,
        Thicknessing how,
        bool isPrepared
    )
    {
        var rules = Usual with { PlaningTaught = isTaught };
        var guide = GuideOf(Part("A", 1, In(0, 1, 2), In(4), In(12)), rules);
        var group = Assert.Single(guide.Groups);

        // PS 20, Table 3: the thinnest nominal thickness here, 1 in, is dressed to 3/4 in.
        Assert.Equal(In(0, 3, 4), group.Stock);
        Assert.Equal(how, group.Thicknessing);
        Assert.NotEmpty(group.Options);
        Assert.All(group.Options, o => Assert.Equal(isPrepared, o.IsPrepared));
        Assert.Equal(
            !isTaught,
            GuideWords
                .Skills(guide)
                .Any(s => s.StartsWith("Rough boards are refused", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void More_planing_than_a_course_asks_for_is_the_instructor_s()
    {
        // 1/4 in parts from 3/4 in stock: 1/2 in to plane away, and the usual course asks for 1/4 in at most.
        var group = GroupFor(Part("A", 1, In(0, 1, 4), In(4), In(12)), Usual);

        Assert.Equal(Thicknessing.PreparedByInstructor, group.Thicknessing);
        Assert.All(group.Options, o => Assert.True(o.IsPrepared));
    }

    [Fact]
    public void Parts_thicker_than_any_planed_size_are_said_to_be_so()
    {
        var group = GroupFor(Part("A", 1, In(3), In(4), In(12)), Usual);

        Assert.Null(group.Stock);
        Assert.StartsWith(
            "No planed size in the table is thick enough for 3 in.",
            GuideWords.Thickness(group, Usual),
            StringComparison.Ordinal
        );
    }

    private static StockGroup GroupFor(Part part, CourseRules rules) =>
        Assert.Single(GuideOf(part, rules).Groups);

    private static StockGuide GuideOf(Part part, CourseRules rules) =>
        StockGuide.Make(
            StockGuideTests.Of(part),
            rules,
            cancel: TestContext.Current.CancellationToken
        );
}
