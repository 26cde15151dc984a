using System.Text;
using Microsoft.EntityFrameworkCore;
using ShopClass.Data.CourseFiles;
using ShopClass.Data.Tests.Access;
using Xunit;

namespace ShopClass.Data.Tests.CourseFiles;

public partial class RefusalTests(Shop shop) : IClassFixture<Shop>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>What is exchanged in the small course, with what; the line; and what the sentence says.</summary>
    [Theory]
    // Whether it is a course file at all.
    [InlineData("\"shopclass\": 1", "\"shopclass\": 2", 2, "another version")]
    [InlineData("\"shopclass\": 1,", "", 1, "not a course file")]
    [InlineData("\"kind\": \"course\"", "\"kind\": \"school\"", 3, "“course” or “project”")]
    [InlineData("\"kind\": \"course\",", "", 1, "“course” or “project”")]
    // Whether it is JSON at all.
    [InlineData("\"name\": \"Evenings\",", "\"name\": \"Evenings\"", 6, "not JSON")]
    [InlineData("\"name\": \"Evenings\",", "\"name\": 'Evenings',", 5, "not JSON")]
    [InlineData("\"unit\": \"inch\",", "\"unit\": \"inch\", // inches", 6, "not JSON")]
    [InlineData(
        "\"alias\": \"\",",
        "\"alias\": \"\", \"name\": \"Eve\",",
        21,
        "“name” stands here a second time"
    )]
    // Fields.
    [InlineData("\"leftHanded\"", "\"leftHand\"", 21, "Is “leftHanded” meant?")]
    [InlineData(
        "\"leftHanded\"",
        "\"shoeSize\"",
        21,
        "Its fields are name, alias, leftHanded, boards."
    )]
    [InlineData("\"ripKerf\"", "\"ripcerf\"", 8, "Is “ripKerf” meant?")]
    [InlineData("\"hard-maple\"", "\"hardmaple\"", 35, "no species of the table")]
    [InlineData("\"spoiled\": 3", "\"spoiled\": 25", 38, "a whole number from 0 to 24")]
    [InlineData("\"unit\": \"inch\",", "", 4, "“unit” is missing in a course")]
    [InlineData("\"quantity\": 2, ", "", 13, "“quantity” is missing in a part")]
    [InlineData("\"quantity\": 2", "\"quantity\": \"two\"", 13, "a whole number; here it is “two”")]
    [InlineData("\"quantity\": 2", "\"quantity\": 2.5", 13, "a whole number; here it is “2.5”")]
    [InlineData("\"quantity\": 2", "\"quantity\": 99999999999999999999", 13, "a whole number")]
    [InlineData(
        "\"leftHanded\": true",
        "\"leftHanded\": \"yes\"",
        21,
        "true or false; here it is “yes”"
    )]
    [InlineData(
        "\"name\": \"Ada\"",
        "\"name\": null",
        21,
        "text in quotation marks; here it is null"
    )]
    [InlineData(
        "\"unit\": \"inch\"",
        "\"unit\": \"cubit\"",
        6,
        "one of “inch”, “metric”; here it is “cubit”"
    )]
    [InlineData(
        "\"surfacing\": \"S4S\"",
        "\"surfacing\": \"planed\"",
        24,
        "one of “rough”, “S2S”, “S3S”, “S4S”"
    )]
    [InlineData(
        "{ \"ripKerf\": \"5/64 in\",",
        "[],\"x\": {",
        8,
        "the settings is expected, with its fields in braces"
    )]
    [InlineData(
        "\"defects\": [",
        "\"defects\": { \"a\": [] }, \"b\": [",
        28,
        "a list of defects in square brackets"
    )]
    // Lengths.
    [InlineData(
        "\"width\": \"6 in\"",
        "\"width\": 6",
        14,
        "a length in quotation marks, such as \"9 1/4 in\""
    )]
    [InlineData("\"width\": \"6 in\"", "\"width\": \"six\"", 14, "“width”: “six” has letters")]
    [InlineData("\"width\": \"6 in\"", "\"width\": \"-6 in\"", 14, "less than zero")]
    [InlineData("\"width\": \"6 in\"", "\"width\": \"0\"", 14, "width")]
    [InlineData("\"width\": \"6 in\"", "\"width\": \"63360 in\"", 14, "longer than 100 ft")]
    [InlineData("\"ripKerf\": \"5/64 in\"", "\"ripKerf\": \"2 in\"", 8, "Rip kerf is 2 in")]
    // What Core's checks find.
    [InlineData("\"letter\": \"B\"", "\"letter\": \"A\"", 15, "A already marks “side”")]
    [InlineData("\"name\": \"Evenings\"", "\"name\": \"  \"", 5, "A name is missing")]
    [InlineData("\"extra\": \"1/4 in\"", "\"extra\": \"0\"", 17, "more than zero")]
    [InlineData(
        "\"species\": \"eastern-white-pine\"",
        "\"species\": \"eastern-whitepine\"",
        23,
        "Is “eastern-white-pine” meant?"
    )]
    [InlineData(
        "\"species\": \"eastern-white-pine\"",
        "\"species\": \"unobtainium\"",
        23,
        "not known"
    )]
    [InlineData("\"to\": \"22 in\"", "\"to\": \"122 in\"", 29, "off the board")]
    [InlineData("\"far\": \"2 in\"", "\"far\": \"1/2 in\"", 30, "The end must be the larger")]
    [InlineData("\"currency\": \"USD\"", "\"currency\": \"dollars\"", 27, "currency")]
    [InlineData(
        "\"precision\": \"1/16 in\"",
        "\"precision\": \"1 mm\"",
        7,
        "belongs to the other unit"
    )]
    [InlineData("\"hardGoingAbove\": 0.55", "\"shopHumidity\": 45.5", 9, "from 10 to 90")]
    [InlineData("\"hardGoingAbove\": 0.55", "\"roomHumidity\": 95", 9, "from 10 to 90")]
    [InlineData("\"hardGoingAbove\": 0.55", "\"hardGoingAbove\": 55", 9, "such as 0.55")]
    [InlineData("\"hardGoingAbove\": 0.55", "\"hardGoingAbove\": 0.555", 9, "at most two decimals")]
    // Projects of boards.
    [InlineData("\"project\": \"Shelf\"", "\"project\": \"Box\"", 23, "no such project")]
    [InlineData("\"project\": \"Shelf\"", "\"project\": 2", 23, "no such project")]
    [InlineData("\"project\": \"Shelf\"", "\"project\": 0", 23, "no such project")]
    [InlineData("\"project\": \"Shelf\", ", "", 23, "“project” is missing")]
    public async Task A_wrong_file_is_refused_with_its_line_and_changes_nothing(
        string right,
        string wrong,
        int line,
        string says
    )
    {
        Assert.Contains(right, Texts.Course);
        var at = Texts.Course.IndexOf(right, StringComparison.Ordinal);
        var text = Texts.Course.Remove(at, right.Length).Insert(at, wrong);

        var problems = await RefusedAsync(text);

        Assert.Contains(
            problems,
            p => p.Line == line && p.Sentence.Contains(says, StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData("", "not JSON")]
    [InlineData("   ", "not JSON")]
    [InlineData("hello", "not JSON")]
    [InlineData("[1]", "not a course file")]
    [InlineData("null", "not a course file")]
    [InlineData("{}", "not a course file")]
    [InlineData("{\"shopclass\":1,\"kind\":\"course\",\"course\":[]}", "a course is expected")]
    [InlineData("{\"shopclass\":1,\"kind\":\"course\"}", "“course” is missing")]
    [InlineData("{\"shopclass\":1,\"kind\":\"project\",\"unit\":\"inch\"}", "“project” is missing")]
    public async Task What_is_no_course_file_is_called_that(string text, string says)
    {
        var problem = Assert.Single(await RefusedAsync(text));
        Assert.Contains(says, problem.Sentence);
    }

    [Fact]
    public async Task Every_problem_is_found_at_once_in_the_order_of_lines()
    {
        var text = Texts
            .Course.Replace("\"letter\": \"A\"", "\"letter\": \"a1\"", StringComparison.Ordinal)
            .Replace("\"2 1/2 in\"", "\"wide\"", StringComparison.Ordinal)
            .Replace("\"name\": \"Ada\"", "\"nam\": \"Ada\"", StringComparison.Ordinal)
            .Replace("\"kind\": \"knot\"", "\"kind\": \"knob\"", StringComparison.Ordinal);

        var problems = await RefusedAsync(text);

        Assert.Equal([13, 16, 21, 21, 29], problems.Select(p => p.Line));
    }

    [Fact]
    public async Task A_file_with_hundreds_of_problems_lists_fifty_and_says_so()
    {
        var student = "{ \"name\": \"\" }";
        var text = Texts.Course.Replace(
            "\"students\": [",
            "\"students\": [" + string.Concat(Enumerable.Repeat(student + ",\n", 150)),
            StringComparison.Ordinal
        );

        var problems = await RefusedAsync(text);

        Assert.Equal(51, problems.Count);
        Assert.Contains("There may be more", problems[^1].Sentence);
    }

    [Fact]
    public async Task A_broken_character_inside_a_name_is_refused()
    {
        var text = Texts.Course.Replace("\"Ada\"", "\"A\\ud800da\"", StringComparison.Ordinal);

        Assert.Equal(21, Assert.Single(await RefusedAsync(text)).Line);
    }

    [Fact]
    public async Task A_project_file_needs_a_course_to_go_into()
    {
        Assert.Contains(
            "Open the course",
            Assert.Single(await RefusedAsync(Texts.Project)).Sentence
        );
    }

    private async Task<IReadOnlyList<FileProblem>> RefusedAsync(string text)
    {
        await using var store = shop.Copy();
        var outcome = await store.ImportAsync(shop.Owner, text);
        Assert.False(outcome.IsImported);
        Assert.Equal((null, null, ""), (outcome.CourseId, outcome.ProjectId, outcome.Summary));
        await using var context = store.Open();
        Assert.Equal(
            (2, 1, 3),
            (
                await context.Courses.CountAsync(Cancel),
                await context.Projects.CountAsync(Cancel),
                await context.Students.CountAsync(Cancel)
            )
        );
        return outcome.Problems;
    }

    /// <summary>So many spaces, made as they are read.</summary>
    private sealed class Spaces(long length) : Stream
    {
        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => length;

        public override long Position { get; set; }

        public override int Read(byte[] buffer, int offset, int count)
        {
            var read = (int)Math.Min(count, length - Position);
            Encoding.ASCII.GetBytes(new string(' ', read)).CopyTo(buffer, offset);
            Position += read;
            return read;
        }

        public override void Flush() { }

        public override long Seek(long offset, SeekOrigin origin) =>
            throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) =>
            throw new NotSupportedException();
    }
}
