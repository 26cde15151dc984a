using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning.Reasons;

/// <summary>A part and the boards that have the thickness for it.</summary>
internal sealed class PartOnBoards(PlanningRequest request, Part part)
{
    public PlanningRequest Request { get; } = request;

    public Part Part { get; } = part;

    /// <summary>The boards of the right thickness.</summary>
    public IReadOnlyList<Board> Boards { get; } =
    [.. request.Boards.Where(b => BlankNeeds.ThicknessProblem(part, request.Rules, b) is null)];

    public bool MayBeGluedUp => Part.GlueUpAllowed && Request.Rules.EdgeGluingTaught;

    public bool MayTurn => Part.Grain is GrainDirection.Any;

    /// <summary>The least length of its blank; the same on every board.</summary>
    public Length Along => BlankNeeds.OnePiece(Part, Request.Rules, Surfacing.S4S).Length;

    /// <summary>The least width of its blank with a sawn edge; the same on every board.</summary>
    public Length SawnWidth => BlankNeeds.OnePiece(Part, Request.Rules, Surfacing.S4S).Width;

    /// <summary>
    /// The least width of its blank in one piece on a board: with a sawn edge it needs its allowance; on a board with
    /// straight edges it may take the whole width instead.
    /// </summary>
    public Length LeastWidth(Board board)
    {
        var between = BlankNeeds.WidthBetweenStraightEdges(Part);
        return board.HasStraightEdges
            ? Length.Max(between, Length.Min(SawnWidth, board.SmallestWidth))
            : SawnWidth;
    }

    /// <summary>The least width of its blank on any of the boards.</summary>
    public Length LeastWidthAnywhere => Boards.Min(LeastWidth);

    /// <summary>The stretches of a board clear over the least width, as far as this part minds bad places.</summary>
    public IReadOnlyList<ClearRun> Runs(Board board) =>
        ClearRuns.Of(board, LeastWidthAnywhere, Part.AcceptsHiddenDefect);

    /// <summary>Whether two blanks of this part would fit side by side on some board.</summary>
    public bool GoesSideBySide =>
        Boards.Any(b => SawnWidth * 2 + Request.Rules.RipKerf <= b.SmallestWidth);

    /// <summary>What the longest clear run is, as a clause.</summary>
    public string LongestWords(Length longest, string written)
    {
        if (longest == Length.Zero)
            return "there is no clear run that wide";
        var bad = Boards.SelectMany(b => b.Defects).ToList();
        var clear =
            Part.AcceptsHiddenDefect && bad.Any(d => d.Reach is not DefectReach.Through)
                ? "the longest run that wide without a bad place right through it"
                : "the longest clear run that wide";
        return bad.Count > 0
            ? $"{clear} is {written}"
            : $"between its end trims {(Boards.Count == 1 ? "the board" : "the longest board")} has {written}";
    }
}
