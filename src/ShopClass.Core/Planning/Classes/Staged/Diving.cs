namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>
/// Settles boards a few at a time: takes the whole parts of the mixture, or else the board it most nearly takes whole, and
/// mixes anew for what is left; at every depth the rest is also packed at once.
/// </summary>
internal sealed class Diving(Cutting cutting, Effort effort, double[]? prices)
{
    private const int MostDepth = 60;
    private const int Width = 8;
    private readonly List<CutBoard> settled = [];
    private readonly int[] left = [.. cutting.Pieces.Select(p => p.Count)];
    private readonly int[] copies = [.. cutting.Planks.Select(p => p.Copies)];

    /// <summary>Tells every packing that is cheaper than the cheapest.</summary>
    public void Dive(Master master, Func<long> cheapest, Action<IReadOnlyList<CutBoard>> cheaper)
    {
        for (var depth = 0; depth < MostDepth && !effort.IsUp; depth++)
        {
            if (!Settle([.. master.Mixture()]))
                return;
            var cost = cutting.CostOf(settled);
            if (cost >= cheapest())
                return;
            if (left.Sum() == 0)
            {
                cheaper(settled);
                return;
            }

            var rest = cutting.With(left, copies);
            var guide = BeamGuide.Usual[depth % BeamGuide.Usual.Count];
            if (
                new BeamSearch(rest, effort, prices).Run(Width, guide, cheapest() - cost) is
                { } found
            )
                cheaper([.. settled, .. found]);
            var columns = new Columns(rest, rest, effort);
            columns.Generate(master.Columns.Select(c => c.Board), long.MaxValue);
            master = columns.Master;
        }
    }

    private bool Settle(List<(Column Column, double Times)> mixture)
    {
        var any = false;
        foreach (var (column, times) in mixture)
        {
            for (var t = 0; t < (int)Math.Floor(times + 1e-3); t++)
                any |= Take(column);
        }

        if (any)
            return true;
        // What is left of a board goes to waste where a column gives more than is asked for.
        var nearest = mixture
            .Where(m => !cutting.Planks[m.Column.Board.Plank].IsNowhere)
            .OrderByDescending(m => m.Times * ShareAskedFor(m.Column))
            .Select(m => m.Column)
            .FirstOrDefault();
        return nearest is not null && Take(nearest);
    }

    private double ShareAskedFor(Column column)
    {
        double asked = 0,
            all = 0;
        for (var k = 0; k < left.Length; k++)
        {
            asked += (double)cutting.Pieces[k].Area * Math.Min(left[k], column.Counts[k]);
            all += (double)cutting.Pieces[k].Area * column.Counts[k];
        }

        return all == 0 ? 0 : asked / all;
    }

    private bool Take(Column column)
    {
        var plank = column.Board.Plank;
        if (copies[plank] == 0)
            return false;
        var board = Trimming.Take(column.Board, left);
        if (board.Sections.Count == 0)
            return false;
        settled.Add(board);
        if (copies[plank] < int.MaxValue)
            copies[plank]--;
        return true;
    }
}
