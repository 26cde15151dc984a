using CsCheck;
using ShopClass.Data.Joining;
using Xunit;

namespace ShopClass.Data.Tests.Joining;

public sealed class JoinCodeTests
{
    [Fact]
    public void A_new_code_is_read_back_as_it_is_written_on_the_board() =>
        Gen.Int[0, 3]
            .Sample(how =>
            {
                var code = JoinCode.Make();
                var typed = how switch
                {
                    0 => code,
                    1 => JoinCode.Write(code),
                    2 => $"  {JoinCode.Write(code).ToLowerInvariant()} ",
                    _ => string.Join(' ', code.ToCharArray()),
                };

                Assert.Equal(code, JoinCode.Read(typed));
            });

    [Fact]
    public void No_character_is_easily_taken_for_another()
    {
        Assert.Equal(JoinCode.Alphabet.Length, JoinCode.Alphabet.Distinct().Count());
        Assert.DoesNotContain(
            JoinCode.Alphabet,
            c => "O0I1LSBZUAE".Contains(c, StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData("scdfgh2k", "5CDFGH2K")]
    [InlineData("BCDF-GHJZ", "8CDFGHJ2")]
    public void What_looks_like_one_of_its_characters_is_read_as_it(string typed, string code) =>
        Assert.Equal(code, JoinCode.Read(typed));

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("CDFGHJK")]
    [InlineData("CDFGHJKMN")]
    [InlineData("CDFGHJK0")]
    [InlineData("CDFGHJKÄ")]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("' OR 1=1 --")]
    public void What_cannot_be_a_code_is_none(string? typed) => Assert.Null(JoinCode.Read(typed));
}
