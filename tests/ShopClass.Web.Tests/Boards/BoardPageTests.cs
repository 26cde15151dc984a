using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components.Web;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Data.Access;
using ShopClass.Web.Features.Boards;

namespace ShopClass.Web.Tests.Boards;

public sealed class BoardPageTests : IAsyncLifetime
{
    private Classroom _room = default!;

    public async ValueTask InitializeAsync() => _room = await Classroom.OpenAsync();

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    [Fact]
    public async Task A_board_typed_in_full_is_logged_as_typed()
    {
        var page = Open();
        Type(page, "Wood", "eastern white pine");
        Type(page, "Thickness, at the thinnest place", "3/4");
        Type(page, "Width", "7 1/4");
        Type(page, "Length", "6'");

        await page.Find("form").SubmitAsync();

        var board = Assert.Single(await _room.BoardsAsync()).Board;
        Assert.Equal("eastern-white-pine", board.SpeciesId);
        Assert.Equal(Length.FromInches(72), board.Length);
        Assert.Equal(Length.FromInches(7, 1, 4), board.WidthAtEnd);
    }

    [Fact]
    public async Task What_cannot_be_read_stays_as_typed_with_a_sentence_and_nothing_is_saved()
    {
        var page = Open();
        Type(page, "Length", "ninety six");
        Type(page, "Trim at the start", "a bit");

        await page.Find("form").SubmitAsync();

        Assert.Equal("ninety six", Field(page, "Length").GetAttribute("value"));
        Assert.Equal("a bit", Field(page, "Trim at the start").GetAttribute("value"));
        Assert.Equal("true", Field(page, "Length").GetAttribute("aria-invalid"));
        Assert.Contains("Not saved yet.", page.Markup, StringComparison.Ordinal);
        Assert.Empty(await _room.BoardsAsync());
    }

    [Fact]
    public async Task A_sellers_name_is_asked_about_and_saved_as_measured_when_that_is_the_answer()
    {
        var page = Open();
        TypeOneByTen(page);
        await page.Find("form").SubmitAsync();
        Assert.Contains(
            "Did you measure it?",
            page.Find("[role=alertdialog]").TextContent,
            StringComparison.Ordinal
        );
        Assert.Empty(await _room.BoardsAsync());

        await Button(page, "Yes, measured").ClickAsync(new());

        Assert.Equal(
            Length.FromInches(10),
            Assert.Single(await _room.BoardsAsync()).Board.SmallestWidth
        );
    }

    [Fact]
    public async Task A_sellers_name_can_be_answered_with_the_dressed_size_which_then_stands_in_the_fields()
    {
        var page = Open();
        TypeOneByTen(page);
        await page.Find("form").SubmitAsync();

        await Button(page, "Use 3/4 × 9 1/4 in").ClickAsync(new());

        Assert.Equal("3/4", Field(page, "Thickness, at the thinnest place").GetAttribute("value"));
        Assert.Equal("9 1/4", Field(page, "Width").GetAttribute("value"));
    }

    [Fact]
    public async Task A_bad_place_off_the_board_is_said_at_its_field_at_once()
    {
        var board = await _room.LogAsync(Classroom.Pine with { Defects = [Knot] });
        var page = Open(board.Id);

        Type(page, "Ends, from the start", "75");

        var field = Field(page, "Ends, from the start");
        var sentence = page.Find($"#{field.GetAttribute("aria-describedby")}").TextContent;
        Assert.Contains("off the board, which is 72 in long", sentence, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_arrow_key_moves_a_bad_place_and_says_where_it_is_now()
    {
        var board = await _room.LogAsync(Classroom.Pine with { Defects = [Knot] });
        var page = Open(board.Id);

        await page.Find(".wide-only [data-place='0']")
            .KeyDownAsync(new KeyboardEventArgs { Key = "ArrowRight" });

        var where = "20 1/4 in to 21 1/4 in from the start";
        Assert.Contains(
            where,
            page.Find(".bad-places > [aria-live]").TextContent,
            StringComparison.Ordinal
        );
        Assert.Contains(
            where,
            page.Find(".wide-only [data-place='0']").GetAttribute("aria-label"),
            StringComparison.Ordinal
        );
        Assert.Equal("20 1/4", Field(page, "Begins, from the start").GetAttribute("value"));
    }

    [Fact]
    public async Task A_board_saved_by_somebody_else_meanwhile_is_not_overwritten_unasked()
    {
        var board = await _room.LogAsync(Classroom.Pine);
        var page = Open(board.Id);
        await _room.Store.Boards.SaveAsync(
            _room.Instructor,
            board.Id,
            board.Board with
            {
                Name = "Theirs",
            },
            board.Version,
            Xunit.TestContext.Current.CancellationToken
        );
        Type(page, "What you call it", "Mine");

        await page.Find("form").SubmitAsync();
        Assert.Equal("Theirs", (await _room.BoardsAsync())[0].Board.Name);
        Assert.Equal("Mine", Field(page, "What you call it").GetAttribute("value"));

        await Button(page, "Save mine over it").ClickAsync(new());
        Assert.Equal("Mine", (await _room.BoardsAsync())[0].Board.Name);
    }

    [Fact]
    public async Task A_board_removed_meanwhile_can_still_be_logged_from_what_was_typed()
    {
        var board = await _room.LogAsync(Classroom.Pine);
        var page = Open(board.Id);
        await _room.Store.Boards.RemoveAsync(
            _room.Instructor,
            board.Id,
            Xunit.TestContext.Current.CancellationToken
        );

        await page.Find("form").SubmitAsync();
        await Button(page, "Log it as a new board").ClickAsync(new());

        Assert.Equal("Board 1", Assert.Single(await _room.BoardsAsync()).Board.Name);
    }

    [Fact]
    public async Task Another_students_board_is_not_found()
    {
        var board = await _room.LogAsync(Classroom.Pine);
        var stranger = new StudentViewer(Guid.NewGuid(), _room.Course.Id);

        var page = Open(board.Id, stranger);

        Assert.DoesNotContain("Board 1", page.Markup, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("form"));
    }

    private static Defect Knot { get; } =
        new(
            DefectKind.Knot,
            new(
                Length.FromInches(20),
                Length.FromInches(21),
                Length.FromInches(3),
                Length.FromInches(4)
            )
        );

    private IRenderedComponent<BoardPage> Open(Guid? board = null, Viewer? viewer = null) =>
        _room.Open<BoardPage>(
            p =>
                p.Add(x => x.CourseId, _room.Course.Id)
                    .Add(x => x.StudentId, _room.Student.Id)
                    .Add(x => x.ProjectId, _room.Project.Id)
                    .Add(x => x.BoardId, board),
            viewer
        );

    private static void TypeOneByTen(IRenderedComponent<BoardPage> page)
    {
        Type(page, "Wood", "eastern white pine");
        Type(page, "Thickness, at the thinnest place", "1");
        Type(page, "Width", "10");
        Type(page, "Length", "96");
    }

    private static void Type(IRenderedComponent<BoardPage> page, string label, string text) =>
        Field(page, label).Change(text);

    private static IElement Field(IRenderedComponent<BoardPage> page, string label)
    {
        var named = page.FindAll("label").First(l => l.TextContent.Trim() == label);
        return page.Find($"#{named.GetAttribute("for")}");
    }

    private static IElement Button(IRenderedComponent<BoardPage> page, string text) =>
        page.FindAll("button").First(b => b.TextContent.Trim() == text);
}
