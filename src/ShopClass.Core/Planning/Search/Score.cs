using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning.Search;

/// <summary>
/// What a finished layout is worth, counted off the layout itself. What is counted is written down at
/// <see cref="PlanGoal"/>.
/// </summary>
internal readonly record struct Score(
    Int128 Boards,
    Int128 GlueUps,
    Int128 Effort,
    Int128 Lines,
    Int128 LengthUsed
)
{
    /// <summary>Minutes of ripping a square inch against minutes of crosscutting one: 1/8 to 1/6.</summary>
    public const int RipWeight = 3;

    /// <inheritdoc cref="RipWeight"/>
    public const int CrosscutWeight = 4;

    /// <summary>The value for one goal.</summary>
    public Int128 For(PlanGoal goal) =>
        goal switch
        {
            PlanGoal.Boards => Boards,
            PlanGoal.GlueUps => GlueUps,
            PlanGoal.SawingEffort => Effort,
            PlanGoal.Lines => Lines,
            PlanGoal.LengthUsed => LengthUsed,
            _ => throw new ArgumentOutOfRangeException(nameof(goal), goal, "Not a goal."),
        };

    /// <summary>Compares by the goals in this order.</summary>
    public int CompareTo(Score other, IReadOnlyList<PlanGoal> order)
    {
        foreach (var goal in order)
        {
            var by = For(goal).CompareTo(other.For(goal));
            if (by != 0)
                return by;
        }

        return 0;
    }

    /// <summary>Counts a layout.</summary>
    public static Score Of(Bench bench, IReadOnlyList<BoardLayout> layouts)
    {
        var byId = bench.Stocks.ToDictionary(s => s.Board.Id, StringComparer.Ordinal);
        var score = new Score(0, bench.Joints, 0, 0, 0);
        foreach (var layout in layouts)
            score = score.Plus(byId[layout.BoardId], layout);
        return score with { Boards = BoardCost.Of(layouts.Select(l => byId[l.BoardId].Board)) };
    }

    private Score Plus(Stock stock, BoardLayout layout)
    {
        Int128 crosscut = 0;
        Int128 ripped = 0;
        var lines = 0;
        if (stock.Start > 0)
            (crosscut, lines) = (stock.Width, 1);
        var ready = stock.Start;
        foreach (var section in layout.Sections)
        {
            var ends = section.From.Ticks > ready ? 2 : 1;
            var (inside, rips, inner) = Count(stock, section);
            crosscut += (Int128)ends * stock.Width + inside;
            ripped += (Int128)rips * (section.To - section.From).Ticks;
            lines += ends + rips + inner;
            ready = section.To.Ticks + stock.CrosscutKerf;
        }

        var thick = stock.Board.Thickness.Ticks;
        return this with
        {
            Effort = Effort + (RipWeight * ripped + CrosscutWeight * crosscut) * thick,
            Lines = Lines + lines,
            LengthUsed = LengthUsed + layout.Sections[^1].To.Ticks,
        };
    }

    /// <summary>Length crosscut inside a section, number of rips, number of different crosscut lines inside it.</summary>
    private static (Int128 Crosscut, int Rips, int Lines) Count(Stock stock, Section section)
    {
        Int128 crosscut = 0;
        var rips = 0;
        var marks = new SortedSet<long>();
        var ready = 0L;
        foreach (var strip in section.Strips)
        {
            rips += strip.Near.Ticks > ready ? 1 : 0;
            rips += strip.Far.Ticks < stock.Width ? 1 : 0;
            ready = strip.Far.Ticks + stock.RipKerf;
            var cuts = Cuts(stock, section, strip).ToList();
            marks.UnionWith(cuts);
            crosscut += (Int128)cuts.Count * strip.Blanks.Max(AcrossNeeded);
        }

        return (crosscut, rips, marks.Count);
    }

    private static long AcrossNeeded(PlacedBlank blank) =>
        (blank.Turned ? blank.Needed.Length : blank.Needed.Width).Ticks;

    private static IEnumerable<long> Cuts(Stock stock, Section section, Strip strip)
    {
        var ready = section.From.Ticks;
        foreach (var blank in strip.Blanks)
        {
            if (blank.From.Ticks > ready)
                yield return blank.From.Ticks;
            if (blank.To < section.To)
                yield return blank.To.Ticks;
            ready = blank.To.Ticks + stock.CrosscutKerf;
        }
    }
}

/// <summary>What boards cost, as one number that sorts right.</summary>
internal static class BoardCost
{
    /// <summary>Prices first, in minor units; then the number of boards without a price; then their area.</summary>
    public static Int128 Of(IEnumerable<Board> boards)
    {
        Int128 cost = 0;
        foreach (var board in boards)
        {
            cost += board.Price is { } price
                ? (Int128)price.MinorUnits << 76
                : ((Int128)1 << 60) + (board.Length * board.SmallestWidth).SquareTicks;
        }

        return cost;
    }
}
