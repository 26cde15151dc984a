using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Paces;

/// <summary>What work that was done says about waste and spoilage.</summary>
public static class WoodUsed
{
    /// <summary>
    /// The waste of work that was done: of the wood of the boards that were sawn, less the offcuts worth keeping, the share
    /// that is in no finished part. What was made again counts with the wood it took. Null where nothing was sawn.
    /// </summary>
    /// <param name="done">Each student's plan, with the plans of what was made again.</param>
    public static WasteShare? Waste(
        IReadOnlyList<(CheckedPlan Plan, IReadOnlyList<CheckedPlan> Remakes)> done
    )
    {
        var used = done.Sum(d => UsedUp(d.Plan) + d.Remakes.Sum(UsedUp));
        if (used <= 0)
            return null;
        var net = done.Sum(d => PartsTotal.Of(d.Plan.Request.Project.Parts).Wood.CubicTicks);
        var waste = Int128.Max(0, used - net);
        return new((int)Int128.Min(95, ((200 * waste) + used) / (2 * used)), done.Count);
    }

    /// <summary>
    /// The letter a piece is a copy of: that of "A2", and of "A2.1", a strip of it. Empty for anything else.
    /// </summary>
    public static string PartOf(string piece, IReadOnlyList<Part> parts)
    {
        var whole = piece.Split('.')[0];
        var letter = whole.TrimEnd([.. "0123456789"]);
        return letter.Length < whole.Length && parts.Any(p => p.Letter == letter) ? letter : "";
    }

    private static Int128 UsedUp(CheckedPlan plan) =>
        plan.Plan.Boards.Sum(layout =>
        {
            var board = plan.Request.Boards.First(b => b.Id == layout.BoardId);
            var kept = plan
                .Rehearsal.Steps[^1]
                .Pieces.Where(p => p.BoardId == board.Id && p.Fate is PieceFate.Offcut)
                .Sum(p => p.Rect.Area.SquareTicks);
            var whole = (board.SmallestWidth * board.Length).SquareTicks;
            return (whole - kept) * board.Thickness.Ticks;
        });

    private static Int128 Sum<T>(this IEnumerable<T> all, Func<T, Int128> of) =>
        all.Aggregate((Int128)0, (sum, one) => sum + of(one));
}
