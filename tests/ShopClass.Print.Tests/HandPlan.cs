using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;

namespace ShopClass.Print.Tests;

/// <summary>A plan for one board, sawn by hand: each cut splits the piece it lies in, kerf beyond its line.</summary>
internal sealed class HandPlan
{
    private static readonly Length Kerf = Length.FromInches(0, 1, 16);
    private readonly Board board;
    private readonly Project project;
    private readonly List<Cut> cuts = [];
    private readonly List<BoardRect> pieces;
    private readonly List<List<BoardRect>> states;
    private readonly SortedDictionary<BlankKey, BoardRect> blanks = [];

    public HandPlan(Board board, Project project)
    {
        (this.board, this.project) = (board, project);
        pieces = [new(Length.Zero, board.Length, Length.Zero, board.SmallestWidth)];
        states =
        [
            [.. pieces],
        ];
    }

    /// <summary>Saws the start off; the kerf lies before the line.</summary>
    public HandPlan Trim(Length at, Length kerf) =>
        Saw(CutKind.EndTrim, pieces[0], at, p => p with { From = at - kerf, To = at });

    /// <summary>Crosscuts the piece that holds this place.</summary>
    public HandPlan Across(Length at) =>
        Saw(
            CutKind.Crosscut,
            pieces.First(p => p.From < at && at < p.To),
            at,
            p => p with { From = at, To = Length.Min(at + Kerf, p.To) }
        );

    /// <summary>Rips the piece that holds this place.</summary>
    public HandPlan Along(Length across, Length along) =>
        Saw(
            CutKind.Rip,
            pieces.First(p => p.From <= along && along < p.To && p.Near < across && across < p.Far),
            across,
            p => p with { Near = across, Far = across + Kerf }
        );

    /// <summary>Names the piece that begins here.</summary>
    public HandPlan Blank(string part, int copy, Length from, Length near = default)
    {
        blanks[new(part, copy)] = pieces.First(p => p.From == from && p.Near == near);
        return this;
    }

    /// <summary>The plan with its cuts and rehearsal.</summary>
    public CheckedPlan Checked()
    {
        var request = new PlanningRequest
        {
            Project = project,
            Boards = [board],
            Rules = CourseRules.DefaultsFor(UnitSystem.Inch),
        };
        var sections = blanks.Select(b => new Section(
            b.Value.From,
            b.Value.To,
            [StripOf(b.Key, b.Value)]
        ));
        var plan = new CutPlan
        {
            Boards = [new(board.Id, [.. sections])],
            Missing = [],
            Goals = [new(PlanGoal.Boards, 1, 1), new(PlanGoal.Lines, cuts.Count, 5)],
            StepsTaken = 1,
        };
        var steps = states.Select(
            (s, i) => new RehearsalStep(i, [.. s.Select(r => PieceOf(r, i))])
        );
        return new(
            request,
            plan,
            new(cuts),
            new([.. steps], [], []),
            new(VerdictKind.Fits, "The board fits.", [], [], [])
        );
    }

    private HandPlan Saw(
        CutKind kind,
        BoardRect piece,
        Length at,
        Func<BoardRect, BoardRect> kerfIn
    )
    {
        var kerf = kerfIn(piece);
        var isRip = kind is CutKind.Rip;
        cuts.Add(
            new()
            {
                Number = cuts.Count + 1,
                BoardId = board.Id,
                Kind = kind,
                Class = CutClass.Third,
                Saw = isRip ? SawKind.HandRip : SawKind.HandCrosscut,
                Support = Support.SawBench,
                Line = LineKind.Pencil,
                Piece = piece,
                Position = at,
                Kerf = kerf,
                SawnLength = isRip ? piece.Along : piece.Across,
                Leaves = "two pieces",
                Hold = "Kneel on the stock, waste to the right.",
                Reason = "The stock is longest now.",
                HoldNote =
                    isRip && piece.Along < Length.FromInches(24)
                        ? "Shorter than 24 in: rip it in the vise."
                        : null,
            }
        );
        pieces.Remove(piece);
        pieces.AddRange(
            new[]
            {
                isRip ? piece with { Far = kerf.Near } : piece with { To = kerf.From },
                isRip ? piece with { Near = kerf.Far } : piece with { From = kerf.To },
            }.Where(p => p.Along > Length.Zero && p.Across > Length.Zero)
        );
        states.Add([.. pieces]);
        return this;
    }

    private Strip StripOf(BlankKey key, BoardRect rect)
    {
        var size = project.Parts.Single(p => p.Letter == key.Part).Finished;
        var needed = new RoughSize(size.Thickness, size.Width, size.Length + Length.FromInches(1));
        return new(rect.Near, rect.Far, [new(key, rect.From, rect.To, needed)]);
    }

    private Piece PieceOf(BoardRect rect, int step)
    {
        var isBlank = blanks.Any(b => b.Value == rect);
        var isStock = step < cuts.Count && !isBlank;
        var fate =
            isBlank ? PieceFate.Blank
            : isStock && rect.Along > Length.FromInches(2) ? PieceFate.Stock
            : rect.Along >= Length.FromInches(12) ? PieceFate.Offcut
            : PieceFate.Waste;
        return new(board.Id, rect, fate, isBlank ? blanks.First(b => b.Value == rect).Key : null);
    }
}
