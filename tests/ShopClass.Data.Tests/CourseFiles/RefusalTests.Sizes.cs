using ShopClass.Data.CourseFiles;
using Xunit;

namespace ShopClass.Data.Tests.CourseFiles;

// Files that are too big, too deep or too full.
public partial class RefusalTests
{
    [Theory]
    [InlineData("\"students\": [", "{ \"name\": \"Eve\" },", 200, "201 students; 200 is the most")]
    [InlineData("\"projects\": [", "{ \"name\": \"Box\" },", 40, "41 projects; 40 is the most")]
    [InlineData("\"parts\": [", "{},", 5000, "5002 parts; 60 is the most")]
    [InlineData("\"defects\": [", "{},", 300, "301 defects; 30 is the most")]
    [InlineData("\"open\": [", "{},", 3, "4 open dimensions; 3 is the most")]
    public async Task More_than_is_kept_is_refused_in_one_sentence(
        string list,
        string item,
        int times,
        string says
    )
    {
        var text = Texts.Course.Replace(
            list,
            list + string.Concat(Enumerable.Repeat(item, times)),
            StringComparison.Ordinal
        );

        Assert.Contains(
            await RefusedAsync(text),
            p => p.Sentence.Contains(says, StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task More_boards_for_a_project_than_are_kept_are_refused()
    {
        var begin = Texts.Course.IndexOf("{ \"project\": \"Shelf\"", StringComparison.Ordinal);
        var end = Texts.Course.IndexOf("] } ] }", begin, StringComparison.Ordinal) + 3;
        var board = Texts.Course[begin..end];
        var text = Texts.Course.Insert(begin, string.Concat(Enumerable.Repeat(board + ",", 12)));

        Assert.Contains("12 boards", Assert.Single(await RefusedAsync(text)).Sentence);
    }

    [Fact]
    public async Task Deep_nesting_is_refused_before_it_costs_anything()
    {
        var text = $"{{\"shopclass\":1,\n\"kind\":{new string('[', 100_000)}";

        var problem = Assert.Single(await RefusedAsync(text));

        Assert.Equal(
            (2, true),
            (problem.Line, problem.Sentence.Contains("nested too deeply", StringComparison.Ordinal))
        );
    }

    [Fact]
    public async Task A_number_beyond_all_bounds_is_refused()
    {
        var text = Texts.Course.Replace(
            "0.55",
            "1" + new string('0', 400),
            StringComparison.Ordinal
        );

        Assert.Equal(9, Assert.Single(await RefusedAsync(text)).Line);
    }

    [Fact]
    public async Task A_file_of_20_MB_is_refused_after_the_first_4()
    {
        await using var store = shop.Copy();
        await using var endless = new Spaces(20 * 1024 * 1024);

        var outcome = await store.Files.ImportAsync(shop.Owner, endless, cancel: Cancel);

        Assert.Contains("larger than 4 MB", Assert.Single(outcome.Problems).Sentence);
        Assert.InRange(
            endless.Position,
            CourseFileStore.MostBytes,
            CourseFileStore.MostBytes + 100_000
        );
    }

    [Fact]
    public async Task A_file_that_is_no_text_is_refused()
    {
        await using var store = shop.Copy();
        using var file = new MemoryStream([
            0x89,
            0x50,
            0x4E,
            0x47,
            0x0D,
            0x0A,
            0x1A,
            0x0A,
            0xFF,
            0xFE,
        ]);

        var outcome = await store.Files.ImportAsync(shop.Owner, file, cancel: Cancel);

        Assert.Contains("UTF-8", Assert.Single(outcome.Problems).Sentence);
    }
}
