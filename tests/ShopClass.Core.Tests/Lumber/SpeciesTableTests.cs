using System.Globalization;
using ShopClass.Core.Lumber;
using Xunit;

namespace ShopClass.Core.Tests.Lumber;

public class SpeciesTableTests
{
    // Wood Handbook, FPL-GTR-190 (2010), Table 5-3a: specific gravity at 12 % moisture content and side hardness in
    // newtons (read in a transcription).
    [Theory]
    [InlineData("black-walnut", "0.55", "4500")]
    [InlineData("red-oak", "0.63", "5700")]
    [InlineData("eastern-white-pine", "0.35", "1700")]
    [InlineData("yellow-poplar", "0.42", "2400")]
    [InlineData("black-cherry", "0.50", "4200")]
    [InlineData("hard-maple", "0.63", "6400")]
    public void Specific_gravity_and_hardness_are_those_of_the_Wood_Handbook(
        string id,
        string specificGravity,
        string hardness
    )
    {
        var species = SpeciesTable.Find(id);
        Assert.NotNull(species);
        Assert.Equal(
            new SourcedFigure(Number(specificGravity), Basis.Read, "GTR-190 T5-3a"),
            species.SpecificGravity12
        );
        Assert.Equal(
            new SourcedFigure(Number(hardness), Basis.Read, "GTR-190 T5-3a"),
            species.SideHardnessNewtons
        );
    }

    // Wood Handbook, FPL-GTR-282 (2021), Table 4-3, green to oven-dry: northern red oak 4.0 % radial and 8.6 %
    // tangential (read in a transcription).
    [Fact]
    public void Shrinkage_is_that_of_the_Wood_Handbook()
    {
        var redOak = SpeciesTable.Find("red-oak");
        Assert.Equal(4.0m, redOak?.ShrinkageRadial?.Value);
        Assert.Equal(8.6m, redOak?.ShrinkageTangential?.Value);
    }

    [Fact]
    public void Wood_shrinks_more_along_the_rings_than_across_them() =>
        Assert.All(
            SpeciesTable.All.Where(s => s.ShrinkageRadial is not null),
            s => Assert.True(s.ShrinkageRadial!.Value < s.ShrinkageTangential!.Value, s.Id)
        );

    [Fact]
    public void A_missing_figure_is_missing_and_not_zero()
    {
        var mahogany = SpeciesTable.Find("mahogany");
        Assert.NotNull(mahogany);
        Assert.Equal("mahogany (true, Honduran)", mahogany.CommonName);
        Assert.Null(mahogany.SpecificGravity12);
        Assert.All(
            SpeciesTable.All,
            s => Assert.True(s.SpecificGravity12 is null or { Value: > 0.2m and < 1.3m }, s.Id)
        );
    }

    [Fact]
    public void Species_are_listed_once_each_by_common_name()
    {
        var names = SpeciesTable.All.Select(s => s.CommonName).ToList();
        Assert.Equal(116, names.Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.Equal(names.Order(StringComparer.OrdinalIgnoreCase), names);
    }

    // Common practice: western redcedar above all, a pine not.
    [Fact]
    public void Western_redcedar_sensitises_and_white_pine_is_not_among_those_named()
    {
        Assert.True(SpeciesTable.Find("western-redcedar")?.IsSensitiser);
        Assert.False(SpeciesTable.Find("eastern-white-pine")?.IsSensitiser);
        Assert.Equal(12, SpeciesTable.All.Count(s => s.IsSensitiser));
    }

    [Fact]
    public void An_unknown_key_finds_nothing() => Assert.Null(SpeciesTable.Find("plastic"));

    private static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
