using CsCheck;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;

namespace ShopClass.Core.Tests.Planning;

/// <summary>Boards with bad places so small that every layout there is can be gone through.</summary>
internal static class BadPlaceCases
{
    /// <summary>What all sizes are whole numbers of.</summary>
    public static readonly Length Unit = Wood.Mm(10);

    private static readonly Gen<(int, int, int, int, DefectReach)> BadPlace = Gen.Select(
        Gen.Int[0, 11],
        Gen.Int[0, 4],
        Gen.Int[1, 2],
        Gen.Int[1, 2],
        Gen.Enum<DefectReach>()
    );

    /// <summary>Two to four blanks and a small board with one to three bad places.</summary>
    public static readonly Gen<PlanningRequest> OnOneBoard = Gen.Select(
        Gen.Select(Gen.Int[1, 6], Gen.Int[1, 3], Gen.Bool).Array[2, 4],
        BadPlace.Array[1, 3],
        Gen.Select(Gen.Int[7, 12], Gen.Int[3, 5], Gen.Int[0, 1], Gen.Int[0, 1]),
        Gen.Select(Gen.Int[0, 1], Gen.Int[0, 2], Gen.Int[1, 3]),
        Ask
    );

    /// <summary>The same on two boards of one size, each with bad places of its own.</summary>
    public static readonly Gen<PlanningRequest> OnTwoBoards = Gen.Select(
        OnOneBoard,
        BadPlace.Array[0, 3],
        Gen.Int[5, 8],
        (request, bad, length) =>
        {
            var width = (int)(request.Boards[0].SmallestWidth.Ticks / Unit.Ticks);
            var board = request.Boards[0] with
            {
                Length = Unit * length,
                Defects = [.. request.Boards[0].Defects.Where(d => d.Place.To <= Unit * length)],
            };
            return request with
            {
                Boards =
                [
                    board,
                    board with
                    {
                        Id = "2",
                        Name = "2",
                        Defects = [.. bad.Select(b => Bad(b, length, width))],
                    },
                ],
            };
        }
    );

    /// <summary>Blanks of these sizes out of one board with these bad places, in whole units.</summary>
    public static PlanningRequest Ask(
        (int Along, int Across, bool MayHide)[] sizes,
        (int From, int Near, int Along, int Across, DefectReach Reach)[] bad,
        (int Length, int Width, int TrimStart, int TrimEnd) wood,
        (int Kerf, int Allowance, int NarrowestOffcut) rules
    ) =>
        Wood.Ask(
            Wood.Bare(Unit * rules.Kerf) with
            {
                LengthAllowance = Unit * rules.Allowance,
                NarrowestOffcut = Unit * rules.NarrowestOffcut,
            },
            [
                Wood.Board("1", Wood.Mm(20), Unit * wood.Width, Unit * wood.Length) with
                {
                    TrimStart = Unit * wood.TrimStart,
                    TrimEnd = Unit * wood.TrimEnd,
                    Defects = [.. bad.Select(b => Bad(b, wood.Length, wood.Width))],
                },
            ],
            [
                .. sizes.Select(
                    (s, i) =>
                        Wood.Part(
                            $"{(char)('A' + i)}",
                            1,
                            Wood.Mm(20),
                            Unit * s.Across,
                            Unit * s.Along
                        ) with
                        {
                            AcceptsHiddenDefect = s.MayHide,
                        }
                ),
            ]
        );

    private static Defect Bad(
        (int From, int Near, int Along, int Across, DefectReach Reach) bad,
        int length,
        int width
    )
    {
        var from = Math.Min(bad.From, length - 1);
        var near = Math.Min(bad.Near, width - 1);
        return new(
            DefectKind.Knot,
            new(
                Unit * from,
                Unit * Math.Min(length, from + bad.Along),
                Unit * near,
                Unit * Math.Min(width, near + bad.Across)
            ),
            bad.Reach
        );
    }

    private static EveryLayout LayoutsOn(PlanningRequest request, Board board)
    {
        int Units(Length length) => (int)(length.Ticks / Unit.Ticks);
        var rules = request.Rules;
        return new(
            [
                .. request.Project.Parts.Select(p =>
                    (
                        Units(p.Finished.Length + rules.LengthAllowance),
                        Units(p.Finished.Width),
                        p.AcceptsHiddenDefect
                    )
                ),
            ],
            [
                .. board.Defects.Select(d =>
                    (
                        Units(d.Place.From),
                        Units(d.Place.To),
                        Units(d.Place.Near),
                        Units(d.Place.Far),
                        d.Reach
                    )
                ),
            ],
            Units(board.TrimStart),
            Units(board.Length - board.TrimEnd),
            Units(board.SmallestWidth),
            Units(rules.CrosscutKerf),
            Units(rules.LengthAllowance),
            Units(rules.RipKerf + rules.NarrowestOffcut),
            [.. request.Goals.Concat(PlanGoals.Usual).Distinct()]
        );
    }

    /// <summary>
    /// What the best layout of all is worth, on one board where that does and else on both, which are of one size; null where not
    /// everything fits.
    /// </summary>
    public static EveryLayout.Worth? BestOf(PlanningRequest request)
    {
        var on = request.Boards.Select(b => LayoutsOn(request, b)).ToList();
        var all = (1 << request.Project.Parts.Count) - 1;
        var ways = on.Select(b => b.Best(all)).OfType<EveryLayout.Worth>().ToList();
        if (ways.Count == 0 && on.Count == 2)
        {
            for (var some = 1; some < all; some++)
            {
                if (on[0].Best(some) is { } first && on[1].Best(all & ~some) is { } second)
                    ways.Add(first + second);
            }
        }

        ways.Sort(on[0].Compare);
        return ways.Count == 0 ? null : ways[0];
    }
}
