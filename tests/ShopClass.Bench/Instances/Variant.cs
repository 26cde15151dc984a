namespace ShopClass.Bench.Instances;

/// <summary>What a published value counts.</summary>
internal enum Aim
{
    FewestBoards,
    LeastCost,
    MostProfit,
}

/// <summary>
/// The rules a published value stands for. The first cut divides H (board length = H) unless it divides W. With trims a
/// part may be smaller than its last piece. A value under another key than the variant's own is only compared with.
/// </summary>
internal sealed record Variant(
    string Key,
    Aim Aim,
    int Stages,
    bool FirstCutDividesW,
    bool EitherDirection = false,
    int? LongestSection = null,
    int? MostStrips = null
)
{
    /// <summary>The variants to solve for an instance, by the documented keys; ours (three stages with trims) first.</summary>
    public static IReadOnlyList<Variant> For(Instance instance) =>
        instance.HasDefects ? []
        : instance.IsOneDimensional ? [OneDimensional(instance)]
        : instance.HasProfits ? Knapsacks(instance)
        : [Boards(instance)];

    public string Says =>
        $"{Stages} stages, {(EitherDirection ? "either way" : FirstCutDividesW ? "first cuts divide W" : "first cuts divide H")}";

    /// <summary>Whether the published value was proven the best.</summary>
    public bool IsClosed(Instance instance) => instance.Proven.Contains(Key);

    private static Variant OneDimensional(Instance instance) =>
        new(
            instance.Values.ContainsKey("ub") ? "ub" : instance.Values.Keys.FirstOrDefault() ?? "",
            Aim.FewestBoards,
            1,
            FirstCutDividesW: true
        );

    private static Variant Boards(Instance instance)
    {
        if (instance.Values.ContainsKey("b") && instance.LongestSection is { } longest)
            return new("b", Aim.FewestBoards, 3, true, false, longest, 2);
        foreach (var (key, stages) in new[] { ("b3n", 3), ("c3n", 3), ("b2n", 2), ("c2n", 2) })
        {
            if (instance.Values.ContainsKey(key))
                return new(key, key[0] == 'c' ? Aim.LeastCost : Aim.FewestBoards, stages, false)
                {
                    EitherDirection = key == "c3n",
                };
        }

        return instance.Stock.Count > 1
            ? new("c3n", Aim.LeastCost, 3, false)
            : new("b3n", Aim.FewestBoards, 3, false);
    }

    private static List<Variant> Knapsacks(Instance instance)
    {
        List<Variant> known =
        [
            .. new Variant[]
            {
                new("2nh", Aim.MostProfit, 2, false),
                new("2nv", Aim.MostProfit, 2, true),
                new("3nv", Aim.MostProfit, 3, true),
            }.Where(v => instance.Values.ContainsKey(v.Key)),
        ];
        return known.Count > 0 ? known : [new("3nv", Aim.MostProfit, 3, true)];
    }
}
