namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>Counts looks, so that a search ends by what it was asked and never by a clock. A step is a thousand looks.</summary>
internal sealed class Effort
{
    private const long LooksInStep = 1000;
    private readonly CancellationToken cancel;
    private readonly Effort? whole;
    private readonly long limit;
    private long looks;

    public Effort(int limit, CancellationToken cancel)
    {
        this.limit = limit * LooksInStep;
        this.cancel = cancel;
    }

    private Effort(Effort whole, long limit)
    {
        this.whole = whole;
        this.limit = limit;
        cancel = whole.cancel;
    }

    /// <summary>Steps taken so far, never more than the limit.</summary>
    public int Taken => (int)(Math.Min(limit, looks) / LooksInStep);

    /// <summary>Steps that are left.</summary>
    public int Left => (int)(Math.Max(0, limit - looks) / LooksInStep);

    /// <summary>Whether the search must end.</summary>
    public bool IsUp => looks >= limit || cancel.IsCancellationRequested;

    /// <summary>Whether the caller wants no more at all.</summary>
    public bool IsCancelled => cancel.IsCancellationRequested;

    /// <summary>Part of what is left, for one of so many tasks.</summary>
    public Effort Share(int tasks) => new(this, Math.Max(0, limit - looks) / tasks);

    /// <summary>Counts some looks; false when the search must end.</summary>
    public bool Take(long count)
    {
        looks += count;
        whole?.Take(count);
        return !IsUp;
    }
}
