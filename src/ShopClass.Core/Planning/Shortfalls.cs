using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning.Search;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning;

/// <summary>Finds by how much a board would have to be bigger for everything to fit.</summary>
/// <remarks>
/// A board made longer grows at its far end, a board made wider at its far edge: its bad places stay where they are.
/// Everything that fits on a board also fits on a longer or wider one, so the smallest amount is found by halving.
/// </remarks>
internal static class Shortfalls
{
    /// <summary>Steps each trial may take.</summary>
    private const int TrialSteps = 2_000;

    private static readonly Length LongestBoard = Length.FromInches(240);
    private static readonly Length WidestBoard = Length.FromInches(24);

    /// <summary>Every board and direction in which more wood alone would do, smallest amount first.</summary>
    public static IReadOnlyList<Shortfall> Of(PlanningRequest request)
    {
        var trial = request with { StepLimit = Math.Min(request.StepLimit, TrialSteps) };
        return
        [
            .. request
                .Boards.SelectMany((board, index) => On(trial, board, index))
                .OrderBy(s => s.Amount),
        ];
    }

    private static IEnumerable<Shortfall> On(PlanningRequest request, Board board, int index)
    {
        var step = request.Rules.Precision.Step();
        Shortfall? Found(PartDimension direction, Length? amount) =>
            amount is { } more ? new(board.Id, direction, more) : null;
        Shortfall?[] found =
        [
            Found(
                PartDimension.Length,
                Smallest(LongestBoard - board.Length, more => Longer(board, more))
            ),
            Found(
                PartDimension.Width,
                Smallest(WidestBoard - board.SmallestWidth, more => Wider(board, more))
            ),
            Found(PartDimension.Thickness, Thicker(request, board, index)),
        ];
        return found.OfType<Shortfall>();

        Length? Smallest(Length most, Func<Length, Board> bigger)
        {
            var high = most.Ticks / step.Ticks;
            if (high < 1 || !Fits(request, index, bigger(step * high)))
                return null;
            var low = 0L;
            while (high - low > 1)
            {
                var middle = (low + high) / 2;
                if (Fits(request, index, bigger(step * middle)))
                    high = middle;
                else
                    low = middle;
            }

            return step * high;
        }
    }

    private static Board Longer(Board board, Length more) =>
        board with
        {
            Length = board.Length + more,
            Twist = Warp.GrownWith(board.Twist, board.Length, board.Length + more),
        };

    // As crooked as it is, only more of it: what a part of it is hollow by stays the same.
    private static Board Wider(Board board, Length more) =>
        board with
        {
            Cup = Warp.GrownWith(
                Warp.GrownWith(board.Cup, board.SmallestWidth, board.SmallestWidth + more),
                board.SmallestWidth,
                board.SmallestWidth + more
            ),
            Twist = Warp.GrownWith(board.Twist, board.SmallestWidth, board.SmallestWidth + more),
            WidthAtStart = board.WidthAtStart + more,
            WidthAtMiddle = board.WidthAtMiddle + more,
            WidthAtEnd = board.WidthAtEnd + more,
        };

    /// <summary>The least thickness some part asks for and the board has not got, with which everything fits.</summary>
    private static Length? Thicker(PlanningRequest request, Board board, int index)
    {
        var step = request.Rules.Precision.Step();
        var wanted = request
            .Project.Parts.Select(p =>
                BlankNeeds.LeastThickness(p, request.Rules, board) - board.Thickness
            )
            .Where(more => more > Length.Zero)
            .Select(more => more.RoundUpTo(step))
            .Distinct()
            .Order();
        foreach (var more in wanted)
        {
            if (Fits(request, index, board with { Thickness = board.Thickness + more }))
                return more;
        }

        return null;
    }

    private static bool Fits(PlanningRequest request, int index, Board board)
    {
        Board[] boards = [.. request.Boards];
        boards[index] = board;
        return FitSearch.Fits(request with { Boards = boards });
    }
}
