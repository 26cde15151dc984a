using ShopClass.Data.Orders;

namespace ShopClass.Web.Features.Printing;

/// <summary>How far a kit is, in words.</summary>
public static class KitWords
{
    public static string Of(KitState state) =>
        state switch
        {
            KitState.ToPrepare => "to prepare",
            KitState.Ready => "ready",
            KitState.HandedOver => "handed over",
            _ => throw new ArgumentOutOfRangeException(
                nameof(state),
                state,
                "Not a state of a kit."
            ),
        };
}
