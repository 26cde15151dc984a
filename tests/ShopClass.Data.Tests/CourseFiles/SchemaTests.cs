using NJsonSchema;
using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Access;
using ShopClass.Data.Tests.Access;
using Xunit;

namespace ShopClass.Data.Tests.CourseFiles;

/// <summary>The published schema, judged by a general-purpose library (NJsonSchema), and the reader say the same.</summary>
public class SchemaTests(Shop shop) : IClassFixture<Shop>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_demo_course_is_as_the_schema_says() =>
        Assert.Empty((await SchemaAsync()).Validate(Texts.Demo()));

    [Fact]
    public async Task The_files_of_these_tests_are_as_the_schema_says()
    {
        Assert.Empty((await SchemaAsync()).Validate(Texts.Course));
        Assert.Empty((await SchemaAsync()).Validate(Texts.Project));
        Assert.Empty((await SchemaAsync()).Validate(Texts.Joined));
    }

    [Fact]
    public async Task Exported_files_are_as_the_schema_says()
    {
        await using var store = shop.Copy();
        var schema = await SchemaAsync();
        var course = await store.Files.ExportCourseAsync(shop.Owner, shop.Course.Id, Cancel);
        var project = await store.Files.ExportProjectAsync(shop.Owner, shop.Project.Id, Cancel);

        Assert.Empty(schema.Validate(course!));
        Assert.Empty(schema.Validate(project!));
    }

    [Theory]
    [InlineData("\"leftHanded\": true", "\"leftHand\": true")]
    [InlineData("\"shopclass\": 1", "\"shopclass\": 2")]
    [InlineData("\"quantity\": 2", "\"quantity\": 51")]
    [InlineData("\"letter\": \"A\"", "\"letter\": \"a\"")]
    [InlineData("\"width\": \"6 in\"", "\"width\": 6")]
    [InlineData("\"surfacing\": \"S4S\"", "\"surfacing\": \"s4s\"")]
    [InlineData("\"unit\": \"inch\",", "")]
    [InlineData("\"ripKerf\"", "\"ripcerf\"")]
    [InlineData("\"step\": \"rough rip\", \"percent\"", "\"step\": \"ripping\", \"percent\"")]
    [InlineData("\"percent\": 130", "\"percent\": 401")]
    [InlineData("\"waste\": 34", "\"waste\": 96")]
    [InlineData("\"part\": \"A\", \"spoiled\"", "\"part\": \"ABC\", \"spoiled\"")]
    [InlineData("\"made\": 24", "\"made\": 0")]
    [InlineData("\"boardsWaitForYes\": true", "\"boardsWaitForYes\": \"yes\"")]
    public async Task What_the_schema_refuses_the_reader_refuses(string right, string wrong)
    {
        await using var store = shop.Copy();
        var text = Texts.Course.Replace(right, wrong, StringComparison.Ordinal);

        Assert.NotEmpty((await SchemaAsync()).Validate(text));
        Assert.False((await store.ImportAsync(shop.Owner, text)).IsImported);
    }

    [Theory]
    [InlineData("\"kind\": \"dado\"", "\"kind\": \"Dado\"")]
    [InlineData("\"at\": [", "\"places\": [")]
    [InlineData("\"times\": 2", "\"times\": 0")]
    [InlineData("\"size\": \"20 in\", ", "")]
    [InlineData(", \"dimension\": \"width\" }", " }")]
    [InlineData("\"takenFrom\": \"A\"", "\"takenFrom\": \"the sides\"")]
    public async Task What_the_schema_refuses_of_a_joint_the_reader_refuses(
        string right,
        string wrong
    )
    {
        await using var store = shop.Copy();
        Assert.Contains(right, Texts.Joined);
        var text = Texts.Joined.Replace(right, wrong, StringComparison.Ordinal);

        Assert.NotEmpty((await SchemaAsync()).Validate(text));
        Assert.False((await store.ImportAsync(shop.Owner, text, shop.Course.Id)).IsImported);
    }

    [Fact]
    public async Task The_schema_knows_every_setting_and_the_same_limits()
    {
        var definitions = (await SchemaAsync()).Definitions;
        var course = definitions["course"].ActualProperties;

        Assert.Equal(
            [
                .. RuleBook.Lengths.Select(r => r.Key),
                "planingTaught",
                "edgeGluingTaught",
                RuleBook.MostGlueUpStripsKey,
                RuleBook.HardGoingKey,
                RuleBook.ShopHumidityKey,
                RuleBook.RoomHumidityKey,
            ],
            course["rules"].ActualProperties.Keys.AsEnumerable()
        );
        Assert.Equal(
            TechniqueNotes.Keys,
            course["techniques"].Item!.ActualProperties["about"].Enumeration.Cast<string>()
        );
        Assert.Equal(
            TechniqueNotes.LongestNote,
            course["techniques"].Item!.ActualProperties["words"].MaxLength
        );
        var pace = course["learned"].ActualProperties["pace"];
        Assert.Equal(
            Enum.GetValues<StepKind>().Length,
            pace.Item!.ActualProperties["step"].Enumeration.Count
        );
        Assert.Equal(StoreLimits.StudentsInACourse, course["students"].MaxItems);
        Assert.Equal(StoreLimits.ProjectsInACourse, course["projects"].MaxItems);
        Assert.Equal(StoreLimits.LongestName, course["name"].MaxLength);
        Assert.Equal(
            BoardChecks.MostDefects,
            definitions["board"].ActualProperties["defects"].MaxItems
        );
        Assert.Equal(
            Core.Projects.PartChecks.MostParts,
            definitions["project"].ActualProperties["parts"].MaxItems
        );
        Assert.Equal(
            Core.Projects.JointChecks.MostJoints,
            definitions["project"].ActualProperties["joints"].MaxItems
        );
        Assert.Equal(
            Core.Projects.JointChecks.MostPositions,
            definitions["joint"].ActualProperties["at"].MaxItems
        );
        Assert.Equal(
            Core.Projects.SizeSum.MostChecks,
            definitions["project"].ActualProperties["sizesThatAgree"].MaxItems
        );
        Assert.Equal(
            Core.Projects.SizeSum.MostTerms,
            definitions["sizeCheck"].ActualProperties["equals"].MaxItems
        );
    }

    private static Task<JsonSchema> SchemaAsync() =>
        JsonSchema.FromFileAsync(
            Path.Combine(AppContext.BaseDirectory, "course-file.schema.json"),
            Cancel
        );
}
