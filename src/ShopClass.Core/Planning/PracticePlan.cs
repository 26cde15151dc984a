using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning;

/// <summary>
/// A small made-up plan. Making it once has most of what a plan needs compiled, so that the first real one of a process
/// comes as soon as the later ones.
/// </summary>
public static class PracticePlan
{
    /// <summary>Plans a small box on one pine board with a knot.</summary>
    public static CheckedPlan Make(CancellationToken cancel = default)
    {
        var wide = Length.FromInches(9, 1, 4);
        var knot = new Defect(
            DefectKind.Knot,
            new(
                Length.FromInches(30),
                Length.FromInches(31),
                Length.FromInches(2),
                Length.FromInches(3)
            )
        );
        var board = new Board
        {
            Id = "practice",
            Name = "Practice board",
            SpeciesId = "eastern-white-pine",
            Surfacing = Surfacing.S4S,
            Thickness = Length.FromInches(0, 3, 4),
            WidthAtStart = wide,
            WidthAtMiddle = wide,
            WidthAtEnd = wide,
            Length = Length.FromInches(96),
            TrimStart = Length.FromInches(0, 1, 2),
            TrimEnd = Length.FromInches(0, 1, 2),
            Defects = [knot],
        };
        var request = new PlanningRequest
        {
            Project = new()
            {
                Name = "Practice",
                Parts = [Part("A", 2, 7, 18), Part("B", 2, 7, 10), Part("C", 1, 3, 16)],
            },
            Boards = [board],
            Rules = CourseRules.DefaultsFor(UnitSystem.Inch),
        };
        return CheckedPlan.Make(request, cancel: cancel);
    }

    private static Part Part(string letter, int quantity, int width, int length) =>
        new()
        {
            Letter = letter,
            Name = $"part {letter}",
            Quantity = quantity,
            Finished = new(
                Length.FromInches(0, 3, 4),
                Length.FromInches(width),
                Length.FromInches(length)
            ),
        };
}
