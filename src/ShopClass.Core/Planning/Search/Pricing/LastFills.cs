using System.Runtime.InteropServices;

namespace ShopClass.Core.Planning.Search.Pricing;

/// <summary>
/// The best way one board of a group could yield just some blanks: those left for the last board. The next section always
/// holds the first of them still missing.
/// </summary>
internal sealed class LastFills(
    BoardGroup group,
    SectionsByBlank sections,
    BlankOrder order,
    BoardFills fills,
    long perTick,
    Steps steps
)
{
    private const int LooksCounted = 400;
    private readonly Dictionary<ulong, (long Within, Fill? Best)> known = [];
    private readonly List<List<int>> fitting = [];
    private readonly List<int> path = [];

    /// <summary>Blanks that were found not to be had within so much loss and room.</summary>
    private readonly Dictionary<ulong, (long Loss, long Room)> inVain = [];
    private int met;
    private Fill? best;
    private long limit;
    private long looks;

    /// <summary>
    /// The best fill of just these blanks, its loss with what is left of the board counted; null where there is none that
    /// loses no more than a limit.
    /// </summary>
    public Fill? Of(ulong blanks, long within)
    {
        looks++;
        if (known.TryGetValue(blanks, out var before))
        {
            if (before.Best is { } its)
                return its.Loss <= within ? its : null;
            if (before.Within >= within)
                return null;
        }

        (best, limit) = (null, within);
        Go(blanks, 0, 0);
        known[blanks] = (within, best);
        return best;
    }

    private void Go(ulong left, long span, long loss)
    {
        if (left == 0)
        {
            met++;
            Judge(loss + (group.Room - span) * perTick);
            return;
        }

        if (
            steps.AreUp
            || sections.At(order.First(left)) is not { } some
            || span + some.Shortest > group.Room
        )
            return;
        var (within, room) = (limit - loss, group.Room - span);
        if (inVain.TryGetValue(left, out var vain) && within <= vain.Loss && room <= vain.Room)
            return;
        var before = met;
        Try(some, left, span, loss);
        if (met == before)
            inVain[left] = (within, room);
    }

    private void Try(FillSections some, ulong left, long span, long loss)
    {
        var depth = path.Count;
        if (fitting.Count == depth)
            fitting.Add([]);
        Collect(some, left, group.Room - span, limit - loss, fitting[depth]);
        foreach (var n in fitting[depth])
        {
            if (loss + some.Losses[n] > limit)
                break;
            path.Add(some.Columns[n]);
            Go(left - some.Packed[n], span + some.Spans[n], loss + some.Losses[n]);
            path.RemoveAt(depth);
        }
    }

    /// <summary>Sections of only what is left, with room and within a limit, least loss first.</summary>
    private void Collect(FillSections some, ulong left, long room, long within, List<int> into)
    {
        into.Clear();
        var index = some.Index;
        looks += index.Start(left, some.Within(within));
        for (var n = index.Next(); n >= 0; n = index.Next())
        {
            looks++;
            if (some.Spans[n] <= room)
                into.Add(n);
        }

        var counted = looks / LooksCounted;
        looks -= counted * LooksCounted;
        steps.Take((int)counted);
    }

    private void Judge(long loss)
    {
        if (loss > limit)
            return;
        var fill = fills.Of(CollectionsMarshal.AsSpan(path)) with { Loss = loss };
        if (best is { } other && fills.Compare(fill, other) >= 0)
            return;
        (best, limit) = (fill, loss);
    }
}
