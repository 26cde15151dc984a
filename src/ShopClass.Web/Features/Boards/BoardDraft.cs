using System.Text.Json;
using System.Text.Json.Serialization;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Data.Store;

namespace ShopClass.Web.Features.Boards;

/// <summary>What has been entered about a board so far. Anything may still be missing.</summary>
public sealed class BoardDraft
{
    private static readonly JsonSerializerOptions Format = new()
    {
        Converters = { new LengthJson() },
    };

    public string Name { get; set; } = "";
    public string? SpeciesId { get; set; }
    public Surfacing Surfacing { get; set; } = Surfacing.S4S;
    public Length? Thickness { get; set; }
    public bool SameWidthAllAlong { get; set; } = true;
    public Length? WidthAtStart { get; set; }
    public Length? WidthAtMiddle { get; set; }
    public Length? WidthAtEnd { get; set; }
    public Length? Length { get; set; }

    /// <summary>Nothing for a board without a hollow.</summary>
    public Length? Cup { get; set; }

    /// <summary>Nothing for a board that is not twisted.</summary>
    public Length? Twist { get; set; }
    public Length? TrimStart { get; set; }
    public Length? TrimEnd { get; set; }
    public List<DefectDraft> Defects { get; set; } = [];
    public Money? Price { get; set; }

    /// <summary>The thickness and width somebody has said were measured, so that the question is not asked twice.</summary>
    public Length? MeasuredThickness { get; set; }
    public Length? MeasuredWidth { get; set; }

    /// <summary>The stored version this draft began from; null for a new board.</summary>
    public Guid? Version { get; set; }

    public static BoardDraft Of(Board board, Guid version) =>
        new()
        {
            Name = board.Name,
            SpeciesId = board.SpeciesId,
            Surfacing = board.Surfacing,
            Thickness = board.Thickness,
            SameWidthAllAlong =
                board.WidthAtStart == board.WidthAtMiddle && board.WidthAtStart == board.WidthAtEnd,
            WidthAtStart = board.WidthAtStart,
            WidthAtMiddle = board.WidthAtMiddle,
            WidthAtEnd = board.WidthAtEnd,
            Length = board.Length,
            Cup = board.Cup > Core.Measure.Length.Zero ? board.Cup : null,
            Twist = board.Twist > Core.Measure.Length.Zero ? board.Twist : null,
            TrimStart = board.TrimStart,
            TrimEnd = board.TrimEnd,
            Defects = [.. board.Defects.Select(DefectDraft.Of)],
            Price = board.Price,
            Version = version,
        };

    public string ToText() => JsonSerializer.Serialize(this, Format);

    /// <summary>A draft kept as text, or null when it cannot be read any more.</summary>
    public static BoardDraft? FromText(string? text)
    {
        if (string.IsNullOrEmpty(text))
            return null;
        try
        {
            return JsonSerializer.Deserialize<BoardDraft>(text, Format);
        }
        catch (JsonException)
        {
            return null;
        }
    }
}

/// <summary>A bad place as entered so far.</summary>
public sealed class DefectDraft
{
    public DefectKind Kind { get; set; } = DefectKind.Knot;
    public DefectReach Reach { get; set; } = DefectReach.Through;
    public Length? From { get; set; }
    public Length? To { get; set; }
    public Length? Near { get; set; }
    public Length? Far { get; set; }

    [JsonIgnore]
    public BoardRect? Place =>
        From is { } from && To is { } to && Near is { } near && Far is { } far
            ? new BoardRect(from, to, near, far)
            : null;

    public static DefectDraft Of(Defect defect)
    {
        var draft = new DefectDraft { Kind = defect.Kind, Reach = defect.Reach };
        draft.Put(defect.Place);
        return draft;
    }

    public void Put(BoardRect place)
    {
        From = place.From;
        To = place.To;
        Near = place.Near;
        Far = place.Far;
    }
}
