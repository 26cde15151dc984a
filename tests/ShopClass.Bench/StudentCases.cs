using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Bench;

/// <summary>Random projects and boards as students bring them. The same seed gives the same cases everywhere.</summary>
internal sealed class StudentCases(long seed, int fewest, int most, int boards, int defects)
{
    // SplitMix64 (Steele, Lea, Flood 2014): a fixed sequence that no library update changes.
    private ulong state = (ulong)seed;

    public PlanningRequest Next(CourseRules rules)
    {
        var parts = Parts(Between(fewest, most));
        var count = Between(1, boards);
        var wood = new List<Board>();
        long area = parts.Sum(p =>
            p.Quantity
            * Quarters(p.Finished.Width + Length.FromInches(0, 1, 4))
            * Quarters(p.Finished.Length + Length.FromInches(1))
        );
        var share = area * Between(115, 190) / 100 / count;
        for (var i = 0; i < count; i++)
            wood.Add(Board(i + 1, share, parts.Max(p => Quarters(p.Finished.Width)) + 1));
        return new()
        {
            Project = new() { Name = "case", Parts = parts },
            Boards = wood,
            Rules = rules,
        };
    }

    private static long Quarters(Length length) => length.Ticks * 4 / Length.TicksPerInch;

    private List<Part> Parts(int pieces)
    {
        var parts = new List<Part>();
        while (pieces > 0)
        {
            var quantity = Math.Min(pieces, Between(1, 100) > 55 ? 1 : Between(1, 3));
            pieces -= quantity;
            parts.Add(
                new()
                {
                    Letter = $"{(char)('A' + parts.Count % 26)}{(parts.Count >= 26 ? "2" : "")}",
                    Name = "part",
                    Finished = new(
                        Length.FromInches(0, 3, 4),
                        Length.FromInches(0, Between(4, 28), 4),
                        Length.FromInches(0, Between(16, 96), 4)
                    ),
                    Quantity = quantity,
                }
            );
        }

        return parts;
    }

    private Board Board(int number, long area, long least)
    {
        // PS 20 dressed widths of 1x6 to 1x12, in quarter inches.
        long[] widths = [.. new long[] { 22, 29, 37, 45 }.Where(w => w >= least + 1)];
        var width = widths.Length == 0 ? least + 1 : widths[Between(0, widths.Length - 1)];
        var length = Math.Max(area / width, 40);
        var actual = Length.FromInches(0, width, 4);
        return new()
        {
            Id = $"{number}",
            Name = $"Board {number}",
            SpeciesId = "eastern-white-pine",
            Surfacing = Surfacing.S2S,
            Thickness = Length.FromInches(0, 3, 4),
            WidthAtStart = actual,
            WidthAtMiddle = actual,
            WidthAtEnd = actual,
            Length = Length.FromInches(0, length, 4),
            TrimStart = Length.FromInches(0, 1, 2),
            TrimEnd = Length.FromInches(0, 1, 2),
            Defects =
            [
                .. Enumerable.Range(0, Between(0, defects)).Select(_ => Knot(length, width)),
            ],
        };
    }

    private Defect Knot(long length, long width)
    {
        var size = Between(2, 6);
        var from = Between(0, (int)length - size);
        var near = Between(0, (int)width - size);
        Length In(long quarters) => Length.FromInches(0, quarters, 4);
        return new(DefectKind.Knot, new(In(from), In(from + size), In(near), In(near + size)));
    }

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
