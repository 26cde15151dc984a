using System.Text.Json;
using ShopClass.Data.Store;
using ShopClass.Web.Features.Boards;

namespace ShopClass.Web.Features.Logging;

/// <summary>A board being logged: what was entered, and which screens were answered.</summary>
public sealed class LoggingDraft
{
    private static readonly JsonSerializerOptions Format = new()
    {
        Converters = { new LengthJson() },
    };

    public BoardDraft Board { get; set; } = new() { SameWidthAllAlong = false };

    public List<EntryScreen> Answered { get; set; } = [];

    public string ToText() => JsonSerializer.Serialize(this, Format);

    /// <summary>A draft as it was kept; a new one when there is none or it cannot be read any more.</summary>
    public static LoggingDraft FromText(string? text)
    {
        if (string.IsNullOrEmpty(text))
            return new();
        try
        {
            return JsonSerializer.Deserialize<LoggingDraft>(text, Format) ?? new();
        }
        catch (JsonException)
        {
            return new();
        }
    }

    public void HasAnswered(EntryScreen screen)
    {
        if (!Answered.Contains(screen))
            Answered.Add(screen);
    }
}
