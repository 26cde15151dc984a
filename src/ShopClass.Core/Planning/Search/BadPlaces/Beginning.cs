namespace ShopClass.Core.Planning.Search.BadPlaces;

/// <summary>Sections placed from the start, the newest last.</summary>
/// <param name="Code">Blanks placed.</param>
/// <param name="End">The soonest end of the newest section.</param>
/// <param name="Slack">How far that end may move on without a gap after it.</param>
/// <param name="Slope">What each tick it moves on costs of sawing.</param>
/// <param name="Cost">The least cost so far.</param>
/// <param name="Option">The newest section.</param>
/// <param name="At">Its place.</param>
/// <param name="Before">The sections before it.</param>
internal sealed record Beginning(
    int Code,
    long End,
    long Slack,
    Int128 Slope,
    Cost Cost,
    SectionOption? Option,
    Outcome At,
    Beginning? Before
)
{
    /// <summary>Whether another was found that does as well for no more.</summary>
    public bool IsBeaten { get; set; }

    /// <summary>Whether a gap before the newest section is paid for.</summary>
    public bool IsAfterGap { get; init; }
}
