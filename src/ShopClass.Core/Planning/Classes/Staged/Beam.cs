namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>The half-done packings of one count of pieces, and the moves to the next.</summary>
internal sealed class Beam(int kinds, int planks)
{
    private ScoredMove[] moves = [];
    private int count;
    private readonly Dictionary<ulong, int> firstSame = [];
    private readonly List<int> nextSame = [];
    private int room;
    private double worst;
    private int[] left = [];
    private int[] leftBefore = [];
    private int[] taken = [];
    private int[] takenBefore = [];

    /// <summary>The half-done packings at hand.</summary>
    public List<BeamNode> Nodes { get; private set; } = [];

    /// <summary>Those with one piece less.</summary>
    public List<BeamNode> Before { get; private set; } = [];

    /// <summary>Looks at places since the beam was last turned.</summary>
    public long Looks { get; set; }

    /// <summary>Starts with nothing packed.</summary>
    public void Begin(int width, int[] all)
    {
        room = 4 * width + 64;
        left = new int[width * kinds];
        leftBefore = new int[width * kinds];
        taken = new int[width * planks];
        takenBefore = new int[width * planks];
        all.CopyTo(left, 0);
        Nodes = [new BeamNode { Plank = -1, Log = -1 }];
        Before = [];
        if (moves.Length < 4 * room)
            moves = new ScoredMove[4 * room];
        Done();
    }

    /// <summary>How many of each piece a half-done packing has still to pack.</summary>
    public ReadOnlySpan<int> Left(int n) => left.AsSpan(n * kinds, kinds);

    /// <summary>The same for one with a piece less.</summary>
    public ReadOnlySpan<int> LeftBefore(int n) => leftBefore.AsSpan(n * kinds, kinds);

    /// <summary>How many boards of a kind a half-done packing has taken.</summary>
    public int Taken(int n, int plank) => taken[n * planks + plank];

    /// <summary>Keeps a move if it may still be among the best.</summary>
    public void Add(BeamMove move, double score)
    {
        if (score > worst)
            return;
        moves[count++] = new(score, move);
        if (count == 4 * room)
            KeepBest();
    }

    /// <summary>Puts the packings at hand behind, and tells the moves from them, best first.</summary>
    public ReadOnlySpan<ScoredMove> Turn()
    {
        (Nodes, Before) = (Before, Nodes);
        (left, leftBefore) = (leftBefore, left);
        (taken, takenBefore) = (takenBefore, taken);
        Nodes.Clear();
        firstSame.Clear();
        nextSame.Clear();
        if (count > room)
            KeepBest();
        var best = moves.AsSpan(0, count);
        best.Sort();
        return best;
    }

    /// <summary>Forgets the moves that were made.</summary>
    public void Done()
    {
        count = 0;
        worst = double.MaxValue;
    }

    /// <summary>Takes a half-done packing in, unless one with the same pieces leaves at least as much room.</summary>
    public bool Offer(in BeamNode node, BeamMove move, int piece, IReadOnlyList<Plank> kindsOfBoard)
    {
        var first = firstSame.GetValueOrDefault(node.Hash, -1);
        for (var other = first; other >= 0; other = nextSame[other])
        {
            if (IsNoWorse(Nodes[other], node, kindsOfBoard))
                return false;
        }

        var slot = Nodes.Count;
        Nodes.Add(node);
        nextSame.Add(first);
        firstSame[node.Hash] = slot;
        leftBefore.AsSpan(move.Parent * kinds, kinds).CopyTo(left.AsSpan(slot * kinds, kinds));
        left[slot * kinds + piece]--;
        takenBefore
            .AsSpan(move.Parent * planks, planks)
            .CopyTo(taken.AsSpan(slot * planks, planks));
        if (move.Level < 0)
            taken[slot * planks + move.Plank]++;
        return true;
    }

    private static bool IsNoWorse(in BeamNode a, in BeamNode b, IReadOnlyList<Plank> boards) =>
        a.Closed + boards[a.Plank].Cost <= b.Closed
        || (a.Plank == b.Plank && a.Closed <= b.Closed && a.LeavesAtLeast(b));

    private void KeepBest()
    {
        ScoredMove.PutBestFirst(moves.AsSpan(0, count), room);
        count = room;
        worst = moves[room - 1].Score;
    }
}
