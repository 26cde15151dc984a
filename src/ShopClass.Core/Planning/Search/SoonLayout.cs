namespace ShopClass.Core.Planning.Search;

/// <summary>
/// Looks for a layout of blanks on one board with bad places without going through all choices: section after section from the
/// board's start, first those after which the rest would end soonest if it were clear; back to the next best where that leads
/// nowhere, as long as the looks last.
/// </summary>
internal sealed class SoonLayout(
    Bench bench,
    Lattice lattice,
    Stock stock,
    BoardTable clear,
    Steps steps
)
{
    private const int MostTried = 12;

    /// <summary>The most sections placed where one board is all there is.</summary>
    public const int MostPlaced = 1500;
    private readonly SectionPlacer placer = new(bench, stock, steps);
    private readonly Dictionary<int, long> failed = [];
    private readonly List<DraftSection> sections = [];
    private int mostPlaced;

    /// <summary>How many sections were placed to find the last layout, or none.</summary>
    public int Placed { get; private set; }

    /// <summary>The sections for a choice of blanks, or null where none were found with so many placed.</summary>
    public IReadOnlyList<DraftSection>? Find(int code, int most)
    {
        (Placed, mostPlaced) = (0, most);
        sections.Clear();
        return GoOn(code, stock.Start - stock.CrosscutKerf) ? [.. sections] : null;
    }

    private bool GoOn(int left, long end)
    {
        if (left == 0)
            return true;
        // What could not follow a sooner end cannot follow this one.
        if (failed.TryGetValue(left, out var before) && before <= end)
            return false;
        foreach (var (section, rest, _) in Next(left, end))
        {
            sections.Add(section);
            if (GoOn(rest, section.To))
                return true;
            sections.RemoveAt(sections.Count - 1);
            if (Placed > mostPlaced || steps.AreUp)
                return false;
        }

        failed[left] = end;
        return false;
    }

    /// <summary>The sections to try there, in their places, with what they leave and where that would end at the soonest.</summary>
    private List<(DraftSection Section, int Left, long End)> Next(int left, long end)
    {
        var from = end + stock.CrosscutKerf;
        var whole = lattice.Packed(left);
        var hopeful = new PriorityQueue<SectionOption, (long End, int Code)>();
        steps.Take(1 + clear.Options.Count / 16);
        foreach (var option in clear.Options)
        {
            if (
                lattice.Holds(whole, option.Packed)
                && EndAfter(left - option.Code, from + option.Length) is { } soonest
            )
                hopeful.Enqueue(option, (soonest, option.Code));
        }

        var found = new List<(DraftSection, int, long End)>();
        while (found.Count < MostTried && hopeful.TryDequeue(out var option, out _))
        {
            if (++Placed > mostPlaced)
                break;
            var rest = left - option.Code;
            if (
                placer.Place(option, from) is { } section
                && EndAfter(rest, section.To) is { } soonest
            )
                found.Add((section, rest, soonest));
        }

        return [.. found.OrderBy(f => f.End)];
    }

    /// <summary>Where the rest would end at the soonest on clear wood; null where it has no room.</summary>
    private long? EndAfter(int rest, long end)
    {
        if (rest == 0)
            return end <= stock.End ? end : null;
        var begin = end + stock.CrosscutKerf;
        return clear.Least(rest, stock.End - begin) is { } least ? begin + least.Length : null;
    }
}
