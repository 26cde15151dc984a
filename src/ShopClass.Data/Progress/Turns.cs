namespace ShopClass.Data.Progress;

/// <summary>
/// Writers take turns here before they ask SQLite, which has room for one at a time and keeps a thread of each that waits: a
/// class that ticks all at once would leave none to read with.
/// </summary>
internal sealed class Turns : IDisposable
{
    private readonly SemaphoreSlim one = new(1);

    public async Task<IDisposable> TakeAsync(CancellationToken cancel)
    {
        await one.WaitAsync(cancel);
        return new Turn(one);
    }

    public void Dispose() => one.Dispose();

    private sealed class Turn(SemaphoreSlim one) : IDisposable
    {
        public void Dispose() => one.Release();
    }
}
