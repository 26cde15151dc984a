using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Remakes;

/// <summary>Ways to get a part back from what the shop keeps or a seller has.</summary>
internal static class WaysFromTheShop
{
    /// <summary>At most this many boards for sale are tried, cheapest first.</summary>
    private const int MostBoardsTried = 24;

    /// <summary>From the class rack.</summary>
    public static TriedWay FromRack(RemakeBench bench, Supplies supplies)
    {
        var parts = bench.Alone(RemakeBench.WithoutGlueUp(bench.Request.Project));
        if (bench.Plan(parts, supplies.Rack) is { } plan)
            return TriedWay.Open(
                RemakeWay.Rack,
                $"Take {RemakeBench.From(plan)} from the rack and saw {bench.Spoiled} from it.{bench.OtherSpecies(plan)}",
                plan,
                parts
            );
        return TriedWay.Closed(
            RemakeWay.Rack,
            supplies.Rack.Count == 0
                ? "Nothing on the rack is free to take."
                : $"Nothing on the rack yields {bench.Spoiled}."
        );
    }

    /// <summary>A whole spare part of the class.</summary>
    public static TriedWay ClassSpare(RemakeBench bench, Supplies supplies)
    {
        var letter = bench.Part.Letter;
        if (bench.Spoiled.Strip > 0)
            return TriedWay.Closed(
                RemakeWay.ClassSpare,
                "A spare is a whole part, not a strip of one."
            );
        return supplies.ClassSpares.Contains(letter, StringComparer.Ordinal)
            ? new(
                new()
                {
                    Way = RemakeWay.ClassSpare,
                    Sentence =
                        $"Take the class's spare {letter} in place of {bench.Spoiled}. What is left of the old one goes on the rack.",
                },
                null
            )
            : TriedWay.Closed(RemakeWay.ClassSpare, $"The class has no spare {letter}.");
    }

    /// <summary>From a new board: the cheapest that yields it.</summary>
    public static TriedWay NewBoard(RemakeBench bench, Supplies supplies)
    {
        var parts = bench.Alone(RemakeBench.WithoutGlueUp(bench.Request.Project));
        var tried = supplies
            .ForSale.Where(b => b.Price is not null)
            .OrderBy(b => b.Price!.Value.MinorUnits)
            .ThenBy(b => b.Id, StringComparer.Ordinal)
            .Take(MostBoardsTried);
        foreach (var board in tried)
        {
            if (bench.Plan(parts, [board]) is { } plan)
            {
                var open = TriedWay.Open(
                    RemakeWay.NewBoard,
                    $"Buy {board.Name} and saw {bench.Spoiled} from it.{bench.OtherSpecies(plan)}",
                    plan,
                    parts
                );
                return open with { Option = open.Option! with { Cost = board.Price } };
            }
        }

        return TriedWay.Closed(
            RemakeWay.NewBoard,
            supplies.ForSale.Count == 0
                ? "No seller’s list is known here."
                : $"No board on the sellers' lists yields {bench.Spoiled}."
        );
    }
}
