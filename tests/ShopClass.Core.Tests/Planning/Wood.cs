using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Tests.Planning;

/// <summary>Short ways to say boards, parts and requests in tests.</summary>
internal static partial class Wood
{
    public static Length In(long whole, long numerator = 0, long denominator = 1) =>
        Length.FromInches(whole, numerator, denominator);

    public static Length Mm(long millimetres) => Length.FromMillimetres(millimetres);

    /// <summary>Rules without any allowance, for exact arithmetic.</summary>
    public static CourseRules Bare(Length kerf) =>
        new()
        {
            Unit = UnitSystem.Metric,
            Precision = Precision.Millimetre,
            CrosscutKerf = kerf,
            RipKerf = kerf,
            BackSawKerf = kerf,
            LengthAllowance = Length.Zero,
            WidthAllowance = Length.Zero,
            PlaningPerFace = Length.Zero,
            EdgeJointAllowance = Length.Zero,
            UsualEndTrim = Length.Zero,
            SawBenchLimit = Mm(600),
            BenchHookLimit = Mm(150),
            ThicknessLeeway = Mm(2),
            MostPlanedAway = Mm(6),
            ShortestOffcut = Mm(300),
            NarrowestOffcut = Mm(50),
            HardGoingAbove = 60,
        };

    public static Board Board(
        string id,
        Length thickness,
        Length width,
        Length length,
        Surfacing surfacing = Surfacing.S2S
    ) =>
        new()
        {
            Id = id,
            Name = $"Board {id}",
            SpeciesId = "eastern-white-pine",
            Surfacing = surfacing,
            Thickness = thickness,
            WidthAtStart = width,
            WidthAtMiddle = width,
            WidthAtEnd = width,
            Length = length,
        };

    public static Part Part(
        string letter,
        int quantity,
        Length thickness,
        Length width,
        Length length
    ) =>
        new()
        {
            Letter = letter,
            Name = $"part {letter}",
            Finished = new(thickness, width, length),
            Quantity = quantity,
        };

    public static PlanningRequest Ask(
        CourseRules rules,
        IReadOnlyList<Board> boards,
        params Part[] parts
    ) =>
        new()
        {
            Project = new() { Name = "trial", Parts = parts },
            Boards = boards,
            Rules = rules,
        };
}
