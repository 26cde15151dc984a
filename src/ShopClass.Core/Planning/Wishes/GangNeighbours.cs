using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning.Wishes;

/// <summary>
/// Pieces that will be one length lie side by side from one line, so that they can be gang-marked: likes are made equal
/// before they are made exact.
/// </summary>
internal static class GangNeighbours
{
    /// <summary>For each group of pieces of one length: the bundles it lies in, less one.</summary>
    public static long FallsShortBy(LaidOut laid) =>
        Groups(laid).Sum(g => (long)g.Bundles.Count - 1);

    public static WishMet? Met(LaidOut laid)
    {
        BlankKey[][] bundles =
        [
            .. Groups(laid)
                .SelectMany(g => g.Bundles)
                .Where(b => b.Count > 1)
                .Select(b => b.Order().ToArray()),
        ];
        if (!Groups(laid).Any())
            return null;
        return bundles.Length > 0
            ? new(
                WishKind.GangNeighbours,
                true,
                $"Side by side from one line, to be marked together: {string.Join("; ", bundles.Select(b => LaidOut.List(b)))}."
            )
            : new(
                WishKind.GangNeighbours,
                false,
                "No pieces of one length lie side by side from one line."
            );
    }

    /// <summary>The groups of at least two placed pieces, each as the bundles that lie side by side.</summary>
    private static IEnumerable<(Length Length, List<List<BlankKey>> Bundles)> Groups(LaidOut laid)
    {
        var bundles = new Dictionary<(Length, Length), List<List<BlankKey>>>();
        foreach (var board in laid.Boards)
        foreach (var section in board.Layout.Sections)
            Bundle(laid, section, bundles);
        return bundles
            .Where(g => g.Value.Sum(b => b.Count) > 1)
            .Select(g => (g.Key.Item1, g.Value));
    }

    /// <summary>Strip by strip: a piece joins the bundle of the strip before where that has one of its length from its line.</summary>
    private static void Bundle(
        LaidOut laid,
        Section section,
        Dictionary<(Length, Length), List<List<BlankKey>>> bundles
    )
    {
        List<(Length From, (Length, Length) Group, List<BlankKey> Bundle)> before = [];
        foreach (var strip in section.Strips)
        {
            List<(Length From, (Length, Length) Group, List<BlankKey> Bundle)> here = [];
            foreach (var blank in strip.Blanks)
            {
                var part = laid.PartOf(blank);
                if (part.ExtraFor(PartDimension.Length) > Length.Zero || blank.Key.Strip > 0)
                    continue;
                var group = (part.Finished.Length, part.Finished.Thickness);
                var bundle = before
                    .FirstOrDefault(b => b.From == blank.From && b.Group == group)
                    .Bundle;
                if (bundle is null)
                {
                    bundle = [];
                    if (!bundles.TryGetValue(group, out var of))
                        bundles[group] = of = [];
                    of.Add(bundle);
                }

                bundle.Add(blank.Key);
                here.Add((blank.From, group, bundle));
            }

            before = here;
        }
    }
}
