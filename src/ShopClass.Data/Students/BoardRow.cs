using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Data.Projects;

namespace ShopClass.Data.Students;

/// <summary>A board as stored.</summary>
public sealed class BoardRow
{
    public Guid Id { get; set; }

    public Guid StudentId { get; set; }

    public StudentRow? Student { get; set; }

    public Guid ProjectId { get; set; }

    public ProjectRow? Project { get; set; }

    /// <summary>In the order they were logged.</summary>
    public int Position { get; set; }

    public string Name { get; set; } = "";

    public string SpeciesId { get; set; } = "";

    public Surfacing Surfacing { get; set; }

    public Length Thickness { get; set; }

    public Length WidthAtStart { get; set; }

    public Length WidthAtMiddle { get; set; }

    public Length WidthAtEnd { get; set; }

    public Length Length { get; set; }

    public Length Cup { get; set; }

    public Length Twist { get; set; }

    public Length TrimStart { get; set; }

    public Length TrimEnd { get; set; }

    public IReadOnlyList<Defect> Defects { get; set; } = [];

    public long? PriceMinorUnits { get; set; }

    public string? PriceCurrency { get; set; }

    public Guid Version { get; set; }

    /// <summary>The version the instructor said yes to; null when to none.</summary>
    public Guid? YesVersion { get; set; }

    /// <summary>What the instructor wants put right; empty when nothing.</summary>
    public string SentBack { get; set; } = "";

    internal static BoardRow From(
        Board board,
        Guid studentId,
        Guid projectId,
        int position,
        Guid? id = null
    )
    {
        var row = new BoardRow
        {
            Id = id ?? Guid.NewGuid(),
            StudentId = studentId,
            ProjectId = projectId,
            Position = position,
        };
        row.Take(board);
        return row;
    }

    internal void Take(Board board)
    {
        Name = board.Name;
        SpeciesId = board.SpeciesId;
        Surfacing = board.Surfacing;
        Thickness = board.Thickness;
        WidthAtStart = board.WidthAtStart;
        WidthAtMiddle = board.WidthAtMiddle;
        WidthAtEnd = board.WidthAtEnd;
        Length = board.Length;
        Cup = board.Cup;
        Twist = board.Twist;
        TrimStart = board.TrimStart;
        TrimEnd = board.TrimEnd;
        Defects = [.. board.Defects];
        PriceMinorUnits = board.Price?.MinorUnits;
        PriceCurrency = board.Price?.Currency;
        Version = Guid.NewGuid();
        SentBack = "";
    }

    internal Board ToBoard() =>
        new()
        {
            Id = Id.ToString("N"),
            Name = Name,
            SpeciesId = SpeciesId,
            Surfacing = Surfacing,
            Thickness = Thickness,
            WidthAtStart = WidthAtStart,
            WidthAtMiddle = WidthAtMiddle,
            WidthAtEnd = WidthAtEnd,
            Length = Length,
            Cup = Cup,
            Twist = Twist,
            TrimStart = TrimStart,
            TrimEnd = TrimEnd,
            Defects = Defects,
            Price =
                PriceMinorUnits is { } amount && PriceCurrency is { } currency
                    ? new Money(amount, currency)
                    : null,
        };

    internal BoardView ToView() => new(Id, StudentId, ProjectId, ToBoard(), Version);
}
