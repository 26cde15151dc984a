using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Wishes;

/// <summary>Lays sections, strips and blanks in another order; the gaps stay where they are, by their place in the row.</summary>
internal static class Relaid
{
    /// <summary>The board's sections in this order, from where its first one begins.</summary>
    public static BoardLayout InOrder(BoardLayout layout, IReadOnlyList<Section> order)
    {
        var from = layout.Sections[0].From;
        var laid = new Section[order.Count];
        for (var i = 0; i < order.Count; i++)
        {
            laid[i] = At(order[i], from);
            if (i + 1 < order.Count)
                from = laid[i].To + (layout.Sections[i + 1].From - layout.Sections[i].To);
        }

        return layout with
        {
            Sections = laid,
        };
    }

    /// <summary>A section moved along the board to begin here.</summary>
    public static Section At(Section section, Length from)
    {
        if (section.From == from)
            return section;
        var by = from - section.From;
        return new(
            from,
            section.To + by,
            [
                .. section.Strips.Select(s =>
                    s with
                    {
                        Blanks =
                        [
                            .. s.Blanks.Select(b => b with { From = b.From + by, To = b.To + by }),
                        ],
                    }
                ),
            ]
        );
    }

    /// <summary>The section with its strips in this order, from the near edge of its first one.</summary>
    public static Section InOrder(Section section, IReadOnlyList<Strip> order)
    {
        var near = section.Strips[0].Near;
        var laid = new Strip[order.Count];
        for (var i = 0; i < order.Count; i++)
        {
            laid[i] = order[i] with { Near = near, Far = near + (order[i].Far - order[i].Near) };
            if (i + 1 < order.Count)
                near = laid[i].Far + (section.Strips[i + 1].Near - section.Strips[i].Far);
        }

        return section with
        {
            Strips = laid,
        };
    }

    /// <summary>The strip with its blanks in this order. Whichever is the last keeps the length the last one kept.</summary>
    public static Strip InOrder(Strip strip, IReadOnlyList<PlacedBlank> order)
    {
        var (end, last) = (strip.Blanks[^1].To, strip.Blanks[^1]);
        var from = strip.Blanks[0].From;
        var laid = new PlacedBlank[order.Count];
        for (var i = 0; i < order.Count; i++)
        {
            var blank = order[i];
            var along = blank == last ? LaidOut.Needed(blank).Along : blank.To - blank.From;
            laid[i] = blank with { From = from, To = i == order.Count - 1 ? end : from + along };
            if (i + 1 < order.Count)
                from = laid[i].To + (strip.Blanks[i + 1].From - strip.Blanks[i].To);
        }

        return strip with
        {
            Blanks = laid,
        };
    }

    /// <summary>The list with two of its things changed over.</summary>
    public static T[] Swapped<T>(IReadOnlyList<T> list, int i, int j)
    {
        T[] swapped = [.. list];
        (swapped[i], swapped[j]) = (swapped[j], swapped[i]);
        return swapped;
    }

    /// <summary>The list with another thing in this place.</summary>
    public static T[] Replaced<T>(IReadOnlyList<T> list, int at, T by)
    {
        T[] replaced = [.. list];
        replaced[at] = by;
        return replaced;
    }
}
