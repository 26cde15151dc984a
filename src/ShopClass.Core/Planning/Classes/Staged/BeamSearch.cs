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
    private readonly int count;
    private readonly long[] areas;
    private readonly Beam beam;
    private readonly List<(int Before, Laid Laid)> log = [];
    private readonly int[] limits;
    private readonly int[] ranks;

    public BeamSearch(Cutting cutting, Effort effort)
    {
        this.cutting = cutting;
        this.effort = effort;
        keys = BeamKeys.For(cutting.Pieces);
        worth = new(cutting);
        total = cutting.Pieces.Select((p, k) => worth.Least[k] * p.Count).Sum();
        count = cutting.Pieces.Sum(p => p.Count);
        areas = [.. cutting.Pieces.Select(p => p.Area)];
        limits = [.. cutting.Planks.Select(p => p.Copies)];
        ranks = Ranks(cutting.Pieces);
        beam = new(cutting.Pieces.Count, cutting.Planks.Count);
    }

    /// <summary>A packing cheaper than the limit, or null where this beam finds none.</summary>
    /// <param name="width">How many half-done packings are kept.</param>
    /// <param name="guide">What is called promising.</param>
    /// <param name="below">Only packings cheaper than this are looked for.</param>
    public IReadOnlyList<CutBoard>? Run(int width, BeamGuide guide, long below)
    {
        log.Clear();
        beam.Begin(width, [.. cutting.Pieces.Select(p => p.Count)]);
        for (var level = 0; level < count; level++)
        {
            for (var n = 0; n < beam.Nodes.Count; n++)
                Spread(n, guide, below);
            var looks = beam.Looks;
            beam.Looks = 0;
            if (!effort.Take(looks) || !Advance(width))
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
        foreach (var (move, _) in beam.Turn())
        {
            var fit = cutting.Ways[move.Plank][move.Fit];
            var left = beam.LeftBefore(move.Parent)[fit.Piece];
            var node = Made(beam.Before[move.Parent], move, left) with { Log = log.Count };
            if (!beam.Offer(node, move, fit.Piece, cutting.Planks))
                continue;
            log.Add(
                (beam.Before[move.Parent].Log, new(fit.Piece, fit.Way, move.Level, move.Plank))
            );
            if (beam.Nodes.Count >= width)
                break;
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
        var fits = cutting.Ways[node.Plank];
        var left = beam.Left(n);
        var found = false;
        beam.Looks += fits.Count;
        for (var f = 0; f < fits.Count; f++)
        {
            var fit = fits[f];
            if (left[fit.Piece] == 0)
                continue;
            if (
                ranks[fit.Piece] >= node.Last
                && node.At + fit.Along <= plank.Length
                && node.Near + fit.Across <= plank.Width
            )
            {
                found = true;
                Weigh(node, new(n, f, 2, node.Plank), guide, below);
            }

            if (
                node.Far + fit.Across <= plank.Width
                && node.SectionFrom + fit.Along <= plank.Length
            )
            {
                found = true;
                Weigh(node, new(n, f, 1, node.Plank), guide, below);
            }

            if (node.SectionTo + fit.Along <= plank.Length)
            {
                found = true;
                Weigh(node, new(n, f, 0, node.Plank), guide, below);
            }
        }

        return found;
    }

    private void OnANewBoard(int n, in BeamNode node, int plank, BeamGuide guide, long below)
    {
        var fits = cutting.Ways[plank];
        var left = beam.Left(n);
        beam.Looks += fits.Count;
        for (var f = 0; f < fits.Count; f++)
        {
            if (left[fits[f].Piece] > 0)
                Weigh(node, new(n, f, -1, plank), guide, below);
        }
    }

    private void Weigh(in BeamNode node, BeamMove move, BeamGuide guide, long below)
    {
        var next = Made(node, move, 0);
        var plank = cutting.Planks[move.Plank];
        var share = (double)next.Used(plank.Width) / plank.Area;
        var least = next.Closed + plank.Cost * share + total - next.Least;
        if (next.Count == count)
            least = next.Closed + plank.Cost;
        // A packing costs a whole number, so what must cost more than the last allowed is given up.
        if (least > below - 1 + 1e-6)
            return;
        var used = next.ClosedWorth + worth.Plank[move.Plank] * share;
        var paid = (next.Closed + plank.Cost * share) / used;
        var score = guide.Of(1 - next.Worth / used, (double)next.Packed / next.Count / plank.Area);
        beam.Add(move, score * (1 + paid));
    }

    private BeamNode Made(in BeamNode node, BeamMove move, int left)
    {
        var fit = cutting.Ways[move.Plank][move.Fit];
        var next = node;
        next.Count++;
        next.Packed += areas[fit.Piece];
        next.Worth += worth.PieceArea[fit.Piece];
        next.Least += worth.Least[fit.Piece];
        next.Last = ranks[fit.Piece];
        next.Hash = unchecked(node.Hash + keys[fit.Piece][left]);
        if (move.Level < 0)
        {
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
