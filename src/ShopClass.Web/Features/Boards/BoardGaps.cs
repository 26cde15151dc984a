using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;
using ShopClass.Data.Access;

namespace ShopClass.Web.Features.Boards;

/// <summary>What is still missing from a draft, and the board it makes when nothing is, or when the gaps are bridged.</summary>
public static class BoardGaps
{
    private const string NoLength = "Type a length, such as 9 1/4 in or 235 mm.";

    public static IReadOnlyList<FieldProblem> In(BoardDraft draft)
    {
        List<FieldProblem> gaps = [];
        if (string.IsNullOrEmpty(draft.SpeciesId))
            gaps.Add(
                new("Species", "Choose the wood. If you do not know it, ask your instructor.")
            );
        Need(gaps, "Thickness", draft.Thickness);
        Need(gaps, "WidthAtStart", draft.WidthAtStart);
        Need(gaps, "WidthAtMiddle", draft.WidthAtMiddle);
        Need(gaps, "WidthAtEnd", draft.WidthAtEnd);
        Need(gaps, "Length", draft.Length);
        Need(gaps, "TrimStart", draft.TrimStart);
        Need(gaps, "TrimEnd", draft.TrimEnd);
        for (var i = 0; i < draft.Defects.Count; i++)
        {
            Need(gaps, $"Defects[{i}].From", draft.Defects[i].From);
            Need(gaps, $"Defects[{i}].To", draft.Defects[i].To);
            Need(gaps, $"Defects[{i}].Near", draft.Defects[i].Near);
            Need(gaps, $"Defects[{i}].Far", draft.Defects[i].Far);
        }
        return gaps;
    }

    /// <summary>The board, or null while something is missing.</summary>
    public static Board? Filled(BoardDraft draft) =>
        In(draft).Count == 0 ? Build(draft, draft.SpeciesId!, Length.Zero) : null;

    /// <summary>A board with stand-ins for what is missing, to check or draw what is there.</summary>
    public static Board Bridged(BoardDraft draft, CourseRules rules) =>
        Build(
            draft,
            draft.SpeciesId ?? SpeciesTable.All[0].Id,
            rules.Unit is UnitSystem.Inch ? Length.FromInches(1) : Length.FromMillimetres(25)
        );

    /// <summary>The board to draw, or null while its length and width are not known or not sensible.</summary>
    public static Board? Drawable(BoardDraft draft, CourseRules rules)
    {
        if (!IsSensible(draft.Length) || !IsSensible(draft.WidthAtStart))
            return null;
        var board = Bridged(draft, rules);
        var whole = new BoardRect(Length.Zero, board.Length, Length.Zero, WidestOf(board));
        return board with
        {
            WidthAtMiddle = SensibleOr(draft.WidthAtMiddle, board.WidthAtStart),
            WidthAtEnd = SensibleOr(draft.WidthAtEnd, board.WidthAtStart),
            TrimStart =
                draft.TrimStart is { } start && IsWithin(start, board.Length) ? start : Length.Zero,
            TrimEnd = draft.TrimEnd is { } end && IsWithin(end, board.Length) ? end : Length.Zero,
            Defects =
            [
                .. board.Defects.Where(d =>
                    whole.Contains(d.Place)
                    && d.Place.Along > Length.Zero
                    && d.Place.Across > Length.Zero
                ),
            ],
        };
    }

    public static Length WidestOf(Board board) =>
        Length.Max(board.WidthAtStart, Length.Max(board.WidthAtMiddle, board.WidthAtEnd));

    private static Board Build(BoardDraft draft, string species, Length standIn) =>
        new()
        {
            Id = "draft",
            Name = draft.Name.Trim(),
            SpeciesId = species,
            Surfacing = draft.Surfacing,
            Thickness = draft.Thickness ?? standIn,
            WidthAtStart = draft.WidthAtStart ?? standIn,
            WidthAtMiddle = draft.WidthAtMiddle ?? draft.WidthAtStart ?? standIn,
            WidthAtEnd = draft.WidthAtEnd ?? draft.WidthAtStart ?? standIn,
            Length = draft.Length ?? standIn,
            Cup = draft.Cup ?? Length.Zero,
            Twist = draft.Twist ?? Length.Zero,
            TrimStart = draft.TrimStart ?? Length.Zero,
            TrimEnd = draft.TrimEnd ?? Length.Zero,
            Defects =
            [
                .. draft.Defects.Select(d => new Defect(d.Kind, d.Place ?? default, d.Reach)),
            ],
            Price = draft.Price,
        };

    private static void Need(List<FieldProblem> gaps, string field, Length? value)
    {
        if (value is null)
            gaps.Add(new(field, NoLength));
    }

    private static bool IsSensible(Length? length) =>
        length is { } value && value > Length.Zero && value <= PartChecks.Longest;

    private static Length SensibleOr(Length? length, Length otherwise) =>
        IsSensible(length) ? length!.Value : otherwise;

    private static bool IsWithin(Length trim, Length whole) => trim >= Length.Zero && trim < whole;
}
