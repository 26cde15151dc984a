using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Web.Features.Plans;

/// <summary>A verdict in the words of its box: the sentence itself comes with the verdict.</summary>
public static class VerdictWords
{
    public static string Mark(VerdictKind kind) =>
        kind switch
        {
            VerdictKind.Fits => "Fits",
            VerdictKind.FitsByRoute => "Fits, with extra work",
            VerdictKind.TooSmall => "Does not fit",
            VerdictKind.NothingToJudge => "Nothing to judge yet",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a verdict."),
        };

    public static string Tone(VerdictKind kind) =>
        kind switch
        {
            VerdictKind.Fits => "ok",
            VerdictKind.FitsByRoute => "warn",
            VerdictKind.TooSmall => "bad",
            _ => "",
        };

    /// <summary>One way in which more wood would do: "Board 1: 2 1/4 in longer".</summary>
    public static string Of(Shortfall shortfall, PlanningRequest request)
    {
        var amount = LengthWriter.WriteWithUnit(shortfall.Amount, request.Rules.Precision);
        return $"{BoardNames.Of(request, shortfall.BoardId)}: {amount} {Direction(shortfall.Direction)}";
    }

    private static string Direction(PartDimension direction) =>
        direction switch
        {
            PartDimension.Length => "longer",
            PartDimension.Width => "wider",
            PartDimension.Thickness => "thicker",
            _ => throw new ArgumentOutOfRangeException(nameof(direction), direction, "Not a size."),
        };
}
