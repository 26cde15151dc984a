namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>Counts looks, so that a search ends by what it was asked and never by a clock. A step is a thousand looks.</summary>
internal sealed class Effort(int limit, CancellationToken cancel)
{
    private const long LooksInStep = 1000;
    private long looks;

    /// <summary>Steps taken so far, never more than the limit.</summary>
    public int Taken => (int)Math.Min(limit, looks / LooksInStep);

    /// <summary>Steps allowed.</summary>
    public int Limit => limit;

    /// <summary>Whether the search must end.</summary>
    public bool IsUp => looks >= limit * LooksInStep || cancel.IsCancellationRequested;

    /// <summary>Counts some looks; false when the search must end.</summary>
    public bool Take(long count)
    {
        looks += count;
        return !IsUp;
    }
}
