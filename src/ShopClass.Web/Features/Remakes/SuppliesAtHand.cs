using ShopClass.Core.Courses;
using ShopClass.Core.Remakes;
using ShopClass.Data.Access;
using ShopClass.Data.Orders;

namespace ShopClass.Web.Features.Remakes;

/// <summary>Reads what the shop has for a remake. The stores show rack and prices to the course's instructor alone.</summary>
public sealed class SuppliesAtHand(RackStore rack, SellerStore sellers)
{
    public async Task<Supplies> ReadAsync(Viewer viewer, Guid courseId, CourseRules rules) =>
        ShopSupplies.Of(
            (await rack.ListAsync(viewer, courseId)).Select(p => p.Piece),
            (await sellers.ListAsync(viewer, courseId))
                .Where(s => !s.IsLeftOut)
                .Select(s => s.ToList()),
            rules
        );
}
