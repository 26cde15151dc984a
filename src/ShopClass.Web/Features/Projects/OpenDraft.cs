using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Web.Features.Projects;

/// <summary>An "open until…" line of a row being edited: nothing, half of it, or both.</summary>
public sealed class OpenDraft(PartDimension dimension)
{
    public PartDimension Dimension { get; } = dimension;

    public Length? Extra { get; set; }

    public string Until { get; set; } = "";

    /// <summary>The project's own event that was chosen; null for words, or for nothing yet.</summary>
    public OpenEvent? Event { get; private set; }

    /// <summary>Whether the event is told in words of one's own.</summary>
    public bool IsInWords { get; private set; }

    /// <summary>What the list of events has chosen: a key of an event, "words", or nothing.</summary>
    public string Choice =>
        Event is { } chosen ? KeyOf(chosen)
        : IsInWords ? InWords
        : "";

    /// <summary>The key of words of one's own in the list of events.</summary>
    public const string InWords = "words";

    public static string KeyOf(OpenEvent one) => $"{one.Kind}:{one.Part}:{one.Mate}";

    /// <summary>Chooses from the list of events.</summary>
    public void Choose(string key, IReadOnlyList<OpenEvent> events)
    {
        Event = events.FirstOrDefault(e => KeyOf(e) == key);
        IsInWords = key == InWords;
        Until = Event?.Words ?? (IsInWords ? Until : "");
    }

    /// <summary>Another part has got a new letter.</summary>
    public void Follow(string from, string to)
    {
        if (TakenFrom == from)
            TakenFrom = to;
        if (Event is { } chosen)
            (Event, Until) = (chosen.Follow(from, to), chosen.Follow(from, to).Words);
    }

    /// <summary>The letter of the part it is taken from; empty for none.</summary>
    public string TakenFrom { get; set; } = "";

    /// <summary>Whether an extra was typed that cannot be read; the field says so itself.</summary>
    public bool ExtraIsUnreadable { get; set; }

    public bool IsEmpty => Extra is null && !ExtraIsUnreadable && Until.Length == 0;

    public string Field => $"Open.{Dimension}";

    public string? Problem =>
        (IsEmpty, Extra, Until.Trim().Length) switch
        {
            (true, _, _) => null,
            (_, null, _) => "Type how much over the finished size it stays.",
            (_, _, 0) when IsInWords => "Say what has to happen first: “the ends dry-fit”.",
            (_, _, 0) => "Choose what has to happen first.",
            _ => null,
        };

    public OpenDimension? ToOpen() =>
        IsEmpty || Problem is not null
            ? null
            : new(Dimension, Extra!.Value, Until.Trim())
            {
                TakenFrom = TakenFrom.Length == 0 ? null : TakenFrom,
                Event = Event,
            };

    public void Take(OpenDimension? open)
    {
        Extra = open?.Extra;
        Until = open?.Until ?? "";
        TakenFrom = open?.TakenFrom ?? "";
        Event = open?.Event;
        IsInWords = open is { Event: null };
        ExtraIsUnreadable = false;
    }
}
