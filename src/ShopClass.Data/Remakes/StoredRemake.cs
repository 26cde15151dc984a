using ShopClass.Core.Planning;
using ShopClass.Core.Remakes;

namespace ShopClass.Data.Remakes;

/// <summary>A remake that was chosen.</summary>
/// <param name="Id">Its key.</param>
/// <param name="PlanId">The plan version whose part was spoiled; it stays as it is.</param>
/// <param name="Number">From 1 within that plan version.</param>
/// <param name="MadeUtc">When it was chosen.</param>
/// <param name="Spoiled">The blank that was spoiled.</param>
/// <param name="CutsMade">How many of the plan's cuts were made then.</param>
/// <param name="Option">What was chosen.</param>
public sealed record StoredRemake(
    Guid Id,
    Guid PlanId,
    int Number,
    DateTime MadeUtc,
    BlankKey Spoiled,
    int CutsMade,
    RemakeOption Option
)
{
    /// <summary>The same as the ways out of later mishaps ask for it.</summary>
    public RemakeMade ToMade() => new(Number, Spoiled, CutsMade, Option);
}
