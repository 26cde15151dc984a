using ShopClass.Core.Orders;
using ShopClass.Web.Features.Shared;

namespace ShopClass.Web.Features.Orders;

/// <summary>One order being worked out, away from the page.</summary>
public sealed class OrderMaking(OrderAsk ask, Func<Task> onSlow)
    : SlowWork<int, ClassOrder>(
        (_, token) => ClassOrders.Make(ask, token),
        hundredths => hundredths,
        onSlow
    );
