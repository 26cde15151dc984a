using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Web.Features.Projects;

/// <summary>An "open until…" line of a row being edited: nothing, half of it, or both.</summary>
public sealed class OpenDraft(PartDimension dimension)
{
    public PartDimension Dimension { get; } = dimension;

    public Length? Extra { get; set; }

    public string Until { get; set; } = "";

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
            (_, _, 0) => "Say what has to happen first: “the ends dry-fit”.",
            _ => null,
        };

    public OpenDimension? ToOpen() =>
        IsEmpty || Problem is not null
            ? null
            : new(Dimension, Extra!.Value, Until.Trim())
            {
                TakenFrom = TakenFrom.Length == 0 ? null : TakenFrom,
            };

    public void Take(OpenDimension? open)
    {
        Extra = open?.Extra;
        Until = open?.Until ?? "";
        TakenFrom = open?.TakenFrom ?? "";
        ExtraIsUnreadable = false;
    }
}
