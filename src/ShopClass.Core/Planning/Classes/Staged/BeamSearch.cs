using System.Runtime.InteropServices;

namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>
/// Builds packings piece by piece, keeping at every count of pieces only the most promising half-done ones (a beam). A
/// half-done packing is judged by the share it wastes; of two with the same pieces the one that leaves more room stays.
/// </summary>
internal sealed class BeamSearch
{
    private readonly Cutting cutting;
    private readonly Effort effort;
    private readonly ulong[][] keys;
    private readonly BeamWorth worth;
    private readonly double total;
    private readonly double[]? prices;
    private readonly double allPrices;
    private double[] values = [];
    private readonly int count;
    private readonly long[] areas;
    private readonly Beam beam;
    private readonly List<(int Before, Laid Laid)> log = [];
    private readonly int[] limits;
    private readonly int[] ranks;
    private readonly (int Piece, int Rank, int Along, int Across)[][] sizes;
    private readonly double[] costs;
    private readonly double[] shares;

    /// <param name="cutting">What is to be cut from what.</param>
    /// <param name="effort">Counts the looks.</param>
    /// <param name="prices">Prices of the pieces at which no board yields more than it costs, where there are such.</param>
    public BeamSearch(Cutting cutting, Effort effort, double[]? prices = null)
    {
        this.prices = prices;
        allPrices = prices is null ? 0 : cutting.Pieces.Select((p, k) => prices[k] * p.Count).Sum();
        this.cutting = cutting;
        this.effort = effort;
        keys = BeamKeys.For(cutting.Pieces);
        worth = new(cutting);
        total = cutting.Pieces.Select((p, k) => worth.Least[k] * p.Count).Sum();
        count = cutting.Pieces.Sum(p => p.Count);
        areas = [.. cutting.Pieces.Select(p => p.Area)];
        limits = [.. cutting.Planks.Select(p => p.Copies)];
        ranks = Ranks(cutting.Pieces);
        sizes =
        [
            .. cutting.Ways.Select(ways =>
                ((int, int, int, int)[])
                    [.. ways.Select(w => (w.Piece, ranks[w.Piece], w.Along, w.Across))]
            ),
        ];
        costs = [.. cutting.Planks.Select(p => (double)p.Cost)];
        shares = [.. cutting.Planks.Select(p => 1.0 / p.Area)];
        beam = new(cutting.Pieces.Count, cutting.Planks.Count);
    }

    /// <summary>A packing cheaper than the limit, or null where this beam finds none.</summary>
    /// <param name="width">How many half-done packings are kept.</param>
    /// <param name="guide">What is called promising.</param>
    /// <param name="below">Only packings cheaper than this are looked for.</param>
    /// <param name="pool">Takes in the boards cut up on the way, where they are wanted.</param>
    /// <param name="worths">What each piece is worth, where that is known better than by its area.</param>
    public IReadOnlyList<CutBoard>? Run(
        int width,
        BeamGuide guide,
        long below,
        BoardPool? pool = null,
        double[]? worths = null
    )
    {
        log.Clear();
        values = worths ?? worth.PieceArea;
        beam.Begin(width, [.. cutting.Pieces.Select(p => p.Count)]);
        for (var level = 0; level < count; level++)
        {
            for (var n = 0; n < beam.Nodes.Count; n++)
                Spread(n, guide, below);
            var looks = beam.Looks;
            beam.Looks = 0;
            if (effort.Take(looks) && Advance(width))
                continue;
            if (pool is not null)
                effort.Take(pool.Collect(log));
            return null;
        }

        return BeamLog.Boards(log, beam.Nodes[0].Log);
    }

    /// <summary>Widest first: the first piece of a strip makes it as wide as it will be.</summary>
    private static int[] Ranks(IReadOnlyList<Piece> pieces)
    {
        var of = new int[pieces.Count];
        var order = Enumerable
            .Range(0, pieces.Count)
            .OrderByDescending(k => pieces[k].Ways[0].Across)
            .ThenByDescending(k => pieces[k].Ways[0].Along);
        foreach (var (k, rank) in order.Select((k, rank) => (k, rank)))
            of[k] = rank;
        return of;
    }

    private bool Advance(int width)
    {
        foreach (ref readonly var scored in beam.Turn())
        {
            if (beam.Nodes.Count >= width)
                break;
            var move = scored.Move;
            var fit = cutting.Ways[move.Plank][move.Fit];
            var left = beam.LeftBefore(move.Parent)[fit.Piece];
            var node = Made(beam.Before[move.Parent], move, left) with { Log = log.Count };
            if (!beam.Offer(node, move, fit.Piece, cutting.Planks))
                continue;
            log.Add(
                (beam.Before[move.Parent].Log, new(fit.Piece, fit.Way, move.Level, move.Plank))
            );
        }

        beam.Done();
        return beam.Nodes.Count > 0;
    }

    private void Spread(int n, BeamGuide guide, long below)
    {
        ref readonly var node = ref CollectionsMarshal.AsSpan(beam.Nodes)[n];
        var goesOn = false;
        if (node.Plank >= 0)
            goesOn = OnTheBoard(n, node, guide, below);
        if (goesOn)
            return;
        var closed = node.Plank < 0 ? 0 : node.Closed + cutting.Planks[node.Plank].Cost;
        for (var p = 0; p < cutting.Planks.Count; p++)
        {
            if (closed + cutting.Planks[p].Cost < below && beam.Taken(n, p) < limits[p])
                OnANewBoard(n, node, p, guide, below);
        }
    }

    private bool OnTheBoard(int n, in BeamNode node, BeamGuide guide, long below)
    {
        var plank = cutting.Planks[node.Plank];
        var list = sizes[node.Plank];
        var left = beam.Left(n);
        var found = false;
        beam.Looks += list.Length;
        for (var f = 0; f < list.Length; f++)
        {
            var (piece, rank, along, across) = list[f];
            if (left[piece] == 0)
                continue;
            var at = node.At + along;
            var far = node.Near + across;
            if (
                !cutting.OnePerStrip
                && rank >= node.Last
                && at <= plank.Length
                && far <= plank.Width
            )
            {
                found = true;
                far = Math.Max(far, node.Far);
                var to = Math.Max(node.SectionTo, at);
                var used =
                    (long)node.SectionFrom * plank.Width
                    + (long)(to - node.SectionFrom) * node.Near
                    + (long)(at - node.SectionFrom) * (far - node.Near);
                Weigh(node, new(n, f, 2, node.Plank), piece, used, guide, below);
            }

            at = node.SectionFrom + along;
            if (node.Far + across <= plank.Width && at <= plank.Length)
            {
                found = true;
                var to = Math.Max(node.SectionTo, at);
                var used =
                    (long)node.SectionFrom * plank.Width
                    + (long)(to - node.SectionFrom) * node.Far
                    + (long)along * across;
                Weigh(node, new(n, f, 1, node.Plank), piece, used, guide, below);
            }

            if (node.SectionTo + along <= plank.Length)
            {
                found = true;
                var used = (long)node.SectionTo * plank.Width + (long)along * across;
                Weigh(node, new(n, f, 0, node.Plank), piece, used, guide, below);
            }
        }

        return found;
    }

    private void OnANewBoard(int n, in BeamNode node, int plank, BeamGuide guide, long below)
    {
        var list = sizes[plank];
        var left = beam.Left(n);
        beam.Looks += list.Length;
        var next = node;
        next.Closed = node.Plank < 0 ? 0 : node.Closed + cutting.Planks[node.Plank].Cost;
        next.ClosedWorth = node.Plank < 0 ? 0 : node.ClosedWorth + worth.Plank[node.Plank];
        next.ClosedPrice = node.Price;
        for (var f = 0; f < list.Length; f++)
        {
            var (piece, _, along, across) = list[f];
            if (left[piece] > 0)
                Weigh(next, new(n, f, -1, plank), piece, (long)along * across, guide, below);
        }
    }

    /// <summary>Keeps a move, unless what it leads to must cost too much.</summary>
    /// <param name="node">Where it starts, with the costs of the boards before the one it lies on.</param>
    /// <param name="move">The move.</param>
    /// <param name="piece">What is laid.</param>
    /// <param name="area">What is used of the board afterwards.</param>
    /// <param name="guide">What is promising.</param>
    /// <param name="below">What it must cost less than.</param>
    private void Weigh(
        in BeamNode node,
        BeamMove move,
        int piece,
        long area,
        BeamGuide guide,
        long below
    )
    {
        var cost = costs[move.Plank];
        var share = area * shares[move.Plank];
        var paid = node.Closed + cost * share;
        var least =
            node.Count + 1 == count
                ? node.Closed + cost
                : Math.Max(
                    paid + total - node.Least - worth.Least[piece],
                    node.Closed + allPrices - node.ClosedPrice
                );
        // A packing costs a whole number, so what must cost more than the last allowed is given up.
        if (least > below - 1 + 1e-6)
            return;
        var used = node.ClosedWorth + worth.Plank[move.Plank] * share;
        var wasted = 1 - (node.Worth + values[piece]) / used;
        double own = areas[piece];
        var mean = guide.IsSquared
            ? (node.Squared + own * own) / (node.Packed + own)
            : (node.Packed + own) / (node.Count + 1);
        beam.Add(move, guide.Of(wasted, mean * shares[move.Plank]) * (1 + paid / used));
    }

    private BeamNode Made(in BeamNode node, BeamMove move, int left)
    {
        var fit = cutting.Ways[move.Plank][move.Fit];
        var next = node;
        next.Count++;
        next.Packed += areas[fit.Piece];
        next.Squared += (double)areas[fit.Piece] * areas[fit.Piece];
        next.Worth += values[fit.Piece];
        next.Least += worth.Least[fit.Piece];
        next.Last = ranks[fit.Piece];
        next.Hash = unchecked(node.Hash + keys[fit.Piece][left]);
        if (prices is not null)
            next.Price += prices[fit.Piece];
        if (move.Level < 0)
        {
            next.ClosedPrice = node.Price;
            next.Closed = node.Plank < 0 ? 0 : node.Closed + cutting.Planks[node.Plank].Cost;
            next.ClosedWorth = node.Plank < 0 ? 0 : node.ClosedWorth + worth.Plank[node.Plank];
            next.Plank = move.Plank;
            next.SectionTo = 0;
        }

        if (move.Level <= 0)
        {
            next.SectionFrom = next.SectionTo;
            next.Far = 0;
        }

        if (move.Level <= 1)
        {
            next.Near = next.Far;
            next.At = next.SectionFrom;
        }

        next.At += fit.Along;
        next.Far = Math.Max(next.Far, next.Near + fit.Across);
        next.SectionTo = Math.Max(next.SectionTo, next.At);
        return next;
    }
}
