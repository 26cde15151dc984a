using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Courses;

/// <summary>
/// What a course has settled about measuring, sawing and holding. All are the instructor's own judgement: the defaults
/// (see <see cref="RuleBook"/>) carry their basis, and none is a rule of safety.
/// </summary>
public sealed record CourseRules
{
    /// <summary>The unit the course works in.</summary>
    public required UnitSystem Unit { get; init; }

    /// <summary>How fine it writes lengths; belongs to <see cref="Unit"/>.</summary>
    public required Precision Precision { get; init; }

    /// <summary>Kerf of the hand crosscut saw.</summary>
    public required Length CrosscutKerf { get; init; }

    /// <summary>Kerf of the hand rip saw.</summary>
    public required Length RipKerf { get; init; }

    /// <summary>Kerf of the back saw used at the bench hook.</summary>
    public required Length BackSawKerf { get; init; }

    /// <summary>Oversize of a rough blank in length.</summary>
    public required Length LengthAllowance { get; init; }

    /// <summary>Oversize of a rough blank in width, wherever one of its edges is sawn or rough.</summary>
    public required Length WidthAllowance { get; init; }

    /// <summary>Wood planed from each face of a rough board.</summary>
    public required Length PlaningPerFace { get; init; }

    /// <summary>Wood planed from each edge that will be glued.</summary>
    public required Length EdgeJointAllowance { get; init; }

    /// <summary>End trim proposed for a newly logged board.</summary>
    public required Length UsualEndTrim { get; init; }

    /// <summary>Shortest stock held under the knee on a saw bench.</summary>
    public required Length SawBenchLimit { get; init; }

    /// <summary>Least kept length held against a bench hook.</summary>
    public required Length BenchHookLimit { get; init; }

    /// <summary>Planed stock thicker than the finished part by no more than this is used as it comes.</summary>
    public required Length ThicknessLeeway { get; init; }

    /// <summary>The most thickness a student is asked to plane away, both faces together.</summary>
    public required Length MostPlanedAway { get; init; }

    /// <summary>The shortest leftover worth keeping as an offcut.</summary>
    public required Length ShortestOffcut { get; init; }

    /// <summary>The narrowest leftover worth keeping as an offcut.</summary>
    public required Length NarrowestOffcut { get; init; }

    /// <summary>Whether the course teaches planing; if not, stock that needs it is refused.</summary>
    public bool PlaningTaught { get; init; } = true;

    /// <summary>Whether the course teaches edge gluing; if not, glue-ups are refused.</summary>
    public bool EdgeGluingTaught { get; init; } = true;

    /// <summary>The most strips a part is glued up from, 2 to 6: each strip more is a joint more to true, glue and clamp.</summary>
    public int MostGlueUpStrips { get; init; } = RuleBook.UsualGlueUpStrips;

    /// <summary>Specific gravity (hundredths, at 12 %) above which a species is called hard going for beginners.</summary>
    public required int HardGoingAbove { get; init; }

    /// <summary>Relative humidity of the shop where parts are fitted, per cent. What wood does with it is told in the steps.</summary>
    public int ShopHumidity { get; init; } = RuleBook.UsualShopHumidity;

    /// <summary>Relative humidity of the room where the piece will stand, per cent.</summary>
    public int RoomHumidity { get; init; } = RuleBook.UsualRoomHumidity;

    /// <summary>The air of both at 20 °C (68 °F): a few degrees change what wood takes up by hardly anything.</summary>
    public Climate Air => new(20, ShopHumidity, RoomHumidity);

    /// <summary>The defaults for a course in this unit.</summary>
    /// <remarks>
    /// Inch and metric defaults are two round sets, each in the figures its own rules are marked in; they are not
    /// conversions of one another. <see cref="RuleBook"/> says where each comes from.
    /// </remarks>
    public static CourseRules DefaultsFor(UnitSystem unit) =>
        unit switch
        {
            UnitSystem.Inch => InchDefaults,
            UnitSystem.Metric => MetricDefaults,
            _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "Not a unit."),
        };

    // Wood Handbook FPL-GTR-190, Table 5-3a gives black walnut 0.55 at 12 %: common practice takes it as the upper
    // end of what beginners saw happily by hand.
    private const int BlackWalnut = 55;

    private static CourseRules InchDefaults { get; } =
        new()
        {
            Unit = UnitSystem.Inch,
            Precision = Precision.Sixteenth,
            CrosscutKerf = Length.FromInches(0, 1, 16),
            RipKerf = Length.FromInches(0, 5, 64),
            BackSawKerf = Length.FromInches(0, 1, 32),
            LengthAllowance = Length.FromInches(1),
            WidthAllowance = Length.FromInches(0, 1, 4),
            PlaningPerFace = Length.FromInches(0, 3, 32),
            EdgeJointAllowance = Length.FromInches(0, 1, 16),
            UsualEndTrim = Length.FromInches(1),
            SawBenchLimit = Length.FromInches(24),
            BenchHookLimit = Length.FromInches(6),
            ThicknessLeeway = Length.FromInches(0, 1, 32),
            MostPlanedAway = Length.FromInches(0, 1, 4),
            ShortestOffcut = Length.FromInches(8),
            NarrowestOffcut = Length.FromInches(1, 1, 2),
            HardGoingAbove = BlackWalnut,
        };

    private static CourseRules MetricDefaults { get; } =
        new()
        {
            Unit = UnitSystem.Metric,
            Precision = Precision.Millimetre,
            CrosscutKerf = Length.FromHundredthsOfMillimetre(150),
            RipKerf = Length.FromMillimetres(2),
            BackSawKerf = Length.FromHundredthsOfMillimetre(80),
            LengthAllowance = Length.FromMillimetres(25),
            WidthAllowance = Length.FromMillimetres(6),
            PlaningPerFace = Length.FromHundredthsOfMillimetre(250),
            EdgeJointAllowance = Length.FromHundredthsOfMillimetre(150),
            UsualEndTrim = Length.FromMillimetres(25),
            SawBenchLimit = Length.FromMillimetres(600),
            BenchHookLimit = Length.FromMillimetres(150),
            ThicknessLeeway = Length.FromMillimetres(1),
            MostPlanedAway = Length.FromMillimetres(6),
            ShortestOffcut = Length.FromMillimetres(200),
            NarrowestOffcut = Length.FromMillimetres(38),
            HardGoingAbove = BlackWalnut,
        };
}
