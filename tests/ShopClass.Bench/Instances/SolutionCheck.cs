namespace ShopClass.Bench.Instances;

/// <summary>
/// Judges a solution from its rectangles alone, sharing nothing with any solver: every part inside its board and over no
/// other, boards no more than there are, as many parts as asked, and cuts from edge to edge in the stages allowed. The cuts
/// are found here: at each stage the piece is divided wherever no part would be cut through.
/// </summary>
internal sealed class SolutionCheck(Instance instance, Variant variant, Solution solution)
{
    private sealed record Rectangle(int Left, int Low, int Right, int High);

    /// <summary>The first thing wrong, or null.</summary>
    public string? Fault() =>
        TooManyBoards() ?? WrongCounts() ?? BoardFaults().FirstOrDefault(f => f != null);

    /// <summary>The value of the solution, counted from its boards and parts.</summary>
    public long Value() =>
        variant.Aim switch
        {
            Aim.FewestBoards => solution.Boards.Count,
            Aim.LeastCost => solution.Boards.Sum(b => instance.Stock[b].Cost),
            _ => solution.Parts.Sum(p => instance.Items[p.Item].Profit),
        };

    private string? TooManyBoards() =>
        instance
            .Stock.Select(
                (s, i) =>
                    s.Copies >= 0 && solution.Boards.Count(b => b == i) > s.Copies
                        ? $"more than {s.Copies} boards of size {i}"
                        : null
            )
            .FirstOrDefault(f => f != null);

    private string? WrongCounts()
    {
        var placed = new int[instance.Items.Count];
        foreach (var part in solution.Parts)
            placed[part.Item]++;
        for (var i = 0; i < placed.Length; i++)
        {
            var wanted = instance.Items[i].Count;
            if (placed[i] > wanted || (variant.Aim != Aim.MostProfit && placed[i] < wanted))
                return $"item {i} lies {placed[i]} times, wanted {wanted}";
        }

        return null;
    }

    private IEnumerable<string?> BoardFaults()
    {
        var byBoard = solution.Parts.ToLookup(p => p.Board);
        for (var b = 0; b < solution.Boards.Count; b++)
        {
            var size = instance.Stock[solution.Boards[b]];
            var board = new Rectangle(0, 0, size.W, size.H);
            List<Rectangle> parts = [.. byBoard[b].Select(Outline)];
            yield return Outside(board, parts) ?? Overlap(parts);
            if (!Divides(parts, 1, variant.FirstCutDividesW))
            {
                if (!variant.EitherDirection || !Divides(parts, 1, !variant.FirstCutDividesW))
                    yield return $"board {b} cannot be cut in {variant.Says}";
            }
        }
    }

    private Rectangle Outline(Placed part)
    {
        var item = instance.Items[part.Item];
        return new(part.X, part.Y, part.X + item.W, part.Y + item.H);
    }

    private static string? Outside(Rectangle board, List<Rectangle> parts) =>
        parts
            .Where(p => p.Left < 0 || p.Low < 0 || p.Right > board.Right || p.High > board.High)
            .Select(p => $"{p} leaves its board")
            .FirstOrDefault();

    private static string? Overlap(List<Rectangle> parts)
    {
        for (var i = 0; i < parts.Count; i++)
        {
            for (var j = i + 1; j < parts.Count; j++)
            {
                var (a, b) = (parts[i], parts[j]);
                if (a.Left < b.Right && b.Left < a.Right && a.Low < b.High && b.Low < a.High)
                    return $"{a} lies over {b}";
            }
        }

        return null;
    }

    /// <summary>Whether cuts from this stage on, turning at each, leave at most one part in each piece.</summary>
    private bool Divides(List<Rectangle> parts, int stage, bool dividesW)
    {
        if (stage == 1 && variant.LongestSection is null && parts.Count <= 1)
            return true;
        if (stage > variant.Stages)
            return parts.Count <= 1;
        var groups = Cut(parts, dividesW);
        if (stage == 1 && variant.LongestSection is { } most)
        {
            if (groups.Any(g => Extent(g, dividesW) > most))
                return false;
        }

        if (stage == 2 && variant.MostStrips is { } strips && groups.Count > strips)
            return false;
        return groups.TrueForAll(g => Divides(g, stage + 1, !dividesW));
    }

    private static int Extent(List<Rectangle> parts, bool alongW) =>
        alongW
            ? parts.Max(p => p.Right) - parts.Min(p => p.Left)
            : parts.Max(p => p.High) - parts.Min(p => p.Low);

    /// <summary>The groups that straight cuts part without going through any rectangle, as many as possible.</summary>
    private static List<List<Rectangle>> Cut(List<Rectangle> parts, bool dividesW)
    {
        var groups = new List<List<Rectangle>>();
        var reach = int.MinValue;
        foreach (var part in parts.OrderBy(p => dividesW ? p.Left : p.Low))
        {
            if (groups.Count == 0 || (dividesW ? part.Left : part.Low) >= reach)
                groups.Add([]);
            groups[^1].Add(part);
            reach = Math.Max(reach, dividesW ? part.Right : part.High);
        }

        return groups;
    }
}
