using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;

namespace ShopClass.Print.Tests;

/// <summary>Plans made by hand, so that drawings and sheets are tested apart from the planner.</summary>
public static class SamplePlans
{
    /// <summary>A shelf's five parts from one pine board with a knot and a leftover: nine cuts.</summary>
    public static CheckedPlan Shelf(string studentPart = "side")
    {
        var board = Pine("shelf-board", In(96), In(7, 1, 4)) with
        {
            TrimStart = In(1),
            Defects =
            [
                new(DefectKind.Knot, new(In(85), In(86, 1, 2), In(3), In(4))),
                new(DefectKind.Split, new(In(93), In(96), In(5), In(6))),
            ],
        };
        var project = new Project
        {
            Name = "Wall shelf",
            Parts =
            [
                Part("A", studentPart, 2, In(6), In(14)),
                Part("B", "shelf", 2, In(6), In(20, 1, 2)) with
                {
                    JointNotes = "dado in each side, 1/4 in deep",
                    Open = [new(PartDimension.Width, In(0, 1, 32), "planed flush")],
                },
                Part("C", "peg", 2, In(0, 3, 4), In(4)),
            ],
        };
        var hand = new HandPlan(board, project);
        hand.Trim(In(1), In(0, 1, 16));
        hand.Across(In(16)).Across(In(31, 1, 16)).Across(In(52, 9, 16)).Across(In(74, 1, 16));
        hand.Across(In(79, 1, 8));
        hand.Along(In(1), In(74, 1, 8)).Along(In(2, 1, 16), In(74, 1, 8));
        hand.Blank("A", 1, In(1)).Blank("A", 2, In(16, 1, 16)).Blank("B", 1, In(31, 1, 8));
        hand.Blank("B", 2, In(52, 5, 8))
            .Blank("C", 1, In(74, 1, 8))
            .Blank("C", 2, In(74, 1, 8), In(1, 1, 16));
        return hand.Checked();
    }

    /// <summary>A length in inches.</summary>
    public static Length In(long whole, long numerator = 0, long denominator = 1) =>
        Length.FromInches(whole, numerator, denominator);

    /// <summary>A planed pine board.</summary>
    public static Board Pine(string id, Length length, Length width) =>
        new()
        {
            Id = id,
            Name = "Board 1",
            SpeciesId = "eastern-white-pine",
            Surfacing = Surfacing.S4S,
            Thickness = In(0, 3, 4),
            WidthAtStart = width,
            WidthAtMiddle = width,
            WidthAtEnd = width,
            Length = length,
        };

    /// <summary>A part 3/4 in thick.</summary>
    public static Part Part(
        string letter,
        string name,
        int quantity,
        Length width,
        Length length
    ) =>
        new()
        {
            Letter = letter,
            Name = name,
            Quantity = quantity,
            Finished = new(In(0, 3, 4), width, length),
        };
}
