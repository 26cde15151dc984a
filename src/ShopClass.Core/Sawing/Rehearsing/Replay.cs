using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Sawing.Rehearsing;

/// <summary>How far a piece has been broken down.</summary>
internal enum Breakdown
{
    /// <summary>Board, or a length crosscut from it.</summary>
    Length,

    /// <summary>Ripped at least once.</summary>
    Strip,

    /// <summary>Crosscut after a rip.</summary>
    Short,
}

/// <summary>A piece of wood as it lies on its board.</summary>
internal sealed record Lying(Board Board, BoardRect Rect, Breakdown State);

/// <summary>A blank of the plan, with the board and the part it belongs to where there are such.</summary>
internal sealed record Claimed(
    string BoardId,
    Board? Board,
    Part? Part,
    PlacedBlank Blank,
    BoardRect Rect
)
{
    public BlankKey Key => Blank.Key;

    public string BoardName => Board?.Name ?? BoardId;
}

/// <summary>A cut as it went.</summary>
/// <param name="Cut">The cut.</param>
/// <param name="Board">Its board, if there is one.</param>
/// <param name="Piece">The piece it names, if it lay there.</param>
/// <param name="Halves">What it left; empty when it could not be made.</param>
internal sealed record Tried(Cut Cut, Board? Board, Lying? Piece, IReadOnlyList<Lying> Halves)
{
    public bool IsMade => Halves.Count > 0;

    public bool IsRip => Cut.Kind is CutKind.Rip;

    public string Name => $"cut {Cut.Number}";

    public string BoardName => Board?.Name ?? Cut.BoardId;
}

/// <summary>A whole sequence carried out, cut by cut, and everything the rules want to know about it.</summary>
internal sealed class Replay
{
    private Dictionary<Claimed, BoardRect>? sawn;

    public required PlanningRequest Request { get; init; }

    public required CutPlan Plan { get; init; }

    public required IReadOnlyList<Claimed> Blanks { get; init; }

    public required IReadOnlyList<Tried> Cuts { get; init; }

    /// <summary>The pieces before the first cut and after each.</summary>
    public required IReadOnlyList<IReadOnlyList<Lying>> States { get; init; }

    public IReadOnlyList<Lying> Final => States[^1];

    /// <summary>What each piece was found to be; only for looking up.</summary>
    public Dictionary<Lying, Piece> Named { get; } = new(ReferenceEqualityComparer.Instance);

    /// <summary>The blanks that are sawn out in the end, and the wood each then is; only for looking up.</summary>
    public IReadOnlyDictionary<Claimed, BoardRect> Sawn => sawn ??= FindSawn();

    public Telling Tell => new(Request.Rules.Precision);

    /// <summary>Carries it out.</summary>
    public static Replay Of(PlanningRequest request, CutPlan plan, SawingSequence sequence)
    {
        var boards = plan
            .Boards.Select(l => l.BoardId)
            .Distinct(StringComparer.Ordinal)
            .Select(id => request.Boards.FirstOrDefault(b => b.Id == id))
            .OfType<Board>()
            .ToList();
        var states = new List<IReadOnlyList<Lying>> { boards.ConvertAll(Whole) };
        var cuts = new List<Tried>();
        foreach (var cut in sequence.Cuts)
        {
            var tried = Try(cut, boards, states[^1]);
            cuts.Add(tried);
            states.Add(tried.IsMade ? Replaced(states[^1], tried) : states[^1]);
        }

        return new()
        {
            Request = request,
            Plan = plan,
            Blanks = [.. Claims(request, plan)],
            Cuts = cuts,
            States = states,
        };
    }

    private Dictionary<Claimed, BoardRect> FindSawn()
    {
        var found = new Dictionary<Claimed, BoardRect>(ReferenceEqualityComparer.Instance);
        foreach (var piece in Final)
        {
            if (Leftovers.SawnOut(piece, this) is { } blank)
                found[blank] = piece.Rect;
        }

        return found;
    }

    private static Lying Whole(Board board) =>
        new(
            board,
            new(Length.Zero, board.Length, Length.Zero, board.SmallestWidth),
            Breakdown.Length
        );

    private static IEnumerable<Claimed> Claims(PlanningRequest request, CutPlan plan) =>
        from layout in plan.Boards
        from section in layout.Sections
        from strip in section.Strips
        from blank in strip.Blanks
        select new Claimed(
            layout.BoardId,
            request.Boards.FirstOrDefault(b => b.Id == layout.BoardId),
            request.Project.Parts.FirstOrDefault(p => p.Letter == blank.Key.Part),
            blank,
            blank.In(strip)
        );

    private static Tried Try(Cut cut, List<Board> boards, IReadOnlyList<Lying> lying)
    {
        var board = boards.Find(b => b.Id == cut.BoardId);
        var piece = lying.FirstOrDefault(p => p.Board.Id == cut.BoardId && p.Rect == cut.Piece);
        if (piece is null || !RunsEdgeToEdge(cut))
            return new(cut, board, piece, []);
        return new(cut, board, piece, Halves(cut, piece));
    }

    private static bool RunsEdgeToEdge(Cut cut)
    {
        var (piece, kerf) = (cut.Piece, cut.Kerf);
        if (!piece.Contains(kerf) || kerf.Along < Length.Zero || kerf.Across < Length.Zero)
            return false;
        return cut.Kind is CutKind.Rip
            ? kerf.From == piece.From && kerf.To == piece.To && kerf.Across < piece.Across
            : kerf.Near == piece.Near && kerf.Far == piece.Far && kerf.Along < piece.Along;
    }

    private static List<Lying> Halves(Cut cut, Lying piece)
    {
        var state = (cut.Kind, piece.State) switch
        {
            (CutKind.Rip, Breakdown.Length) => Breakdown.Strip,
            (CutKind.Crosscut or CutKind.EndTrim, Breakdown.Strip) => Breakdown.Short,
            _ => piece.State,
        };
        BoardRect[] sides =
            cut.Kind is CutKind.Rip
                ? [piece.Rect with { Far = cut.Kerf.Near }, piece.Rect with { Near = cut.Kerf.Far }]
                : [piece.Rect with { To = cut.Kerf.From }, piece.Rect with { From = cut.Kerf.To }];
        return
        [
            .. sides
                .Where(s => s.Area > Area.Zero)
                .Select(s => piece with { Rect = s, State = state }),
        ];
    }

    private static List<Lying> Replaced(IReadOnlyList<Lying> before, Tried tried) =>
        [.. before.SelectMany(p => ReferenceEquals(p, tried.Piece) ? tried.Halves : [p])];
}
