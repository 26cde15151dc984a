using System.Globalization;
using ShopClass.Core.Drawings;
using ShopClass.Core.Measure;

namespace ShopClass.Web.Features.Boards;

/// <summary>Turns points and keys on one drawing of a board into bad places on the board.</summary>
public sealed class BoardPointing(BoardEditor editor, DrawingFrame frame)
{
    private Drawing? _drawing;

    public BadPlaces Places { get; } = editor.Places;

    private BoardScale Scale => BoardScale.For(Places.Board!, frame);

    public Drawing Draw(int? selected)
    {
        var drawn = Places.Drawn;
        int? number =
            selected is { } index && drawn.Contains(index) ? drawn.ToList().IndexOf(index) : null;
        _drawing = BoardDrawing.Of(Places.Board!, editor.Rules.Precision, frame, number);
        return _drawing;
    }

    /// <summary>Where a place's mark lies over the drawing, in shares of it.</summary>
    public string StyleOf(int index)
    {
        var (x, y, width, height) = Scale.BoxFor(Places.PlaceOf(index));
        var drawing = _drawing ?? Draw(selected: null);
        return string.Create(
                CultureInfo.InvariantCulture,
                $"left:{x / drawing.Width:P3};top:{y / drawing.Height:P3};width:{width / drawing.Width:P3};height:{height / drawing.Height:P3}"
            )
            .Replace(" ", "", StringComparison.Ordinal);
    }

    public int? Point(double x, double y) => CanPlace(x, y) ? Places.Add(PlaceAt(x, y)) : null;

    public int? Drag(double x1, double y1, double x2, double y2) =>
        CanPlace(x1, y1, x2, y2) ? Places.AddBetween(PlaceAt(x1, y1), PlaceAt(x2, y2)) : null;

    public int? Move(int index, double dx, double dy)
    {
        if (!IsMark(index) || !CanPlace(dx, dy))
            return null;
        var place = Places.PlaceOf(index);
        var (x, y, width, height) = Scale.BoxFor(place);
        var middle = new Point(x + width / 2, y + height / 2);
        var was = Scale.PlaceAt(middle);
        var now = Scale.PlaceAt(Shifted(middle, dx, dy));
        Places.Put(index, BadPlaces.Shifted(place, now.Along - was.Along, now.Across - was.Across));
        return index;
    }

    public int? Resize(int index, double dx, double dy)
    {
        if (!IsMark(index) || !CanPlace(dx, dy))
            return null;
        var (x, y, width, height) = Scale.BoxFor(Places.PlaceOf(index));
        var corner = Shifted(new Point(x + width, y + height), dx, dy);
        Places.Put(
            index,
            BadPlaces.Spanning(Scale.PlaceAt(new Point(x, y)), Scale.PlaceAt(corner))
        );
        return index;
    }

    /// <summary>What a key does to a mark; null when it does nothing. Arrows go the way they point on this drawing.</summary>
    public PressedKey? Press(int index, string key, bool shift, bool fine)
    {
        if (!IsMark(index))
            return null;
        if (key is "Delete" or "Backspace")
        {
            Places.Remove(index);
            return new(Selected: null);
        }
        if (Direction(key) is not { } way)
            return null;
        var (along, across) = OnBoard(way);
        if (shift)
            Places.Resize(index, along, across, fine);
        else
            Places.Move(index, along, across, fine);
        return new(index);
    }

    private static (int X, int Y)? Direction(string key) =>
        key switch
        {
            "ArrowLeft" => (-1, 0),
            "ArrowRight" => (1, 0),
            "ArrowUp" => (0, -1),
            "ArrowDown" => (0, 1),
            _ => null,
        };

    private (int Along, int Across) OnBoard((int X, int Y) way)
    {
        var board = Places.Board!;
        var origin = Scale.PointAt(Length.Zero, Length.Zero);
        var end = Scale.PointAt(board.Length, Length.Zero);
        var edge = Scale.PointAt(Length.Zero, board.WidthAtStart);
        return (Sign(origin, end, way), Sign(origin, edge, way));
    }

    private static int Sign(Point from, Point to, (int X, int Y) way) =>
        Math.Sign(Math.Round((to.X - from.X) * way.X + (to.Y - from.Y) * way.Y, 6));

    private bool IsMark(int index) => Places.Drawn.Contains(index);

    /// <summary>What comes from a browser is checked like anything else that comes from outside.</summary>
    private bool CanPlace(params ReadOnlySpan<double> shares)
    {
        foreach (var share in shares)
        {
            if (!double.IsFinite(share) || Math.Abs(share) > 2)
                return false;
        }
        return Places.Board is not null;
    }

    private (Length Along, Length Across) PlaceAt(double x, double y) =>
        Scale.PlaceAt(Shifted(new Point(0, 0), x, y));

    private Point Shifted(Point point, double dx, double dy)
    {
        var drawing = _drawing ?? Draw(selected: null);
        return new(point.X + dx * drawing.Width, point.Y + dy * drawing.Height);
    }
}

/// <summary>That a key did something, and which place is selected after it.</summary>
public readonly record struct PressedKey(int? Selected);
