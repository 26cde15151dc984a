using ShopClass.Core.Lumber;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;

namespace ShopClass.Print.Sheets;

/// <summary>The tools a plan's cuts ask for.</summary>
internal static class ToolList
{
    public static IReadOnlyList<string> For(CheckedPlan plan)
    {
        var cuts = plan.Sequence.Cuts;
        var tools = new List<string> { "tape", "square", "pencil" };
        if (cuts.Any(c => c.Line is LineKind.Knife))
            tools.Add("marking knife");
        if (cuts.Any(c => c.Line is LineKind.Gauge || c.Kind is CutKind.Rip))
            tools.Add("marking gauge or straightedge, for the rip lines");
        tools.AddRange(Enum.GetValues<SawKind>().Where(s => cuts.Any(c => c.Saw == s)).Select(Saw));
        tools.AddRange(
            Enum.GetValues<Support>().Where(s => cuts.Any(c => c.Support == s)).Select(CutTerms.Of)
        );
        if (plan.Plan.GlueUps.Count > 0)
            tools.Add("jointer plane, glue and clamps, for the glue-up");
        if (plan.Request.Boards.Any(b => Uses(plan, b) && b.Surfacing is Surfacing.Rough))
            tools.Add("jack plane and winding sticks, for the rough faces");
        return [string.Join(", ", tools.Take(3)), .. tools.Skip(3)];
    }

    private static bool Uses(CheckedPlan plan, Board board) =>
        plan.Plan.Boards.Any(b => b.BoardId == board.Id);

    private static string Saw(SawKind saw) =>
        saw switch
        {
            SawKind.HandCrosscut => "hand crosscut saw, 8 to 10 points",
            SawKind.HandRip => "hand rip saw, about 5 points",
            _ => "back saw",
        };
}
