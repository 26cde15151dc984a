using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Data.Tests;

/// <summary>Boards and parts to test with.</summary>
internal static class Wood
{
    public static Board Pine(string name = "Pine", long length = 96) =>
        new()
        {
            Id = "",
            Name = name,
            SpeciesId = "eastern-white-pine",
            Surfacing = Surfacing.S4S,
            Thickness = Length.FromInches(0, 3, 4),
            WidthAtStart = Length.FromInches(9, 1, 4),
            WidthAtMiddle = Length.FromInches(9, 1, 4),
            WidthAtEnd = Length.FromInches(9, 1, 4),
            Length = Length.FromInches(length),
            TrimStart = Length.FromInches(1),
            TrimEnd = Length.FromInches(1),
            Defects =
            [
                new(
                    DefectKind.Knot,
                    new(
                        Length.FromInches(80),
                        Length.FromInches(82),
                        Length.FromInches(2),
                        Length.FromInches(3)
                    ),
                    DefectReach.BackFace
                ),
            ],
            Price = new Money(2_880, "USD"),
        };

    public static Part Side(string letter = "A") =>
        new()
        {
            Letter = letter,
            Name = "side",
            Quantity = 2,
            Finished = new(Length.FromInches(0, 3, 4), Length.FromInches(6), Length.FromInches(14)),
            ShowFace = true,
            JointNotes = "Two dados.",
            Open = [new(PartDimension.Width, Length.FromInches(0, 1, 32), "planed flush")],
        };

    /// <summary>A dado in A for the end of B.</summary>
    public static Joint Dado() =>
        new()
        {
            Kind = JointKind.Dado,
            Part = "A",
            Mate = "B",
            Depth = Length.FromInches(0, 1, 4),
            Positions = [Length.FromInches(2), Length.FromInches(10)],
        };

    /// <summary>B nailed to A.</summary>
    public static Joint Nailed() =>
        new()
        {
            Kind = JointKind.Nailed,
            Part = "A",
            Mate = "B",
        };

    /// <summary>B as wide as A.</summary>
    public static SizeCheck EqualWidths() =>
        new("B", PartDimension.Width, [new(1, "A", PartDimension.Width, Length.Zero, "")]);
}
