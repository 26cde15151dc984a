using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Remakes;

/// <summary>What it would take to get a part back if it were spoiled when all is sawn.</summary>
/// <param name="Part">Letter of the part.</param>
/// <param name="Best">The least disturbing way on the student's own wood; null when there is none.</param>
/// <param name="Sentence">The same in words.</param>
public sealed record PartAtRisk(string Part, RemakeOption? Best, string Sentence);

/// <summary>Says for each part, before the first cut, what a remake of it would cost.</summary>
public static class Foresight
{
    /// <summary>One entry for each letter that is sawn out, in the order of the parts list. The last copy sawn stands for all.</summary>
    public static IReadOnlyList<PartAtRisk> Of(CheckedPlan plan, Supplies supplies)
    {
        if (!plan.Rehearsal.Passed)
            return [];
        var cuts = plan.Rehearsal.Steps.Count - 1;
        var last = plan
            .Rehearsal.Steps[cuts]
            .Pieces.Where(p => p.Fate is PieceFate.Blank && p.Blank is not null)
            .GroupBy(p => p.Blank!.Value.Part, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.Max(p => p.Blank!.Value), StringComparer.Ordinal);
        return
        [
            .. from part in plan.Request.Project.Parts
            where last.ContainsKey(part.Letter)
            select At(plan, cuts, last[part.Letter], supplies),
        ];
    }

    private static PartAtRisk At(CheckedPlan plan, int cuts, BlankKey blank, Supplies supplies)
    {
        var answer = Remaker.Options(
            new()
            {
                Plan = plan,
                CutsMade = cuts,
                Spoiled = blank,
            },
            supplies
        );
        var best = answer.Options is [var first, ..] ? first : null;
        var sentence = best?.Way switch
        {
            RemakeWay.Offcut =>
                $"If {blank.Part} is spoiled, an offcut yields another: {best.Plan!.Sequence.Cuts.Count} more cuts.",
            RemakeWay.GluedUp =>
                $"If {blank.Part} is spoiled, offcuts yield another as a glue-up: {best.Plan!.Sequence.Cuts.Count} more cuts and the glue's drying time.",
            null => $"If {blank.Part} is spoiled, this board yields no other: saw it with care.",
            _ => best!.Sentence,
        };
        return new(blank.Part, best, sentence);
    }
}
