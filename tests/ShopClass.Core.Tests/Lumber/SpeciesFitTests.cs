using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using Xunit;

namespace ShopClass.Core.Tests.Lumber;

public class SpeciesFitTests
{
    private static readonly IReadOnlyList<SpeciesFit> Ranked = SpeciesFit.Rank(
        CourseRules.DefaultsFor(UnitSystem.Inch)
    );

    // Wood Handbook FPL-GTR-190, Table 5-3a, specific gravity at 12 %: eastern white pine 0.35, black walnut 0.55,
    // red oak (northern) 0.63, against the usual ceiling of 0.55.
    [Theory]
    [InlineData("eastern-white-pine", Going.Fit)]
    [InlineData("black-walnut", Going.Fit)]
    [InlineData("red-oak", Going.Hard)]
    public void A_species_is_judged_by_its_published_gravity(string id, Going going) =>
        Assert.Equal(going, Find(id).Going);

    [Fact]
    public void The_lightest_come_first_and_those_without_a_figure_last()
    {
        var known = Ranked
            .Select(s => s.Species.SpecificGravity12?.Value)
            .TakeWhile(g => g is not null)
            .ToList();

        Assert.Equal(known.Order(), known);
        Assert.All(Ranked.Skip(known.Count), s => Assert.Equal(Going.Unknown, s.Going));
        Assert.Equal(SpeciesTable.All.Count, Ranked.Count);
    }

    [Fact]
    public void Of_two_equally_heavy_the_softer_comes_first() =>
        Assert.All(
            Ranked
                .Zip(Ranked.Skip(1))
                .Where(p =>
                    p.First.Species.SpecificGravity12?.Value
                    == p.Second.Species.SpecificGravity12?.Value
                ),
            p =>
                Assert.True(
                    (p.First.Species.SideHardnessNewtons?.Value ?? decimal.MaxValue)
                        <= (p.Second.Species.SideHardnessNewtons?.Value ?? decimal.MaxValue)
                )
        );

    // Common practice: southern pines and Douglas-fir have hard latewood beside soft earlywood; white pine has not.
    [Theory]
    [InlineData("loblolly-pine", true)]
    [InlineData("douglas-fir-coast", true)]
    [InlineData("eastern-white-pine", false)]
    public void Strong_rings_are_cautioned_of(string id, bool isStrong) =>
        Assert.Equal(isStrong, Find(id).HasStrongRings);

    private static SpeciesFit Find(string id) => Ranked.Single(s => s.Species.Id == id);
}
