using ShopClass.Core.Drawings;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Web.Features.Boards;

/// <summary>Marking bad places on the drawing: every way of moving one ends here, snapped to the course's rule and kept on the board.</summary>
public sealed class BadPlaces(BoardEditor editor)
{
    private List<DefectDraft> Defects => editor.Draft.Defects;

    /// <summary>The board the places are on, or null while its size is not known.</summary>
    public Board? Board => BoardGaps.Drawable(editor.Draft, editor.Rules);

    public BoardRect PlaceOf(int index) => Defects[index].Place ?? default;

    public bool CanAdd => Defects.Count < BoardChecks.MostDefects;

    private Length Step => editor.Rules.Precision.Step();

    private Length Stride =>
        editor.Rules.Unit is UnitSystem.Inch
            ? Length.FromInches(0, 1, 4)
            : Length.FromMillimetres(5);

    private Length UsualSize =>
        editor.Rules.Unit is UnitSystem.Inch ? Length.FromInches(1) : Length.FromMillimetres(25);

    /// <summary>Adds a place of the usual size around a point, or in the middle of the board; returns its index.</summary>
    public int Add((Length Along, Length Across)? around = null)
    {
        var defect = new DefectDraft();
        Defects.Add(defect);
        if (Board is { } board)
        {
            var (along, across) = around ?? (Half(board.Length), Half(board.SmallestWidth));
            defect.Put(Fitted(Square(along, across, board), board));
        }
        return Defects.Count - 1;
    }

    /// <summary>Adds a place between two points of the board; returns its index.</summary>
    public int AddBetween((Length Along, Length Across) a, (Length Along, Length Across) b)
    {
        var index = Add(a);
        Put(index, Spanning(a, b));
        return index;
    }

    public void Remove(int index) => Defects.RemoveAt(index);

    public void Put(int index, BoardRect place)
    {
        if (Board is { } board)
            Defects[index].Put(Fitted(place, board));
    }

    /// <summary>Shifts a place by so many strides (or divisions of the rule, when fine).</summary>
    public void Move(int index, int along, int across, bool fine = false)
    {
        if (Defects[index].Place is not { } place)
            return;
        var by = fine ? Step : Stride;
        Put(index, Shifted(place, by * along, by * across));
    }

    /// <summary>Makes a place bigger or smaller; its start and its near edge stay.</summary>
    public void Resize(int index, int along, int across, bool fine = false)
    {
        if (Defects[index].Place is not { } place)
            return;
        var by = fine ? Step : Stride;
        var to = Length.Max(place.From + Step, place.To + by * along);
        var far = Length.Max(place.Near + Step, place.Far + by * across);
        if (Board is { } board)
            Defects[index].Put(Clipped(new(place.From, to, place.Near, far), board));
    }

    /// <summary>Where a place is, for people and screen readers.</summary>
    public string Words(int index)
    {
        var name = $"Bad place {index + 1}, {LumberWords.Of(Defects[index].Kind)}";
        if (Defects[index].Place is not { } place)
            return $"{name}: not placed yet";
        string Write(Length length) => LengthWriter.WriteWithUnit(length, editor.Rules.Precision);
        return $"{name}: {Write(place.From)} to {Write(place.To)} from the start, "
            + $"{Write(place.Near)} to {Write(place.Far)} from the near edge";
    }

    /// <summary>The index of each drawn place among the draft's.</summary>
    public IReadOnlyList<int> Drawn
    {
        get
        {
            var drawn = Board?.Defects ?? [];
            return
            [
                .. Enumerable
                    .Range(0, Defects.Count)
                    .Where(i => Defects[i].Place is { } p && drawn.Any(d => d.Place == p)),
            ];
        }
    }

    public static BoardRect Spanning(
        (Length Along, Length Across) a,
        (Length Along, Length Across) b
    ) =>
        new(
            Length.Min(a.Along, b.Along),
            Length.Max(a.Along, b.Along),
            Length.Min(a.Across, b.Across),
            Length.Max(a.Across, b.Across)
        );

    public static BoardRect Shifted(BoardRect place, Length along, Length across) =>
        new(place.From + along, place.To + along, place.Near + across, place.Far + across);

    private BoardRect Square(Length along, Length across, Board board)
    {
        var size = Length.Min(UsualSize, Length.Min(board.Length, board.SmallestWidth));
        var half = Half(size);
        return new(along - half, along - half + size, across - half, across - half + size);
    }

    /// <summary>Snapped to the rule's divisions, pushed back onto the board whole, never thinner than one division.</summary>
    private BoardRect Fitted(BoardRect place, Board board)
    {
        var (from, to) = Slid(place.From, place.To, board.Length);
        var (near, far) = Slid(place.Near, place.Far, BoardGaps.WidestOf(board));
        return new(from, to, near, far);
    }

    private (Length Low, Length High) Slid(Length low, Length high, Length most)
    {
        var size = Length.Min(most, Length.Max(Step, (high - low).RoundTo(Step)));
        var start = Length.Max(Length.Zero, Length.Min(low.RoundTo(Step), most - size));
        return (start, start + size);
    }

    private static BoardRect Clipped(BoardRect place, Board board) =>
        place with
        {
            To = Length.Min(place.To, board.Length),
            Far = Length.Min(place.Far, BoardGaps.WidestOf(board)),
        };

    private static Length Half(Length length) => Length.FromTicks(length.Ticks / 2);
}
