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

    /// <summary>Specific gravity (hundredths, at 12 %) above which a species is called hard going for beginners.</summary>
    public required int HardGoingAbove { get; init; }

    /// <summary>The defaults for a course in this unit.</summary>
    public static CourseRules DefaultsFor(UnitSystem unit) => throw new NotImplementedException();
}
