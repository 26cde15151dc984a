using CsCheck;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Tests.Sawing;

/// <summary>A board, the parts it is to yield and a layout that does it: valid by construction, in three stages.</summary>
internal sealed record RandomLayout(PlanningRequest Request, CutPlan Plan)
{
    public override string ToString() =>
        string.Join(
            '\n',
            Plan.Boards[0]
                .Sections.Select(s =>
                    $"section {s.From}-{s.To}: "
                    + string.Join(
                        "; ",
                        s.Strips.Select(t =>
                            $"strip {t.Near}-{t.Far}: "
                            + string.Join(", ", t.Blanks.Select(b => $"{b.Key} {b.From}-{b.To}"))
                        )
                    )
                )
                .Prepend(
                    $"board {Request.Boards[0].Length} x {Request.Boards[0].SmallestWidth} trim "
                        + $"{Request.Boards[0].TrimStart}/{Request.Boards[0].TrimEnd} defects {string.Join(',', Request.Boards[0].Defects)}"
                )
        );
}

/// <summary>
/// Draws layouts at random. All sizes are whole sixteenths, gaps are a kerf (2/16) and more, blanks are 2 in or longer
/// and strips 1 in or wider. Each blank is a part of its own, exactly as small as the blank allows.
/// </summary>
internal static class RandomLayouts
{
    private const int Kerf = 2;
    private const int LengthAllowance = 16;
    private const int WidthAllowance = 4;

    private sealed record StripSpec(int Gap, int Width, (int Gap, int Long)[] Blanks);

    private sealed record SectionSpec(int Gap, bool SameLines, StripSpec[] Strips);

    /// <summary>Gaps are most often a kerf, sometimes more.</summary>
    private static readonly Gen<int> Gap = Gen.Frequency(
        (3, Gen.Const(Kerf)),
        (1, Gen.Int[Kerf, 2 * Kerf]),
        (1, Gen.Int[Kerf, 320])
    );

    private static readonly Gen<StripSpec> Strip = Gen.Select(
        Gen.Frequency((3, Gen.Const(Kerf)), (1, Gen.Int[Kerf, 40])),
        Gen.Int[16, 80],
        Gen.Select(Gap, Gen.Int[32, 400]).Array[1, 4],
        (gap, width, blanks) => new StripSpec(gap, width, blanks)
    );

    private static readonly Gen<SectionSpec> Section = Gen.Select(
        Gap,
        Gen.Bool,
        Strip.Array[1, 3],
        (gap, same, strips) => new SectionSpec(gap, same, strips)
    );

    private static readonly Gen<(BoardRect Place, DefectReach Reach)> Spot = Gen.Select(
        Gen.Int[0, 1500],
        Gen.Int[1, 40],
        Gen.Int[0, 120],
        Gen.Int[1, 20],
        Gen.Enum<DefectReach>(),
        (from, along, near, across, reach) =>
            (
                new BoardRect(
                    Sixteenths(from),
                    Sixteenths(from + along),
                    Sixteenths(near),
                    Sixteenths(near + across)
                ),
                reach
            )
    );

    /// <summary>Valid layouts on one board.</summary>
    public static Gen<RandomLayout> Any { get; } =
        Gen.Select(
            Section.Array[1, 5],
            Gen.Frequency((1, Gen.Const(0)), (2, Gen.Int[1, 40])),
            Gen.Frequency((1, Gen.Const(0)), (2, Gen.Int[1, 40])),
            Gen.Frequency((1, Gen.Const(0)), (1, Gen.Int[1, 3]), (1, Gen.Int[1, 600])),
            Gen.Frequency((2, Gen.Const(0)), (1, Gen.Int[1, 3]), (1, Gen.Int[1, 60])),
            Spot.Array[0, 3],
            Build
        );

    public static Length Sixteenths(int n) => Length.FromInches(0, n, 16);

    private static RandomLayout Build(
        SectionSpec[] specs,
        int trimStart,
        int trimEnd,
        int tail,
        int edge,
        (BoardRect Place, DefectReach Reach)[] spots
    )
    {
        var sections = new List<Section>();
        var at = trimStart;
        var widest = 0;
        StripSpec[] before = [];
        foreach (var spec in specs)
        {
            var strips =
                spec.SameLines && before.Length > 0 ? LinesOf(before, spec.Strips) : spec.Strips;
            before = strips;
            if (sections.Count > 0 || spec.Gap > Kerf)
                at += spec.Gap;
            var (section, end, width) = Lay(strips, at);
            sections.Add(section);
            (at, widest) = (end, Math.Max(widest, width));
        }

        return Finish(sections, at + tail + trimEnd, widest + edge, trimStart, trimEnd, spots);
    }

    private static StripSpec[] LinesOf(StripSpec[] lines, StripSpec[] blanks) =>
        [.. lines.Select((s, i) => s with { Blanks = blanks[i % blanks.Length].Blanks })];

    private static (Section Section, int End, int Width) Lay(StripSpec[] specs, int start)
    {
        var strips = new List<Strip>();
        var (near, end) = (0, start);
        foreach (var spec in specs)
        {
            near += strips.Count == 0 ? spec.Gap - Kerf : spec.Gap;
            var blanks = new List<PlacedBlank>();
            var at = start;
            foreach (var (gap, length) in spec.Blanks)
            {
                at += blanks.Count == 0 ? gap - Kerf : gap;
                blanks.Add(new(default, Sixteenths(at), Sixteenths(at + length), default));
                at += length;
            }

            strips.Add(new(Sixteenths(near), Sixteenths(near + spec.Width), blanks));
            near += spec.Width;
            end = Math.Max(end, at);
        }

        return (new(Sixteenths(start), Sixteenths(end), strips), end, near);
    }

    /// <summary>Leaves out what lies on a defect, names the rest and makes a part of each.</summary>
    private static RandomLayout Finish(
        List<Section> drawn,
        int length,
        int width,
        int trimStart,
        int trimEnd,
        (BoardRect Place, DefectReach Reach)[] spots
    )
    {
        var parts = new List<Part>();
        var sections = drawn.ConvertAll(s => s with { Strips = [.. s.Strips.Select(Named)] });
        var w = Sixteenths(width);
        var board = HandDrawn.Board(0, 0) with
        {
            Length = Sixteenths(length),
            WidthAtStart = w,
            WidthAtMiddle = w,
            WidthAtEnd = w,
            TrimStart = Sixteenths(trimStart),
            TrimEnd = Sixteenths(trimEnd),
            Defects = [.. spots.Select(s => new Defect(DefectKind.Knot, s.Place, s.Reach))],
        };
        return new(
            HandDrawn.Request([board], parts),
            HandDrawn.Plan(HandDrawn.Layout(board.Id, [.. sections]))
        );

        Strip Named(Strip strip) =>
            strip with
            {
                Blanks =
                [
                    .. strip
                        .Blanks.Where(b => !spots.Any(s => s.Place.Overlaps(b.In(strip))))
                        .Select(b => Name(b, strip)),
                ],
            };

        PlacedBlank Name(PlacedBlank blank, Strip strip)
        {
            var needed = new RoughSize(
                Sixteenths(12),
                strip.Far - strip.Near,
                blank.To - blank.From
            );
            var letter = $"{(char)('A' + parts.Count / 26)}{(char)('A' + parts.Count % 26)}";
            parts.Add(
                HandDrawn.Part(letter, 0, 0) with
                {
                    Finished = new(
                        needed.Thickness,
                        needed.Width - Sixteenths(WidthAllowance),
                        needed.Length - Sixteenths(LengthAllowance)
                    ),
                }
            );
            return blank with { Key = new(letter, 1), Needed = needed };
        }
    }
}
