using ShopClass.Core.Measure;

namespace ShopClass.Core.Courses;

/// <summary>The settings about wood left on, planed off and trimmed away.</summary>
internal static class Allowances
{
    private const string Group = "Allowances";

    public static IReadOnlyList<LengthRule> All { get; } =
    [
        new(
            "lengthAllowance",
            "Length allowance",
            Group,
            "Every blank is sawn at least this much longer than the finished part.",
            RuleBasis.Practice,
            Length.Zero,
            Length.FromInches(6),
            rules => rules.LengthAllowance,
            (rules, value) => rules with { LengthAllowance = value }
        )
        {
            Source =
                "Common practice in teaching: 1 in (25 mm). Published texts give about 1/2 in (12 mm) for a practised hand.",
        },
        new(
            "widthAllowance",
            "Width allowance",
            Group,
            "A blank with a sawn or rough edge is at least this much wider than the finished part.",
            RuleBasis.Book,
            Length.Zero,
            Length.FromInches(2),
            rules => rules.WidthAllowance,
            (rules, value) => rules with { WidthAllowance = value }
        )
        {
            Source =
                "Taught in published texts on hand work: 1/4 in (6 mm), and nothing on an edge that is already straight and square.",
        },
        new(
            "planingPerFace",
            "Planing, each face",
            Group,
            "Rough stock must be thicker than the part by this much on each of its two faces.",
            RuleBasis.Book,
            Length.Zero,
            Length.FromInches(0, 1, 2),
            rules => rules.PlaningPerFace,
            (rules, value) => rules with { PlaningPerFace = value }
        )
        {
            Source =
                "Taught in published texts on hand work: 3/32 in (2.5 mm) from a sawn face or edge.",
        },
        new(
            "edgeJointAllowance",
            "Edge joint, each edge",
            Group,
            "Strips of a glue-up are wider by this much for every edge that is planed for the joint.",
            RuleBasis.Practice,
            Length.Zero,
            Length.FromInches(0, 1, 2),
            rules => rules.EdgeJointAllowance,
            (rules, value) => rules with { EdgeJointAllowance = value }
        )
        {
            Source = "Common practice: 1/16 in (1.5 mm).",
        },
        new(
            "usualEndTrim",
            "Usual end trim",
            Group,
            "A newly logged board starts with this much to be sawn off each end.",
            RuleBasis.Proposal,
            Length.Zero,
            Length.FromInches(12),
            rules => rules.UsualEndTrim,
            (rules, value) => rules with { UsualEndTrim = value }
        )
        {
            Source =
                "Our proposal: 1 in (25 mm). Texts advise looking for hidden splits at the ends of stored boards, where the first few inches may go.",
        },
        new(
            "thicknessLeeway",
            "Thickness leeway",
            Group,
            "Planed stock thicker than the part by no more than this is used as it comes.",
            RuleBasis.Proposal,
            Length.Zero,
            Length.FromInches(0, 1, 2),
            rules => rules.ThicknessLeeway,
            (rules, value) => rules with { ThicknessLeeway = value }
        )
        {
            Source = "Our proposal: 1/32 in (1 mm).",
        },
        new(
            "mostPlanedAway",
            "Most planed away",
            Group,
            "Stock that would need more than this planed off its thickness, both faces together, is not used.",
            RuleBasis.Proposal,
            Length.Zero,
            Length.FromInches(2),
            rules => rules.MostPlanedAway,
            (rules, value) => rules with { MostPlanedAway = value }
        )
        {
            Source = "Our proposal: 1/4 in (6 mm), as much as a class planes with patience.",
        },
    ];
}
