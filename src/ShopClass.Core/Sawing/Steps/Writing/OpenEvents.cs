using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>When an open dimension may be closed.</summary>
internal enum OpenStage
{
    /// <summary>After the joints are fitted dry.</summary>
    DryFit,

    /// <summary>When the other parts are put together; its part joins them afterwards.</summary>
    RestStands,

    /// <summary>In place, when everything is put together.</summary>
    Together,
}

/// <summary>Reads the event an open dimension waits for. Events are in the instructor's words; these are the ones understood.</summary>
internal static class OpenEvents
{
    private static readonly string[] Together =
    [
        "glued",
        "glue",
        "flush",
        "assembl",
        "nailed",
        "screwed",
        "together",
    ];

    /// <summary>
    /// "Stands" waits for the rest to stand; glue, nails and "flush" mean in place; everything else is a dry fit, which
    /// comes after all that could be meant.
    /// </summary>
    public static OpenStage When(OpenDimension open)
    {
        if (open.Until.Contains("stand", StringComparison.OrdinalIgnoreCase))
            return OpenStage.RestStands;
        return Together.Any(w => open.Until.Contains(w, StringComparison.OrdinalIgnoreCase))
            ? OpenStage.Together
            : OpenStage.DryFit;
    }
}
