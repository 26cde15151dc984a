namespace ShopClass.Data.Tests;

/// <summary>A clock that stands still until a test moves it.</summary>
internal sealed class StoppedClock : TimeProvider
{
    private DateTimeOffset now = new(2030, 3, 4, 18, 0, 0, TimeSpan.Zero);

    public void Advance(TimeSpan by) => now += by;

    public override DateTimeOffset GetUtcNow() => now;
}
