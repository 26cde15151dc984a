using Bunit;
using ShopClass.Core.Sawing.Steps;
using ShopClass.Data.Access;
using ShopClass.Web.Features.Courses;
using Xunit;

namespace ShopClass.Web.Tests.Courses;

public sealed class TechniquesPageTests : IAsyncLifetime
{
    private Classroom room = default!;

    public async ValueTask InitializeAsync() => room = await Classroom.OpenAsync();

    public ValueTask DisposeAsync() => room.DisposeAsync();

    [Fact]
    public async Task A_note_in_the_instructors_words_is_kept_and_empty_words_put_the_usual_ones_back()
    {
        var page = Open();
        Assert.Contains(Techniques.Usual["Rip"], page.Markup, StringComparison.Ordinal);

        page.Find("#words-Rip").Change("Long strokes, sighting down the back.");
        page.WaitForAssertion(() => Assert.Equal("Saved.", page.Find("#said-Rip").TextContent));
        Assert.Equal(
            new TechniqueNote("Rip", "Long strokes, sighting down the back."),
            Assert.Single(await NotesAsync())
        );

        page.Find("#words-Rip").Change("");
        page.WaitForAssertion(() =>
            Assert.Equal("Saved: the usual words stand.", page.Find("#said-Rip").TextContent)
        );
        Assert.Empty(await NotesAsync());
    }

    [Fact]
    public async Task Words_that_are_too_long_stay_as_typed_and_are_not_kept()
    {
        var page = Open();
        var words = new string('x', TechniqueNotes.LongestNote + 1);

        page.Find("#words-Rip").Change(words);

        page.WaitForAssertion(() =>
            Assert.Contains("Use at most 600.", page.Find("#said-Rip").TextContent)
        );
        Assert.Equal(words, page.Find("#words-Rip").GetAttribute("value"));
        Assert.Empty(await NotesAsync());
    }

    [Fact]
    public async Task What_somebody_else_wrote_meanwhile_is_shown_and_not_written_over()
    {
        var page = Open();
        await room.Store.Courses.SaveTechniqueAsync(
            room.Instructor,
            room.Course.Id,
            "Rip",
            was: "",
            "Theirs.",
            Xunit.TestContext.Current.CancellationToken
        );

        page.Find("#words-Rip").Change("Mine.");
        page.WaitForAssertion(() =>
            Assert.Contains("“Theirs.”", page.Find(".technique-note .note").TextContent)
        );
        Assert.Equal("Theirs.", Assert.Single(await NotesAsync()).Text);
        page.FindAll("button").First(b => b.TextContent == "Keep yours").Click();

        page.WaitForAssertion(() => Assert.Equal("Saved.", page.Find("#said-Rip").TextContent));
        Assert.Equal("Mine.", Assert.Single(await NotesAsync()).Text);
    }

    [Fact]
    public void A_student_finds_no_such_page() =>
        Assert.DoesNotContain(
            "In your words",
            Open(new StudentViewer(room.Student.Id, room.Course.Id)).Markup,
            StringComparison.Ordinal
        );

    private Task<IReadOnlyList<TechniqueNote>> NotesAsync() =>
        room.Store.Courses.TechniqueNotesAsync(room.Instructor, room.Course.Id);

    private IRenderedComponent<TechniquesPage> Open(Viewer? viewer = null) =>
        room.Open<TechniquesPage>(p => p.Add(x => x.CourseId, room.Course.Id), viewer);
}
