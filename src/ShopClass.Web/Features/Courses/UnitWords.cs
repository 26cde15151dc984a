using ShopClass.Core.Courses;
using ShopClass.Core.Measure;

namespace ShopClass.Web.Features.Courses;

/// <summary>Units and divisions as a rule's owner would name them.</summary>
public static class UnitWords
{
    public static string Of(CourseRules rules) =>
        $"{(rules.Unit is UnitSystem.Inch ? "Inches" : "Metric")}, to {Of(rules.Precision)}";

    public static string Of(Precision precision) =>
        precision switch
        {
            Precision.Sixteenth => "1/16 in",
            Precision.ThirtySecond => "1/32 in",
            Precision.SixtyFourth => "1/64 in",
            Precision.Millimetre => "1 mm",
            _ => "0.5 mm",
        };
}
