using System.Text.RegularExpressions;

namespace ShopClass.Core.Sawing.Steps;

/// <summary>Turns steps for one hand into steps for the other. The mirror of the mirror is the original.</summary>
public static partial class Mirror
{
    /// <summary>The same steps for the other hand: left becomes right wherever a hand, a knee or the waste has a side.</summary>
    public static WorkSequence Of(WorkSequence work) =>
        work with
        {
            Steps = [.. work.Steps.Select(Of)],
            Hand = work.Hand is Hand.Right ? Hand.Left : Hand.Right,
        };

    /// <summary>One step for the other hand.</summary>
    public static Step Of(Step step) =>
        step with
        {
            WasteSide = step.WasteSide is { } side ? Of(side) : null,
            Hold = Sides().Replace(step.Hold, m => Other(m.Value)),
        };

    private static Side Of(Side side) => side is Side.Left ? Side.Right : Side.Left;

    private static string Other(string word) =>
        word switch
        {
            "left" => "right",
            "right" => "left",
            "Left" => "Right",
            _ => "Left",
        };

    [GeneratedRegex(
        @"\b(left|right|Left|Right)\b",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture
    )]
    private static partial Regex Sides();
}
