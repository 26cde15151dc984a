using ShopClass.Core.Lessons;
using ShopClass.Core.Sawing.Steps;

namespace ShopClass.Scheduling;

/// <summary>Turns with times, given the places of their stations.</summary>
internal static class Places
{
    /// <summary>One lesson's turns; whoever goes on at a station stays where they stand.</summary>
    public static IReadOnlyList<PlacedTurn> Give(
        IEnumerable<(Turn Turn, int Start)> turns,
        StationCounts shop
    )
    {
        var free = StationCounts.Counted.ToDictionary(
            s => s,
            s => new int[shop.PlacesAt(s)!.Value]
        );
        var stood = new Dictionary<(string, Station), int>();
        var placed = new List<PlacedTurn>();
        foreach (
            var (turn, start) in turns
                .OrderBy(t => t.Start)
                .ThenBy(t => t.Turn.StudentId, StringComparer.Ordinal)
        )
        {
            if (!free.TryGetValue(turn.Station, out var places))
            {
                placed.Add(new(turn, start, null));
                continue;
            }

            var who = (turn.StudentId, turn.Station);
            var place =
                stood.TryGetValue(who, out var before) && places[before] <= start
                    ? before
                    : Array.FindIndex(places, f => f <= start);
            places[place] = start + turn.Minutes;
            stood[who] = place;
            placed.Add(new(turn, start, place + 1));
        }

        return placed;
    }
}
