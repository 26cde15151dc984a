using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Web.Features.Boards;

public sealed record BoardDifference(string What, string Theirs, string Mine);

/// <summary>What two people typed differently about one board.</summary>
public static class BoardDifferences
{
    public static IReadOnlyList<BoardDifference> Between(
        Board theirs,
        BoardDraft mine,
        CourseRules rules
    )
    {
        var stored = BoardDraft.Of(theirs, Guid.Empty);
        return
        [
            .. Rows(rules)
                .Select(r => new BoardDifference(r.What, r.Say(stored), r.Say(mine)))
                .Where(d => d.Theirs != d.Mine),
        ];
    }

    private static IEnumerable<(string What, Func<BoardDraft, string> Say)> Rows(CourseRules rules)
    {
        string Write(Length? length) =>
            length is { } value ? LengthWriter.WriteWithUnit(value, rules.Precision) : "not given";
        string Flat(Length? length) => length is { Ticks: > 0 } ? Write(length) : "none";
        return
        [
            ("Name", d => d.Name),
            ("Wood", d => SpeciesTable.Find(d.SpeciesId ?? "")?.CommonName ?? "not given"),
            ("Surfacing", d => LumberWords.Of(d.Surfacing)),
            ("Thickness", d => Write(d.Thickness)),
            ("Width at the start", d => Write(d.WidthAtStart)),
            ("Width in the middle", d => Write(d.WidthAtMiddle)),
            ("Width at the far end", d => Write(d.WidthAtEnd)),
            ("Length", d => Write(d.Length)),
            ("Hollow across", d => Flat(d.Cup)),
            ("Twist", d => Flat(d.Twist)),
            ("Trim at the start", d => Write(d.TrimStart)),
            ("Trim at the far end", d => Write(d.TrimEnd)),
            ("Bad places", d => Places(d, Write)),
        ];
    }

    private static string Places(BoardDraft draft, Func<Length?, string> write) =>
        draft.Defects.Count == 0
            ? "none"
            : string.Join(
                "; ",
                draft.Defects.Select(d =>
                    $"{LumberWords.Of(d.Kind)} at {write(d.From)} to {write(d.To)}, {write(d.Near)} to {write(d.Far)} across, {LumberWords.Of(d.Reach)}"
                )
            );
}
