using Google.OrTools.Sat;
using ShopClass.Core.Measure;

namespace ShopClass.Core.Tests.Planning;

/// <summary>
/// The same layout question put to a general solver (CP-SAT of Google OR-Tools): blanks into strips, strips into sections,
/// sections onto boards, each adding a kerf. Nothing of the planner is used. A strip is named after its first blank, a
/// section after its first strip, so that nothing is counted twice.
/// </summary>
internal sealed partial class SmallOracle
{
    private readonly CpModel model = new();
    private readonly (long Along, long Across)[] blanks;
    private readonly (long Usable, long Width)[] boards;
    private readonly long kerf;
    private readonly BoolVar[,] inStrip;
    private readonly BoolVar[,] inSection;
    private readonly BoolVar[,] onBoard;
    private readonly IntVar[] sectionLength;

    public SmallOracle(
        IReadOnlyList<(Length Along, Length Across)> blanks,
        IReadOnlyList<(Length Usable, Length Width)> boards,
        Length kerf,
        Length unit
    )
    {
        this.blanks =
        [
            .. blanks.Select(b => (b.Along.Ticks / unit.Ticks, b.Across.Ticks / unit.Ticks)),
        ];
        this.boards =
        [
            .. boards.Select(b => (b.Usable.Ticks / unit.Ticks, b.Width.Ticks / unit.Ticks)),
        ];
        this.kerf = kerf.Ticks / unit.Ticks;
        var n = this.blanks.Length;
        inStrip = Bools(n, n);
        inSection = Bools(n, n);
        onBoard = Bools(n, this.boards.Length);
        var longest = this.boards.Max(b => b.Usable);
        sectionLength =
        [
            .. Enumerable.Range(0, n).Select(_ => model.NewIntVar(0, longest + this.kerf, "")),
        ];
        State();
    }

    /// <summary>The least total length used over all boards, or null when the blanks do not fit.</summary>
    public Length? LeastLength(Length unit)
    {
        var used = new List<LinearExpr>();
        for (var b = 0; b < boards.Length; b++)
        {
            var any = model.NewBoolVar("");
            var total = model.NewIntVar(0, boards[b].Usable + kerf, "");
            var lengths = LengthsOn(b);
            model.Add(total == LinearExpr.Sum(lengths));
            model.Add(total == 0).OnlyEnforceIf(any.Not());
            used.Add(total - kerf * any);
        }

        model.Minimize(LinearExpr.Sum(used));
        return Solve() is { } value ? unit * value : null;
    }

    /// <summary>The fewest boards, or null when the blanks do not fit.</summary>
    public long? FewestBoards() => LeastCost([.. boards.Select(_ => 1L)]);

    /// <summary>The least that boards cost, each at its price, or null when the blanks do not fit.</summary>
    public long? LeastCost(IReadOnlyList<long> prices)
    {
        var used = new List<BoolVar>();
        for (var b = 0; b < boards.Length; b++)
        {
            used.Add(model.NewBoolVar(""));
            for (var section = 0; section < blanks.Length; section++)
                model.AddImplication(onBoard[section, b], used[b]);
        }

        model.Minimize(LinearExpr.Sum(used.Select((u, b) => u * prices[b])));
        return Solve();
    }

    private long? Solve()
    {
        var solver = new CpSolver { StringParameters = "num_workers:1 random_seed:1" };
        var status = solver.Solve(model);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Infeasible))
            throw new InvalidOperationException($"The solver ended with {status}.");
        return status is CpSolverStatus.Optimal ? (long)Math.Round(solver.ObjectiveValue) : null;
    }

    private void State()
    {
        var n = blanks.Length;
        for (var i = 0; i < n; i++)
        {
            model.AddExactlyOne(Enumerable.Range(0, i + 1).Select(s => inStrip[i, s]));
            for (var s = 0; s < n; s++)
            {
                if (s > i)
                    model.Add(inStrip[i, s] == 0);
                else
                    model.AddImplication(inStrip[i, s], inStrip[s, s]);
            }
        }

        for (var s = 0; s < n; s++)
            StateStrip(s);
        for (var c = 0; c < n; c++)
            StateSection(c);
        for (var b = 0; b < boards.Length; b++)
            model.Add(LinearExpr.Sum(LengthsOn(b)) <= boards[b].Usable + kerf);
    }

    private readonly Dictionary<int, IntVar> stripWidth = [];

    private void StateStrip(int s)
    {
        var n = blanks.Length;
        var widest = boards.Max(b => b.Width);
        stripWidth[s] = model.NewIntVar(0, widest, "");
        for (var i = s; i < n; i++)
            model.Add(stripWidth[s] >= blanks[i].Across).OnlyEnforceIf(inStrip[i, s]);
        model.Add(
            LinearExpr.Sum(Enumerable.Range(0, n).Select(c => inSection[s, c])) == inStrip[s, s]
        );
        for (var c = 0; c < n; c++)
        {
            if (c > s)
                model.Add(inSection[s, c] == 0);
            else
                model.AddImplication(inSection[s, c], inSection[c, c]);
        }
    }

    private void StateSection(int c)
    {
        var n = blanks.Length;
        model.Add(
            LinearExpr.Sum(Enumerable.Range(0, boards.Length).Select(b => onBoard[c, b]))
                == inSection[c, c]
        );
        var across = new List<IntVar>();
        for (var s = c; s < n; s++)
        {
            var along = Enumerable
                .Range(s, n - s)
                .Select(i => inStrip[i, s] * (blanks[i].Along + kerf));
            model.Add(sectionLength[c] >= LinearExpr.Sum(along)).OnlyEnforceIf(inSection[s, c]);
            var share = model.NewIntVar(0, boards.Max(b => b.Width) + kerf, "");
            model.Add(share >= stripWidth[s] + kerf).OnlyEnforceIf(inSection[s, c]);
            across.Add(share);
        }

        for (var b = 0; b < boards.Length; b++)
            model
                .Add(LinearExpr.Sum(across) <= boards[b].Width + kerf)
                .OnlyEnforceIf(onBoard[c, b]);
    }

    private IntVar[] LengthsOn(int board)
    {
        var most = boards[board].Usable + kerf;
        return
        [
            .. Enumerable
                .Range(0, blanks.Length)
                .Select(c =>
                {
                    var here = model.NewIntVar(0, most, "");
                    model.Add(here >= sectionLength[c]).OnlyEnforceIf(onBoard[c, board]);
                    return here;
                }),
        ];
    }

    private BoolVar[,] Bools(int rows, int columns)
    {
        var bools = new BoolVar[rows, columns];
        for (var i = 0; i < rows; i++)
        {
            for (var j = 0; j < columns; j++)
                bools[i, j] = model.NewBoolVar("");
        }

        return bools;
    }
}
