using CsCheck;
using ShopClass.Print.Pages;
using Xunit;

namespace ShopClass.Print.Tests;

public class TextLinesTests
{
    [Fact]
    public void No_line_is_wider_than_its_room_and_no_letter_is_lost() =>
        Gen.Select(Gen.String[Gen.Char["abc defgh  ijklmnop"], 0, 200], Gen.Int[3, 40])
            .Sample(
                (text, width) =>
                {
                    var lines = TextLines.Of(text, width, t => t.Length);
                    Assert.All(lines, l => Assert.InRange(l.Length, 1, width));
                    Assert.Equal(
                        text.Replace(" ", "", StringComparison.Ordinal),
                        string.Concat(lines).Replace(" ", "", StringComparison.Ordinal)
                    );
                }
            );

    [Fact]
    public void Lines_break_between_words_where_they_can() =>
        Assert.Equal(["saw to", "the line"], TextLines.Of("saw to the line", 8, t => t.Length));
}
