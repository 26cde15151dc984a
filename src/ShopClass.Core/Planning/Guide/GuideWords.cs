using ShopClass.Core.Courses;
using ShopClass.Core.Measure;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Planning.Guide;

/// <summary>A stock guide in words, the same on the screen, on the sheet and beside the picture.</summary>
public static class GuideWords
{
    /// <summary>
    /// What to ask the seller for: <c>1x10, 8 ft</c>, <c>2 of 1x10, 6 ft each</c>, <c>2 offcuts of 1x10</c>.
    /// </summary>
    public static string Ask(StockOption option, UnitSystem unit) =>
        (option.Boards, option.Sold) switch
        {
            (1, { } sold) => $"{option.Size.Name}, {Sold(sold, unit)}",
            (var boards, { } sold) => $"{boards} of {option.Size.Name}, {Sold(sold, unit)} each",
            _ => $"{option.Boards} offcuts of {option.Size.Name}",
        };

    /// <summary>A length as sellers say it: whole feet, or millimetres.</summary>
    public static string Sold(Length length, UnitSystem unit) =>
        unit is UnitSystem.Inch
            ? $"{length.Ticks / (12 * Length.TicksPerInch)} ft"
            : $"{length.Ticks / Length.TicksPerMillimetre} mm";

    /// <summary>The least the tape must show: actual width and length.</summary>
    public static string AtLeast(StockOption option, Precision precision) =>
        $"{LengthWriter.Write(option.Size.Width, precision)} × {LengthWriter.WriteWithUnit(option.Shortest, precision)}";

    /// <summary>The sawing and gluing it takes, from its plan.</summary>
    public static string Work(StockOption option)
    {
        var rips = option.Plan.Sequence.Cuts.Count(c => c.Kind is CutKind.Rip);
        var crosscuts = option.Plan.Sequence.Cuts.Count - rips;
        string[] glue =
        [
            .. option.GlueUps.Select(g => $"glue up {g.Key} from {g.Value} strips"),
            Count(rips, "rip"),
            Count(crosscuts, "crosscut"),
        ];
        var work = string.Join(", ", glue);
        return char.ToUpperInvariant(work[0]) + work[1..] + ".";
    }

    /// <summary>What the instructor has to prepare, or null.</summary>
    public static string? Prepared(StockOption option, StockGroup group, CourseRules rules)
    {
        if (!option.IsPrepared)
            return null;
        List<string> work = [];
        if (group.Thicknessing is Thicknessing.PreparedByInstructor)
            work.Add("planing to thickness");
        if (option.GlueUps.Count > 0 && !rules.EdgeGluingTaught)
            work.Add("the glue-up");
        return $"Only as prepared by the instructor: {string.Join(" and ", work)}.";
    }

    /// <summary>The group's name: its finished thickness and letters.</summary>
    public static string Name(StockGroup group, CourseRules rules) =>
        $"{BlankNeeds.WriteExact(group.Finished, rules)} parts: {string.Join(", ", group.Parts.Select(p => p.Letter))}";

    /// <summary>How thick the boards are and what that means; or why there are none.</summary>
    public static string Thickness(StockGroup group, CourseRules rules)
    {
        var finished = BlankNeeds.WriteExact(group.Finished, rules);
        if (group.Stock is not { } stock)
            return $"No planed size in the table is thick enough for {finished}. Ask your instructor.";
        var bought = $"Planed boards, {BlankNeeds.WriteExact(stock, rules)} thick";
        var how = group.Thicknessing switch
        {
            Thicknessing.AsItComes => $"{bought}, used as they come.",
            Thicknessing.PlanedByStudents => $"{bought}; you plane them to {finished}.",
            _ => rules.PlaningTaught
                ? $"{bought}. Bringing them to {finished} is more planing than the course asks of students: only as prepared by the instructor."
                : $"{bought}. This course teaches no planing: only as prepared by the instructor, planed to {finished}.",
        };
        return group.Options.Count > 0
            ? how
            : $"{how} No one or two of them, up to {LongestSold(rules.Unit)}, yield these parts.";
    }

    /// <summary>Sizes that do as well, in one sentence; or null.</summary>
    public static string? AlsoDo(StockGroup group, UnitSystem unit)
    {
        var whole = group.AlsoDo.Where(o => !o.IsPrepared && o.Sold is not null).ToList();
        return whole.Count == 0
            ? null
            : $"Bigger than they need be, and no less work: {string.Join("; ", whole.Select(o => Ask(o, unit)))}.";
    }

    /// <summary>What untaught skills rule out, and rough boards; empty never.</summary>
    public static IReadOnlyList<string> Skills(StockGuide guide)
    {
        var rules = guide.Rules;
        List<string> said =
        [
            rules.PlaningTaught
                ? $"Rough boards: the course planes about {BlankNeeds.WriteExact(rules.PlaningPerFace, rules)} from each face, so they are at least {BlankNeeds.WriteExact(rules.PlaningPerFace * 2, rules)} thicker than the parts. These sizes are for planed boards with straight edges; a rough or wavy edge needs more width."
                : "Rough boards are refused: this course teaches no planing. The same goes for planed boards that are too thick, unless the instructor prepares them.",
        ];
        if (!rules.EdgeGluingTaught && guide.Project.Parts.Any(p => p.GlueUpAllowed))
            said.Add(
                "This course teaches no edge gluing: narrower boards that need a glue-up are listed only as prepared by the instructor."
            );
        return said;
    }

    /// <summary>Where the sizes come from.</summary>
    public static string SizesFrom(UnitSystem unit) =>
        unit is UnitSystem.Inch
            ? "Sizes: American Softwood Lumber Standard PS 20, Table 3, dry and dressed; the 1 in to 1 1/2 in names partly from memory. Lengths, 6 to 16 ft by 2 ft: trade practice, from memory."
            : "Sizes: common planed widths and thicknesses; lengths by 300 mm: trade practice, from memory. Sellers differ.";

    /// <summary>What the lengths count on.</summary>
    public static string Counted(CourseRules rules) =>
        $"Lengths include {BlankNeeds.WriteExact(rules.UsualEndTrim, rules)} of trim at each end, kerfs and allowances. They are for clear boards: with knots to keep out, a board has to be longer or wider.";

    /// <summary>How far the lengths are known.</summary>
    public static string Known(StockGuide guide)
    {
        var proven = guide.Groups.SelectMany(g => g.Options).ToLookup(o => o.IsProvenShortest);
        const string Each = "to the course's precision, and has a rehearsed plan.";
        return (proven[true].Any(), proven[false].Any()) switch
        {
            (true, false) =>
                $"Each is the shortest length that does, {Each} It is proven that no shorter board of the size would do.",
            (true, true) =>
                $"Each is the shortest length the planner found, {Each} Where it says \"{Shortest}\", it is proven that no shorter board of the size would do; elsewhere it is not.",
            _ =>
                $"Each is the shortest length the planner found, {Each} It is not proven that no shorter board would do.",
        };
    }

    /// <summary>Beside a length that is proven to be the shortest.</summary>
    public const string Shortest = "proven shortest";

    /// <summary>What comes before the guide (common practice).</summary>
    public const string Caution =
        "Local rules, your school's policy and your instructor come before this guide. Carry long boards with two people.";

    /// <summary>What to measure and look at in front of the rack (common practice).</summary>
    public static IReadOnlyList<string> MeasureThere { get; } =
    [
        "Thickness with a rule, at both ends and on both edges. The name is not the size.",
        "Width at three places: both ends and the middle. The smallest counts.",
        "Length, from the inside of any end check to the inside of the other.",
        "Knots, splits, wane and pitch: how big, how far from the end, and whether they go right through.",
        "Cup, bow and twist: sight along both edges, and lay a rule across the face. Leave a twisted board.",
        "Dry wood: ask how it was dried. Leave painted, treated or nailed wood.",
    ];

    private static string LongestSold(UnitSystem unit) =>
        Sold(Lumber.SellerSizes.LengthsFor(unit)[^1], unit);

    private static string Count(int count, string one) =>
        count switch
        {
            0 => $"no {one}s",
            1 => $"1 {one}",
            _ => $"{count} {one}s",
        };
}
