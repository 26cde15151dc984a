using ShopClass.Data.CourseFiles;
using Xunit;

namespace ShopClass.Data.Tests.CourseFiles;

// What is wrong with joints and sums of sizes, each at its line.
public partial class RefusalTests
{
    [Theory]
    [InlineData("\"mate\": \"B\"", "\"mate\": \"Q\"", 14, "No part is marked Q.")]
    [InlineData("\"kind\": \"dado\"", "\"kind\": \"groove\"", 14, "one of “dado”, “rabbet”")]
    [InlineData("\"depth\": \"1/4 in\"", "\"depth\": \"3/4 in\"", 15, "leaves nothing of A")]
    [InlineData("\"10 in\"", "\"14 in\"", 16, "would end at 14 3/4 in")]
    [InlineData("\"10 in\"", "\"far\"", 16, "“far” has letters")]
    [InlineData("\"10 in\"", "10", 16, "“at”")]
    [InlineData("\"takenFrom\": \"A\"", "\"takenFrom\": \"B\"", 11, "taken from itself")]
    [InlineData(
        "\"takenFrom\": \"A\"",
        "\"event\": { \"kind\": \"joint fitted\", \"part\": \"A\" }",
        11,
        "letter of the part is missing"
    )]
    [InlineData(
        "\"takenFrom\": \"A\"",
        "\"event\": { \"kind\": \"glued\" }",
        11,
        "one of “joint fitted”"
    )]
    [InlineData(
        "\"takenFrom\": \"A\"",
        "\"event\": { \"kind\": \"dry fit\", \"part\": \"A\" }",
        11,
        "Leave the letter out"
    )]
    [InlineData("\"part\": \"B\", \"dim", "\"part\": \"Q\", \"dim", 19, "No part is marked Q.")]
    [InlineData("\"times\": 2", "\"times\": 0", 21, "It counts 0 times.")]
    [InlineData("\"part\": \"A\", \"dimension\": \"width\" }", "\"part\": \"A\" }", 22, "missing")]
    [InlineData("\"meaning\": \"dado\"", "\"meaning\": \"\"", 21, "Say what this size is")]
    public async Task A_wrong_joint_or_sum_is_refused_with_its_line(
        string right,
        string wrong,
        int line,
        string says
    )
    {
        Assert.Contains(right, Texts.Joined);
        await using var store = shop.Copy();

        var outcome = await store.ImportAsync(
            shop.Owner,
            Texts.Joined.Replace(right, wrong, StringComparison.Ordinal),
            shop.Course.Id
        );

        Assert.False(outcome.IsImported);
        Assert.Contains(
            outcome.Problems,
            p => p.Line == line && p.Sentence.Contains(says, StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task A_sum_that_does_not_come_out_is_no_reason_to_refuse_a_file()
    {
        await using var store = shop.Copy();

        // The text's own sum does not come out: it adds a width that has no business there.
        Assert.Empty((await store.ImportAsync(shop.Owner, Texts.Joined, shop.Course.Id)).Problems);
    }
}
