using ShopClass.Core.Lumber;
using ShopClass.Core.Orders;
using ShopClass.Data.Courses;

namespace ShopClass.Data.Orders;

/// <summary>Boards or offcuts on the rack, as stored.</summary>
public sealed class RackRow
{
    public Guid Id { get; set; }

    public Guid CourseId { get; set; }

    public CourseRow? Course { get; set; }

    public required Board Board { get; set; }

    public string Place { get; set; } = "";

    public int Count { get; set; }

    public RackState State { get; set; }

    public Guid Version { get; set; }

    internal void Take(RackPiece piece)
    {
        Board = piece.Board with { Id = Id.ToString("N") };
        (Place, Count, State) = (piece.Place, piece.Count, piece.State);
        Version = Guid.NewGuid();
    }

    internal RackView ToView() =>
        new(
            Id,
            CourseId,
            new()
            {
                Id = Id.ToString("N"),
                Board = Board,
                Place = Place,
                Count = Count,
                State = State,
            },
            Version
        );
}
