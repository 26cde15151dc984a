using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Steps;

/// <summary>
/// The rules by which the steps are written, one function each with its reason. All are common practice; the lengths they
/// go by are the course's own.
/// </summary>
public static class WorkRules
{
    /// <summary>
    /// A piece leans on the bench hook only with enough of it on the kept side to press against the fence; a shorter one
    /// goes to the vise, where no hand has to hold it beside the saw.
    /// </summary>
    public static Support WhatHoldsForAnEndCut(CourseRules rules, Length kept) =>
        kept >= rules.BenchHookLimit ? Support.BenchHook : Support.Vise;

    /// <summary>A saw needs its own kerf of wood on the waste side; less than that is planed off, because the saw would wander out of it.</summary>
    public static bool IsEnoughToSaw(Length over, Length kerf) => over >= kerf;

    /// <summary>
    /// The first end gives up a quarter of what the piece has over, so that most of it is left for the end that decides
    /// the length; but always a kerf, where there is one.
    /// </summary>
    public static Length TakenByTheFirstEnd(Length over, CourseRules rules)
    {
        if (!IsEnoughToSaw(over, rules.BackSawKerf))
            return Length.Zero;
        var quarter = Length.FromTicks(over.Ticks / 4);
        var even = quarter.RoundDownTo(rules.Precision.Step());
        return Length.Max(even > Length.Zero ? even : quarter, rules.BackSawKerf);
    }

    /// <summary>Saw first what would be long work for a plane: more than a kerf and two shavings' worth (1/8 in, 3 mm) goes with the rip saw.</summary>
    public static bool IsMuchToPlane(Length over, CourseRules rules) =>
        over >= rules.RipKerf + Length.FromInches(0, 1, 8);

    /// <summary>
    /// A wide crosscut is started along the line at one corner and walked back, because the saw steers itself once it
    /// lies in a long shallow kerf. Wide is 6 in (150 mm) and more: our proposal.
    /// </summary>
    public static bool IsWideCrosscut(Length sawn) => sawn >= Length.FromMillimetres(150);

    /// <summary>Stock thicker than the part by more than the leeway is planed; less is used as it comes.</summary>
    public static bool HasToBePlanedThinner(
        Length thickness,
        Length wanted,
        bool planedFaces,
        CourseRules rules
    ) => planedFaces ? thickness - wanted > rules.ThicknessLeeway : thickness > wanted;

    /// <summary>
    /// Parts of one strip stay joined until it is at width when one of them would be too short for the bench hook: a strip
    /// can be held and planed, and a short piece can not. They are crosscut apart last.
    /// </summary>
    public static bool StayJoinedUntilTheirStripIsAtWidth(
        IReadOnlyList<Part> parts,
        CourseRules rules
    ) =>
        parts.Count > 1
        && parts.Any(p => p.Finished.Length < rules.BenchHookLimit)
        && parts.All(p => !p.Open.Any(o => o.Dimension is not PartDimension.Length))
        && parts.Select(p => (p.Finished.Thickness, p.Finished.Width)).Distinct().Count() == 1;

    /// <summary>What a dimension is brought to before its event: finished size and what stays on it.</summary>
    public static Length BeforeItsEvent(Part part, PartDimension dimension) =>
        part.ExtraFor(dimension)
        + dimension switch
        {
            PartDimension.Thickness => part.Finished.Thickness,
            PartDimension.Width => part.Finished.Width,
            _ => part.Finished.Length,
        };
}
