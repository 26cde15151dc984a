using ShopClass.Core.Courses;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Planning;
using ShopClass.Core.Planning.Reasons;
using ShopClass.Core.Projects;
using ShopClass.Core.Sawing;

namespace ShopClass.Core.Tests.Planning.Reasons;

/// <summary>Works out again, from the plan alone, whether what a reason claims is so.</summary>
internal sealed class ClaimCheck
{
    private readonly CheckedPlan made;
    private readonly BlankReason reason;
    private readonly Dictionary<BlankKey, Spot> spots;
    private readonly Spot at;

    private sealed record Spot(Board Board, Section Section, Strip Strip, PlacedBlank Blank)
    {
        public BoardRect Rect => new(Blank.From, Blank.To, Strip.Near, Strip.Far);
    }

    private ClaimCheck(BlankReason reason, CheckedPlan made)
    {
        (this.made, this.reason) = (made, reason);
        spots = (
            from layout in made.Plan.Boards
            from section in layout.Sections
            from strip in section.Strips
            from blank in strip.Blanks
            select new Spot(
                made.Request.Boards.Single(b => b.Id == layout.BoardId),
                section,
                strip,
                blank
            )
        ).ToDictionary(s => s.Blank.Key);
        at = spots[reason.Blank];
    }

    /// <summary>What is false about a reason; null when its claim holds.</summary>
    public static string? ProblemWith(BlankReason reason, CheckedPlan made)
    {
        var named = reason.With.All(k =>
            reason.Sentence.Contains($"{k}", StringComparison.Ordinal)
        );
        return named && new ClaimCheck(reason, made).Holds()
            ? null
            : $"{reason.Blank}: {reason.Sentence}";
    }

    private Part Part => made.Request.Project.Parts.Single(p => p.Letter == reason.Blank.Part);

    private CourseRules Rules => made.Request.Rules;

    private IEnumerable<Spot> Named => reason.With.Select(k => spots[k]);

    private Length UsableEnd(Board board) => board.Length - board.TrimEnd;

    private bool Holds() =>
        reason.Kind switch
        {
            ReasonKind.OnlyBoard => made
                .Request.Boards.Where(b => b.Id != at.Board.Id)
                .All(b => !CouldComeFrom(b)),
            ReasonKind.NothingLeftElsewhere => NothingLeft(),
            ReasonKind.HiddenFace => HidesIt(),
            ReasonKind.OnlyClearRun => NoPlaceOutsideTheRun(),
            ReasonKind.GlueMate => Named.All(n =>
                n.Section == at.Section && n.Board == at.Board && SamePanel(n)
            ),
            ReasonKind.OneCrosscut => Named.All(n =>
                n.Rect.Along == at.Rect.Along && CutServes(n) && CutServes(at)
            ),
            ReasonKind.GangMarked => Named.All(n =>
                n.Rect.From == at.Rect.From && n.Rect.To == at.Rect.To
            ) && InSectionBeside(),
            ReasonKind.OneLine => Named.All(n =>
                n.Rect.From == at.Rect.From || n.Rect.To == at.Rect.From
            )
                && InSectionBeside()
                && at.Section.From <= reason.From
                && at.Strip.Blanks.All(b =>
                    b.To + Rules.CrosscutKerf <= reason.From || b.From >= at.Rect.From
                )
                && !at.Board.Defects.Any(d =>
                    d.Place.Overlaps(
                        new(
                            reason.From!.Value,
                            reason.From.Value + at.Rect.Along,
                            at.Strip.Near,
                            at.Strip.Far
                        )
                    )
                ),
            // A section may end past all its blanks, where a bad place keeps the next one from lying nearer.
            ReasonKind.WithinLength => at.Section.Strips.Max(s => s.Blanks[^1].To) is var farthest
                && at.Strip.Blanks[^1].To < farthest
                && Named.Any(n => n.Rect.To == farthest)
                && InSectionBeside(),
            ReasonKind.RoomBeside => at.Rect.Along == at.Section.To - at.Section.From
                && InSectionBeside(),
            ReasonKind.OneRip => Named.All(n => CutServes(n) && CutServes(at)),
            ReasonKind.WholeWidth => at.Rect.Across == at.Board.SmallestWidth
                && !made.Sequence.Cuts.Any(c =>
                    c.Kind is CutKind.Rip && c.BoardId == at.Board.Id && c.Piece.Overlaps(at.Rect)
                ),
            ReasonKind.PastABadPlace => at.Board.Defects.Any(d =>
                d.Place.To == at.Rect.From && d.Place.To == reason.From
            ),
            ReasonKind.OffcutInOnePiece => OneOffcut(),
            ReasonKind.FirstOnTheBoard => spots
                .Values.Where(s => s.Board == at.Board)
                .All(s => s.Rect.From >= at.Rect.From),
            ReasonKind.NextInTurn => Named.All(n =>
                n.Board == at.Board
                && n.Rect.To + Length.FromTicks(1) <= at.Rect.From + Length.FromTicks(1)
            ),
            ReasonKind.SurplusWidth => at.Rect.Across
                - (at.Blank.Turned ? at.Blank.Needed.Length : at.Blank.Needed.Width)
                == reason.Amount
                && SliverClaim(),
            ReasonKind.SurplusLength => at.Rect.Along
                - (at.Blank.Turned ? at.Blank.Needed.Width : at.Blank.Needed.Length)
                == reason.Amount
                && at.Rect.To == at.Section.To,
            _ => false,
        };

    private bool SliverClaim() =>
        !reason.Sentence.Contains("too narrow", StringComparison.Ordinal)
        || reason.Amount < Rules.NarrowestOffcut + Rules.RipKerf;

    private bool SamePanel(Spot other) =>
        (other.Blank.Key.Part, other.Blank.Key.Copy) == (reason.Blank.Part, reason.Blank.Copy);

    private bool InSectionBeside() =>
        reason.With.Count > 0 && Named.All(n => n.Section == at.Section && n.Strip != at.Strip);

    /// <summary>Whether the piece would be as big as the part's least blank, whatever the surface of its board.</summary>
    private bool IsBigEnough(BoardRect rect)
    {
        var width =
            reason.Blank.Strip > 0
                ? at.Blank.Needed.Width
                : Part.Finished.Width + Part.ExtraFor(PartDimension.Width);
        var length = at.Blank.Needed.Length;
        return (rect.Along >= length && rect.Across >= width)
            || (Part.Grain is GrainDirection.Any && rect.Along >= width && rect.Across >= length);
    }

    private bool CouldComeFrom(Board board) =>
        BlankNeeds.ThicknessProblem(Part, Rules, board) is null
        && IsBigEnough(new(board.TrimStart, UsableEnd(board), Length.Zero, board.SmallestWidth));

    private bool NothingLeft() =>
        made.Rehearsal.Steps[^1]
            .Pieces.Where(p => p.BoardId == reason.OtherBoard && p.Blank is null)
            .All(p => !IsBigEnough(p.Rect))
        && reason.OtherBoard != at.Board.Id;

    private bool HidesIt() =>
        Part.AcceptsHiddenDefect
        && at.Board.Defects.Any(d => d.Place.Overlaps(at.Rect) && d.Place.From == reason.From)
        && at.Board.Defects.Where(d => d.Place.Overlaps(at.Rect))
            .Select(d => d.Reach)
            .Distinct()
            .Count() == 1;

    /// <summary>Tries the blank's least size all over the board on a grid of 2 mm and beside every bad place.</summary>
    private bool NoPlaceOutsideTheRun()
    {
        var (along, across) = at.Blank.Turned
            ? (at.Blank.Needed.Width, at.Blank.Needed.Length)
            : (at.Blank.Needed.Length, at.Blank.Needed.Width);
        across = Length.Min(across, at.Rect.Across);
        var board = at.Board;
        var froms = Grid(board.Length)
            .Concat(board.Defects.Select(d => d.Place.To))
            .Where(f => f >= board.TrimStart && f + along <= UsableEnd(board))
            .ToList();
        var nears = Grid(board.SmallestWidth)
            .Concat(board.Defects.Select(d => d.Place.Far))
            .Where(n => n + across <= board.SmallestWidth)
            .ToList();
        return at.Rect.From >= reason.From
            && at.Rect.To <= reason.To
            && !froms
                .Where(f => f < reason.From || f + along > reason.To)
                .Any(f =>
                    nears.Any(n =>
                        !board.Defects.Any(d => d.Place.Overlaps(new(f, f + along, n, n + across)))
                    )
                );
    }

    private static IEnumerable<Length> Grid(Length to) =>
        Enumerable.Range(0, (int)(to.Ticks / Wood.Mm(2).Ticks) + 1).Select(i => Wood.Mm(2) * i);

    private bool CutServes(Spot spot)
    {
        var cut = made.Sequence.Cuts.Single(c => c.Number == reason.Cut);
        var along = cut.Kerf.From <= spot.Rect.From && cut.Kerf.To >= spot.Rect.To;
        var across = cut.Kerf.Near <= spot.Rect.Near && cut.Kerf.Far >= spot.Rect.Far;
        return cut.BoardId == spot.Board.Id
            && (
                cut.Kind is CutKind.Rip
                    ? along && (cut.Kerf.Near == spot.Rect.Far || cut.Kerf.Far == spot.Rect.Near)
                    : across && cut.Kerf.From == spot.Rect.To
            );
    }

    /// <summary>One piece lies at the far end, as long as said, over the whole width; no other length is left over.</summary>
    private bool OneOffcut()
    {
        var sections = made.Plan.Boards.Single(l => l.BoardId == at.Board.Id).Sections;
        var used = sections.Aggregate(Length.Zero, (sum, s) => sum + (s.To - s.From));
        var usable = UsableEnd(at.Board) - at.Board.TrimStart;
        return usable - used - Rules.CrosscutKerf * sections.Count == reason.Amount;
    }
}
