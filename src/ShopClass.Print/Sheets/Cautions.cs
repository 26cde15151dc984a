using ShopClass.Core.Lumber;
using ShopClass.Core.Planning;
using ShopClass.Core.Sawing;

namespace ShopClass.Print.Sheets;

/// <summary>The cautions every sheet carries (common practice), and those of this plan. The shop's own rules come first.</summary>
internal static class Cautions
{
    public static IReadOnlyList<string> For(CheckedPlan plan)
    {
        var sensitisers = plan
            .Plan.Boards.Select(l => plan.Request.Boards.First(b => b.Id == l.BoardId).SpeciesId)
            .Distinct(StringComparer.Ordinal)
            .Select(SpeciesTable.Find)
            .OfType<Species>()
            .Where(s => s.IsSensitiser)
            .Select(s =>
                $"The dust of {s.CommonName} is known to sensitise skin and lungs (from memory; common practice): tell your instructor of any reaction."
            );
        // The verdict names sensitising wood too; here it is said once, with what to do.
        var verdict = plan.Verdict.Cautions.Where(c =>
            !c.Contains("sensitise", StringComparison.Ordinal)
        );
        var notes = plan
            .Rehearsal.Findings.Where(f => f.Kind is FindingKind.Note)
            .Select(f => f.Sentence);
        return
        [
            .. UsualCautions.Sentences,
            .. sensitisers,
            .. verdict
                .Concat(plan.Verdict.Routes)
                .Concat(notes)
                .Select(Closed)
                .Distinct(StringComparer.Ordinal),
        ];
    }

    private static string Closed(string sentence) => $"{sentence.TrimEnd('.')}.";
}
