using ShopClass.Core.Planning;

namespace ShopClass.Web.Features.Plans;

/// <summary>
/// One plan being made, away from the page so that it stays awake. A quick plan is simply there; for one that takes over
/// a second it tells how far the search is. Disposing stops the search and forgets its result.
/// </summary>
public sealed class PlanMaking(PlanningRequest request, Func<Task> onSlow) : IDisposable
{
    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(1);

    private readonly CancellationTokenSource _stop = new();
    private volatile int _hundredths;
    private bool _isDisposed;

    /// <summary>Whether it has taken so long that a person wants to know how far it is.</summary>
    public bool IsSlow { get; private set; }

    /// <summary>How far the search is, in hundredths of the steps it may take.</summary>
    public int Hundredths => _hundredths;

    /// <summary>The plan, or null when its making was stopped.</summary>
    public async Task<CheckedPlan?> MakeAsync()
    {
        var token = _stop.Token;
        var making = Task.Run(
            () => CheckedPlan.Make(request, new Teller(this), token),
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
            var plan = await making;
            return token.IsCancellationRequested ? null : plan;
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

    /// <summary>Hears of progress on the planner's own thread and only notes it: the page looks once a second.</summary>
    private sealed class Teller(PlanMaking making) : IProgress<PlanProgress>
    {
        public void Report(PlanProgress value) =>
            making._hundredths =
                value.StepLimit == 0
                    ? 0
                    : (int)Math.Min(100, 100L * value.StepsTaken / value.StepLimit);
    }
}
