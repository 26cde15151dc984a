using ShopClass.Core.Planning.Classes;

namespace ShopClass.Core.Tests.Planning.Classes;

/// <summary>What is wrong with a packing, worked out from sizes and places alone.</summary>
internal static class StagedProblems
{
    public static IReadOnlyList<string> In(
        IReadOnlyList<StagedStock> stock,
        IReadOnlyList<StagedItem> items,
        StagedResult result
    )
    {
        var problems = new List<string>();
        var packed = new int[items.Count];
        foreach (var board in result.Boards)
        {
            var kind = stock[board.Stock];
            var free = 0;
            foreach (var section in board.Sections)
            {
                if (section.From < free || section.To > kind.Length)
                    problems.Add($"the section at {section.From} does not lie free on its board");
                free = section.To;
                var edge = 0;
                foreach (var strip in section.Strips)
                {
                    if (strip.Near < edge || strip.Far > kind.Width)
                        problems.Add($"the strip at {strip.Near} does not lie free on its board");
                    edge = strip.Far;
                    problems.AddRange(InStrip(items, section, strip, packed));
                }
            }
        }

        for (var i = 0; i < items.Count; i++)
        {
            if (result.IsComplete && packed[i] != items[i].Count)
                problems.Add($"item {i} is packed {packed[i]} times");
        }

        for (var s = 0; s < stock.Count; s++)
        {
            if (result.Boards.Count(b => b.Stock == s) > (stock[s].Copies ?? int.MaxValue))
                problems.Add($"more boards of kind {s} than there are");
        }

        if (result.Boards.Sum(b => stock[b.Stock].Cost) != result.Cost)
            problems.Add("the boards do not cost what is said");
        return problems;
    }

    private static IEnumerable<string> InStrip(
        IReadOnlyList<StagedItem> items,
        StagedSection section,
        StagedStrip strip,
        int[] packed
    )
    {
        var at = section.From;
        foreach (var place in strip.Places)
        {
            var item = items[place.Item];
            if (place.From < at || place.From + item.Length > section.To)
                yield return $"item {place.Item} leaves its section or lies on another";
            if (place.Near < strip.Near || place.Near + item.Width > strip.Far)
                yield return $"item {place.Item} leaves its strip";
            at = place.From + item.Length;
            packed[place.Item]++;
        }
    }
}
