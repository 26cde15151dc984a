namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>Makes whole boards of a mixture: every way to cut is taken as often as its whole part, and the rest is packed by itself.</summary>
internal sealed class Rounding(Cutting cutting, Effort effort, double[]? prices)
{
    /// <summary>The cheapest packing of those tried; null where none is cheaper than the limit.</summary>
    /// <param name="mixture">The columns and how often each is cut.</param>
    /// <param name="width">How wide a beam packs the rest.</param>
    /// <param name="below">The limit.</param>
    public IReadOnlyList<CutBoard>? Round(
        IReadOnlyList<(Column Column, double Times)> mixture,
        int width,
        long below
    )
    {
        IReadOnlyList<CutBoard>? best = null;
        var limit = below;
        foreach (var kept in Kept(mixture))
        {
            if (Filled(kept, width, limit) is not { } found)
                continue;
            best = found;
            limit = cutting.CostOf(found);
        }

        return best;
    }

    /// <summary>Whole parts, and fewer than these, so that more is left to pack well.</summary>
    private static IEnumerable<IReadOnlyList<(Column Column, int Times)>> Kept(
        IReadOnlyList<(Column Column, double Times)> mixture
    )
    {
        for (var less = 0; less <= 2; less++)
        {
            yield return
            [
                .. mixture
                    .Select(m => (m.Column, (int)Math.Floor(m.Times + 1e-3) - less))
                    .Where(m => m.Item2 > 0),
            ];
        }
    }

    private List<CutBoard>? Filled(
        IReadOnlyList<(Column Column, int Times)> kept,
        int width,
        long below
    )
    {
        int[] left = [.. cutting.Pieces.Select(p => p.Count)];
        int[] copies = [.. cutting.Planks.Select(p => p.Copies)];
        var boards = new List<CutBoard>();
        foreach (var (column, times) in kept)
        {
            for (var t = 0; t < times; t++)
            {
                var board = Trimming.Take(column.Board, left);
                if (board.Sections.Count == 0)
                    break;
                boards.Add(board);
                if (copies[column.Board.Plank] < int.MaxValue)
                    copies[column.Board.Plank]--;
            }
        }

        var cost = cutting.CostOf(boards);
        if (left.Sum() == 0)
            return cost < below ? boards : null;
        if (cost >= below)
            return null;
        var beam = new BeamSearch(cutting.With(left, copies), effort, prices);
        foreach (var guide in BeamGuide.Usual)
        {
            if (beam.Run(width, guide, below - cost) is { } rest)
                return [.. boards, .. rest];
        }

        return null;
    }
}
