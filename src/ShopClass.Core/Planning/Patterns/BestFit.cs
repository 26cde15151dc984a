namespace ShopClass.Core.Planning.Patterns;

/// <summary>
/// Two quick ways to fill boards. Best fit: longest piece first, each into the fullest board that takes it. Least slack:
/// a board at a time, the longest piece left and with it what fills the board best (Gupta and Ho's rule, after
/// "A new heuristic algorithm for the one-dimensional bin-packing problem", 1999; from memory).
/// </summary>
internal static class BestFit
{
    private const int LooksPerBoard = 3000;

    /// <summary>Boards as counts of each size.</summary>
    public static List<int[]> Fill(Lengths lengths)
    {
        var boards = new List<int[]>();
        var room = new List<int>();
        for (var i = 0; i < lengths.Sizes.Length; i++)
        {
            for (var n = 0; n < lengths.Counts[i]; n++)
            {
                var best = -1;
                for (var b = 0; b < room.Count; b++)
                {
                    if (room[b] >= lengths.Sizes[i] && (best < 0 || room[b] < room[best]))
                        best = b;
                }

                if (best < 0)
                {
                    best = boards.Count;
                    boards.Add(new int[lengths.Sizes.Length]);
                    room.Add(lengths.Board);
                }

                boards[best][i]++;
                room[best] -= lengths.Sizes[i];
            }
        }

        return boards;
    }

    /// <summary>Boards as counts of each size, each filled as well as a bounded look allows.</summary>
    public static List<int[]> FillWithLeastSlack(Lengths lengths, Work work)
    {
        var boards = new List<int[]>();
        int[] left = [.. lengths.Counts];
        while (true)
        {
            var first = Array.FindIndex(left, c => c > 0);
            if (first < 0)
                return boards;
            left[first]--;
            var fill = new Filling(lengths, left, lengths.Board - lengths.Sizes[first]);
            var board = fill.Best(first);
            work.Take(fill.Looks);
            for (var i = 0; i < board.Length; i++)
                left[i] -= board[i];
            board[first]++;
            boards.Add(board);
        }
    }

    private sealed class Filling(Lengths lengths, int[] left, int room)
    {
        private readonly int[] taken = new int[lengths.Sizes.Length];
        private int[] best = new int[lengths.Sizes.Length];
        private int slack = int.MaxValue;

        public int Looks { get; private set; }

        public int[] Best(int from)
        {
            Try(from, room);
            return best;
        }

        private void Try(int from, int open)
        {
            if (open < slack)
            {
                slack = open;
                best = [.. taken];
            }

            for (var i = from; i < left.Length && slack > 0 && Looks < LooksPerBoard; i++)
            {
                Looks++;
                if (taken[i] == left[i] || lengths.Sizes[i] > open)
                    continue;
                taken[i]++;
                Try(i, open - lengths.Sizes[i]);
                taken[i]--;
            }
        }
    }
}
