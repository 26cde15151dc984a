namespace ShopClass.Web.Features.Plans;

/// <summary>Where somebody is in the steps of the work.</summary>
public sealed class StepPlace(int steps)
{
    public int Steps { get; } = steps;

    /// <summary>The step being looked at, from 1.</summary>
    public int Current { get; private set; } = 1;

    public bool HasNext => Current < Steps;

    public bool HasPrevious => Current > 1;

    public string Words => $"Step {Current} of {Steps}";

    public void GoTo(int number) => Current = Math.Clamp(number, 1, Math.Max(1, Steps));

    /// <summary>Left and right, home and end; anything else does nothing. Whether it moved.</summary>
    public bool Press(string key)
    {
        var before = Current;
        GoTo(
            key switch
            {
                "ArrowRight" => Current + 1,
                "ArrowLeft" => Current - 1,
                "Home" => 1,
                "End" => Steps,
                _ => Current,
            }
        );
        return Current != before;
    }
}
