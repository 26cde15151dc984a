using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>When an open dimension may be closed.</summary>
internal enum OpenStage
{
    /// <summary>After a joint or a glue-up of its own choosing.</summary>
    Chosen,

    /// <summary>After the joints are fitted dry.</summary>
    DryFit,

    /// <summary>When the other parts are put together; its part joins them afterwards.</summary>
    RestStands,

    /// <summary>In place, when everything is put together.</summary>
    Together,
}

/// <summary>
/// Tells the stage an open dimension waits for: by the event that was chosen, or where there are only the instructor's words,
/// by those of them that are understood.
/// </summary>
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
        if (open.Event is { } chosen)
            return chosen.Kind switch
            {
                OpenEventKind.JointFitted or OpenEventKind.GluedUp => OpenStage.Chosen,
                OpenEventKind.RestStands => OpenStage.RestStands,
                OpenEventKind.Together => OpenStage.Together,
                _ => OpenStage.DryFit,
            };
        if (open.Until.Contains("stand", StringComparison.OrdinalIgnoreCase))
            return OpenStage.RestStands;
        return Together.Any(w => open.Until.Contains(w, StringComparison.OrdinalIgnoreCase))
            ? OpenStage.Together
            : OpenStage.DryFit;
    }
}
