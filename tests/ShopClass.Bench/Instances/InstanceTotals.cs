using System.Globalization;

namespace ShopClass.Bench.Instances;

/// <summary>Totals of each class of a set, and of each set, for each key apart.</summary>
internal static class InstanceTotals
{
    private const string Header =
        "total,set,class,key,instances,value,bound,proven,published,better,equal,worse,faults,ms_average,ms_longest";

    public static IEnumerable<string> Lines(IReadOnlyList<InstanceResult> results)
    {
        yield return "";
        yield return Header;
        foreach (
            var set in results
                .Where(r => r.Value != null)
                .GroupBy(r => (r.Instance.Set, r.Variant.Key))
        )
        {
            var classes = set.GroupBy(r => r.Instance.Class).ToList();
            foreach (var group in classes.Where(_ => classes.Count > 1))
                yield return Line(set.Key.Set, group.Key, set.Key.Key, [.. group]);
            yield return Line(set.Key.Set, "all", set.Key.Key, [.. set]);
        }
    }

    private static string Line(string set, string name, string key, List<InstanceResult> results) =>
        string.Join(
            ',',
            "total",
            set,
            name,
            key,
            results.Count,
            results.Sum(r => r.Value ?? 0),
            results.Sum(r => r.Bound ?? 0),
            results.Count(r => r.IsProven),
            results.Sum(r => r.Published ?? 0).ToString(CultureInfo.InvariantCulture),
            results.Count(r => r.Published != null && r.AgainstPublished < 0),
            results.Count(r => r.Value != null && r.Published != null && r.AgainstPublished == 0),
            results.Count(r => r.Value != null && r.AgainstPublished > 0),
            results.Count(r => r.IsRefused),
            Tenths(results.Average(r => r.Milliseconds)),
            Tenths(results.Max(r => r.Milliseconds))
        );

    private static string Tenths(double ms) => ms.ToString("0.0", CultureInfo.InvariantCulture);
}
