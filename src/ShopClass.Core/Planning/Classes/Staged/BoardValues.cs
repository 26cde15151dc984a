namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>The most valuable sections one after the other, for boards of one width and every length up to the longest.</summary>
internal sealed class BoardValues
{
    private readonly long[] most;
    private readonly int[] last;
    private readonly List<(int Length, long Value, bool IsFull)> sections = [];

    private BoardValues(IReadOnlyList<int> planks, int width, int length, bool keepsEdges)
    {
        Planks = planks;
        Width = width;
        Length = length;
        KeepsEdges = keepsEdges;
        most = new long[length + 1];
        last = new int[length + 1];
    }

    /// <summary>The boards of this width.</summary>
    public IReadOnlyList<int> Planks { get; }

    /// <summary>Steps across.</summary>
    public int Width { get; }

    /// <summary>Steps along the longest.</summary>
    public int Length { get; }

    /// <summary>Whether a piece may keep both straight edges.</summary>
    public bool KeepsEdges { get; }

    /// <summary>What fits in a strip of the full width.</summary>
    public StripValues? Full { get; private set; }

    public static BoardValues[] For(
        Cutting cutting,
        IReadOnlyList<int> planks,
        Grid along,
        Grid across
    ) =>
        [
            .. planks
                .GroupBy(p => (cutting.Planks[p].Width, cutting.Planks[p].KeepsEdges))
                .Select(g => new BoardValues(
                    [.. g],
                    across.Room(g.Key.Width),
                    g.Max(p => along.Room(cutting.Planks[p].Length)),
                    g.Key.KeepsEdges
                )),
        ];

    public void Begin(StripValues? full)
    {
        Full = full;
        sections.Clear();
        Array.Clear(most);
    }

    /// <summary>The best of the sections known so far at this length; tells the looks it took.</summary>
    public long Step(int length)
    {
        most[length] = most[length - 1];
        last[length] = -1;
        for (var s = 0; s < sections.Count; s++)
        {
            var with = most[length - sections[s].Length] + sections[s].Value;
            if (with > most[length])
            {
                most[length] = with;
                last[length] = s;
            }
        }

        return 1 + sections.Count / 4;
    }

    /// <summary>Whether a section of this length might be worth more than shorter ones one after the other.</summary>
    public bool CouldGain(int length, double mostPerWidth) =>
        mostPerWidth * Width + 1 > most[length];

    /// <summary>Takes a section in if it is worth more than shorter ones.</summary>
    public void Try(int length, long value) => Take(length, value, isFull: false);

    /// <summary>The same for one strip of the full width.</summary>
    public void TryFull(int length)
    {
        if (Full is not null)
            Take(length, Full.Most[length], isFull: true);
    }

    /// <summary>The best value within a length.</summary>
    public long At(int length) => most[length];

    /// <summary>The sections that make up the best value within a length.</summary>
    public IEnumerable<(int Length, bool IsFull)> Sections(int length)
    {
        for (var x = length; x > 0; )
        {
            if (last[x] < 0)
            {
                x--;
                continue;
            }

            var section = sections[last[x]];
            yield return (section.Length, section.IsFull);
            x -= section.Length;
        }
    }

    private void Take(int length, long value, bool isFull)
    {
        if (value <= most[length])
            return;
        sections.Add((length, value, isFull));
        most[length] = value;
        last[length] = sections.Count - 1;
    }
}
