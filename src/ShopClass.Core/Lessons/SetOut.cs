using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Core.Lessons;

/// <summary>What a lesson needs on the benches.</summary>
/// <param name="Stations">Places used at once, at most, of each counted station.</param>
/// <param name="Tools">Tools with how many are in use at once, at most; by name.</param>
/// <param name="Sharp">Those of them that must be sharp.</param>
public sealed record SetOutList(
    IReadOnlyList<(Station Station, int Count)> Stations,
    IReadOnlyList<(string Tool, int Count)> Tools,
    IReadOnlyList<string> Sharp
);

/// <summary>Tools, stations and sharpening to see to before a lesson.</summary>
public static class SetOut
{
    /// <summary>What lesson <paramref name="lesson"/> needs.</summary>
    public static SetOutList For(LessonRequest request, LessonPlan plan, int lesson)
    {
        var turns = plan.Lessons[lesson].Turns;
        var students = request.Students.ToDictionary(s => s.StudentId, StringComparer.Ordinal);
        var tools =
            from turn in turns
            from tool in turn
                .Turn.Steps.SelectMany(n => students[turn.Turn.StudentId].Step(n).Tools)
                .Distinct(StringComparer.Ordinal)
            group turn by tool into inUse
            orderby inUse.Key
            select (inUse.Key, AtOnce(inUse));
        List<(string Tool, int Count)> list = [.. tools];
        return new(
            [
                .. StationCounts
                    .Counted.Select(s => (s, AtOnce(turns.Where(t => t.Turn.Station == s))))
                    .Where(s => s.Item2 > 0),
            ],
            list,
            Spells.EdgeTools(list.Select(t => t.Tool))
        );
    }

    private static int AtOnce(IEnumerable<PlacedTurn> turns)
    {
        PlacedTurn[] all = [.. turns];
        return all.Length == 0
            ? 0
            : all.Max(t => all.Count(o => o.Start <= t.Start && t.Start < o.End));
    }
}
