using ShopClass.Core.Measure;

namespace ShopClass.Core.Orders;

/// <summary>What differs between two orders, in sentences.</summary>
public static class OrderChanges
{
    /// <summary>Every line that differs, who joined or left, and the difference in cost; empty when nothing does.</summary>
    public static IReadOnlyList<string> Between(ClassOrder before, ClassOrder after)
    {
        var precision = after.Ask.Rules.Precision;
        var changes = new List<string>();
        changes.AddRange(People(before, after));
        changes.AddRange(Here(before, after));
        var keys = before.ToBuy.Concat(after.ToBuy).Select(KeyOf).Distinct().ToList();
        foreach (var key in keys)
        {
            var (was, now) = (
                before.ToBuy.FirstOrDefault(l => KeyOf(l) == key),
                after.ToBuy.FirstOrDefault(l => KeyOf(l) == key)
            );
            var line = (now ?? was)!;
            if (was?.Bought != now?.Bought)
                changes.Add(
                    $"{OrderWords.Board(line.Stock, precision)} from {line.Seller}: {was?.Bought ?? 0} before, {now?.Bought ?? 0} now."
                );
            if (was is not null && now is not null && was.Stock.BoardPrice != now.Stock.BoardPrice)
                changes.Add(
                    $"{OrderWords.Board(line.Stock, precision)} from {line.Seller}: {was.Stock.BoardPrice.Shown()} each before, {now.Stock.BoardPrice.Shown()} now."
                );
        }

        if (before.Ask.Currency == after.Ask.Currency && before.Total != after.Total)
            changes.Add(Cost(before.Total, after.Total));
        return changes;
    }

    private static IEnumerable<string> Here(ClassOrder before, ClassOrder after) =>
        from line in after.Lines
        where line.IsHere && before.Lines.All(l => KeyOf(l) != KeyOf(line))
        select $"{line.Bought} × {OrderWords.Board(line, after.Ask.Rules.Precision)} from {line.Seller}: here now, {line.Needed} of them needed.";

    private static IEnumerable<string> People(ClassOrder before, ClassOrder after)
    {
        var (was, now) = (before.Ask.People, after.Ask.People);
        foreach (var person in now.Where(p => was.All(w => w.StudentId != p.StudentId)))
            yield return $"{person.Shown} now gets a kit.";
        foreach (var person in was.Where(p => now.All(n => n.StudentId != p.StudentId)))
            yield return $"{person.Shown} needs no kit any more.";
        if (before.Ask.SpareKits != after.Ask.SpareKits)
            yield return $"Spare kits: {before.Ask.SpareKits} before, {after.Ask.SpareKits} now.";
    }

    private static string Cost(Money before, Money after) =>
        after > before
            ? $"It costs {(after - before).Shown()} more: {after.Shown()}."
            : $"It costs {(before - after).Shown()} less: {after.Shown()}.";

    private static (string, string) KeyOf(OrderLine line) => (line.SellerId, line.Stock.Id);
}
