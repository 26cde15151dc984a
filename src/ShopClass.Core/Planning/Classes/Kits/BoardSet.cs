using ShopClass.Core.Planning.Classes.Staged;

namespace ShopClass.Core.Planning.Classes.Kits;

/// <summary>Boards that one kit might come from: how many of each kind, and what they cost.</summary>
internal sealed class BoardSet(int[] numbers, long cost)
{
    /// <summary>How many of each kind of board.</summary>
    public IReadOnlyList<int> Numbers => numbers;

    /// <summary>What they cost together.</summary>
    public long Cost => cost;

    /// <summary>Names the set.</summary>
    public string Key { get; } = string.Join(' ', numbers);

    /// <summary>Whether somebody has tried to lay the kit out on them.</summary>
    public bool IsTried { get; set; }

    /// <summary>The kit laid out on them, where that was found.</summary>
    public IReadOnlyList<CutBoard>? Layout { get; set; }

    /// <summary>The set with one more board.</summary>
    public BoardSet And(int plank, long price)
    {
        int[] more = [.. numbers];
        more[plank]++;
        return new(more, cost + price);
    }

    /// <summary>The boards one by one.</summary>
    public IEnumerable<int> Boards =>
        Enumerable.Range(0, numbers.Length).SelectMany(p => Enumerable.Repeat(p, numbers[p]));
}
