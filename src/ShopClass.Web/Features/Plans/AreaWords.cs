using ShopClass.Core.Measure;
using ShopClass.Core.Sawing;

namespace ShopClass.Web.Features.Plans;

/// <summary>Where a board's area went, for people: square inches or square centimetres, and tenths of a hundredth.</summary>
public static class AreaWords
{
    private static readonly decimal SquareInch = (decimal)Length.TicksPerInch * Length.TicksPerInch;
    private static readonly decimal SquareCentimetre =
        100m * Length.TicksPerMillimetre * Length.TicksPerMillimetre;

    public static string Write(Area area, UnitSystem unit) =>
        unit is UnitSystem.Inch
            ? $"{(decimal)area.SquareTicks / SquareInch:0.0} sq in"
            : $"{(decimal)area.SquareTicks / SquareCentimetre:0.0} cm²";

    public static decimal Share(Area area, Area whole) =>
        whole.SquareTicks == 0 ? 0 : (decimal)area.SquareTicks / (decimal)whole.SquareTicks;

    public static bool AddsUp(AreaBalance balance) =>
        balance.Blanks + balance.Kerf + balance.Offcuts + balance.Waste == balance.Board;
}
