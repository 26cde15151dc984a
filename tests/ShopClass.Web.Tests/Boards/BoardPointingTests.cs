using ShopClass.Core.Courses;
using ShopClass.Core.Drawings;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Data.Students;
using ShopClass.Web.Features.Boards;

namespace ShopClass.Web.Tests.Boards;

public class BoardPointingTests
{
    private static readonly CourseRules Rules = CourseRules.DefaultsFor(UnitSystem.Inch);

    // A board that lies has its start to the left and its near edge below; one on end starts at the top, near edge left.
    [Theory]
    [InlineData(false, "ArrowRight", 1, 0)]
    [InlineData(false, "ArrowLeft", -1, 0)]
    [InlineData(false, "ArrowUp", 0, 1)]
    [InlineData(false, "ArrowDown", 0, -1)]
    [InlineData(true, "ArrowDown", 1, 0)]
    [InlineData(true, "ArrowUp", -1, 0)]
    [InlineData(true, "ArrowRight", 0, 1)]
    [InlineData(true, "ArrowLeft", 0, -1)]
    public void An_arrow_moves_a_bad_place_the_way_it_points(
        bool upright,
        string key,
        int along,
        int across
    )
    {
        var (editor, pointing) = Marked(upright);
        var before = editor.Draft.Defects[0].Place!.Value;

        Assert.NotNull(pointing.Press(0, key, shift: false, fine: false));

        var quarter = Length.FromInches(0, 1, 4);
        var expected = BadPlaces.Shifted(before, quarter * along, quarter * across);
        Assert.Equal(expected, editor.Draft.Defects[0].Place);
    }

    [Fact]
    public void Shift_and_an_arrow_change_its_size_and_keep_its_start_and_near_edge()
    {
        var (editor, pointing) = Marked(upright: false);
        var before = editor.Draft.Defects[0].Place!.Value;

        pointing.Press(0, "ArrowRight", shift: true, fine: false);

        var after = editor.Draft.Defects[0].Place!.Value;
        Assert.Equal(before with { To = before.To + Length.FromInches(0, 1, 4) }, after);
    }

    [Fact]
    public void Control_moves_by_one_division_of_the_courses_rule()
    {
        var (editor, pointing) = Marked(upright: false);
        var before = editor.Draft.Defects[0].Place!.Value;

        pointing.Press(0, "ArrowRight", shift: false, fine: true);

        Assert.Equal(before.From + Rules.Precision.Step(), editor.Draft.Defects[0].From);
    }

    [Fact]
    public void A_bad_place_cannot_be_pushed_off_the_board_and_keeps_its_size()
    {
        var (editor, pointing) = Marked(upright: false);
        var size = editor.Draft.Defects[0].Place!.Value.Along;

        for (var i = 0; i < 400; i++)
            pointing.Press(0, "ArrowRight", shift: false, fine: false);

        var place = editor.Draft.Defects[0].Place!.Value;
        Assert.Equal(Classroom.Pine.Length, place.To);
        Assert.Equal(size, place.Along);
    }

    [Fact]
    public void Delete_removes_it()
    {
        var (editor, pointing) = Marked(upright: false);

        pointing.Press(0, "Delete", shift: false, fine: false);

        Assert.Empty(editor.Draft.Defects);
    }

    [Fact]
    public void Dragging_between_two_points_marks_what_lies_between_snapped_to_the_rule()
    {
        var editor = Editing();
        var pointing = new BoardPointing(editor, DrawingFrame.Wide);
        var drawing = pointing.Draw(selected: null);
        var scale = BoardScale.For(editor.Places.Board!, DrawingFrame.Wide);
        var a = scale.PointAt(Length.FromInches(10), Length.FromInches(2));
        var b = scale.PointAt(Length.FromInches(14), Length.FromInches(5));

        pointing.Drag(
            b.X / drawing.Width,
            b.Y / drawing.Height,
            a.X / drawing.Width,
            a.Y / drawing.Height
        );

        var place = editor.Draft.Defects[0].Place!.Value;
        Assert.Equal(
            new(
                Length.FromInches(10),
                Length.FromInches(14),
                Length.FromInches(2),
                Length.FromInches(5)
            ),
            place
        );
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(1e9)]
    public void A_point_that_no_pointer_can_send_marks_nothing(double x)
    {
        var editor = Editing();

        Assert.Null(new BoardPointing(editor, DrawingFrame.Wide).Point(x, 0.5));

        Assert.Empty(editor.Draft.Defects);
    }

    [Fact]
    public void A_mark_that_is_not_there_cannot_be_moved()
    {
        var editor = Editing();

        Assert.Null(new BoardPointing(editor, DrawingFrame.Wide).Move(3, 0.1, 0.1));
    }

    private static BoardEditor Editing() =>
        BoardEditor.ForStored(
            Rules,
            new BoardView(
                Guid.NewGuid(),
                Guid.NewGuid(),
                Guid.NewGuid(),
                Classroom.Pine,
                Guid.NewGuid()
            )
        );

    private static (BoardEditor, BoardPointing) Marked(bool upright)
    {
        var editor = Editing();
        editor.Places.Add((Length.FromInches(30), Length.FromInches(3)));
        return (editor, new(editor, upright ? DrawingFrame.Narrow : DrawingFrame.Wide));
    }
}
