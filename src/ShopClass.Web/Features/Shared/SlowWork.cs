namespace ShopClass.Web.Features.Shared;

/// <summary>
/// Something made away from the page so that it stays awake. What is quick is simply there; where it takes over a second
/// it tells how far it is. Disposing stops the work and forgets its result.
/// </summary>
public class SlowWork<TProgress, T>(
    Func<IProgress<TProgress>, CancellationToken, T> make,
    Func<TProgress, int> inHundredths,
    Func<Task> onSlow
) : IDisposable
    where T : class
{
    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(1);

    private readonly Func<TProgress, int> _inHundredths = inHundredths;
    private readonly CancellationTokenSource _stop = new();
    private volatile int _hundredths;
    private bool _isDisposed;

    /// <summary>Whether it has taken so long that a person wants to know how far it is.</summary>
    public bool IsSlow { get; private set; }

    /// <summary>How far it is, in hundredths.</summary>
    public int Hundredths => _hundredths;

    /// <summary>What was made, or null when its making was stopped.</summary>
    public async Task<T?> MakeAsync()
    {
        var token = _stop.Token;
        var making = Task.Run(() => make(new Teller(this), token), CancellationToken.None);
        while (
            await Task.WhenAny(making, Task.Delay(Beat)) != making && !token.IsCancellationRequested
        )
        {
            IsSlow = true;
            await onSlow();
        }
        try
        {
            var made = await making;
            return token.IsCancellationRequested ? null : made;
        }
        catch (OperationCanceledException) when (token.IsCancellationRequested)
        {
            return null;
        }
    }

    public void Dispose()
    {
        Dispose(disposing: true);
        GC.SuppressFinalize(this);
    }

    protected virtual void Dispose(bool disposing)
    {
        if (_isDisposed || !disposing)
            return;
        _isDisposed = true;
        _stop.Cancel();
        _stop.Dispose();
    }

    /// <summary>Hears of progress on the worker's own thread and only notes it: the page looks once a second.</summary>
    private sealed class Teller(SlowWork<TProgress, T> work) : IProgress<TProgress>
    {
        public void Report(TProgress value) => work._hundredths = work._inHundredths(value);
    }
}
