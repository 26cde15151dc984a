using ShopClass.Core.Orders;
using ShopClass.Data.Courses;

namespace ShopClass.Data.Orders;

/// <summary>A seller with their price list, as stored.</summary>
public sealed class SellerRow
{
    public Guid Id { get; set; }

    public Guid CourseId { get; set; }

    public CourseRow? Course { get; set; }

    public required string Name { get; set; }

    public required string Currency { get; set; }

    /// <summary>Whether orders leave this seller out for now.</summary>
    public bool IsLeftOut { get; set; }

    /// <summary>The list; read and written whole.</summary>
    public IReadOnlyList<PricedStock> Stock { get; set; } = [];

    public Guid Version { get; set; }

    internal SellerList ToList() => new(Id.ToString("N"), Name, Currency, Stock);

    internal SellerView ToView() => new(Id, CourseId, Name, Currency, IsLeftOut, Stock, Version);
}
