using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;

namespace ShopClass.Core.Sawing.Ordering;

/// <summary>Takes one board apart: crosscuts to lengths, rips to strips, crosscuts to blanks.</summary>
internal sealed class BoardBreakdown
{
    private readonly Board board;
    private readonly CourseRules rules;
    private readonly IReadOnlyList<LaidBlank> blanks;
    private readonly IReadOnlyList<BoardLength> lengths;
    private readonly CutWriter writer;

    public BoardBreakdown(Board board, CourseRules rules, BoardLayout layout)
    {
        this.board = board;
        this.rules = rules;
        blanks = [.. layout.Sections.SelectMany(BoardLengths.Blanks)];
        lengths = new BoardLengths(board, rules, layout).Find();
        writer = new(board, rules, blanks);
    }

    /// <summary>The cuts in order, not yet numbered.</summary>
    public IEnumerable<Cut> Cuts()
    {
        var whole = new BoardRect(Length.Zero, board.Length, Length.Zero, board.SmallestWidth);
        var kept = lengths.Select(l => l.Along).ToList();
        var lines = CrosscutLines(whole, kept).Select(MarkedAtThePlansLine).ToList();
        foreach (var turn in HoldingOrder.Of(rules, Along(whole), lines, kept, IsEndTrim))
            yield return writer.ToLength(
                whole,
                turn,
                LengthBeside(turn.Line),
                IsEndTrim(turn.Line)
            );

        var ripped = SawLines
            .Between(Along(whole), lines)
            .Select(s =>
                (Piece: Cut(whole, s), Length: lengths.FirstOrDefault(l => s.Holds(l.Along)))
            )
            .Where(x => x.Length is { RipLines.Count: > 0 })
            .Select(x => (x.Piece, Length: x.Length!))
            .ToList();
        foreach (var cut in ripped.SelectMany(x => Rips(x.Piece, x.Length)))
            yield return cut;
        foreach (var cut in ripped.SelectMany(x => CrosscutsToBlanks(x.Piece, x.Length)))
            yield return cut;
    }

    private IEnumerable<Cut> Rips(BoardRect piece, BoardLength length)
    {
        foreach (var line in length.RipLines)
        {
            yield return writer.Rip(piece, line, length);
            piece = piece with { Near = line.Kerf.To };
        }
    }

    private IEnumerable<Cut> CrosscutsToBlanks(BoardRect piece, BoardLength length)
    {
        foreach (var across in SawLines.Between(new(piece.Near, piece.Far), length.RipLines))
        {
            var strip = piece with { Near = across.From, Far = across.To };
            var kept = blanks.Where(b => strip.Contains(b.Rect)).Select(b => b.Along).ToList();
            var lines = CrosscutLines(strip, kept);
            foreach (var turn in HoldingOrder.Of(rules, Along(strip), lines, kept, _ => false))
                yield return writer.ToBlank(strip, turn, length);
        }
    }

    private IReadOnlyList<SawLine> CrosscutLines(BoardRect piece, IReadOnlyList<Stretch> kept) =>
        SawLines.Freeing(
            Along(piece),
            kept,
            rules.CrosscutKerf,
            sliver => IsEndWood(sliver) || HasDefect(Cut(piece, sliver))
        );

    private bool IsEndWood(Stretch along) =>
        along.From < board.TrimStart || along.To > board.Length - board.TrimEnd;

    private bool HasDefect(BoardRect place) => board.Defects.Any(d => d.Place.Overlaps(place));

    /// <summary>Whether the line takes off an end that is bad, and no sound length that would make an offcut.</summary>
    private bool IsEndTrim(SawLine line)
    {
        if (
            lengths.Any(l => l.Along.From >= line.Kerf.To)
            && lengths.Any(l => l.Along.To <= line.Kerf.From)
        )
            return false;
        var isStart = lengths.Any(l => l.Along.From >= line.Kerf.To);
        var end = isStart
            ? new Stretch(Length.Zero, line.Kerf.To)
            : new Stretch(line.Kerf.From, board.Length);
        var trim = isStart ? board.TrimStart : board.TrimEnd;
        var isBad =
            trim > Length.Zero
            || HasDefect(new(end.From, end.To, Length.Zero, board.SmallestWidth));
        return isBad && end.Long - trim - rules.CrosscutKerf < rules.ShortestOffcut;
    }

    /// <summary>Where a length keeps its waste, the kerf is marked by the length that follows.</summary>
    private SawLine MarkedAtThePlansLine(SawLine line) =>
        lengths.Any(l => l.KeepsWaste && l.Along.To == line.Position)
        && lengths.Any(l => l.Along.From == line.Kerf.To)
            ? line with
            {
                Position = line.Kerf.To,
            }
            : line;

    /// <summary>The length that this line sets free: the one before it, or after it where only waste lies before.</summary>
    private BoardLength LengthBeside(SawLine line) =>
        lengths.LastOrDefault(l => l.Along.To == line.Kerf.From)
        ?? lengths.First(l => l.Along.From == line.Kerf.To);

    private static Stretch Along(BoardRect rect) => new(rect.From, rect.To);

    private static BoardRect Cut(BoardRect rect, Stretch along) =>
        rect with
        {
            From = along.From,
            To = along.To,
        };
}
