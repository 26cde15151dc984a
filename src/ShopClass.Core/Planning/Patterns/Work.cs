namespace ShopClass.Core.Planning.Patterns;

/// <summary>Counts simple looks, a thousand to a step, so that the end depends on the request and never on a clock.</summary>
internal sealed class Work(int stepLimit, CancellationToken cancel)
{
    private const int LooksInStep = 1000;
    private readonly long limit = (long)stepLimit * LooksInStep;
    private long looks;

    /// <summary>Steps taken so far.</summary>
    public int Steps => (int)Math.Min(int.MaxValue, looks / LooksInStep);

    /// <summary>Whether the limit is reached or the caller has cancelled.</summary>
    public bool IsUp => looks >= limit || cancel.IsCancellationRequested;

    /// <summary>Looks left.</summary>
    public long Left => Math.Max(0, limit - looks);

    /// <summary>Work of its own for one way of searching, some hundredths of what is left; what it took is counted when it is handed back.</summary>
    public Work Part(int hundredths) => new((int)(Left / LooksInStep * hundredths / 100), cancel);

    /// <summary>Counts what a part took.</summary>
    public void HandBack(Work part) => looks += part.looks;

    /// <summary>Counts some looks; false when the work must end.</summary>
    public bool Take(long some)
    {
        looks += some;
        return !IsUp;
    }
}
