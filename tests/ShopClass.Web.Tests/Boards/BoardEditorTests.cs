using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Data.Access;
using ShopClass.Data.Students;
using ShopClass.Web.Features.Boards;

namespace ShopClass.Web.Tests.Boards;

public class BoardEditorTests
{
    private static readonly CourseRules Rules = CourseRules.DefaultsFor(UnitSystem.Inch);

    [Fact]
    public void A_new_board_is_offered_the_courses_usual_end_trim()
    {
        var draft = BoardEditor.ForNew(Rules, boardsAlready: 1).Draft;

        Assert.Equal("Board 2", draft.Name);
        Assert.Equal(Rules.UsualEndTrim, draft.TrimStart);
        Assert.Equal(Rules.UsualEndTrim, draft.TrimEnd);
    }

    [Fact]
    public void Empty_fields_are_pointed_out_only_once_somebody_has_tried_to_save()
    {
        var editor = BoardEditor.ForNew(Rules, boardsAlready: 0);
        Assert.Empty(editor.Problems());

        Assert.Null(editor.BoardToSave());

        Assert.Contains("Type a length", editor.ProblemAt("Thickness"), StringComparison.Ordinal);
        Assert.Contains("Choose the wood", editor.ProblemAt("Species"), StringComparison.Ordinal);
    }

    [Fact]
    public void One_width_is_the_width_all_along_while_the_shortcut_is_on()
    {
        var editor = Editing(Classroom.Pine);
        editor.Draft.WidthAtStart = Length.FromInches(5);

        editor.Changed();

        Assert.Equal(Length.FromInches(5), editor.BoardToSave()!.WidthAtEnd);
    }

    // PS 20 Table 3: a 1x10 is 3/4 x 9 1/4 in, dry and dressed.
    [Fact]
    public void A_board_typed_by_its_sellers_name_is_asked_about_and_can_take_the_dressed_size()
    {
        var editor = Editing(OneByTen);

        Assert.Null(editor.BoardToSave());
        Assert.Contains("Did you measure it?", editor.Question, StringComparison.Ordinal);

        editor.UseDressedSize();
        var saved = editor.BoardToSave()!;
        Assert.Equal(Length.FromInches(0, 3, 4), saved.Thickness);
        Assert.Equal(Length.FromInches(9, 1, 4), saved.SmallestWidth);
    }

    [Fact]
    public void A_board_that_was_measured_is_saved_as_typed_and_not_asked_about_again()
    {
        var editor = Editing(OneByTen);
        editor.BoardToSave();

        editor.SayMeasured();

        Assert.Equal(Length.FromInches(10), editor.BoardToSave()!.SmallestWidth);
    }

    [Fact]
    public void Measured_once_is_asked_again_when_the_figures_change_to_another_sellers_name()
    {
        var editor = Editing(OneByTen);
        editor.SayMeasured();
        editor.Draft.WidthAtStart = Length.FromInches(8);

        Assert.Null(editor.BoardToSave());
        Assert.NotNull(editor.Question);
    }

    [Fact]
    public void Cup_and_twist_may_stay_empty_and_are_kept_where_they_are_not()
    {
        Assert.Equal(Length.Zero, Editing(Classroom.Pine).BoardToSave()!.Cup);
        var editor = Editing(Classroom.Pine with { Twist = Length.FromInches(0, 1, 4) });
        editor.Draft.Cup = Length.FromInches(2);
        Assert.Null(editor.BoardToSave());
        Assert.Contains("The cup is 2 in", editor.ProblemAt("Cup"), StringComparison.Ordinal);

        editor.Draft.Cup = Length.FromInches(0, 1, 8);
        var board = editor.BoardToSave()!;
        Assert.Equal(
            (Length.FromInches(0, 1, 8), Length.FromInches(0, 1, 4)),
            (board.Cup, board.Twist)
        );
    }

    [Fact]
    public void A_bad_place_off_the_board_gets_its_sentence_at_its_own_field()
    {
        var editor = Editing(Classroom.Pine);
        editor.Draft.Defects.Add(
            new()
            {
                From = Length.FromInches(70),
                To = Length.FromInches(75),
                Near = Length.FromInches(1),
                Far = Length.FromInches(2),
            }
        );

        Assert.Null(editor.BoardToSave());
        Assert.Contains(
            "off the board",
            editor.ProblemAt("Defects[0].To"),
            StringComparison.Ordinal
        );
        Assert.Null(editor.ProblemAt("Defects[0].From"));
    }

    [Fact]
    public void What_somebody_else_saved_meanwhile_is_shown_beside_what_was_typed_and_nothing_is_lost()
    {
        var mine = Editing(Classroom.Pine);
        mine.Draft.Name = "My pine";
        var theirs = Stored(Classroom.Pine with { Name = "Their pine" });

        mine.Take(Outcome<BoardView>.ChangedMeanwhile(theirs));

        var difference = Assert.Single(
            BoardDifferences.Between(mine.ChangedMeanwhile!.Board, mine.Draft, Rules)
        );
        Assert.Equal(new("Name", "Their pine", "My pine"), difference);
        mine.KeepMine();
        Assert.Equal("My pine", mine.BoardToSave()!.Name);
        Assert.Equal(theirs.Version, mine.Draft.Version);
    }

    [Fact]
    public void A_draft_kept_as_text_comes_back_exactly()
    {
        var draft = BoardDraft.Of(
            Classroom.Pine with
            {
                WidthAtEnd = Length.FromInches(6, 63, 64),
                Defects =
                [
                    new(
                        DefectKind.Wane,
                        new(Length.Zero, Length.FromTicks(7), Length.Zero, Length.FromTicks(11)),
                        DefectReach.BackFace
                    ),
                ],
            },
            Guid.NewGuid()
        );

        var again = BoardDraft.FromText(draft.ToText());

        Assert.Equal(draft.ToText(), again!.ToText());
        Assert.Equal(Length.FromInches(6, 63, 64), again.WidthAtEnd);
        Assert.Equal(draft.Version, again.Version);
        Assert.Equal(draft.Defects[0].Place, again.Defects[0].Place);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("{ not json")]
    public void A_kept_text_that_is_no_draft_is_left_aside(string? text) =>
        Assert.Null(BoardDraft.FromText(text));

    private static Board OneByTen =>
        Classroom.Pine with
        {
            Thickness = Length.FromInches(1),
            WidthAtStart = Length.FromInches(10),
            WidthAtMiddle = Length.FromInches(10),
            WidthAtEnd = Length.FromInches(10),
        };

    private static BoardEditor Editing(Board board) => BoardEditor.ForStored(Rules, Stored(board));

    private static BoardView Stored(Board board) =>
        new(Guid.NewGuid(), Guid.NewGuid(), Guid.NewGuid(), board, Guid.NewGuid());
}
