using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing.Ordering;

namespace ShopClass.Core.Sawing.Steps.Writing;

/// <summary>The cuts of one board in order, each after the cut that set its piece free, and the blanks they leave.</summary>
internal sealed class BreakdownSteps(
    Job job,
    Board board,
    int number,
    IReadOnlyList<LaidBlank> blanks
)
{
    private readonly List<(Cut Cut, string Id)> made = [];
    private readonly CutSteps steps = new(job, board, number, blanks);
    private readonly SawnBlanks sawn = new(job, board);

    /// <summary>The step of this cut; <paramref name="last"/> is what comes before the first.</summary>
    /// <param name="cut">The cut.</param>
    /// <param name="last">The step it waits for.</param>
    /// <param name="strip">The strip it takes apart, where that was worked on meanwhile.</param>
    public string Cut(Cut cut, string? last, Workpiece? strip = null)
    {
        var sides = cut.Sides();
        var step = steps.Of(cut, sides, isFirst: made.Count == 0);
        var id = job.Steps.Add(
            steps.IdOf(cut, sides),
            strip is null ? step : steps.Apart(step, cut, strip, WoodAround(cut.Piece).From),
            [last, LastOn(cut.Piece), FinePractice.Before(job, cut)]
        );
        made.Add((cut, id));
        if (sides.Where(s => !Inside(s).Any()).Select(s => (Length?)s.Along).Max() is { } left)
            job.LeaveWaste(id, left);
        return id;
    }

    /// <summary>The blanks as they are when the last cut is made; those of a strip that stays joined are one piece.</summary>
    public IEnumerable<Workpiece> Blanks(
        BoardLayout layout,
        string last,
        IReadOnlyList<JoinedStrip> strips
    )
    {
        foreach (var strip in strips)
        {
            var piece = new Workpiece(strip.Blanks[0].Key, PartOf(strip.Blanks[0].Key)!, board)
            {
                Joined = [.. strip.Blanks.Select(b => b.Key).Order()],
                Thickness = board.Thickness,
                Width = strip.Rect.Across,
                Length = strip.Rect.Along,
                IsRough = !board.HasPlanedFaces,
                IsHollow = !Warp.IsFlat(board, strip.Rect.Across, strip.Rect.Along),
                HasStraightEdge = sawn.KeepsMillEdge(strip.Rect),
                // A whole board may be such a strip: trimmed first, marked out after.
                Last = job.Steps.Later(LastOn(strip.Rect), last),
            };
            job.Strips.Add((this, piece, strip));
            yield return piece;
        }

        var placed = layout
            .Sections.SelectMany(s => s.Strips)
            .SelectMany(s => s.Blanks.Select(b => (Blank: b, Rect: b.In(s))))
            .Where(x => !strips.Any(s => s.Blanks.Any(b => b.Key == x.Blank.Key)));
        foreach (var (blank, rect) in placed)
        {
            if (PartOf(blank.Key) is { } part)
                yield return sawn.Blank(
                    blank.Key,
                    part,
                    WoodAround(rect),
                    blank.Turned,
                    LastOn(rect) ?? last
                );
        }
    }

    /// <summary>The blanks of a strip, now that it is taken apart.</summary>
    public IEnumerable<Workpiece> Blanks(JoinedStrip strip, Workpiece worked) =>
        strip.Blanks.Select(b =>
        {
            var piece = sawn.Blank(
                b.Key,
                PartOf(b.Key)!,
                WoodAround(b.Rect),
                false,
                LastOn(b.Rect)
            );
            piece.Thickness = worked.Thickness;
            piece.Width = worked.Width;
            piece.IsRough = worked.IsRough;
            piece.IsHollow = worked.IsHollow;
            piece.HasStraightEdge = true;
            return piece;
        });

    /// <summary>The blanks that lie in a piece.</summary>
    public IReadOnlyList<LaidBlank> In(BoardRect piece) => [.. Inside(piece)];

    /// <summary>Whether a cut sets free something that holds no blank and is worth keeping.</summary>
    public bool FreesAnOffcut(Cut cut) =>
        cut.Sides().Any(s => !Inside(s).Any() && !steps.IsWaste(s, cut.Kind));

    /// <summary>Whether blanks lie on both sides of a cut.</summary>
    public bool PartsBlanks(Cut cut) => cut.Sides().Count(s => Inside(s).Any()) == 2;

    /// <summary>Whether a strip that stays joined leaves its parts their thickness when it is planed flat whole.</summary>
    public bool LeavesThickness(BoardRect strip, IEnumerable<Part> parts) =>
        sawn.LeavesThickness(strip, parts);

    private Part? PartOf(BlankKey key) =>
        job.Project.Parts.FirstOrDefault(p => p.Letter == key.Part);

    private string? LastOn(BoardRect rect) => made.FindLast(m => m.Cut.Piece.Contains(rect)).Id;

    private BoardRect WoodAround(BoardRect blank)
    {
        var last = made.FindLast(m => m.Cut.Piece.Contains(blank)).Cut;
        return last is null
            ? new(Length.Zero, board.Length, Length.Zero, board.SmallestWidth)
            : last.Sides().First(s => s.Contains(blank));
    }

    private IEnumerable<LaidBlank> Inside(BoardRect side) =>
        blanks.Where(b => side.Contains(b.Rect));
}
