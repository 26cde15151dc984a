namespace ShopClass.Core.Planning.Search;

/// <summary>
/// Counts the search's work, so that its end depends on the request and never on a clock. One step is ten looks at a section, a strip or a placing.
/// </summary>
internal sealed class Steps(int limit, CancellationToken cancel)
{
    private const int LooksInStep = 10;
    private long looks;

    /// <summary>Steps taken so far, never more than the limit.</summary>
    public int Taken => (int)Math.Min(limit, (looks + LooksInStep - 1) / LooksInStep);

    /// <summary>Whether the limit is reached or the caller has cancelled.</summary>
    public bool AreUp { get; private set; }

    /// <summary>Counts some looks; false when the search must end.</summary>
    public bool Take(int count = 1)
    {
        var before = looks / LooksInStep;
        looks += count;
        if (looks / LooksInStep != before)
            AreUp |= looks / LooksInStep >= limit || cancel.IsCancellationRequested;
        return !AreUp;
    }
}
