using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;

namespace ShopClass.Web.Features.Plans;

/// <summary>The numbers by which ways of laying out are compared, for people.</summary>
public static class WayNumbers
{
    public static IReadOnlyList<(string Label, string Value)> Of(CheckedPlan made) =>
        [
            ("Boards cut", $"{made.Plan.Boards.Count}"),
            ("Edge joints to glue", $"{Value(made, PlanGoal.GlueUps)}"),
            ("Cuts", $"{made.Sequence.Cuts.Count}"),
            ("Sawn across the grain", Sawn(made, rips: false)),
            ("Sawn along the grain", Sawn(made, rips: true)),
            ("Lines to mark", $"{Value(made, PlanGoal.Lines)}"),
            ("Board length used", Write(made, (long)Value(made, PlanGoal.LengthUsed))),
            ("Biggest offcut to keep", BiggestOffcut(made)),
        ];

    private static Int128 Value(CheckedPlan made, PlanGoal goal) =>
        made.Plan.Goals.First(g => g.Goal == goal).Value;

    private static string Sawn(CheckedPlan made, bool rips) =>
        Write(
            made,
            made.Sequence.Cuts.Where(c => c.Kind is CutKind.Rip == rips)
                .Sum(c => c.SawnLength.Ticks)
        );

    private static string BiggestOffcut(CheckedPlan made)
    {
        var biggest = made
            .Rehearsal.Steps[^1]
            .Pieces.Where(p => p.Fate is PieceFate.Offcut)
            .OrderByDescending(p => p.Rect.Area.SquareTicks)
            .FirstOrDefault();
        var precision = made.Request.Rules.Precision;
        return biggest is null
            ? "none"
            : $"{LengthWriter.Write(biggest.Rect.Across, precision)} × {LengthWriter.WriteWithUnit(biggest.Rect.Along, precision)}";
    }

    private static string Write(CheckedPlan made, long ticks) =>
        LengthWriter.WriteWithUnit(Length.FromTicks(ticks), made.Request.Rules.Precision);
}
