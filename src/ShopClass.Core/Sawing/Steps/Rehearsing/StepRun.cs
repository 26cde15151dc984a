using System.Collections;
using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing.Rehearsing;

namespace ShopClass.Core.Sawing.Steps.Rehearsing;

/// <summary>The whole work carried out once, and everything the rules want to know about it.</summary>
internal sealed class StepRun
{
    private readonly List<IReadOnlyList<Wood>> states = [];
    private readonly List<Done> done = [];
    private readonly List<BitArray> before = [];
    private readonly Dictionary<string, PartOnBoard> blanks;

    public StepRun(CheckedPlan plan, WorkSequence work)
    {
        Plan = plan;
        Work = work;
        blanks = PartOnBoard.In(plan).ToDictionary(b => b.Key.ToString(), StringComparer.Ordinal);
        states.Add([.. Boards().Select(Whole)]);
        var doing = new Doing(this);
        foreach (var step in work.Steps)
        {
            var result = doing.Do(step, states[^1]);
            done.Add(result.Done);
            states.Add(result.Pieces);
            before.Add(Ancestors(step));
        }
    }

    public CheckedPlan Plan { get; }

    public WorkSequence Work { get; }

    public CourseRules Rules => Plan.Request.Rules;

    public Project Project => Plan.Request.Project;

    /// <summary>The blanks of the plan in their places, by name.</summary>
    public IReadOnlyCollection<PartOnBoard> Blanks => blanks.Values;

    public IReadOnlyList<Done> Done => done;

    public IReadOnlyList<Wood> Final => states[^1];

    /// <summary>The pieces as they lie before a step that is the n-th, from 0.</summary>
    public IReadOnlyList<Wood> StateBefore(int index) => states[index];

    /// <summary>Whether one step is always done before another, through whatever lies between.</summary>
    public bool IsAlwaysBefore(int earlier, Step later)
    {
        var index = later.Number - 1;
        return index >= 0
            && index < before.Count
            && earlier >= 1
            && earlier <= Work.Steps.Count
            && before[index][earlier - 1];
    }

    public IReadOnlyList<WorkState> States() =>
        [.. states.Select((s, i) => new WorkState(i, [.. s.Select(p => p.Shown)]))];

    /// <summary>What a dimension has to be while it is open, or in the end.</summary>
    public static Length Wanted(Part part, PartDimension dimension, bool isClosed)
    {
        var finished = dimension switch
        {
            PartDimension.Thickness => part.Finished.Thickness,
            PartDimension.Width => part.Finished.Width,
            _ => part.Finished.Length,
        };
        var open = part.Open.FirstOrDefault(o => o.Dimension == dimension);
        return open is null || isClosed ? finished : finished + open.Extra;
    }

    /// <summary>Whether a step before this one, or this one, closes the dimension of the piece.</summary>
    public bool IsClosedBy(string piece, PartDimension dimension, int number) =>
        Work.Steps.Take(number).Any(s => Closes(s, piece, dimension));

    public static bool Closes(Step step, string piece, PartDimension dimension) =>
        step.Kind is StepKind.CloseDimension
        && step.Pieces.Contains(piece)
        && step.Open.Any(o => o.Piece == piece && o.Dimension == dimension);

    /// <summary>
    /// How hollow a piece of a board is that covers so much of it. Of a blank, what its part does not need comes off anyway
    /// and does not count.
    /// </summary>
    public Length HollowOf(PartOnBoard? blank, BoardRect rect, Board board)
    {
        var (across, along) = (rect.Across, rect.Along);
        if (blank is { Part: { } part })
        {
            var wide = SizeAskedFor.AcrossTheGrain(part, Rules, betweenMillEdges: false);
            var far = SizeAskedFor.AlongTheGrain(part, Rules);
            across = Length.Min(across, blank.IsTurned ? far : wide);
            along = Length.Min(along, blank.IsTurned ? wide : far);
        }

        return Hollows.In(board, across, along);
    }

    public Board? BoardOf(string id) => Plan.Request.Boards.FirstOrDefault(b => b.Id == id);

    private IEnumerable<Board> Boards() =>
        Plan
            .Plan.Boards.Select(l => l.BoardId)
            .Distinct(StringComparer.Ordinal)
            .Select(id => Plan.Request.Boards.FirstOrDefault(b => b.Id == id))
            .OfType<Board>();

    private Wood Whole(Board board) =>
        Doing.Named(
            this,
            board,
            new(Length.Zero, board.Length, Length.Zero, board.SmallestWidth)
        ) with
        {
            Use = PieceUse.Work,
        };

    private BitArray Ancestors(Step step)
    {
        var all = new BitArray(Work.Steps.Count);
        foreach (var number in step.After.Where(a => a >= 1 && a <= before.Count))
        {
            all[number - 1] = true;
            all.Or(before[number - 1]);
        }

        return all;
    }
}
