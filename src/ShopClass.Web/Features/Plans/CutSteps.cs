namespace ShopClass.Web.Features.Plans;

/// <summary>Where somebody is in the cuts. One place past the last cut shows the finished pieces.</summary>
public sealed class CutSteps(int cuts)
{
    public int Cuts { get; } = cuts;

    /// <summary>The cut being looked at, from 1; one more than the last when all are made.</summary>
    public int Current { get; private set; } = 1;

    public int Last => Cuts + 1;

    public bool IsDone => Current == Last;

    public bool HasNext => Current < Last;

    public bool HasPrevious => Current > 1;

    public string Words => IsDone ? $"All {Cuts} cuts made" : $"Cut {Current} of {Cuts}";

    public void GoTo(int number) => Current = Math.Clamp(number, 1, Last);

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
                "End" => Last,
                _ => Current,
            }
        );
        return Current != before;
    }
}
