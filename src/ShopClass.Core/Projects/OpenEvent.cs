namespace ShopClass.Core.Projects;

/// <summary>What an open dimension can wait for. All are things a project has of itself.</summary>
public enum OpenEventKind
{
    /// <summary>The joints of two parts are fitted.</summary>
    JointFitted,

    /// <summary>A part is glued up from its strips.</summary>
    GluedUp,

    /// <summary>Everything has been put together dry.</summary>
    DryFit,

    /// <summary>All the other parts are put together, and this one goes in afterwards.</summary>
    RestStands,

    /// <summary>Everything is put together; the dimension is closed in place.</summary>
    Together,
}

/// <summary>An event of the project that an open dimension waits for.</summary>
/// <param name="Kind">What happens.</param>
/// <param name="Part">The part that is glued up, or that receives the joint; empty where the event is of the whole piece.</param>
/// <param name="Mate">The part that enters the joint; else empty.</param>
public sealed record OpenEvent(OpenEventKind Kind, string Part = "", string Mate = "")
{
    /// <summary>The event in words, to stand after "until".</summary>
    public string Words =>
        Kind switch
        {
            OpenEventKind.JointFitted => $"{Mate} is fitted to {Part}",
            OpenEventKind.GluedUp => $"{Part} is glued up",
            OpenEventKind.DryFit => "everything is fitted dry",
            OpenEventKind.RestStands => "the rest stands",
            OpenEventKind.Together => "everything is put together",
            _ => throw new ArgumentOutOfRangeException(nameof(Kind), Kind, "Not an event."),
        };

    /// <summary>The same event when a part has got another letter.</summary>
    public OpenEvent Follow(string from, string to) =>
        this with
        {
            Part = Part == from ? to : Part,
            Mate = Mate == from ? to : Mate,
        };
}

/// <summary>The events a project has for its open dimensions to wait for.</summary>
public static class OpenEventList
{
    /// <summary>All of them, in the order of the work: glue-ups, joints as they are listed, dry fit, assembly.</summary>
    /// <param name="others">The other parts of the list.</param>
    /// <param name="joints">The joints between any of them.</param>
    /// <param name="own">The letter of the part itself, whose own gluing up comes before every size of it.</param>
    public static IReadOnlyList<OpenEvent> Of(
        IReadOnlyList<Part> others,
        IReadOnlyList<Joint> joints,
        string own
    )
    {
        var letters = others.Select(p => p.Letter).Append(own).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. others
                .Where(p => p.GlueUpAllowed)
                .Select(p => new OpenEvent(OpenEventKind.GluedUp, p.Letter)),
            .. joints
                .Where(j => j.Kind is not JointKind.Nailed && j.Mate is not null)
                .Where(j => letters.Contains(j.Part) && letters.Contains(j.Mate!))
                .Select(j => new OpenEvent(OpenEventKind.JointFitted, j.Part, j.Mate!))
                .Distinct(),
            new(OpenEventKind.DryFit),
            new(OpenEventKind.RestStands),
            new(OpenEventKind.Together),
        ];
    }

    /// <summary>
    /// What to say where an event that was chosen will not happen any more. The dimension waits for the dry fit then, which
    /// comes after all that could be meant.
    /// </summary>
    public static string Gone(PartDimension dimension, OpenEvent chosen) =>
        chosen.Kind is OpenEventKind.GluedUp
            ? $"{chosen.Part} is not glued up any more. Choose again; until then the {dimension.Words()} waits for the dry fit."
            : $"No joint of {chosen.Part} and {chosen.Mate} is in the list any more. Choose again; until then the {dimension.Words()} waits for the dry fit.";
}
