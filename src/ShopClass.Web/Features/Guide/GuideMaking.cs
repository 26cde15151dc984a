using ShopClass.Core.Courses;
using ShopClass.Core.Planning.Guide;
using ShopClass.Core.Projects;

namespace ShopClass.Web.Features.Guide;

/// <summary>
/// One stock guide being worked out, away from the page so that it stays awake; for one that takes over a second it
/// tells how far it is. Disposing stops it and forgets its result.
/// </summary>
public sealed class GuideMaking(Project project, CourseRules rules, Func<Task> onSlow) : IDisposable
{
    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(1);

    private readonly CancellationTokenSource _stop = new();
    private volatile int _hundredths;
    private bool _isDisposed;

    /// <summary>Whether it has taken so long that a person wants to know how far it is.</summary>
    public bool IsSlow { get; private set; }

    /// <summary>How far it is, in hundredths.</summary>
    public int Hundredths => _hundredths;

    /// <summary>The guide, or null when it was stopped.</summary>
    public async Task<StockGuide?> MakeAsync()
    {
        var token = _stop.Token;
        var making = Task.Run(
            () => StockGuide.Make(project, rules, new Teller(this), token),
            CancellationToken.None
        );
        while (
            await Task.WhenAny(making, Task.Delay(Beat)) != making && !token.IsCancellationRequested
        )
        {
            IsSlow = true;
            await onSlow();
        }
        try
        {
            var guide = await making;
            return token.IsCancellationRequested ? null : guide;
        }
        catch (OperationCanceledException) when (token.IsCancellationRequested)
        {
            return null;
        }
    }

    public void Dispose()
    {
        if (_isDisposed)
            return;
        _isDisposed = true;
        _stop.Cancel();
        _stop.Dispose();
    }

    /// <summary>Hears of progress on the worker's own thread and only notes it: the page looks once a second.</summary>
    private sealed class Teller(GuideMaking making) : IProgress<int>
    {
        public void Report(int value) => making._hundredths = value;
    }
}
