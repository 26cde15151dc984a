using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Wishes;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Drawings;

/// <summary>What a plan does with one board.</summary>
/// <param name="Board">The board.</param>
/// <param name="Blanks">Its blanks and where they lie, in the layout's order.</param>
/// <param name="Cuts">The cuts made in it, in order.</param>
/// <param name="Leftovers">Offcuts and waste after the last cut.</param>
/// <param name="Project">The project.</param>
/// <param name="Precision">How fine lengths are written.</param>
internal sealed record PlanOnBoard(
    Board Board,
    IReadOnlyList<(PlacedBlank Blank, BoardRect Rect)> Blanks,
    IReadOnlyList<Cut> Cuts,
    IReadOnlyList<Piece> Leftovers,
    Project Project,
    Precision Precision
)
{
    /// <summary>The spare that wood of this board is kept for.</summary>
    public Spare? Spare { get; init; }

    /// <summary>Gathers it.</summary>
    public static PlanOnBoard Of(CheckedPlan plan, string boardId)
    {
        var board =
            plan.Request.Boards.FirstOrDefault(b => b.Id == boardId)
            ?? throw new ArgumentException($"The plan has no board {boardId}.", nameof(boardId));
        var last = plan.Rehearsal.Steps.Count == 0 ? [] : plan.Rehearsal.Steps[^1].Pieces;
        return new(
            Drawable.Settled(board),
            [
                .. plan
                    .Plan.Boards.Where(b => b.BoardId == boardId)
                    .SelectMany(b => b.Sections)
                    .SelectMany(s => s.Strips)
                    .SelectMany(s => s.Blanks.Select(b => (b, b.In(s)))),
            ],
            [.. plan.Sequence.Cuts.Where(c => c.BoardId == boardId)],
            [
                .. last.Where(p =>
                    p.BoardId == boardId && p.Fate is PieceFate.Offcut or PieceFate.Waste
                ),
            ],
            plan.Request.Project,
            plan.Request.Rules.Precision
        )
        {
            Spare = Spares.Of(plan) is { } spare && spare.BoardId == boardId ? spare : null,
        };
    }

    /// <summary>The marks along the board, in order.</summary>
    public IReadOnlyList<TapeMark> TapeMarks() =>
        [
            .. Cuts.Where(c => c.Kind is not CutKind.Rip)
                .GroupBy(c => c.Position)
                .OrderBy(g => g.Key)
                .Select(g => new TapeMark(
                    g.Key,
                    MeaningOf(g.Key, g.Any(c => c.Kind is CutKind.EndTrim))
                )),
        ];

    /// <summary>The size a rectangle of the board has, across the grain first: <c>6 × 14 1/4</c>.</summary>
    public string SizeOf(BoardRect rect) =>
        $"{LengthWriter.Write(rect.Across, Precision)} × {LengthWriter.Write(rect.Along, Precision)}";

    /// <summary>The longest stretch of a rectangle without a defect, for words to be written on.</summary>
    public BoardRect ClearPartOf(BoardRect rect)
    {
        var best = rect with { To = rect.From };
        var from = rect.From;
        foreach (
            var defect in Board
                .Defects.Where(d => d.Place.Overlaps(rect))
                .OrderBy(d => d.Place.From)
        )
        {
            if (defect.Place.From - from > best.Along)
                best = rect with { From = from, To = defect.Place.From };
            from = Length.Max(from, defect.Place.To);
        }

        return rect.To - from > best.Along ? rect with { From = from } : best;
    }

    /// <summary>The finished part within its blank, centred; null for a strip of a glue-up.</summary>
    public BoardRect? FinishedWithin(PlacedBlank blank, BoardRect rect)
    {
        var part = Project.Parts.FirstOrDefault(p => p.Letter == blank.Key.Part);
        if (part is null || blank.Key.Strip > 0)
            return null;
        var (along, across) = blank.Turned
            ? (part.Finished.Width, part.Finished.Length)
            : (part.Finished.Length, part.Finished.Width);
        if (along > rect.Along || across > rect.Across)
            return null;
        var (from, near) = (
            rect.From + Half(rect.Along - along),
            rect.Near + Half(rect.Across - across)
        );
        return new(from, from + along, near, near + across);
    }

    /// <summary>Names in a row: <c>A1, A2 and B1</c>.</summary>
    public static string Row(IReadOnlyList<string> names) =>
        names.Count < 2
            ? string.Concat(names)
            : $"{string.Join(", ", names.SkipLast(1))} and {names[^1]}";

    private static Length Half(Length length) => Length.FromTicks(length.Ticks / 2);

    private string MeaningOf(Length at, bool isTrim)
    {
        if (isTrim)
            return "end trim";
        var ending = Blanks
            .Where(b => b.Blank.To == at)
            .Select(b => b.Blank.Key.ToString())
            .ToList();
        if (ending.Count > 0)
            return $"end of {Row(ending)}";
        var starting = Blanks
            .Where(b => b.Blank.From == at)
            .Select(b => b.Blank.Key.ToString())
            .ToList();
        return starting.Count > 0 ? $"start of {Row(starting)}" : "crosscut";
    }
}
