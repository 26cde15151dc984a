using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Planning.Search;

/// <summary>
/// Writes a draft out as board layouts: gives each place its blank, and settles what becomes of surplus wood.
/// </summary>
/// <remarks>
/// <para>Surplus length: where the last blank of a strip ends short of its section by no more than the course's length
/// allowance, it keeps the difference until it is cut to length; that saves a rough cut.</para>
/// <para>Surplus width: what is left beside the last strip of a section is shared evenly among its strips, which are
/// brought to width later anyway, rather than ripped off as a sliver. Where the leftover is wide enough to keep as an
/// offcut (the course's narrowest), it is ripped off instead. Shared widths are chosen so that the lines fall on the
/// course's precision where the wood allows it.</para>
/// </remarks>
internal sealed class PlanWriter(Bench bench)
{
    private readonly Queue<Item>[] waiting = [.. bench.Kinds.Select(k => new Queue<Item>(k.Items))];

    /// <summary>The layouts in the request's order of boards, and what is missing.</summary>
    public (IReadOnlyList<BoardLayout> Boards, IReadOnlyList<BlankKey> Missing) Write(Draft draft)
    {
        BoardLayout[] boards =
        [
            .. draft
                .Boards.OrderBy(b => b.Stock.Index)
                .Where(b => b.Sections.Count > 0)
                .Select(Write),
        ];
        BlankKey[] missing = [.. waiting.SelectMany(q => q).Select(i => i.Key).Order()];
        return (boards, missing);
    }

    private BoardLayout Write(DraftBoard board) =>
        new(
            board.Stock.Board.Id,
            [.. board.Sections.OrderBy(s => s.From).Select(s => Write(board.Stock, s))]
        );

    private Section Write(Stock stock, DraftSection section)
    {
        var kept = KeepSurplusLength(stock, section);
        var shared = ShareSurplusWidth(stock, kept);
        return new(
            Length.FromTicks(shared.From),
            Length.FromTicks(shared.To),
            [.. shared.Strips.Select(strip => Write(stock, strip))]
        );
    }

    private Strip Write(Stock stock, DraftStrip strip) =>
        new(
            Length.FromTicks(strip.Near),
            Length.FromTicks(strip.Far),
            [.. strip.Blanks.Select(blank => Write(stock, strip, blank))]
        );

    private PlacedBlank Write(Stock stock, DraftStrip strip, DraftBlank blank)
    {
        var item = waiting[blank.Kind].Dequeue();
        var needed = Bench.NeedOf(item, bench.Request, stock.Board.Surfacing);
        if (!blank.Turned && needed.Width.Ticks > strip.Width)
            needed = needed with { Width = BlankNeeds.WidthBetweenStraightEdges(item.Part) };
        return new(
            item.Key,
            Length.FromTicks(blank.From),
            Length.FromTicks(blank.To),
            needed,
            blank.Turned
        );
    }

    private DraftSection KeepSurplusLength(Stock stock, DraftSection section)
    {
        var allowance = bench.Request.Rules.LengthAllowance.Ticks;
        DraftStrip Keep(DraftStrip strip)
        {
            var last = strip.Blanks[^1];
            var over = section.To - last.To;
            if (
                over <= 0
                || over > allowance
                || !stock.Allows(
                    bench.Kinds[last.Kind],
                    last.From,
                    section.To,
                    strip.Near,
                    strip.Far
                )
            )
                return strip;
            return strip with
            {
                Blanks = [.. strip.Blanks.SkipLast(1), last with { To = section.To }],
            };
        }

        return section with
        {
            Strips = [.. section.Strips.Select(Keep)],
        };
    }

    /// <summary>The section with what is left beside its strips shared among them, where it is to be and can be.</summary>
    public DraftSection ShareSurplusWidth(Stock stock, DraftSection section)
    {
        var over = stock.Width - section.Strips[^1].Far;
        var keepable = stock.RipKerf + bench.Request.Rules.NarrowestOffcut.Ticks;
        if (over <= 0 || over >= keepable)
            return section;
        foreach (var step in new[] { bench.Request.Rules.Precision.Step().Ticks, 1L })
        {
            var strips = Spread(stock, section.Strips, over, step);
            if (strips is not null && strips.All(s => IsGood(stock, s)))
                return section with { Strips = strips };
        }

        return section;
    }

    private bool IsGood(Stock stock, DraftStrip strip) =>
        strip.Blanks.All(b =>
            stock.Allows(bench.Kinds[b.Kind], b.From, b.To, strip.Near, strip.Far)
        );

    /// <summary>
    /// The strips widened by their even share, lines rounded to the step; null where the rounding takes more than
    /// there is. Gaps left for bad places stay as wide as they are.
    /// </summary>
    private static List<DraftStrip>? Spread(
        Stock stock,
        IReadOnlyList<DraftStrip> strips,
        long over,
        long step
    )
    {
        var shares = Length.FromTicks(over).Split(strips.Count);
        var spread = new List<DraftStrip>();
        var shift = 0L;
        var given = 0L;
        for (var i = 0; i < strips.Count; i++)
        {
            given += shares[i].Ticks;
            var near = strips[i].Near + shift;
            var ideal = Length.FromTicks(strips[i].Far + given);
            var far =
                i == strips.Count - 1 ? stock.Width : ideal.RoundTo(Length.FromTicks(step)).Ticks;
            if (far - near < strips[i].Width)
                far = Length
                    .FromTicks(near + strips[i].Width)
                    .RoundUpTo(Length.FromTicks(step))
                    .Ticks;
            if (far - strips[i].Far > over || far > stock.Width)
                return null;
            spread.Add(strips[i] with { Near = near, Far = far });
            shift = far - strips[i].Far;
        }

        return spread;
    }
}
