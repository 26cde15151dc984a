using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Web.Features.Plans;

/// <summary>The numbers by which two ways of sizing are compared, over the whole work and not the breakdown alone.</summary>
public static class SizingNumbers
{
    public static IReadOnlyList<(string Label, string Value)> Of(CheckedPlan made)
    {
        var work = WorkWriter.Write(made, Hand.Right);
        var toLength = work.Steps.Count(s =>
            s.Saw is not null && (s.Kind is StepKind.SquareEnd or StepKind.CutToLength)
        );
        var minutes = (work.Steps.Sum(s => s.Time.Busy) + 59) / 60;
        return
        [
            .. WayNumbers.Of(made),
            ("More cuts to bring ends to size", $"{toLength}"),
            ("Steps in all", $"{work.Steps.Count}"),
            ("Work in all, about", $"{minutes / 60} h {minutes % 60} min"),
        ];
    }
}
