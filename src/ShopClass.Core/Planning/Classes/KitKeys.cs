using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning.Classes;

/// <summary>Hands out the class's blanks, kit by kit.</summary>
internal sealed class KitKeys
{
    private readonly ClassRequest request;
    private readonly Dictionary<string, LinkedList<BlankKey>> waiting = new(StringComparer.Ordinal);

    public KitKeys(ClassRequest request, ClassWood wood)
    {
        this.request = request;
        foreach (var kind in wood.Kinds)
        {
            var parts = kind.Items.Select(i => i.Part).Distinct().ToList();
            var keys = parts
                .SelectMany(part => Keys(part, wood.GlueUps.GetValueOrDefault(part.Letter)))
                .OrderBy(key => request.KitOf(key) == 0 ? int.MaxValue : request.KitOf(key))
                .ThenBy(key => key);
            waiting.Add(parts[0].Letter, new(keys));
        }
    }

    /// <summary>The next blank of the kind that is named after this part; of one kit where that is said.</summary>
    public BlankKey Next(string part, int? kit)
    {
        var list = waiting[part];
        var node = list.First!;
        while (kit is { } wanted && request.KitOf(node.Value) != wanted)
            node = node.Next!;
        list.Remove(node);
        return node.Value;
    }

    /// <summary>What was not handed out, in order.</summary>
    public IReadOnlyList<BlankKey> Left() => [.. waiting.Values.SelectMany(k => k).Order()];

    private IEnumerable<BlankKey> Keys(Part part, int strips) =>
        from copy in Enumerable.Range(
            1,
            part.Quantity * request.AllKits + request.SpareParts.GetValueOrDefault(part.Letter)
        )
        from strip in strips < 2 ? [0] : Enumerable.Range(1, strips)
        select new BlankKey(part.Letter, copy, strip);
}
