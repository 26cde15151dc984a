using ShopClass.Data.Access;

namespace ShopClass.Data.Orders;

/// <summary>What a class's materials show to whom: prices and the rack are the instructor's alone.</summary>
internal static class OrderScope
{
    public static IQueryable<SellerRow> RunBy(this IQueryable<SellerRow> sellers, Viewer viewer) =>
        viewer is InstructorViewer i
            ? sellers.Where(s => s.Course!.OwnerId == i.UserId)
            : sellers.Where(s => false);

    public static IQueryable<OrderRow> RunBy(this IQueryable<OrderRow> orders, Viewer viewer) =>
        viewer is InstructorViewer i
            ? orders.Where(o => o.Project!.Course!.OwnerId == i.UserId)
            : orders.Where(o => false);

    public static IQueryable<RackRow> RunBy(this IQueryable<RackRow> rack, Viewer viewer) =>
        viewer is InstructorViewer i
            ? rack.Where(r => r.Course!.OwnerId == i.UserId)
            : rack.Where(r => false);
}
