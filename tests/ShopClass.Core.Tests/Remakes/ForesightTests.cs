using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Remakes;
using ShopClass.Core.Tests.Planning;

namespace ShopClass.Core.Tests.Remakes;

public class ForesightTests
{
    [Fact]
    public void Each_part_says_before_the_first_cut_what_a_remake_would_take()
    {
        var plan = CheckedPlan.Make(
            DemoProjects.Find("wall shelf", UnitSystem.Inch),
            null,
            TestContext.Current.CancellationToken
        );

        var risks = Foresight.Of(plan, new());

        Assert.Equal(["A", "B", "C"], risks.Select(r => r.Part));
        Assert.Contains(
            risks,
            r => r.Best is null && r.Sentence.Contains("with care", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_class_spare_takes_the_fright_out_of_it()
    {
        var plan = CheckedPlan.Make(
            DemoProjects.Find("wall shelf", UnitSystem.Inch),
            null,
            TestContext.Current.CancellationToken
        );

        var risk = Foresight.Of(plan, new() { ClassSpares = ["B"] }).First(r => r.Part == "B");

        Assert.Equal(RemakeWay.ClassSpare, risk.Best?.Way);
    }
}
