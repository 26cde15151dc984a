using ShopClass.Web.Features.Boards;

namespace ShopClass.Web.Tests.Boards;

public class SpeciesEntryTests
{
    [Theory]
    [InlineData("Eastern white pine", "eastern-white-pine")]
    [InlineData("  eastern WHITE pine ", "eastern-white-pine")]
    [InlineData("Pinus strobus", "eastern-white-pine")]
    [InlineData("strobus", "eastern-white-pine")]
    public void A_name_or_the_only_match_for_a_piece_of_one_names_a_species(string typed, string id)
    {
        var entry = new SpeciesEntry();

        entry.Type(typed);

        Assert.Equal(id, entry.Species?.Id);
        Assert.Null(entry.Problem);
    }

    [Fact]
    public void A_piece_that_several_share_is_asked_about_and_stays_typed()
    {
        var entry = new SpeciesEntry();

        entry.Type("pine");

        Assert.Null(entry.Species);
        Assert.Equal("pine", entry.Text);
        Assert.StartsWith(
            "Several woods are called that:",
            entry.Problem,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void What_is_no_wood_is_said_back_and_stays_typed()
    {
        var entry = new SpeciesEntry();

        entry.Type("granite");

        Assert.Equal("granite", entry.Text);
        Assert.Contains("“granite”", entry.Problem, StringComparison.Ordinal);
    }
}
