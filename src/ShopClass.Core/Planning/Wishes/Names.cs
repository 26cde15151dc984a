namespace ShopClass.Core.Planning.Wishes;

/// <summary>What the blanks of a layout are called.</summary>
internal static class Names
{
    /// <summary>The layout with other names.</summary>
    public static BoardLayout Changed(BoardLayout layout, Func<BlankKey, BlankKey> name) =>
        layout with
        {
            Sections =
            [
                .. layout.Sections.Select(section =>
                    section with
                    {
                        Strips =
                        [
                            .. section.Strips.Select(strip =>
                                strip with
                                {
                                    Blanks =
                                    [
                                        .. strip.Blanks.Select(b => b with { Key = name(b.Key) }),
                                    ],
                                }
                            ),
                        ],
                    }
                ),
            ],
        };

    /// <summary>Copies of each part numbered again as they lie: board by board, section by section, strip by strip.</summary>
    public static IReadOnlyList<BoardLayout> InTurn(IReadOnlyList<BoardLayout> layouts)
    {
        var waiting = Keys(layouts)
            .Order()
            .GroupBy(k => k.Part, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => new Queue<BlankKey>(g), StringComparer.Ordinal);
        return [.. layouts.Select(l => Changed(l, key => waiting[key.Part].Dequeue()))];
    }

    private static IEnumerable<BlankKey> Keys(IReadOnlyList<BoardLayout> layouts) =>
        from layout in layouts
        from section in layout.Sections
        from strip in section.Strips
        from blank in strip.Blanks
        select blank.Key;
}
