using ShopClass.Core.Drawings;
using Xunit;

namespace ShopClass.Core.Tests.Drawings;

// What is expected follows Unicode Standard Annex #9 for a paragraph that runs from left to right and names that are isolated
// (X5c, L2). "[" and "]" stand about what is read from right to left.
public class ReadingOrderTests
{
    [Theory]
    [InlineData("Mira 3 (spare)", "Mira 3 (spare)")]
    [InlineData("Łucja Ångström, Ελένη, Юлия, 山田", "Łucja Ångström, Ελένη, Юлия, 山田")]
    [InlineData("דוד", "[דוד]")]
    [InlineData("Kit sheet for דוד כהן (3)", "Kit sheet for [דוד כהן] (3)")]
    [InlineData("7  دافيد", "7  [دافيد]")]
    [InlineData("דוד, שרה and Mira: 3", "[דוד], [שרה] and Mira: 3")]
    [InlineData("Course כיתה 3 ב: 4 kits", "Course [כיתה 3 ב]: 4 kits")]
    [InlineData("ג'ורג' 2 A", "[ג'ורג'] 2 A")]
    [InlineData("דוד's board", "[דוד]'s board")]
    [InlineData("כיתה 3 ", "[כיתה 3] ")]
    public void A_name_is_turned_and_what_stands_about_it_is_not(string text, string expected)
    {
        var shown = string.Concat(
            ReadingOrder.Of(text).Select(r => r.IsRightToLeft ? $"[{r.Text}]" : r.Text)
        );
        Assert.Equal(expected, shown);
        Assert.Equal(
            expected.Replace('[', '\u2068').Replace(']', '\u2069'),
            ReadingOrder.Isolated(text)
        );
    }

    // Set apart, a name runs as its first letter does: "Smith" stands left of the name before it.
    [Theory]
    [InlineData("רותם Smith", "Hello, Smith[רותם] (3).")]
    [InlineData("כיתה 3", "Hello, [כיתה 3] (3).")]
    [InlineData("Mira", "Hello, Mira (3).")]
    [InlineData("Mira כהן", "Hello, Mira [כהן] (3).")]
    public void A_name_that_is_set_apart_stays_together(string name, string expected)
    {
        var text = $"Hello, {ReadingOrder.Apart(name)} (3).";
        var shown = string.Concat(
            ReadingOrder.Of(text).Select(r => r.IsRightToLeft ? $"[{r.Text}]" : r.Text)
        );
        Assert.Equal(
            expected.Replace(" ", "", StringComparison.Ordinal),
            shown
                .Replace(" ", "", StringComparison.Ordinal)
                .Replace("[]", "", StringComparison.Ordinal)
        );
        Assert.Equal($"Hello, {name} (3).", ReadingOrder.Bare(text));
    }

    // An accent that is a sign of its own stays with its letter (Unicode Standard Annex #29).
    [Theory]
    [InlineData("Mira", 2, "Mi")]
    [InlineData("Mira", 9, "Mira")]
    [InlineData("e\u0301e\u0301", 3, "e\u0301")]
    [InlineData("e\u0301\u0323x", 1, "e\u0301\u0323")]
    [InlineData("a\U0001FA9Ab", 2, "a")]
    public void Text_is_shortened_between_letters(string text, int most, string expected) =>
        Assert.Equal(expected, WholeLetters.Start(text, most));
}
