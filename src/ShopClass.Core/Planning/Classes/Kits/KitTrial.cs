using ShopClass.Core.Planning.Classes.Staged;
using ShopClass.Core.Planning.Search;
using ShopClass.Core.Projects;

namespace ShopClass.Core.Planning.Classes.Kits;

/// <summary>
/// Tries one kit on chosen boards as if they were clear, by the single student's exact search: the kit laid out, or the
/// proof that these boards are too few.
/// </summary>
internal sealed class KitTrial
{
    private const int MostBoards = 8;
    private const int StepsEach = 10_000;

    // One step of that search takes about as long as so many looks of a beam.
    private const long LooksInStep = 300;
    private readonly ClassWood wood;
    private readonly Cutting cutting;
    private readonly Project project;
    private readonly Effort effort;
    private readonly Dictionary<string, int> pieceOf = new(StringComparer.Ordinal);

    /// <param name="wood">The class's wood.</param>
    /// <param name="cutting">One kit's pieces.</param>
    /// <param name="project">The kit.</param>
    /// <param name="pieces">Which pieces are tried; the others have boards of another sort.</param>
    /// <param name="effort">Counts the steps.</param>
    public KitTrial(
        ClassWood wood,
        Cutting cutting,
        Project project,
        IReadOnlyList<int> pieces,
        Effort effort
    )
    {
        this.wood = wood;
        this.cutting = cutting;
        this.effort = effort;
        foreach (var k in pieces)
        {
            foreach (var item in wood.Kinds[k].Items)
                pieceOf[item.Part.Letter] = k;
        }

        this.project = project with
        {
            Parts = [.. project.Parts.Where(p => pieceOf.ContainsKey(p.Letter))],
        };
    }

    /// <summary>True with the layout kept in the set; false where it is proven that the kit needs more; null where it is not known.</summary>
    public bool? Fits(BoardSet set)
    {
        set.IsTried = true;
        int[] planks = [.. set.Boards];
        if (planks.Length is 0 or > MostBoards)
            return planks.Length == 0 ? false : null;
        var ask = wood.AskFor(project, planks.Select(p => wood.Sources[p]));
        ask = ask with
        {
            Boards = [.. ask.Boards.Select((b, i) => b with { Id = $"{i}", Defects = [] })],
        };
        var bench = Bench.Lay(ask, wood.GlueUps, costMatters: false);
        var steps = new Steps(StepsEach, CancellationToken.None);
        var answer = new ClearSearch(bench, steps).On(bench.Stocks, null);
        effort.Take(steps.Taken * LooksInStep);
        if (answer.Plan is { } plan)
        {
            set.Layout = Written(bench, plan, planks);
            return true;
        }

        return answer.IsSettled && !steps.AreUp ? false : null;
    }

    private CutBoard[] Written(Bench bench, ClearPlan plan, int[] planks)
    {
        Queue<int>[] waiting =
        [
            .. bench.Kinds.Select(kind => new Queue<int>(
                kind.Items.Select(i => pieceOf[i.Part.Letter])
            )),
        ];
        (int, Way) Piece(Lie lie)
        {
            var piece = waiting[lie.Kind].Dequeue();
            return (piece, cutting.Pieces[piece].Ways.First(w => w.Turned == lie.Turned));
        }

        return
        [
            .. plan.Boards.Select(board => new CutBoard(
                planks[board.Stock.Index],
                [
                    .. board.Sections.Select(section => new CutSection([
                        .. section.Strips.Select(strip => new CutStrip([
                            .. strip.Blanks.Select(Piece),
                        ])),
                    ])),
                ]
            )),
        ];
    }
}
