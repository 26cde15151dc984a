using ShopClass.Core.Measure;
using static ShopClass.Core.Sawing.Rehearsing.Found;

namespace ShopClass.Core.Sawing.Rehearsing;

/// <summary>What must hold of the cuts and of the pieces they are made in.</summary>
internal static class CutRules
{
    public static IEnumerable<Finding> BoardsMustBeAtHandAndLaidOutOnce(Replay replay)
    {
        foreach (var group in replay.Plan.Boards.GroupBy(b => b.BoardId, StringComparer.Ordinal))
        {
            var board = replay.Request.Boards.FirstOrDefault(b => b.Id == group.Key);
            if (board is null)
                yield return Must(
                    group.Key,
                    null,
                    null,
                    $"The plan uses a board ({group.Key}) that is not among the boards at hand."
                );
            else if (group.Count() > 1)
                yield return Must(
                    group.Key,
                    null,
                    null,
                    $"{board.Name} is laid out {group.Count()} times; a board can be laid out once."
                );
        }
    }

    public static IEnumerable<Finding> CutsMustBeNumberedInOrder(Replay replay) =>
        replay
            .Cuts.Where((c, i) => c.Cut.Number != i + 1)
            .Take(1)
            .Select(c =>
                Must(
                    c,
                    null,
                    $"Cut {c.Cut.Number} is out of turn: cuts count up from 1, one by one."
                )
            );

    public static IEnumerable<Finding> CutsMustBeMadeInAPieceThatIsThere(Replay replay) =>
        replay
            .Cuts.Where(c => c.Piece is null)
            .Select(c =>
                Must(
                    c,
                    null,
                    $"Cut {c.Cut.Number} on {c.BoardName} is to be made in a piece "
                        + $"{replay.Tell.Place(c.Cut.Piece)}, but no such piece is there at that point."
                )
            );

    public static IEnumerable<Finding> CutsMustRunEdgeToEdge(Replay replay) =>
        replay
            .Cuts.Where(c => c.Piece is not null && !c.IsMade)
            .Select(c =>
                Must(
                    c,
                    Uncut(c),
                    $"Cut {c.Cut.Number} on {c.BoardName} does not run through its piece from edge to edge: its kerf is "
                        + $"{replay.Tell.Place(c.Cut.Kerf)}, the piece {replay.Tell.Place(c.Cut.Piece)}."
                )
            );

    public static IEnumerable<Finding> CutsMustBeMadeWithASawForThem(Replay replay) =>
        replay
            .Cuts.Where(c => c.IsRip != (c.Cut.Saw is SawKind.HandRip))
            .Select(c =>
                Must(
                    c,
                    null,
                    c.IsRip
                        ? $"Cut {c.Cut.Number} on {c.BoardName} is a rip and needs the rip saw."
                        : $"Cut {c.Cut.Number} on {c.BoardName} goes across the grain and needs a crosscut saw or a back saw."
                )
            );

    public static IEnumerable<Finding> SawnLengthsMustBeTrue(Replay replay)
    {
        foreach (var c in replay.Cuts.Where(c => c.IsMade))
        {
            var through = c.IsRip ? c.Cut.Piece.Along : c.Cut.Piece.Across;
            if (c.Cut.SawnLength != through)
                yield return Must(
                    c,
                    Away(c.Cut.SawnLength, through),
                    $"Cut {c.Cut.Number} on {c.BoardName} is said to be {replay.Tell.Long(c.Cut.SawnLength)} long, but the "
                        + $"saw goes through {replay.Tell.Long(through)}."
                );
        }
    }

    public static IEnumerable<Finding> PiecesMustBeBrokenDownInThreeStages(Replay replay) =>
        replay
            .Cuts.Where(c => c.IsRip && c.Piece?.State is Breakdown.Short)
            .Select(c =>
                Must(
                    c,
                    null,
                    $"Cut {c.Cut.Number} on {c.BoardName} rips a piece that was already crosscut from a strip: rips come "
                        + "before the last crosscuts."
                )
            );

    public static IEnumerable<Finding> PiecesMustBeLongEnoughForTheirSupport(Replay replay)
    {
        var rules = replay.Request.Rules;
        foreach (var c in replay.Cuts.Where(c => c.IsMade && c.Cut.Support is not Support.Vise))
        {
            var onBench = c.Cut.Support is Support.SawBench;
            var held = onBench ? c.Cut.Piece.Along : c.Halves.Max(h => h.Rect.Along);
            var limit = onBench ? rules.SawBenchLimit : rules.BenchHookLimit;
            var where = onBench ? "on the saw bench" : "against the bench hook";
            if (held < limit)
                yield return Must(
                    c,
                    limit - held,
                    $"Cut {c.Cut.Number} on {c.BoardName} has {replay.Tell.Long(held)} to hold {where}; it takes "
                        + $"{replay.Tell.Long(limit)}, so it is {replay.Tell.Long(limit - held)} short and belongs in the vise."
                );
            else if (c.IsRip && !onBench)
                yield return Must(
                    c,
                    null,
                    $"Cut {c.Cut.Number} on {c.BoardName} is a rip, which a bench hook cannot hold."
                );
        }
    }

    public static IEnumerable<Finding> AreasMustBalance(Replay replay) =>
        from b in Leftovers.Balances(replay)
        let sum = b.Blanks + b.Kerf + b.Offcuts + b.Waste
        where sum != b.Board
        select Must(
            b.BoardId,
            null,
            null,
            $"Blanks, kerf, offcuts and waste of {b.BoardId} do not add up to the board."
        );

    private static Length Uncut(Tried c)
    {
        var (piece, kerf) = (c.Cut.Piece, c.Cut.Kerf);
        var short_ = c.IsRip ? piece.Along - kerf.Along : piece.Across - kerf.Across;
        return Length.Max(short_, Length.Zero);
    }

    private static Length Away(Length a, Length b) => a > b ? a - b : b - a;
}
