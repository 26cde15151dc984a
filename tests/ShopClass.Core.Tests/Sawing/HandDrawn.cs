using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Tests.Sawing;

/// <summary>
/// Plans drawn by hand, in inches. The course's kerfs are 1/8 in for every saw so that positions are easy to add up in
/// the head; the other settings are the usual ones.
/// </summary>
internal static class HandDrawn
{
    public static readonly Length Kerf = Length.FromInches(0, 1, 8);

    public static CourseRules Rules { get; } =
        CourseRules.DefaultsFor(UnitSystem.Inch) with
        {
            CrosscutKerf = Kerf,
            RipKerf = Kerf,
            BackSawKerf = Kerf,
        };

    public static Length In(decimal inches) =>
        Length.FromTicks((long)(inches * Length.TicksPerInch));

    /// <summary>A surfaced pine board, 3/4 in thick.</summary>
    public static Board Board(decimal length, decimal width, string id = "b1") =>
        new()
        {
            Id = id,
            Name = $"Board {id[1..]}",
            SpeciesId = "eastern-white-pine",
            Surfacing = Surfacing.S4S,
            Thickness = In(0.75m),
            WidthAtStart = In(width),
            WidthAtMiddle = In(width),
            WidthAtEnd = In(width),
            Length = In(length),
        };

    /// <summary>A part 3/4 in thick.</summary>
    public static Part Part(string letter, decimal width, decimal length, int quantity = 1) =>
        new()
        {
            Letter = letter,
            Name = $"part {letter}",
            Finished = new(In(0.75m), In(width), In(length)),
            Quantity = quantity,
        };

    public static BoardRect Rect(decimal from, decimal to, decimal near, decimal far) =>
        new(In(from), In(to), In(near), In(far));

    public static Section Section(decimal from, decimal to, params Strip[] strips) =>
        new(In(from), In(to), strips);

    public static Strip Strip(decimal near, decimal far, params PlacedBlank[] blanks) =>
        new(In(near), In(far), blanks);

    /// <summary>A blank that says it needs just what a part of this finished size needs with sawn edges.</summary>
    public static PlacedBlank Blank(
        string key,
        decimal from,
        decimal to,
        decimal? needsWidth = null,
        decimal? needsLength = null
    ) =>
        new(
            new(key[..1], int.Parse(key[1..])),
            In(from),
            In(to),
            new(In(0.75m), In(needsWidth ?? 100), In(needsLength ?? 1000))
        );

    public static CutPlan Plan(params BoardLayout[] boards) =>
        new()
        {
            Boards = boards,
            Missing = [],
            Goals = [],
            StepsTaken = 0,
        };

    public static BoardLayout Layout(string board, params Section[] sections) =>
        new(board, sections);

    public static PlanningRequest Request(
        IReadOnlyList<Board> boards,
        IReadOnlyList<Part> parts,
        CourseRules? rules = null
    ) =>
        new()
        {
            Project = new() { Name = "drawn by hand", Parts = parts },
            Boards = boards,
            Rules = rules ?? Rules,
        };

    /// <summary>Orders the cuts and rehearses them.</summary>
    public static RehearsalReport Rehearse(PlanningRequest request, CutPlan plan) =>
        Rehearsal.Replay(request, plan, Sequencer.Order(request, plan));
}
