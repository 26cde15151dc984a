namespace ShopClass.Core.Planning.Classes.Staged;

/// <summary>
/// The linear programme over ways to cut a board: least cost so that every piece is cut often enough and no finite board is
/// cut twice. Revised simplex with a dense inverse; the rows are few.
/// </summary>
/// <remarks>
/// Its numbers are floating point and only steer: no bound is taken from them unproven (<see cref="ProvenBound"/>).
/// Variables: the columns, then for each row what is cut over the demand (or is left of a finite board), then for each
/// piece a stand-in dearer than any board.
/// </remarks>
internal sealed class Master
{
    private const double Small = 1e-9;
    private const double NotMuchLess = 0.4;
    private readonly Cutting cutting;
    private readonly int[] finite;
    private readonly int rows;
    private readonly double[] asked;
    private readonly double standIn;
    private readonly List<Column> columns = [];
    private readonly List<(int Row, double Value)[]> entries = [];
    private readonly List<int> gaining = [];
    private readonly double[][] inverse;
    private readonly int[] basis;
    private readonly double[] basic;
    private readonly double[] duals;
    private readonly double[] entering;

    /// <param name="cutting">What is to be cut.</param>
    /// <param name="demand">How many of each piece.</param>
    /// <param name="copies">How many boards of each kind.</param>
    public Master(Cutting cutting, IReadOnlyList<int> demand, IReadOnlyList<int> copies)
    {
        this.cutting = cutting;
        finite = [.. Enumerable.Range(0, copies.Count).Where(p => copies[p] < int.MaxValue)];
        rows = demand.Count + finite.Length;
        asked = [.. demand.Select(d => (double)d), .. finite.Select(p => (double)copies[p])];
        standIn = 4.0 * Math.Max(1, cutting.Planks.Max(p => p.Cost));
        inverse = new double[rows][];
        basis = new int[rows];
        basic = [.. asked.Select((a, r) => a + Nudge(r))];
        duals = new double[rows];
        entering = new double[rows];
        for (var r = 0; r < rows; r++)
        {
            inverse[r] = new double[rows];
            inverse[r][r] = 1;
            // Rows of pieces begin with their stand-in, rows of finite boards with what is left.
            basis[r] = r < demand.Count ? -1 - rows - r : -1 - r;
        }
    }

    /// <summary>The columns, in the order they came.</summary>
    public IReadOnlyList<Column> Columns => columns;

    /// <summary>What one more of each piece costs at the margin; then what one more finite board saves, as a negative.</summary>
    public IReadOnlyList<double> Duals => duals;

    /// <summary>The cost of the mixture found.</summary>
    public double Value
    {
        get
        {
            var sum = 0.0;
            for (var r = 0; r < rows; r++)
                sum += asked[r] * duals[r];
            return sum;
        }
    }

    /// <summary>How often each column is cut in the mixture; only those above zero.</summary>
    public IEnumerable<(Column Column, double Times)> Mixture()
    {
        for (var r = 0; r < rows; r++)
        {
            if (basis[r] >= 0 && basic[r] > Small)
                yield return (columns[basis[r]], basic[r]);
        }
    }

    /// <summary>What one more of this kind of board would save; zero where there is no end of them.</summary>
    public double SavedBy(int plank)
    {
        var place = Array.IndexOf(finite, plank);
        return place < 0 ? 0 : -duals[rows - finite.Length + place];
    }

    /// <summary>Adds a way to cut a board.</summary>
    public void Add(Column column)
    {
        var list = new List<(int, double)>();
        for (var k = 0; k < column.Counts.Count; k++)
        {
            if (column.Counts[k] > 0)
                list.Add((k, column.Counts[k]));
        }

        var place = Array.IndexOf(finite, column.Board.Plank);
        if (place >= 0)
            list.Add((rows - finite.Length + place, 1));
        columns.Add(column);
        entries.Add([.. list]);
    }

    /// <summary>Finds the cheapest mixture of the columns; tells the looks it took.</summary>
    public long Solve()
    {
        var looks = 0L;
        for (var turn = 0; turn < 50 * rows + columns.Count; turn++)
        {
            FillDuals();
            var enter = Entering(turn, ref looks);
            if (enter is null || !Pivot(enter.Value))
                break;
        }

        FillDuals();
        return looks;
    }

    /// <summary>
    /// A hair more is asked for, of each row another, so that no two rows run out together: otherwise the exchanges may go
    /// round in circles without end.
    /// </summary>
    private static double Nudge(int row) => 1e-6 * (1 + (row + 1) * 0.6180339887498949 % 1);

    private double CostOf(int variable) =>
        variable >= 0 ? columns[variable].Cost
        : variable < -rows ? standIn
        : 0;

    private void FillDuals()
    {
        Array.Clear(duals);
        for (var r = 0; r < rows; r++)
        {
            var cost = CostOf(basis[r]);
            if (cost == 0)
                continue;
            Rows.Add(duals, inverse[r], cost);
        }
    }

    /// <summary>
    /// The variable that gains most, of those that gained most when all were looked at last; after many turns the first that
    /// gains, which cannot go round in circles.
    /// </summary>
    private int? Entering(int turn, ref long looks)
    {
        var least = -1e-7 * Math.Max(1, standIn / 4);
        var isLong = turn > 20 * rows;
        looks += rows;
        var (best, most) = isLong ? (null, least) : BestOf(gaining, least);
        if (best is null)
        {
            looks += columns.Count;
            Look(least, isLong);
            (best, most) = BestOf(gaining, least);
        }

        for (var r = 0; r < rows && !(isLong && best is not null); r++)
        {
            // Cutting more than the demand costs the piece's price; leaving a finite board is the other way round.
            var reduced = IsPiece(r) ? duals[r] : -duals[r];
            if (reduced >= most)
                continue;
            best = -1 - r;
            most = reduced;
        }

        return best;
    }

    private (int? Best, double Most) BestOf(List<int> some, double least)
    {
        int? best = null;
        foreach (var j in some)
        {
            var reduced = Reduced(j);
            if (reduced >= least)
                continue;
            best = j;
            least = reduced;
        }

        return (best, least);
    }

    /// <summary>Looks through all columns for those that gain, and keeps those that gain not much less than the best.</summary>
    private void Look(double least, bool first)
    {
        gaining.Clear();
        var most = least;
        for (var j = 0; j < columns.Count; j++)
        {
            var reduced = Reduced(j);
            if (reduced >= Math.Min(least, most * NotMuchLess))
                continue;
            most = Math.Min(most, reduced);
            gaining.Add(j);
            if (first)
                return;
        }

        gaining.RemoveAll(j => Reduced(j) > most * NotMuchLess);
    }

    private double Reduced(int column)
    {
        var reduced = (double)columns[column].Cost;
        foreach (var (row, value) in entries[column])
            reduced -= duals[row] * value;
        return reduced;
    }

    private bool IsPiece(int row) => row < rows - finite.Length;

    private bool Pivot(int variable)
    {
        Array.Clear(entering);
        if (variable >= 0)
        {
            foreach (var (row, value) in entries[variable])
            {
                for (var r = 0; r < rows; r++)
                    entering[r] += inverse[r][row] * value;
            }
        }
        else
        {
            var row = -1 - variable;
            var sign = IsPiece(row) ? -1 : 1;
            for (var r = 0; r < rows; r++)
                entering[r] = sign * inverse[r][row];
        }

        var leave = Leaving();
        if (leave < 0)
            return false;
        Exchange(leave, variable);
        return true;
    }

    private int Leaving()
    {
        var leave = -1;
        var least = double.MaxValue;
        for (var r = 0; r < rows; r++)
        {
            if (entering[r] <= 1e-7)
                continue;
            var ratio = Math.Max(0, basic[r]) / entering[r];
            if (
                ratio < least - Small
                || (ratio < least + Small && leave >= 0 && IsBetterToLeave(r, leave))
            )
            {
                leave = r;
                least = Math.Min(least, ratio);
            }
        }

        return leave;
    }

    /// <summary>Stand-ins go first; then the larger figure, for sound arithmetic.</summary>
    private bool IsBetterToLeave(int r, int other)
    {
        var (a, b) = (basis[r] < -rows, basis[other] < -rows);
        return a == b ? entering[r] > entering[other] : a;
    }

    private void Exchange(int leave, int variable)
    {
        var pivot = entering[leave];
        Rows.Divide(inverse[leave], pivot);
        basic[leave] = Math.Max(0, basic[leave]) / pivot;
        for (var r = 0; r < rows; r++)
        {
            var times = entering[r];
            if (r == leave || times == 0)
                continue;
            Rows.Add(inverse[r], inverse[leave], -times);
            basic[r] -= times * basic[leave];
            if (Math.Abs(basic[r]) < 1e-11)
                basic[r] = 0;
        }

        basis[leave] = variable;
    }
}
