using System.Globalization;
using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning.Classes;
using ShopClass.Core.Projects;

namespace ShopClass.Bench;

/// <summary>Random classes: a project of 5 to 12 blanks, a seller's list of dressed sizes in several lengths, some with few left, and a rack.</summary>
internal sealed class ClassCases(long seed, int students, CourseRules rules)
{
    // SplitMix64 (Steele, Lea, Flood 2014): a fixed sequence that no library update changes.
    private ulong state = (ulong)seed;

    public ClassRequest Next()
    {
        var parts = Parts(Between(5, 12));
        return new()
        {
            Project = new() { Name = "case", Parts = parts },
            Rules = rules,
            Kits = students,
            SpareKits = students / 10,
            SpareParts = new SortedDictionary<string, int>(StringComparer.Ordinal)
            {
                [parts[0].Letter] = Between(0, 3),
            },
            Stock = [.. Stock(parts)],
            Rack = [.. Enumerable.Range(1, Between(0, 6)).Select(Rack)],
        };
    }

    private bool IsInch => rules.Unit is UnitSystem.Inch;

    private Length Step(int steps) =>
        IsInch ? Length.FromInches(0, steps, 4) : Length.FromMillimetres(6 * steps);

    private Length Thickness(bool thin) =>
        IsInch
            ? Length.FromInches(0, thin ? 1 : 3, thin ? 2 : 4)
            : Length.FromMillimetres(thin ? 15 : 20);

    private List<Part> Parts(int pieces)
    {
        var parts = new List<Part>();
        while (pieces > 0)
        {
            var quantity = Math.Min(pieces, Between(1, 100) > 55 ? 1 : Between(1, 4));
            pieces -= quantity;
            parts.Add(
                new()
                {
                    Letter = $"{(char)('A' + parts.Count)}",
                    Name = "part",
                    Finished = new(
                        Thickness(thin: false),
                        Step(Between(4, 28)),
                        Step(Between(16, 120))
                    ),
                    Quantity = quantity,
                }
            );
        }

        return parts;
    }

    private List<StockSize> Stock(List<Part> parts)
    {
        // PS 20 dressed widths of 1x4 to 1x12, in quarter inches; planed metric widths.
        Length[] widths = IsInch
            ? [.. new[] { 14, 22, 29, 37, 45 }.Select(Step)]
            : [.. new long[] { 95, 120, 145, 170, 195, 220 }.Select(Length.FromMillimetres)];
        var lengths = SellerSizes.LengthsFor(rules.Unit);
        var least = parts.Max(p => p.Finished.Width) + rules.WidthAllowance;
        var stock = new List<StockSize>();
        foreach (var width in widths)
        {
            var rate = Between(90, 130);
            foreach (var length in lengths.Where(_ => Between(1, 10) <= 6))
                stock.Add(Size(stock.Count, width, length, rate));
        }

        stock.Add(
            Size(stock.Count, Length.Max(widths[^1], least), lengths[3], 120) with
            {
                Available = null,
            }
        );
        return stock;
    }

    private StockSize Size(int number, Length width, Length length, int rate)
    {
        // Dearer by the foot the wider and the longer the board, as lists are.
        var area = (long)((width * length).SquareTicks / 1_651_609_600);
        return new()
        {
            Id = number.ToString(CultureInfo.InvariantCulture),
            SellerId = "yard",
            Name = $"size {number}",
            SpeciesId = "eastern-white-pine",
            Surfacing = number % 3 == 0 ? Surfacing.S2S : Surfacing.S4S,
            Thickness = Thickness(thin: false),
            Width = width,
            Length = length,
            Price = area * rate / 36 + Between(0, 40),
            Available = Between(1, 10) <= 2 ? Between(0, 12) : null,
        };
    }

    private RackBoard Rack(int number) =>
        new(
            new()
            {
                Id = $"rack {number}",
                Name = $"Offcut {number}",
                SpeciesId = "eastern-white-pine",
                Surfacing = Surfacing.S2S,
                Thickness = Thickness(thin: false),
                WidthAtStart = Step(20 + number),
                WidthAtMiddle = Step(20 + number),
                WidthAtEnd = Step(20 + number),
                Length = Step(Between(60, 240)),
                Defects =
                    number % 3 == 0
                        ? [new(DefectKind.Knot, new(Step(30), Step(33), Step(3), Step(6)))]
                        : [],
            },
            Between(0, 1) * 300
        );

    private int Between(int low, int high) =>
        unchecked(low + (int)(Draw() % (ulong)(high - low + 1)));

    private ulong Draw()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15;
            var z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }
}
