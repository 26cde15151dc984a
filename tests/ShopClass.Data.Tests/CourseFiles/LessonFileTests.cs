using ShopClass.Data.Access;
using ShopClass.Data.Tests.Access;
using Xunit;

namespace ShopClass.Data.Tests.CourseFiles;

public class LessonFileTests(Shop shop) : IClassFixture<Shop>
{
    // What stands in a course beside Texts.Course's students, a line for each thing.
    private const string Lessons = """
              ],
              "stations": { "sawBenches": 4, "vises": 6, "benchHooks": 8, "sharpening": 2 },
              "demonstrations": [ { "skill": "ripping", "minutes": 15 } ],
              "lessons": [
                { "title": "First", "date": "2027-01-12", "start": "18:30", "minutes": 120, "shows": ["marking out", "crosscutting"] },
                { "title": "Second", "date": "2027-01-19", "minutes": 90, "absent": ["Ada"],
                  "stations": { "sawBenches": 1, "vises": 2, "benchHooks": 3, "sharpening": 0 } }
              ]
            }
        }
        """;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static string Whole => Students[..Students.LastIndexOf(']')].TrimEnd() + "\n" + Lessons;

    private static string Students =>
        Texts.Course[..Texts.Course.IndexOf("\"learned\"", StringComparison.Ordinal)];

    [Fact]
    public async Task Lessons_and_stations_come_out_as_they_went_in()
    {
        await using var store = shop.Copy();
        var outcome = await store.ImportAsync(shop.Owner, Whole);
        Assert.Empty(outcome.Problems);

        var written = await store.Files.ExportCourseAsync(
            shop.Owner,
            outcome.CourseId!.Value,
            Cancel
        );
        var again = await store.ImportAsync(shop.Owner, written!);

        var (one, two) = (
            await store.Lessons.FindAsync(shop.Owner, outcome.CourseId.Value, Cancel),
            await store.Lessons.FindAsync(shop.Owner, again.CourseId!.Value, Cancel)
        );
        Assert.Equal((4, 15), (one!.Shop.Stations.SawBenches, one.Shop.Demonstrations[0].Minutes));
        Assert.Equal(["First", "Second"], one.Lessons.Select(l => l.Lesson.Title));
        Assert.Single(one.Lessons[1].Lesson.Absent);
        Assert.Equal(
            one.Lessons.Select(l =>
                (
                    l.Lesson.Title,
                    l.Lesson.Date,
                    l.Lesson.Minutes,
                    l.Lesson.Stations,
                    l.Lesson.Absent.Count
                )
            ),
            two!.Lessons.Select(l =>
                (
                    l.Lesson.Title,
                    l.Lesson.Date,
                    l.Lesson.Minutes,
                    l.Lesson.Stations,
                    l.Lesson.Absent.Count
                )
            )
        );
        Assert.Equal(
            written,
            await store.Files.ExportCourseAsync(shop.Owner, again.CourseId.Value, Cancel)
        );
    }

    [Theory]
    [InlineData("\"minutes\": 120", "\"minutes\": 0", "this one has 0")]
    [InlineData("2027-01-12", "12 January", "such as \"2027-01-12\"")]
    [InlineData("\"sawBenches\": 1,", "\"sawBenches\": 61,", "saw benches from 0 to 60")]
    [InlineData("[\"Ada\"]", "[\"Zoe\"]", "each by the name in this file")]
    [InlineData("\"marking out\"", "\"whittling\"", "a list of skills")]
    [InlineData("\"minutes\": 15", "\"minutes\": 500", "from 0 to 120 minutes")]
    [InlineData("\"title\": \"First\", ", "", "“title” is missing")]
    public async Task A_wrong_lesson_is_refused_with_a_sentence(
        string right,
        string wrong,
        string says
    )
    {
        Assert.Contains(right, Whole);
        await using var store = shop.Copy();

        var outcome = await store.ImportAsync(
            shop.Owner,
            Whole.Replace(right, wrong, StringComparison.Ordinal)
        );

        Assert.Contains(
            outcome.Problems,
            p => p.Line > 0 && p.Sentence.Contains(says, StringComparison.Ordinal)
        );
    }
}
