using Microsoft.EntityFrameworkCore;
using ShopClass.Core.Orders;
using ShopClass.Data.Orders;
using ShopClass.Data.Store;

namespace ShopClass.Data.Keeping;

/// <summary>Takes names of students out of stored orders: who gets a kit, what became different, and the rack's pieces.</summary>
internal static class OrderForgetting
{
    /// <summary>What somebody is called in an order who is not in the course any more.</summary>
    public const string Gone = "Former student";

    /// <summary>Renames people in every order of a course. Wood, kits and costs stay.</summary>
    /// <param name="shop">The store.</param>
    /// <param name="courseId">The course.</param>
    /// <param name="other">What a student is called from now on; null for one who keeps their name.</param>
    /// <param name="rack">What pieces on the rack are called.</param>
    /// <param name="cancel">Gives up.</param>
    public static async Task ForgetAsync(
        ShopContext shop,
        Guid courseId,
        Func<Guid, string?> other,
        Renaming rack,
        CancellationToken cancel
    )
    {
        foreach (
            var row in await shop.Set<OrderRow>()
                .Where(o => o.Project!.CourseId == courseId)
                .ToListAsync(cancel)
        )
            row.Snapshot = rack.In(
                Packed.Pack(Renamed(Packed.Unpack<ClassOrder>(row.Snapshot), other))
            );
    }

    // By key where there is one. Sentences have names alone: those who keep theirs stand beside, so that "Bo" leaves "Bo K." be.
    private static ClassOrder Renamed(ClassOrder order, Func<Guid, string?> other)
    {
        OrderPerson In(OrderPerson person) =>
            Guid.TryParse(person.StudentId, out var id) && other(id) is { } name
                ? person with
                {
                    Shown = name,
                }
                : person;
        var names = new Dictionary<string, string>(StringComparer.Ordinal);
        // Of two called the same a sentence does not say which is meant.
        foreach (var same in order.Ask.People.GroupBy(p => p.Shown, StringComparer.Ordinal))
            names[same.Key] = same.Select(p => In(p).Shown)
                .Distinct(StringComparer.Ordinal)
                .ToList()
                is [var one]
                ? one
                : Gone;
        return order with
        {
            Ask = order.Ask with { People = [.. order.Ask.People.Select(In)] },
            Replaces = order.Replaces is { } replaced
                ? replaced with
                {
                    Changes = [.. replaced.Changes.Select(new Renaming(names).In)],
                }
                : null,
        };
    }
}
