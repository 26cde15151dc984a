using System.Globalization;
using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Tests.Orders;

/// <summary>A made-up class that orders wood for bench hooks: two invented sellers and a small rack.</summary>
public static class SampleOrders
{
    public static OrderAsk Ask(int students = 3) =>
        new()
        {
            Project = BenchHook,
            Rules = CourseRules.DefaultsFor(UnitSystem.Inch),
            People =
            [
                .. Enumerable
                    .Range(1, students)
                    .Select(i => new OrderPerson(
                        i.ToString("D4", CultureInfo.InvariantCulture),
                        $"Student {i}"
                    )),
            ],
            SpareKits = 1,
            Currency = "USD",
            Sellers =
            [
                new(
                    "quern",
                    "Quern Lane Timber",
                    "USD",
                    [Board("1x8", 6, 1920), Board("1x8", 8, 2540), Board("1x10", 8, 3430)]
                ),
                new(
                    "sluice",
                    "Old Sluice Sawmill",
                    "USD",
                    [Board("1x8", 8, 2360) with { PackSize = 2 }]
                ),
            ],
        };

    public static PricedStock Board(string size, int feet, long cents)
    {
        var read = StockSizes.Read(size, Surfacing.S4S, UnitSystem.Inch).Value!;
        return new()
        {
            Id = $"{size}-{feet}",
            Name = size,
            SpeciesId = "eastern-white-pine",
            Surfacing = Surfacing.S4S,
            Nominal = read.Nominal,
            Thickness = read.Thickness,
            Width = read.Width,
            Length = Length.FromInches(12L * feet),
            Price = new(cents, "USD"),
            Basis = PriceBasis.Each,
        };
    }

    public static RackPiece Offcut(string place, long inches, int count = 1) =>
        new()
        {
            Id = $"rack-{inches}",
            Place = place,
            Count = count,
            Board = Board("1x8", 8, 1) is var b
                ? new()
                {
                    Id = "",
                    Name = "Pine offcut",
                    SpeciesId = b.SpeciesId,
                    Surfacing = Surfacing.S4S,
                    Thickness = b.Thickness,
                    WidthAtStart = b.Width,
                    WidthAtMiddle = b.Width,
                    WidthAtEnd = b.Width,
                    Length = Length.FromInches(inches),
                }
                : throw new InvalidOperationException(),
        };

    private static Project BenchHook { get; } =
        new()
        {
            Name = "Bench hook",
            Notes = "The first evening's work.",
            Parts = [Part("A", "base", 6, 10), Part("B", "fence", 1, 5), Part("C", "hook", 1, 6)],
        };

    private static Part Part(string letter, string name, long width, long length) =>
        new()
        {
            Letter = letter,
            Name = name,
            Quantity = 1,
            Finished = new(
                Length.FromInches(0, 3, 4),
                letter == "A" ? Length.FromInches(width) : Length.FromInches(width, 1, 2),
                Length.FromInches(length)
            ),
        };
}
